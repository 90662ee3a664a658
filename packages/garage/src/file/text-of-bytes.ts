import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import { MOST_CHARACTERS } from './limits.ts';

/** UTF-8 takes at most four bytes a character. */
const MOST_BYTES = 4 * MOST_CHARACTERS;

/**
 * Text of a file's bytes: UTF-8, UTF-16 with a mark, else the Western code page that old spreadsheets export. Refuses
 * what is too large, a spreadsheet or archive (they start with PK), and anything else that is not text.
 */
export function textOfBytes(bytes: Uint8Array, name: string): Result<string> {
  if (bytes.length > MOST_BYTES) {
    const size = Math.round(bytes.length / 1e6);
    return refuse(
      'file-too-large',
      `${name} has ${size} MB and at most 5 MB are read; check that it is the right file`,
    );
  }
  const starts = (...start: readonly number[]): boolean => start.every((byte, i) => bytes[i] === byte);
  if (starts(0x50, 0x4b, 0x03, 0x04)) {
    return refuse(
      'file-spreadsheet',
      `${name} is a spreadsheet or an archive, not text; read it with import`,
    );
  }
  if (starts(0xff, 0xfe)) return ok(new TextDecoder('utf-16le').decode(bytes));
  if (starts(0xfe, 0xff)) return ok(new TextDecoder('utf-16be').decode(bytes));
  if (bytes.subarray(0, 8000).includes(0)) {
    return refuse(
      'file-binary',
      `${name} is not text; a garage is YAML or JSON, a list is plain text or CSV`,
    );
  }
  try {
    return ok(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    return ok(new TextDecoder('windows-1252').decode(bytes));
  }
}
