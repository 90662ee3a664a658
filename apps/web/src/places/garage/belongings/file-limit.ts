/** More than any list or garage; what is larger is not even read into memory. */
const MOST_FILE_BYTES = 20_000_000;

/** What to say of a file that is too large to read, or null. */
export function tooLarge({ name, size }: Pick<File, 'name' | 'size'>): {
  readonly name: string;
  readonly size: number;
} | null {
  return size > MOST_FILE_BYTES ? { name, size: Math.round(size / 1e6) } : null;
}
