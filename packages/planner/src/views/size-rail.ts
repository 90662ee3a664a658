import type { Flats, Size } from '@waymend/core/fastening/size';
import { inMillimetres } from '@waymend/core/quantity/units';
import type { Grade, Joint, Scene, ScenePiece } from '@waymend/core/repairing/scene';
import type { Result } from '@waymend/core/result';
import { ok } from '@waymend/core/result';
import type { Garage } from '@waymend/garage/record/schema';
import { buildScene } from '../scene/build-scene.ts';
import type { Trade } from '../trade.ts';
import type { CarriedLine } from './carried.ts';
import { carriedPieces } from './carried.ts';
import type { JointState, PieceKind } from './joint-state.ts';
import { jointStates, wantedToHold, wantedToTurn } from './joint-state.ts';
import type { JointUse } from './joint-worth.ts';
import { jointUses } from './joint-worth.ts';
import type { NearFit } from './near-fits.ts';
import { nearFits } from './near-fits.ts';
import { kindsOf } from './piece-kinds.ts';

/** One place of the vehicle that takes a size. */
export interface RailPlace {
  readonly joint: string;
  readonly title: string;
  readonly drive: Joint['drive'];
  readonly status: Joint['status'];
  readonly access: Joint['access'];
  readonly torqueNm: number;
  /** Here the size is that of the far side, which is held. */
  readonly farSide: boolean;
  readonly held: JointState['held'];
  readonly grade: Grade | null;
  readonly missing: JointState['missing'];
  /** Jobs of this trip that turn it. */
  readonly jobs: readonly string[];
  readonly stops: number;
  /** What else is met at such a place, while its size is only assumed. */
  readonly couldBe: readonly string[];
}

/** Pieces of one kind in one size. */
export interface RailCell {
  readonly kind: PieceKind;
  /** Each copy, those that come along first. */
  readonly pieces: readonly { readonly id: string; readonly name: string; readonly along: boolean }[];
  /** A place needs this kind and nothing that comes along undoes it. */
  readonly wanted: boolean;
}

/** One size on the rule. */
export interface RailSize {
  readonly label: string;
  readonly mm: number;
  readonly system: 'metric' | 'inch';
  readonly places: readonly RailPlace[];
  readonly cells: readonly RailCell[];
  /** Turn and hold at this size: both pieces come along for all its held places, for some of them one is missing, or none. */
  readonly tie: 'both' | 'one' | 'neither' | null;
  /** A job needs a place of this size and nothing that comes along undoes it, for want of a piece. */
  readonly hole: boolean;
}

/** A size that has no millimetres on the rule: lobes, cross and slot, squares, ring nuts of hubs. */
export interface OtherSize {
  readonly label: string;
  readonly drive: Joint['drive'];
  readonly places: readonly RailPlace[];
  readonly hole: boolean;
}

/** What the vehicle takes above, what is owned below, on one rule of millimetres. */
export interface SizeRail {
  readonly vehicle: string;
  readonly places: number;
  readonly measured: number;
  readonly sizes: readonly RailSize[];
  readonly others: readonly OtherSize[];
  readonly fits: readonly NearFit[];
}

/** The size rail of a trip with this kit along (M2, M3); refuses what the scene of the trip refuses. */
export function sizeRail(
  garage: Garage,
  tripId: string,
  kit: readonly CarriedLine[],
  trade: Trade,
): Result<SizeRail> {
  const built = buildScene(garage, tripId, trade);
  if (!built.ok) return built;
  const { scene, vehicle } = built.value;
  const carried = carriedPieces(scene.pieces, kit);
  const states = jointStates(scene, carried);
  const uses = jointUses(scene);
  const rule = new Rule();
  const others = new Map<string, OtherSize>();
  const typical = new Map(trade.places.map((p) => [p.id as string, p.sizes]));
  for (const state of states) {
    const { joint } = state;
    const place = railPlace(state, uses.get(joint.id), typical.get(joint.place) ?? []);
    if (onRule(joint.drive) && joint.size.kind === 'across-flats') rule.at(joint.size).places.push(place);
    else addOther(others, joint, place);
    // A far side of another size is a place of that size too; of the same size it is told by the tie.
    if (joint.hold !== undefined && joint.hold.size.label !== joint.size.label) {
      const far = { ...place, farSide: true, drive: joint.hold.drive };
      if (onRule(joint.hold.drive) && joint.hold.size.kind === 'across-flats')
        rule.at(joint.hold.size).places.push(far);
      else addOther(others, { drive: joint.hold.drive, size: joint.hold.size }, far);
    }
    want(rule, state, place);
  }
  own(rule, scene, carried);
  const sizes = rule.sizes();
  return ok({
    vehicle: vehicle.name,
    places: states.length,
    measured: states.filter(({ joint }) => joint.status === 'measured').length,
    sizes,
    others: [...others.values()].sort((a, b) => (a.label < b.label ? -1 : 1)),
    fits: nearFits(rule.owned(), rule.heads()),
  });
}

