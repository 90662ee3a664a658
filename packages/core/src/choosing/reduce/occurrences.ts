import { OPEN, OUT, askedNeeds } from './draft.ts';
import type { Atom, Draft } from './draft.ts';

/** One list of atoms a piece stands in: a way of a need, or an option of an event. */
export interface Occurrence {
  readonly atoms: readonly Atom[];
  /** All lists that could stand in for this one, this one included. */
  readonly rivals: readonly (readonly Atom[])[];
}

export interface Occurrences {
  /** By piece: the ways and options that name it. */
  readonly of: readonly (readonly Occurrence[])[];
  /** By piece: units it adds to 'enough' needs. */
  readonly units: readonly ReadonlyMap<number, number>[];
}

/** Where each open piece is asked for, counting only needs that something still asks for. */
export function occurrences(draft: Draft): Occurrences {
  const { pieceCount } = draft;
  const of: Occurrence[][] = draft.pieces.map(() => []);
  const units: Map<number, number>[] = draft.pieces.map(() => new Map<number, number>());
  // A list with something in it that stays home is never complete: it neither counts nor stands in for another.
  const live = (atoms: readonly Atom[]): boolean => atoms.every((atom) => draft.state[atom] !== OUT);
  const note = (atoms: readonly Atom[], rivals: readonly (readonly Atom[])[]): void => {
    const one = { atoms, rivals };
    for (const atom of atoms) if (atom < pieceCount && draft.state[atom] === OPEN) of[atom]?.push(one);
  };
  for (const n of askedNeeds(draft)) {
    const need = draft.needs[n];
    if (need?.kind === 'enough') for (const part of need.from) units[part.piece]?.set(n, part.units);
    else if (need) {
      const ways = need.ways.filter(live);
      for (const way of ways) note(way, ways);
    }
  }
  for (const event of draft.events) {
    const options = event.filter(({ atoms }) => live(atoms));
    for (const option of options) {
      const rivals = options.filter(({ gain }) => gain >= option.gain).map(({ atoms }) => atoms);
      note(option.atoms, rivals);
    }
  }
  return { of, units };
}

/**
 * Whether some rival needs nothing beyond `atoms` with piece `out` exchanged for piece `instead`, and no piece that is
 * already gone.
 */
export function replaceable(
  { atoms, rivals }: Occurrence,
  out: number,
  instead: number,
  gone?: Uint8Array,
): boolean {
  return rivals.some((rival) =>
    rival.every((atom) => atom === instead || (atom !== out && gone?.[atom] !== 1 && atoms.includes(atom))),
  );
}
