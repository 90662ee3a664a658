import type { BoxedSet } from '@waymend/catalogue/boxed-sets';
import type { CatalogueBelonging, PriceBand } from '@waymend/catalogue/shape/belonging';
import type { Failure, FailureGroup } from '@waymend/catalogue/shape/failure';
import type { Job } from '@waymend/catalogue/shape/job';
import type { VehiclePattern } from '@waymend/catalogue/shape/pattern';
import type { Place } from '@waymend/catalogue/shape/place';
import type { Substitution } from '@waymend/catalogue/shape/substitution';
import type { FactorTables } from '@waymend/core/failing/rate-tables';
import type { LoadIndexRow } from '@waymend/core/loading/load-input';

/** What the trade knows, in one bundle: the catalogue as the planner uses it. Tests pass smaller ones. */
export interface Trade {
  readonly jobs: readonly Job[];
  readonly places: readonly Place[];
  readonly groups: readonly FailureGroup[];
  readonly failures: readonly Failure[];
  readonly factors: FactorTables;
  readonly belongings: readonly CatalogueBelonging[];
  readonly sets: readonly BoxedSet[];
  readonly priceOf: (item: CatalogueBelonging) => number;
  /** Indicative price of a band, whole cents. */
  readonly bandCents: (band: PriceBand) => number;
  readonly substitutions: readonly Substitution[];
  readonly patterns: readonly VehiclePattern[];
  readonly loadIndex: readonly LoadIndexRow[];
}
