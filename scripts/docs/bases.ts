import { BELONGINGS } from '@waymend/catalogue/belongings/all';
import { TYPICAL_BAGS } from '@waymend/catalogue/bags/typical-bags';
import { BOXED_SETS } from '@waymend/catalogue/boxed-sets';
import { CARE_RULES } from '@waymend/catalogue/care/all';
import { FAILURES } from '@waymend/catalogue/failures/all';
import { FAILURE_GROUPS } from '@waymend/catalogue/failures/groups';
import { JOBS } from '@waymend/catalogue/jobs/all';
import { PATTERNS } from '@waymend/catalogue/patterns/all';
import { PLACES } from '@waymend/catalogue/places/all';
import { PRICE_BASIS } from '@waymend/catalogue/prices';
import { RATE_FACTORS } from '@waymend/catalogue/rates/all';
import type { Basis } from '@waymend/catalogue/shape/basis';
import type { BasisList } from '@waymend/catalogue/sources';
import { SUBSTITUTIONS } from '@waymend/catalogue/substitutions';
import { SYMPTOMS } from '@waymend/catalogue/symptoms/all';

const KINDS: ReadonlySet<unknown> = new Set<Basis['kind']>([
  'source',
  'computed',
  'common-practice',
  'estimate',
  'recalled',
]);

/** The lists of the catalogue that are not tables of standards, with every basis that stands anywhere in them. */
export const BASIS_LISTS: readonly BasisList[] = (
  [
    ['Belongings: masses, lengths, what they do', BELONGINGS],
    ['Boxed sets', BOXED_SETS],
    ['Prices', PRICE_BASIS],
    ['Places: sizes, torques, access', PLACES],
    ['Patterns of vehicles', PATTERNS],
    ['Failure groups: rates by surface', FAILURE_GROUPS],
    ['Failures: weights within their groups', FAILURES],
    ['Rate factors', RATE_FACTORS],
    ['Jobs', JOBS],
    ['Symptoms: which failure shows how', SYMPTOMS],
    ['What may stand in for what', SUBSTITUTIONS],
    ['Care of belongings', CARE_RULES],
    ['Bags in general', TYPICAL_BAGS],
  ] as const
).map(([title, list]) => ({ title, bases: [...basesIn(list)] }));

/** Every basis anywhere inside a value. */
function* basesIn(value: unknown): Generator<Basis> {
  if (typeof value !== 'object' || value === null) return;
  if (isBasis(value)) yield value;
  else for (const inner of Object.values(value)) yield* basesIn(inner);
}

function isBasis(value: object): value is Basis {
  return 'kind' in value && KINDS.has(value.kind);
}
