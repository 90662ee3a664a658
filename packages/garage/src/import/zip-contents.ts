import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';

/** A list of belongings fits many times; what is larger is a mistake or an attack. */
const MOST_BYTES = 5_000_000;
const MOST_UNPACKED = 60_000_000;
const MOST_FILES = 500;

/**
 * Looks into a zip archive before anything is unpacked: its directory is sound, it says what it holds, and unpacking each
 * part, counted as it comes, does not exceed that or the limit. (APPNOTE of the zip format, sections 4.3.7, 4.3.12, 4.3.16.)
 */
export async function checkZip(bytes: Uint8Array, name: string): Promise<Result<null>> {
  if (bytes.length > MOST_BYTES) {
    return refuse(
      'file-too-large',
      `${name} has ${Math.round(bytes.length / 1e6)} MB and at most 5 MB are read; save only the list`,
    );
  }
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const broken = refuse(
    'spreadsheet-broken',
    `${name} is not a spreadsheet that can be read; save it as .xlsx or CSV again`,
  );
  const end = endRecord(view);
  if (end === null) return broken;
  const files = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  if (files > MOST_FILES) return tooMuch(name);
  let total = 0;
  const parts: {
    readonly start: number;
    readonly packed: number;
    readonly unpacked: number;
    readonly method: number;
  }[] = [];
  for (let i = 0; i < files; i++) {
    if (at + 46 > bytes.length || view.getUint32(at, true) !== 0x02014b50) return broken;
    const packed = view.getUint32(at + 20, true);
    const unpacked = view.getUint32(at + 24, true);
    const local = view.getUint32(at + 42, true);
    total += unpacked;
    if (total > MOST_UNPACKED) return tooMuch(name);
    if (local + 30 > bytes.length || view.getUint32(local, true) !== 0x04034b50) return broken;
    const start = local + 30 + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
    if (start + packed > bytes.length) return broken;
    parts.push({ start, packed, unpacked, method: view.getUint16(at + 10, true) });
    at += 46 + view.getUint16(at + 28, true) + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  for (const { start, packed, unpacked, method } of parts) {
    if (method === 0 && packed === unpacked) continue;
    if (method !== 8) return broken;
    const held = await unpackedSize(bytes.subarray(start, start + packed), unpacked);
    if (held === 'more') return tooMuch(name);
    if (held === 'broken') return broken;
  }
  return ok(null);
}

function tooMuch(name: string): Result<never> {
  return refuse(
    'spreadsheet-too-large',
    `${name} unpacks to more than a list of belongings can be; it was not opened`,
  );
}

/** Position of the end-of-directory record, which is last but for a comment; null when there is none. */
function endRecord(view: DataView): number | null {
  for (let at = view.byteLength - 22; at >= 0 && at > view.byteLength - 22 - 65_536; at--) {
    if (view.getUint32(at, true) === 0x06054b50) return at;
  }
  return null;
}

/** Unpacks a part without keeping it, and stops as soon as it is more than it said. */
async function unpackedSize(packed: Uint8Array, most: number): Promise<'right' | 'more' | 'broken'> {
  const stream = new Blob([Uint8Array.from(packed)])
    .stream()
    .pipeThrough(new DecompressionStream('deflate-raw'));
  const reader: ReadableStreamDefaultReader<Uint8Array> = stream.getReader();
  let size = 0;
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) return 'right';
      size += value.length;
      if (size > most) {
        await reader.cancel();
        return 'more';
      }
    }
  } catch {
    return 'broken';
  }
}
