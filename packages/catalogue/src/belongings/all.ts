import type { CatalogueBelonging } from '../shape/belonging.ts';
import { CUTTING_JOINING } from './cutting-joining.ts';
import { ELECTRICAL } from './electrical.ts';
import { FLUIDS_LIGHT_PROTECTION } from './fluids-light-protection.ts';
import { HANDLES_AND_ADAPTERS } from './handles-and-adapters.ts';
import { KEYS_BITS_DRIVERS } from './keys-bits-drivers.ts';
import { LIFTING_RESTRAINT } from './lifting-restraint.ts';
import { MATERIALS } from './materials.ts';
import { PLIERS } from './pliers.ts';
import { SOCKETS } from './sockets.ts';
import { STRIKING_PRYING_PRESSING } from './striking-prying-pressing.ts';
import { TYRES_AIR } from './tyres-air.ts';
import { WRENCHES } from './wrenches.ts';

/** Everything the catalogue knows: tools, supplies and spares. */
export const BELONGINGS: readonly CatalogueBelonging[] = [
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

export const BELONGING_BY_ID: ReadonlyMap<string, CatalogueBelonging> = new Map(
  BELONGINGS.map((belonging) => [belonging.id, belonging]),
);
