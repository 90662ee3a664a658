import type { CatalogueBelonging } from '../shape/belonging.ts';
import { SPARES } from '../spares/spares.ts';
import { CUTTING_JOINING } from './cutting-joining.ts';
import { ELECTRICAL } from './electrical.ts';
import { FLUIDS_LIGHT_PROTECTION } from './fluids-light-protection.ts';
import { HANDLES_AND_ADAPTERS } from './handles-and-adapters.ts';
import { INCH } from './inch.ts';
import { KEYS_BITS_DRIVERS } from './keys-bits-drivers.ts';
import { LIFTING_RESTRAINT } from './lifting-restraint.ts';
import { MATERIALS } from './materials.ts';
import { PLIERS } from './pliers.ts';
import { SET_PIECES } from './set-pieces.ts';
import { SOCKETS } from './sockets.ts';
import { STRIKING_PRYING_PRESSING } from './striking-prying-pressing.ts';
import { TYRES_AIR } from './tyres-air.ts';
import { WRENCHES } from './wrenches.ts';

/** The tools and supplies of the main list: one of everything that earns a place in some kit. */
export const MAIN_LIST: readonly CatalogueBelonging[] = [
  ...SOCKETS,
  ...WRENCHES,
  ...HANDLES_AND_ADAPTERS,
  ...KEYS_BITS_DRIVERS,
  ...PLIERS,
  ...STRIKING_PRYING_PRESSING,
  ...CUTTING_JOINING,
  ...ELECTRICAL,
  ...TYRES_AIR,
  ...LIFTING_RESTRAINT,
  ...FLUIDS_LIGHT_PROTECTION,
  ...MATERIALS,
];

/** Everything the catalogue knows: the main list, spares, inch tools and what else boxed sets hold. */
export const BELONGINGS: readonly CatalogueBelonging[] = [...MAIN_LIST, ...SPARES, ...INCH, ...SET_PIECES];

export const BELONGING_BY_ID: ReadonlyMap<string, CatalogueBelonging> = new Map(
  BELONGINGS.map((belonging) => [belonging.id, belonging]),
);
