import { readGarage } from '@waymend/garage/file/read-garage';
import type { Garage } from '@waymend/garage/record/schema';
import type { Io } from '../io.ts';
import { textOfBytes } from '@waymend/garage/file/text-of-bytes';
import { refusalLines } from '../text/refusals.ts';
import type { Refusal } from '@waymend/core/result';

/** Reads and checks a garage file; on refusal the sentences have been printed and null comes back. */
export async function garageAt(
  io: Io,
  path: string,
  purpose: 'plan' | 'edit' = 'plan',
): Promise<Garage | null> {
  const found = await readText(io, path);
  if (found === null) return null;
  const garage = readGarage(found, path, { for: purpose });
  if (garage.ok) return garage.value;
  refuse(io, garage.error);
  return null;
}

/** A file's text, or null with a sentence printed. */
export async function readText(io: Io, path: string): Promise<string | null> {
  const bytes = await readBytes(io, path);
  if (bytes === null) return null;
  const text = textOfBytes(bytes, path);
  if (text.ok) return text.value;
  refuse(io, [text.error]);
  return null;
}

export async function readBytes(io: Io, path: string): Promise<Uint8Array | null> {
  const found = await io.read(path);
  switch (found.kind) {
    case 'bytes':
      return found.bytes;
    case 'missing':
      refuse(io, [{ id: 'file-missing', message: `There is no file ${path}; check the name` }]);
      return null;
    case 'too-big':
      refuse(io, [
        {
          id: 'file-too-big',
          message: `${path} holds ${Math.round(found.bytes / 1e6)} MB; no garage or list is that large, so it was not read`,
        },
      ]);
      return null;
    case 'unreadable':
      refuse(io, [{ id: 'file-unreadable', message: `${path} cannot be read (${found.why})` }]);
      return null;
  }
}

/** Writes a file, all or nothing; false with a sentence printed when it could not be written. */
export async function writeText(io: Io, path: string, data: string): Promise<boolean> {
  const outcome = await io.write(path, data);
  if (outcome.kind === 'written') return true;
  refuse(io, [
    {
      id: 'file-unwritable',
      message: `${path} cannot be written (${outcome.why}); what was there is as it was`,
    },
  ]);
  return false;
}

export function refuse(io: Io, refusals: readonly Refusal[]): void {
  io.err(`${refusalLines(refusals).join('\n')}\n`);
}
