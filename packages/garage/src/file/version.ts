import type { Refusal } from '@waymend/core/result';
import type { Plain } from './yaml-tree.ts';

/** The file version of a parsed file, or why it cannot be read. `newest` is the version this program writes. */
export function versionOf(
  value: Plain,
  newest: number,
  name: string,
  lineOf: (path: readonly string[]) => number,
): { readonly version: number } | { readonly refusal: Refusal } {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return {
      refusal: {
        id: 'not-a-garage',
        message: `${name}, line 1: this is not a garage; the first line of one is "waymend: ${newest}"`,
        line: 1,
      },
    };
  }
  const version = value['waymend'];
  const line = lineOf(['waymend']);
  const refusal = (id: string, what: string): { readonly refusal: Refusal } => ({
    refusal: { id, message: `${name}, line ${line}: ${what}`, path: 'waymend', line },
  });
  if (version === undefined) {
    return refusal(
      'version-missing',
      `the file version is missing; add the line "waymend: ${newest}" at the top`,
    );
  }
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    const said = typeof version === 'object' ? 'a list' : `"${String(version).slice(0, 40)}"`;
    return refusal('version-unknown', `there is no file version ${said}; write "waymend: ${newest}"`);
  }
  if (version > newest) {
    return refusal(
      'version-newer',
      `the file was written by a newer Waymend (file version ${version}, this one knows up to ${newest}); update Waymend and try again, the file was not touched`,
    );
  }
  return { version };
}
