import { useState } from 'react';
import { Button } from 'react-aria-components';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { Sentence } from '../../../look/parts.tsx';
import { useRecord, useSettings, useStores } from '../../../shell/stores.tsx';
import { useTrip } from '../../../shell/use-trip.ts';
import type { PatternId } from './outlines.ts';
import { OUTLINES, PATTERN_IDS } from './outlines.ts';
import { PatternOutline } from './pattern-outline.tsx';

/** Six kinds of vehicle; one press records it with what is typical of its kind. */
export function PatternChoice({ onStarted }: { onStarted: () => void }) {
  const { t } = useTranslation();
  const format = useFormat();
  const start = useStart(onStarted);
  return (
    <>
      <ul className="patterns">
        {PATTERN_IDS.map((id) => (
          <li key={id}>
            <Button className="act pattern" onPress={() => void start.with(id)}>
              <PatternOutline of={id} />
              <span className="pattern-words">
                <span className="decides">{t(`begin.pattern.${id}.name`)}</span>
                <span className="small">{t(`begin.pattern.${id}.what`)}</span>
                <span className="small quiet">
                  {t(id === 'camper-trailer' ? 'begin.couplingToAxle' : 'begin.wheelbase', {
                    length: format.length(OUTLINES[id].wheelbaseMm),
                  })}
                </span>
              </span>
            </Button>
          </li>
        ))}
      </ul>
      {start.refused !== null && <Sentence strong>{start.refused}</Sentence>}
    </>
  );
}

function useStart(onStarted: () => void): {
  readonly with: (id: PatternId) => Promise<void>;
  readonly refused: string | null;
} {
  const { t } = useTranslation();
  const { edit } = useRecord();
  const { reader, record } = useStores();
  const { change } = useSettings();
  const { tripId } = useTrip();
  const [refused, setRefused] = useState<string | null>(null);
  return {
    refused,
    with: async (id) => {
      const name = t(`begin.pattern.${id}.name`);
      const before = record.getState().garage;
      const reply = await reader.once({
        kind: 'trip/start',
        garage: before,
        pattern: id,
        hitchTo: tripId,
        names: {
          vehicle: name,
          person: t('begin.start.person'),
          trip: t('begin.start.trip'),
          leg: t('begin.start.leg'),
          nose: t('begin.start.nose'),
        },
      });
      if (reply.kind !== 'trip/started') {
        setRefused(reply.kind === 'refused' ? (reply.refusals[0]?.message ?? '') : t('begin.start.failed'));
        return;
      }
      setRefused(null);
      await edit(t('begin.start.done', { name }), () => reply.garage);
      if (reply.trip !== null) change({ trip: reply.trip });
      onStarted();
    },
  };
}
