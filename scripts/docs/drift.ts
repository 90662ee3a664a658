/** Says where a document differs from what the code makes of it: its first differing line. Null when it does not. */
export function drift(path: string, written: string | null, made: string): string | null {
  if (written === made) return null;
  if (written === null) return `${path} is missing.`;
  const is = written.split('\n');
  const should = made.split('\n');
  const line = should.findIndex((text, i) => text !== is[i]);
  const at = line < 0 ? should.length : line;
  return `${path}, line ${at + 1}: is ${show(is[at])}, should be ${show(should[at])}`;
}

function show(line: string | undefined): string {
  if (line === undefined) return 'missing';
  return JSON.stringify(line.length > 120 ? `${line.slice(0, 120)}...` : line);
}
