import { VOLTAGE_DROP } from '@waymend/catalogue/standards/voltage-drop';
import { amperes, metres, volts } from '@waymend/core/quantity/units';
import type { Result } from '@waymend/core/result';
import { ok } from '@waymend/core/result';
import type { WireChoice } from '@waymend/core/wiring/choose-wire';
import { chooseWire } from '@waymend/core/wiring/choose-wire';
import type { WireAnswer } from '../answer/wire-answer.ts';
import { WIRE_TABLES } from './wire-tables.ts';

/** A circuit as somebody asks about it. */
export interface WireQuestion {
  readonly amps: number;
  readonly metresOneWay: number;
  readonly volts?: number;
  /** Per cent of the supply. */
  readonly mostDropPct?: number;
  readonly engineSpace?: boolean;
  /** As printed on the wire, degrees Celsius. */
  readonly insulationC?: number;
}

const DROP_PCT = limit('critical circuits', 'share');
const FUSE_WITHIN_MM = limit('fuse from its source', 'distance');
/** The coolest insulation of the table: no wire sold for vehicles is worse. */
const UNKNOWN_INSULATION = 60;

/** Wire section, drop and fuse of a circuit, or one sentence why the tables do not cover it. */
export function wireAnswer(question: WireQuestion): Result<WireAnswer> {
  const asked: WireAnswer['asked'] = {
    amps: question.amps,
    metresOneWay: question.metresOneWay,
    volts: question.volts ?? 12,
    mostDropPct: question.mostDropPct ?? DROP_PCT,
    engineSpace: question.engineSpace ?? false,
    insulationC: question.insulationC ?? UNKNOWN_INSULATION,
    insulationAssumed: question.insulationC === undefined,
  };
  const chosen = chooseWire(WIRE_TABLES, {
    current: amperes(asked.amps),
    oneWay: metres(asked.metresOneWay),
    supply: volts(asked.volts),
    mostDrop: asked.mostDropPct / 100,
    engineSpace: asked.engineSpace,
    insulationC: asked.insulationC,
  });
  if (!chosen.ok) return chosen;
  const { gauge, metric, fuse, loop } = chosen.value;
  return ok({
    schema: 'waymend.wire/1',
    asked,
    loopMetres: round(loop, 2),
    gauge: {
      awg: gauge.size.label,
      mm2: round(gauge.size.area * 1e6, 2),
      saeMm2: gauge.size.leastArea === null ? null : round(gauge.size.leastArea * 1e6, 2),
      allowedAmps: round(gauge.allowed, 1),
      dropVolts: round(gauge.drop.volts, 3),
      dropPct: round(gauge.drop.share * 100, 2),
    },
    metric:
      metric === null
        ? null
        : {
            mm2: round(metric.area * 1e6, 2),
            allowedAmps: round(metric.allowed, 1),
            dropVolts: round(metric.drop.volts, 3),
            dropPct: round(metric.drop.share * 100, 2),
          },
    fuse: { ...fuse, withinMm: FUSE_WITHIN_MM },
    sentences: sentences(asked, chosen.value),
    cautions: CAUTIONS,
    bases: bases(chosen.value),
  });
}

function sentences(asked: WireAnswer['asked'], chosen: WireChoice): readonly string[] {
  const { gauge, metric, fuse, heat, loop } = chosen;
  const kind = fuse.kind === 'blade' ? 'blade fuse' : 'large blade fuse';
  const lost = (d: { readonly volts: number; readonly share: number }) =>
    `${round(d.volts, 2)} V, ${round(d.share * 100, 1)} %`;
  const out = [
    `${metric === null ? '' : `${round(metric.area * 1e6, 2)} mm2 or `}${gauge.size.label} AWG for ${asked.amps} A over ${round(loop, 2)} m of copper, there and back.`,
    `It loses ${metric === null ? '' : `${lost(metric.drop)} (metric) or `}${lost(gauge.drop)} (AWG) of ${asked.volts} V; ${asked.mostDropPct} % may be lost.`,
    `Fuse it at ${fuse.amps} A (${kind}, ${fuse.colour}), within ${FUSE_WITHIN_MM} mm of the battery. The wire takes ${round(Math.min(gauge.allowed, metric?.allowed ?? gauge.allowed), 1)} A here: never a larger fuse than that, whatever the load asks.`,
  ];
  if (metric === null)
    out.push('The list of metric cables ends before one that would do; measure the copper.');
  if (asked.insulationAssumed)
    out.push(
      `Nobody said what is printed on the wire, so insulation for ${asked.insulationC} degrees counts, the coolest in the table. Better insulation may allow a thinner wire.`,
    );
  if (heat !== null)
    out.push(
      `In the engine space the wire takes ${round(heat.factor * 100, 0)} % of what it takes in the open${heat.recalled ? ' (this factor is remembered, not re-read: go one size up if in doubt)' : ''}.`,
    );
  return out;
}

const CAUTIONS: readonly string[] = [
  'Battery minus off before anything is joined, rings and watch off your hands.',
  'A fuse guards the wire, not the load: a larger one, foil or wire in its place sets the loom alight.',
  'More than two loaded wires in one bundle carry less than the table says; run them apart or go up a size.',
  "The vehicle maker's manual and the maker of what is fed come first; starter, winch and inverter cables are theirs to say.",
];

function bases({ heat, fuse, metric }: WireChoice): WireAnswer['bases'] {
  return [
    {
      what: 'allowed current',
      basis: '33 CFR 183.425 Table 5 (a rule for boats, two public copies read), at 30 degrees Celsius',
    },
    ...(heat === null
      ? []
      : [
          {
            what: 'engine space factor',
            basis: heat.recalled
              ? 'recalled, not re-read: 33 CFR 183.425, correction at 50 degrees Celsius'
              : '33 CFR 183.425, correction at 50 degrees Celsius',
          },
        ]),
    {
      what: 'drop of a gauge',
      basis: 'computed: copper by ASTM B258, least area of SAE-marked cable, warmed to the air around it',
    },
    ...(metric === null
      ? []
      : [{ what: 'drop of metric cable', basis: 'recalled, not re-read: ISO 6722 greatest resistances' }]),
    {
      what: 'most drop',
      basis: 'ABYC E-11, 3 % for what must work and 10 % for the rest, as quoted by a marine maker',
    },
    {
      what: 'lasting load on a fuse',
      basis: "common practice 0.8; hot 0.75, as a fuse maker's sheet at 85 degrees Celsius",
    },
    {
      what: 'fuse ratings and colours',
      basis: fuse.recalled ? 'recalled, not re-read: ISO 8820-3' : 'ISO 8820-3, lists that agree',
    },
    { what: 'fuse from its source', basis: 'ISO 10133 clause 8.1 (small craft), as quoted' },
  ];
}

function limit(rule: string, column: 'share' | 'distance'): number {
  const value = VOLTAGE_DROP.rows.find((row) => row.rule === rule)?.[column];
  if (typeof value !== 'number') throw new Error(`the table of drop limits has no ${rule}`);
  return value;
}

function round(n: number, digits: number): number {
  return Number(n.toFixed(digits));
}
