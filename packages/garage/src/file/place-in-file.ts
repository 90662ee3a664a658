import type { Refusal } from '@waymend/core/result';
import type { Tree } from './yaml-tree.ts';

/** Makes the refusals of one file: every one says file and line. */
export interface PlaceInFile {
  readonly refusal: (id: string, path: readonly (string | number)[], what: string) => Refusal;
}

export function placeInFile(name: string, lineOf: Tree['lineOf']): PlaceInFile {
  return {
    refusal: (id, path, what) => {
      const line = lineOf(path);
      return { id, message: `${name}, line ${line}: ${what}`, path: path.join('.'), line };
    },
  };
}
