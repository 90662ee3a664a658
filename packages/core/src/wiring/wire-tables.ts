import type { Amperes, OhmsPerMetre, SquareMetres } from '../quantity/units.ts';

/** What the wire rules read; the catalogue's tables in SI, filled in by the planner. */
export interface WireTables {
  /** Thinnest first. Only gauges whose allowed current is in the table. */
  readonly gauges: readonly Gauge[];
  /** Metric vehicle cable, thinnest first. */
  readonly metric: readonly MetricCable[];
  /** What is left of the allowed current in an engine space, by insulation rating in degrees Celsius. */
  readonly heat: readonly {
    readonly insulationC: number;
    readonly factor: number;
    readonly recalled: boolean;
  }[];
  /** Smallest first; of one rating the one to be preferred first. */
  readonly fuses: readonly FuseSize[];
}

export interface Gauge {
  /** '12', '00'. */
  readonly label: string;
  /** Copper of the gauge itself (ASTM B258). */
  readonly area: SquareMetres;
  /** Least copper in cable that is marked with this gauge to SAE; null where the list has none. */
  readonly leastArea: SquareMetres | null;
  /** Of `area`, at 20 degC. */
  readonly resistance: OhmsPerMetre;
  /** Allowed current at 30 degC by insulation rating in degrees Celsius. */
  readonly allowed: readonly { readonly insulationC: number; readonly amps: Amperes }[];
}

export interface MetricCable {
  readonly area: SquareMetres;
  /** Greatest at 20 degC. */
  readonly resistance: OhmsPerMetre;
}

export interface FuseSize {
  readonly amps: Amperes;
  readonly kind: 'blade' | 'large-blade';
  readonly colour: string;
  /** Remembered, not read. */
  readonly recalled: boolean;
}
