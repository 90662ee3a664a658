import type { Amperes, Metres, OhmsPerMetre, SquareMetres, Volts } from '../quantity/units.ts';
import { amperes, metres, ohmsPerMetre, volts } from '../quantity/units.ts';
import type { Result } from '../result.ts';
import { ok, refuse } from '../result.ts';
import type { FuseSize, Gauge, WireTables } from './wire-tables.ts';

/** One circuit to be wired. */
export interface WireAsk {
  /** What it draws for longer than a few minutes. */
  readonly current: Amperes;
  /** From the battery to what is fed, one way; the current comes back as well. */
  readonly oneWay: Metres;
  /** Nominal: 12 or 24. */
  readonly supply: Volts;
  /** Greatest share of the supply that may be lost on the way, 0..1. */
  readonly mostDrop: number;
  /** Some of it runs through the engine space. */
  readonly engineSpace: boolean;
  /** What is printed on the wire, degrees Celsius. */
  readonly insulationC: number;
}

export interface Drop {
  readonly volts: Volts;
  /** Of the supply, 0..1. */
  readonly share: number;
}

export interface WireChoice {
  /** There and back. */
  readonly loop: Metres;
  /** The smallest gauge that does it; its drop is that of the thinnest cable sold under the name. */
  readonly gauge: { readonly size: Gauge; readonly allowed: Amperes; readonly drop: Drop };
  /** The smallest metric cable that does it; null where the list of cables ends before. */
  readonly metric: {
    readonly area: SquareMetres;
    readonly allowed: Amperes;
    readonly drop: Drop;
  } | null;
  readonly fuse: FuseSize;
  /** Least a fuse must be so that it does not tire, A. */
  readonly leastFuse: Amperes;
  readonly heat: { readonly factor: number; readonly recalled: boolean } | null;
}

/** A lasting load over a fuse's rating: common practice; hot, what a 40 A large blade fuse carries at 85 degC (30 of 40 A). */
export const FUSE_LOAD = 0.8;
export const FUSE_LOAD_HOT = 0.75;
/** Copper gains this share of its resistance at 20 degC with each kelvin (recalled from the standard for annealed copper). */
export const COPPER_PER_KELVIN = 0.00393;
/** Around the wire: what 33 CFR 183.425 Table 5 and its engine space factors stand for, degrees Celsius. */
const OPEN_C = 30;
const ENGINE_C = 50;
/** Outside these a garage's circuit is another thing: m, and the volts of vehicles. */
const LENGTHS = [0.1, 30] as const;
const DROPS = [0.005, 0.1] as const;
const SUPPLIES: readonly number[] = [12, 24];

/**
 * The smallest wire that bears the current, keeps the drop and can be fused: the fuse takes the lasting load without tiring
 * and is never above what the wire takes (after heat). Refuses what the tables do not cover.
 *
 * Allowed currents are those of 33 CFR 183.425 Table 5, a rule for boats: vehicles have no such public table, and its wire,
 * stranded copper at 12 V, is the same.
 */
export function chooseWire(tables: WireTables, ask: WireAsk): Result<WireChoice> {
  const fit = checked(ask);
  if (!fit.ok) return fit;
  const heat = heatOf(tables, ask);
  if (!heat.ok) return heat;
  const factor = heat.value?.factor ?? 1;
  const leastFuse = amperes(ask.current / (ask.engineSpace ? FUSE_LOAD_HOT : FUSE_LOAD));
  const greatest = tables.fuses.at(-1)?.amps ?? amperes(0);
  if (leastFuse > greatest)
    return refuse(
      'wire-current-beyond',
      `${figure(ask.current)} A for long asks for a fuse of ${Math.ceil(leastFuse)} A or more, and the list of fuses ends at ${greatest} A; starter, winch and inverter cables are chosen by their makers' manuals`,
    );
  const loop = metres(2 * ask.oneWay);
  const least = leastAllowed(tables, ask, factor, leastFuse);
  if (!least.ok) return least;
  const { from, fuse } = least.value;
  const dropOf = (resistance: OhmsPerMetre): Drop => drop(ask, loop, resistance);
  const size = tables.gauges.slice(from).find((g) => dropOf(thinnest(g)).share <= ask.mostDrop);
  if (size === undefined)
    return refuse(
      'wire-drop-beyond',
      `No gauge in the list keeps ${figure(ask.current)} A over ${figure(ask.oneWay)} m within ${figure(ask.mostDrop * 100)} %; shorten the run, allow more drop, or feed it at 24 V`,
    );
  const allowed = allowedOf(size, ask.insulationC, factor) ?? amperes(0);
  return ok({
    loop,
    gauge: { size, allowed, drop: dropOf(thinnest(size)) },
    metric: metricOf(tables, ask, factor, fuse, dropOf),
    fuse,
    leastFuse,
    heat: heat.value,
  });
}

