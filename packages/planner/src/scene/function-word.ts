import type { FunctionId } from '@waymend/catalogue/shape/words';
import { NEVER_PLAIN } from '@waymend/catalogue/shape/words';

/**
 * The model lets any `of` serve a need that names none (M2). Some `of` words are other things altogether (a crimp *part*
 * crimps nothing): those become functions of their own here, so that they serve only a need that asks for them.
 */
export function functionWord(
  fn: string,
  of: string | undefined,
): { readonly fn: string; readonly of?: string } {
  if (of === undefined) return { fn };
  const apart = NEVER_PLAIN[fn as FunctionId];
  return apart?.includes(of) === true ? { fn: `${fn} ${of}` } : { fn, of };
}
