import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import type { Garage } from '@waymend/garage/record/schema';
import { useRecord, useSettings, useStores } from '../../../shell/stores.tsx';
import { isEmpty } from './the-way.ts';
import demoUrl from '../../../../../../examples/demo.garage.yaml?url';

/** A garage has at most five million characters; nothing larger is read into memory. */
export const MOST_BYTES = 20_000_000;

/** A garage that was read and waits for its owner's yes, because there is one that it would put aside. */
export interface Waiting {
  readonly title: string;
  readonly name: string;
  readonly garage: Garage;
}

export interface Opening {
  readonly openDemo: () => Promise<void>;
  readonly openFile: (file: File) => Promise<void>;
  readonly isReading: boolean;
  /** Sentences why a file was not opened; nothing was changed. */
  readonly refused: readonly string[];
  readonly waiting: Waiting | null;
  readonly accept: () => Promise<void>;
  readonly decline: () => void;
}

/** Reads the demo or a file in the worker and puts it in place of an empty record at once, of any other only when asked. */
export function useOpening(): Opening {
  const { t } = useTranslation();
  const { replace } = useRecord();
  const { change } = useSettings();
  const { reader, record } = useStores();
  const [isReading, setReading] = useState(false);
  const [refused, setRefused] = useState<readonly string[]>([]);
  const [waiting, setWaiting] = useState<Waiting | null>(null);

  const put = async ({ title, garage }: Waiting) => {
    setWaiting(null);
    await replace(title, garage);
    change({ trip: null });
  };
  const read = async (bytes: Uint8Array, fileName: string, title: string, name: string) => {
    const reply = await reader.once({ kind: 'open', bytes, name: fileName });
    if (reply.kind === 'garage') {
      const read_ = { title, name, garage: reply.garage };
      if (isEmpty(record.getState().garage)) await put(read_);
      else setWaiting(read_);
    } else if (reply.kind === 'refused') setRefused(reply.refusals.map(({ message }) => message));
    else setRefused([reply.kind === 'broken' ? t('app.broken', { cause: reply.cause }) : t('begin.notRead')]);
  };
  const guarded = async (work: () => Promise<void>) => {
    setReading(true);
    setRefused([]);
    try {
      await work();
    } catch {
      setRefused([t('begin.notRead')]);
    } finally {
      setReading(false);
    }
  };

  return {
    isReading,
    refused,
    waiting,
    openDemo: () =>
      guarded(async () => {
        const bytes = new Uint8Array(await (await fetch(demoUrl)).arrayBuffer());
        await read(bytes, 'demo.garage.yaml', t('begin.demoOpened'), t('begin.theDemo'));
      }),
    openFile: (file) =>
      guarded(async () => {
        const name = file.name.slice(0, 100);
        if (file.size > MOST_BYTES) {
          setRefused([t('begin.tooLarge', { name, size: Math.round(file.size / 1e6) })]);
          return;
        }
        const bytes = new Uint8Array(await file.arrayBuffer());
        await read(bytes, name, t('begin.fileOpened', { name }), name);
      }),
    accept: async () => {
      if (waiting !== null) await put(waiting);
    },
    decline: () => setWaiting(null),
  };
}
