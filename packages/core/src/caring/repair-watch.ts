/** A repair as its watch needs it. Distances are travelled ones, km, whatever the instrument shows. */
export interface WatchedRepair {
  readonly lasts: 'permanent' | 'temporary' | 'made-safe';
  readonly atKm: number;
  readonly trustKm?: number;
  /** Distances after the repair at which to look again, rising. */
  readonly lookAgainKm: readonly number[];
  readonly mended: boolean;
  /** Looks since, in any order. */
  readonly looks: readonly { readonly atKm: number; readonly found: 'good' | 'worse' }[];
}

export interface RepairWatch {
  /** Distance at which to look next; null when nothing asks for a look any more. */
  readonly nextLookKm: number | null;
  /** Km until then; negative: overdue by so much. */
  readonly lookInKm: number | null;
  /** Km it may still be trusted for; negative: over it. Null: no limit is known, or it is mended. */
  readonly trustLeftKm: number | null;
  /** The last look found it worse. */
  readonly worse: boolean;
}

/**
 * When to look again at a repair, and how much longer it may be trusted. A look serves every distance up to where it was taken. A temporary
 * repair is looked at on and on, as far apart as its last two listed looks (or as the one), until it is mended.
 */
export function watchRepair(repair: WatchedRepair, nowKm: number): RepairWatch {
  if (repair.mended) return { nextLookKm: null, lookInKm: null, trustLeftKm: null, worse: false };
  const looks = [...repair.looks].sort((a, b) => a.atKm - b.atKm);
  const last = looks.at(-1);
  const looked = last === undefined ? 0 : last.atKm - repair.atKm;
  const listed = repair.lookAgainKm.find((km) => km > looked);
  const nextLookKm = listed === undefined ? repeated(repair, looked) : repair.atKm + listed;
  const { trustKm } = repair;
  return {
    nextLookKm,
    lookInKm: nextLookKm === null ? null : nextLookKm - nowKm,
    trustLeftKm: repair.lasts === 'permanent' || trustKm === undefined ? null : repair.atKm + trustKm - nowKm,
    worse: last?.found === 'worse',
  };
}

function repeated(repair: WatchedRepair, looked: number): number | null {
  const last = repair.lookAgainKm.at(-1);
  if (repair.lasts === 'permanent' || last === undefined) return null;
  const step = last - (repair.lookAgainKm.at(-2) ?? 0);
  return repair.atKm + looked + step;
}
