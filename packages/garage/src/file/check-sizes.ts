import type { Size } from '@waymend/core/fastening/size';
import { parseSize } from '@waymend/core/fastening/size';
import { inMillimetres } from '@waymend/core/quantity/units';
import type { Refusal } from '@waymend/core/result';
import type { Garage } from '../record/schema.ts';
import type { PlaceInFile } from './place-in-file.ts';
import { isOfAStandard, nearestMetric } from './standard-sizes.ts';

/** Sizes that cannot be read, and sizes off every standard, which the owner is asked about unless `confirmed`. */
export function doubtfulSizes(garage: Garage, at: PlaceInFile): readonly Refusal[] {
  const refusals: Refusal[] = [];
  const look = (
    path: readonly string[],
    whose: string,
    text: string | undefined,
    confirmed: boolean,
    of: 'head' | 'tool',
  ): void => {
    if (text === undefined) return;
    const size = parseSize(text);
    if (!size.ok) {
      refusals.push(at.refusal('size-unknown', path, `${whose}: ${size.error.message}`));
    } else if (!confirmed && !isOfAStandard(size.value, of)) {
      const nearest = nearestStandard(size.value);
      const near = nearest === null ? '' : `, ${nearest} is the nearest`;
      refusals.push(
        at.refusal(
          'size-off-standard-ask',
          path,
          `${whose} has the size ${size.value.label}, which is in no standard${near}; measure again, or add "confirmed: true"`,
        ),
      );
    }
  };
  for (const [id, { size, counterHold, confirmed }] of Object.entries(garage.fittings)) {
    look(['fittings', id, 'size'], `fitting ${id}`, size, confirmed, 'head');
    if (typeof counterHold !== 'object') continue;
    const path = ['fittings', id, 'counterHold', 'size'];
    look(path, `the counter-hold of fitting ${id}`, counterHold.size, confirmed, 'head');
  }
  for (const [id, { size, confirmed }] of Object.entries(garage.belongings)) {
    look(['belongings', id, 'size'], `belonging ${id}`, size, confirmed, 'tool');
  }
  return refusals;
}

/** The nearest size of the metric series, as marked; null for sizes of other kinds. */
export function nearestStandard(size: Size): string | null {
  return size.kind === 'across-flats' && size.system === 'metric'
    ? `${nearestMetric(inMillimetres(size.width))} mm`
    : null;
}