/** Drives that a width across flats on the rule belongs to. */
function onRule(drive: Joint['drive']): boolean {
  return drive === 'hex' || drive === 'flare' || drive === 'hex-key';
}

function railPlace(
  { joint, grade, missing, held }: JointState,
  use: JointUse | undefined,
  typical: readonly string[],
): RailPlace {
  return {
    joint: joint.id,
    title: joint.title,
    drive: joint.drive,
    status: joint.status,
    access: joint.access,
    torqueNm: joint.torque,
    farSide: false,
    held,
    grade,
    missing,
    jobs: use?.jobs ?? [],
    stops: use?.stops ?? 0,
    couldBe: joint.status === 'assumed' ? typical.filter((size) => size !== joint.size.label) : [],
  };
}

function addOther(
  others: Map<string, OtherSize>,
  { drive, size }: { readonly drive: Joint['drive']; readonly size: Size },
  place: RailPlace,
): void {
  const key = `${drive} ${size.label}`;
  const known = others.get(key) ?? { label: size.label, drive, places: [], hole: false };
  others.set(key, { ...known, places: [...known.places, place], hole: known.hole || isHole(place) });
}

/** A job needs it, and there is no piece for it. */
function isHole({ jobs, missing }: Pick<RailPlace, 'jobs' | 'missing'>): boolean {
  return jobs.length > 0 && (missing === 'piece' || missing === 'hold');
}

/** Marks the kinds that would fill the hole. */
function want(rule: Rule, { joint, missing }: JointState, place: RailPlace): void {
  if (!isHole(place)) return;
  const turn = missing === 'piece' ? wantedToTurn(joint) : null;
  if (turn !== null && joint.size.kind === 'across-flats') rule.at(joint.size).wanted.add(turn);
  if (joint.hold === undefined) return;
  const hold = wantedToHold(joint.hold);
  const both = missing === 'hold' || joint.hold.size.label === joint.size.label;
  if (hold !== null && both && joint.hold.size.kind === 'across-flats')
    rule.at(joint.hold.size).wanted.add(hold);
}

/** Puts every owned or bought piece on the rule. */
function own(rule: Rule, scene: Scene, carried: ReadonlySet<string>): void {
  for (const piece of scene.pieces) {
    if (!piece.owned && !carried.has(piece.id)) continue;
    for (const { kind, size } of kindsOf(piece)) rule.at(size).add(kind, piece, carried.has(piece.id));
  }
}

/** Sizes by width, filled in any order. */
class Rule {
  private readonly byWidth = new Map<string, Slot>();

  at(size: Flats): Slot {
    const key = `${size.system} ${size.label}`;
    const known = this.byWidth.get(key) ?? new Slot(size);
    this.byWidth.set(key, known);
    return known;
  }

  sizes(): readonly RailSize[] {
    return [...this.byWidth.values()].map((slot) => slot.read()).sort((a, b) => a.mm - b.mm);
  }

  owned(): readonly Flats[] {
    return [...this.byWidth.values()].flatMap((slot) => (slot.owns ? [slot.size] : []));
  }

  heads(): readonly Flats[] {
    return [...this.byWidth.values()].flatMap((slot) => (slot.takesOpening ? [slot.size] : []));
  }
}

class Slot {
  readonly size: Flats;
  readonly places: RailPlace[] = [];
  readonly wanted = new Set<PieceKind>();
  private readonly pieces = new Map<PieceKind, RailCell['pieces'][number][]>();

  constructor(size: Flats) {
    this.size = size;
  }

  /** Something with an opening is owned; a key has none. */
  get owns(): boolean {
    return [...this.pieces.keys()].some((kind) => kind !== 'key');
  }

  get takesOpening(): boolean {
    return this.places.some(({ drive }) => drive === 'hex');
  }

  add(kind: PieceKind, { id, name }: ScenePiece, along: boolean): void {
    const list = this.pieces.get(kind) ?? [];
    if (!list.some((piece) => piece.id === id)) list.push({ id, name, along });
    this.pieces.set(kind, list);
  }

  read(): RailSize {
    const held = this.places.flatMap((p) => (p.held === null || p.farSide ? [] : [p.held]));
    const kinds = new Set([...this.pieces.keys(), ...this.wanted]);
    return {
      label: this.size.label,
      mm: Math.round(inMillimetres(this.size.width) * 1000) / 1000,
      system: this.size.system,
      places: [...this.places].sort((a, b) => STATUS_ORDER[a.status] - STATUS_ORDER[b.status]),
      cells: [...kinds].map((kind) => ({
        kind,
        pieces: [...(this.pieces.get(kind) ?? [])].sort((a, b) => Number(b.along) - Number(a.along)),
        wanted: this.wanted.has(kind),
      })),
      tie:
        held.length === 0
          ? null
          : held.every((h) => h === 'both')
            ? 'both'
            : held.every((h) => h === 'neither')
              ? 'neither'
              : 'one',
      hole: this.places.some(isHole),
    };
  }
}

const STATUS_ORDER: Readonly<Record<Joint['status'], number>> = { measured: 0, read: 1, assumed: 2 };
