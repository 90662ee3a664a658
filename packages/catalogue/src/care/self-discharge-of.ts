import type { Basis } from '../shape/basis.ts';
import { estimate, source } from '../shape/basis.ts';
import { SELF_DISCHARGE } from '../standards/self-discharge.ts';

/** What something that holds charge loses by itself. */
export interface SelfDischarge {
  /** Care rule of the belongings it is about. */
  readonly rule: string;
  /** Share of the charge left that is lost in a month near 20 degC, 0..1, from and to. */
  readonly perMonth: readonly [number, number];
  /** Degrees C that double it. */
  readonly doublesEveryC: number;
  readonly basis: Basis;
}

/** Charge is lost about twice as fast 10 degC warmer: the rule of thumb of slow reactions, recalled and not re-read. */
const DOUBLES_EVERY_C = 10;
/** What protection and charge lamps draw in a pack with electronics, a month (estimate). */
const ELECTRONICS = 0.01;

function ofChemistry(kind: string): readonly [number, number] {
  const row = SELF_DISCHARGE.rows.find((r) => r.kind === kind);
  if (row === undefined) throw new Error(`no self-discharge is listed for ${kind}`);
  return [row.low / 100, row.high / 100];
}

const [LITHIUM_LOW, LITHIUM_HIGH] = ofChemistry('lithium-ion');

/** Self-discharge by care rule; `cells` are primary cells: alkaline ones keep about five years. */
export const SELF_DISCHARGES: readonly SelfDischarge[] = [
  {
    rule: 'jump-pack-lithium',
    perMonth: [LITHIUM_LOW + ELECTRONICS, LITHIUM_HIGH + 2 * ELECTRONICS],
    doublesEveryC: DOUBLES_EVERY_C,
    basis: estimate(
      'The listed 2 to 3 % a month of lithium-ion cells, and 1 to 2 % that the electronics of a pack draw; twice as fast 10 C warmer (recalled)',
    ),
  },
  {
    rule: 'power-tool-battery',
    perMonth: [LITHIUM_LOW, LITHIUM_HIGH + ELECTRONICS],
    doublesEveryC: DOUBLES_EVERY_C,
    basis: estimate(
      'The listed 2 to 3 % a month of lithium-ion cells, and up to 1 % for electronics; twice as fast 10 C warmer (recalled)',
    ),
  },
  {
    rule: 'jump-pack-lead',
    perMonth: ofChemistry('lead-acid'),
    doublesEveryC: DOUBLES_EVERY_C,
    basis: source('the table of self-discharge by chemistry; twice as fast 10 C warmer is recalled'),
  },
  {
    rule: 'cells',
    perMonth: [0.002, 0.004],
    doublesEveryC: DOUBLES_EVERY_C,
    basis: estimate('Alkaline cells that keep about five years lose 2 to 4 % a year'),
  },
];
