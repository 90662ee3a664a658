/** Which wire and fuse a circuit takes, in units people read. */
export interface WireAnswer {
  readonly schema: 'waymend.wire/1';
  readonly asked: {
    readonly amps: number;
    readonly metresOneWay: number;
    readonly volts: number;
    readonly mostDropPct: number;
    readonly engineSpace: boolean;
    readonly insulationC: number;
    /** Nobody said what is printed on the wire: the coolest insulation of the table counts. */
    readonly insulationAssumed: boolean;
  };
  /** There and back. */
  readonly loopMetres: number;
  readonly gauge: {
    readonly awg: string;
    readonly mm2: number;
    /** Least copper in cable marked with this gauge to SAE; null where the list has none. */
    readonly saeMm2: number | null;
    readonly allowedAmps: number;
    readonly dropVolts: number;
    readonly dropPct: number;
  };
  readonly metric: {
    readonly mm2: number;
    readonly allowedAmps: number;
    readonly dropVolts: number;
    readonly dropPct: number;
  } | null;
  readonly fuse: {
    readonly amps: number;
    readonly kind: 'blade' | 'large-blade';
    readonly colour: string;
    readonly recalled: boolean;
    /** Within this of the battery. */
    readonly withinMm: number;
  };
  readonly sentences: readonly string[];
  readonly cautions: readonly string[];
  /** Where each figure is from, and of what kind that is. */
  readonly bases: readonly { readonly what: string; readonly basis: string }[];
}
