import type { CatalogueBelonging } from '@waymend/catalogue/shape/belonging';
import type { FunctionId } from '@waymend/catalogue/shape/words';
import type { PieceForm } from '@waymend/core/stowing/piece-measures';
import type { StowMark } from '@waymend/core/stowing/stow-problem';

/** What oil or water spoils, or a blade through a lead: things for testing and mending circuits (common practice). */
const ELECTRIC: ReadonlySet<FunctionId> = new Set([
  'start-boost',
  'charge',
  'test-voltage',
  'test-current',
  'test-continuity',
  'test-lamp',
  'bridge-circuit',
  'read-codes',
  'fuse',
  'relay',
  'lamp',
  'splice-wire',
  'terminal',
  'power',
  'key',
]);

/** What is needed in the first minutes beside a road, whatever has broken (common practice). */
const AT_ONCE: ReadonlySet<FunctionId> = new Set(['light', 'hands', 'eyes', 'fire', 'warn']);

const FLAT: ReadonlySet<FunctionId> = new Set(['know', 'mat', 'shade', 'glass-cover']);

const TYRES: ReadonlySet<FunctionId> = new Set([
  'plug',
  'patch-tyre',
  'break-bead',
  'lever-tyre',
  'tyre-lube',
  'valve-core',
  'valve-stem',
  'inflate',
  'deflate',
  'gauge',
]);

/** Sockets, and what turns and lengthens them. */
const SOCKETS: ReadonlySet<string> = new Set([
  'socket',
  'bit-socket',
  'handle',
  'extension',
  'joint',
  'adapter',
]);

const LONG: ReadonlySet<string> = new Set([
  'wrench',
  'key',
  'adjustable',
  'pliers',
  'handle',
  'extension',
  'lever-tube',
  'brace',
  'driver',
]);
const ROUND: ReadonlySet<string> = new Set([
  'socket',
  'bit-socket',
  'joint',
  'adapter',
  'locknut-socket',
  'crow-foot',
]);

/** Longer than so many times the side of its cross-section: a bar rather than a lump (estimate). */
const SLENDER = 4;

/** A catalogue entry's marks with `electric` where what it does says so. */
export function stowMarks(entry: CatalogueBelonging | undefined): readonly StowMark[] {
  if (entry === undefined) return [];
  const marks = (entry.marks ?? []).flatMap((mark): StowMark[] => (mark === 'hot-hazard' ? [] : [mark]));
  return does(entry, ELECTRIC, false) ? [...marks, 'electric'] : marks;
}

/** Whether it does, properly, what the first minutes ask for. */
export function isWantedAtOnce(entry: CatalogueBelonging | undefined): boolean {
  return entry !== undefined && does(entry, AT_ONCE, true);
}

/** The heap of a shed that a thing is sorted into: pieces of one heap belong in one bag (common practice). */
export function heapOf(entry: CatalogueBelonging | undefined): string | null {
  if (entry === undefined) return null;
  const kinds = entry.offers.map(({ kind }) => kind);
  if (stowMarks(entry).some((mark) => mark === 'electric')) return 'electrics';
  if (does(entry, TYRES, true)) return 'tyres';
  if (kinds.some((kind) => kind === 'wrench' || kind === 'adjustable')) return 'wrenches';
  if (kinds.some((kind) => SOCKETS.has(kind))) return 'sockets';
  if (kinds.some((kind) => kind === 'pliers' || kind === 'driver' || kind === 'key')) return 'hand tools';
  return entry.kind === 'spare' ? 'spares' : null;
}

export function formOf(entry: CatalogueBelonging | undefined, lengthMm: number, bulkMl: number): PieceForm {
  const kinds = entry?.offers.map(({ kind }) => kind) ?? [];
  if (kinds.some((kind) => ROUND.has(kind))) return 'round';
  if (kinds.some((kind) => LONG.has(kind))) return 'long';
  if (entry !== undefined && does(entry, FLAT, false)) return 'flat';
  const side = Math.sqrt((bulkMl * 1000) / Math.max(1, lengthMm));
  return lengthMm > SLENDER * side ? 'long' : 'round';
}

function does(entry: CatalogueBelonging, fns: ReadonlySet<FunctionId>, proper: boolean): boolean {
  return entry.offers.some(
    (offer) =>
      offer.kind === 'does' && fns.has(offer.fn) && (!proper || (offer.grade ?? 'proper') === 'proper'),
  );
}
