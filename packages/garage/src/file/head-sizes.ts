import { parseSize } from '@waymend/core/fastening/size';
import { isOfAStandard } from './standard-sizes.ts';

/** Every marking of a head that a standard or the catalogue has, as `Size.label` writes it: what need not be asked about. */
export function standardHeadSizes(): readonly string[] {
  const texts: string[] = [];
  for (let half = 2; half <= 240; half += 1) texts.push(`${half / 2} mm`);
  for (let parts = 1; parts <= 320; parts += 1) texts.push(`${parts}/64 in`);
  for (let n = 0; n <= 100; n += 1)
    texts.push(`T${n}`, `E${n}`, `cross ${n}`, `M${n} spline`, `slot ${n / 2} mm`);
  const labels = texts.flatMap((text) => {
    const size = parseSize(text);
    return size.ok && isOfAStandard(size.value, 'head') ? [size.value.label] : [];
  });
  return [...new Set(labels)];
}