function checked({ current, oneWay, supply, mostDrop }: WireAsk): Result<null> {
  if (!(current > 0)) return refuse('wire-current', 'The current must be more than 0 A');
  if (!(oneWay >= LENGTHS[0] && oneWay <= LENGTHS[1]))
    return refuse('wire-length', `The run must be ${LENGTHS[0]} to ${LENGTHS[1]} m one way`);
  if (!SUPPLIES.includes(supply)) return refuse('wire-supply', 'The supply must be 12 V or 24 V');
  if (!(mostDrop >= DROPS[0] && mostDrop <= DROPS[1]))
    return refuse('wire-drop', `The drop must be ${DROPS[0] * 100} to ${DROPS[1] * 100} per cent`);
  return ok(null);
}

function heatOf(tables: WireTables, { engineSpace, insulationC }: WireAsk): Result<WireChoice['heat']> {
  const row = tables.heat.find((h) => h.insulationC === insulationC);
  if (row === undefined) {
    const known = tables.heat.map((h) => h.insulationC).join(', ');
    return refuse(
      'wire-insulation',
      `The tables know insulation for ${known} degrees Celsius, not ${insulationC}`,
    );
  }
  return ok(engineSpace ? { factor: row.factor, recalled: row.recalled } : null);
}

/** The thinnest gauge that bears the load and some fuse for it, and that fuse. */
function leastAllowed(
  tables: WireTables,
  ask: WireAsk,
  factor: number,
  leastFuse: Amperes,
): Result<{ readonly from: number; readonly fuse: FuseSize }> {
  // The smallest fuse that does not tire leaves the wire most in hand.
  const fuse = tables.fuses.find((f) => f.amps >= leastFuse);
  const from = tables.gauges.findIndex((g) => {
    const bears = allowedOf(g, ask.insulationC, factor);
    return bears !== null && fuse !== undefined && fuse.amps <= bears;
  });
  if (fuse === undefined || from < 0)
    return refuse(
      'wire-current-beyond',
      `No gauge in the table bears a fuse for ${figure(ask.current)} A with insulation for ${ask.insulationC} degrees here`,
    );
  return ok({ from, fuse });
}

/** Metric cable has no public table of currents here: it counts as the next thinner gauge, which carries no more. */
function metricOf(
  tables: WireTables,
  ask: WireAsk,
  factor: number,
  fuse: FuseSize,
  dropOf: (resistance: OhmsPerMetre) => Drop,
): WireChoice['metric'] {
  for (const { area, resistance } of tables.metric) {
    const asGauge = tables.gauges.findLast((g) => g.area <= area);
    const allowed = asGauge === undefined ? null : allowedOf(asGauge, ask.insulationC, factor);
    if (allowed === null || allowed < fuse.amps) continue;
    const lost = dropOf(resistance);
    if (lost.share <= ask.mostDrop) return { area, allowed, drop: lost };
  }
  return null;
}

/** Allowed current of a gauge, A, after heat; null where the table has no such insulation. */
export function allowedOf(gauge: Gauge, insulationC: number, factor: number): Amperes | null {
  const row = gauge.allowed.find((a) => a.insulationC === insulationC);
  return row === undefined ? null : amperes(row.amps * factor);
}

/** Cable marked to SAE is thinner than its gauge: nobody can see which of the two a reel holds. */
function thinnest(gauge: Gauge): OhmsPerMetre {
  const { area, leastArea, resistance } = gauge;
  return ohmsPerMetre(leastArea === null ? resistance : (resistance * area) / leastArea);
}

/** I R over the loop, with the copper as warm as the air around it; its own warmth comes on top. */
function drop({ current, supply, engineSpace }: WireAsk, loop: Metres, resistance: OhmsPerMetre): Drop {
  const warm = 1 + COPPER_PER_KELVIN * ((engineSpace ? ENGINE_C : OPEN_C) - 20);
  const lost = current * resistance * warm * loop;
  return { volts: volts(lost), share: lost / supply };
}

function figure(n: number): string {
  return String(Math.round(n * 100) / 100);
}
