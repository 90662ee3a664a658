import type { Job } from '@waymend/catalogue/shape/job';
import { handleLever } from '@waymend/core/fastening/lever';
import { isSameSize } from '@waymend/core/fastening/fit';
import { settingWithExtension } from '@waymend/core/fastening/torque';
import { inMillimetres, STANDARD_GRAVITY } from '@waymend/core/quantity/units';
import type { Joint, SceneJob, ScenePiece, ToolOffer } from '@waymend/core/repairing/scene';
import type { Garage } from '@waymend/garage/record/schema';
import type { TorqueCard } from '../answer/card-answer.ts';
import type { Trade } from '../trade.ts';
import type { Aboard } from './aboard.ts';
import { pieceRef } from './where.ts';

/** Around a torque that the owner recorded (common practice; the maker's own tolerance comes first). */
const TOLERANCE = 0.1;
/** From the square of a crow-foot to the middle of its nut, as a share of its length (estimate: measure yours). */
const CROW_FOOT_SHARE = 0.6;
/** Nobody sets a torque below this; firm by hand is what is meant. */
const LEAST_NM = 5;

/** Torques of the joints that a job does up again, with what sets them. */
export function torquesOf(
  job: SceneJob,
  record: Job,
  aboard: Aboard,
  garage: Garage,
  trade: Pick<Trade, 'places' | 'belongings'>,
): readonly TorqueCard[] {
  const undoOnly = new Set<string>(
    record.needs.flatMap((need) => ('turn' in need && need.only === 'undo' ? [need.turn] : [])),
  );
  const ids = new Set(job.needs.flatMap((need) => (need.kind === 'turn' ? [need.joint] : [])));
  return aboard.scene.joints
    .filter((joint) => ids.has(joint.id) && !undoOnly.has(joint.place) && joint.torque >= LEAST_NM)
    .map((joint) => torqueOf(joint, aboard, garage, trade));
}

function torqueOf(
  joint: Joint,
  aboard: Aboard,
  garage: Garage,
  trade: Pick<Trade, 'places' | 'belongings'>,
): TorqueCard {
  const range = trade.places.find((p) => p.id === joint.place)?.torqueNm ?? [joint.torque, joint.torque];
  const recorded = garage.fittings[joint.id]?.torqueNm !== undefined;
  const nm = round(joint.torque);
  const [from, to] = recorded
    ? [round(joint.torque * (1 - TOLERANCE)), round(joint.torque * (1 + TOLERANCE))]
    : [Math.min(range[0], nm), Math.max(range[1], nm)];
  const { sentences, setting } = settingOf(joint, aboard, garage, trade);
  return {
    place: `${joint.title}, ${joint.size.label}`,
    nm,
    from,
    to,
    recorded,
    basis: recorded
      ? 'recorded for this vehicle; plus or minus 10 % is common practice'
      : "typical of such places, not read off this vehicle: the maker's manual says what is right",
    sentences,
    setting,
  };
}

type TorqueHandle = Extract<ToolOffer, { kind: 'handle' }>;

function settingOf(
  joint: Joint,
  aboard: Aboard,
  garage: Garage,
  { belongings }: Pick<Trade, 'belongings'>,
): Pick<TorqueCard, 'sentences' | 'setting'> {
  const wrenches = aboard.pieces.flatMap((piece) =>
    piece.offers.some((o) => o.kind === 'does' && o.fn === 'torque-set' && covers(o, joint.torque))
      ? piece.offers.flatMap((o) =>
          o.kind === 'handle' && o.form === 'torque' ? [{ piece, handle: o }] : [],
        )
      : [],
  );
  const crow = joint.drive === 'flare' ? crowFootFor(joint, aboard) : null;
  const [first] =
    crow === null ? wrenches : [...wrenches.filter((w) => w.handle.drive === crow.drive), ...wrenches];
  if (first === undefined) return { sentences: withoutWrench(joint, aboard), setting: null };
  const wrench = pieceRef(garage, first.piece);
  const nm = round(joint.torque);
  if (joint.drive !== 'flare')
    return {
      sentences: [
        `Set ${nm} N m on the ${first.piece.name}. A straight extension between square and socket changes nothing.`,
      ],
      setting: { wrench, nm, extensionMm: null },
    };
  if (crow?.drive !== first.handle.drive)
    return {
      sentences: [
        'No crow-foot of this size fits the torque wrench here: do it up by hand, firm, and look for wetness.',
      ],
      setting: null,
    };
  return throughCrowFoot(joint, first.handle, crow.piece, wrench, garage, belongings);
}

/** TA L / (L + A) of TM 1-1500-204-23-9, with the crow-foot in line; square to the handle it changes nothing. */
function throughCrowFoot(
  joint: Joint,
  handle: TorqueHandle,
  crow: ScenePiece,
  wrench: NonNullable<TorqueCard['setting']>['wrench'],
  garage: Garage,
  belongings: Trade['belongings'],
): Pick<TorqueCard, 'sentences' | 'setting'> {
  const record = garage.belongings[crow.belonging];
  const is = record?.is ?? crow.belonging.replace(/^buy:/, '');
  const length = record?.lengthMm ?? belongings.find((b) => b.id === is)?.lengthMm ?? 0;
  const extensionMm = Math.round(length * CROW_FOOT_SHARE);
  const leverMm = Math.round(inMillimetres(handleLever(handle.length)));
  const nm = round(settingWithExtension(joint.torque, leverMm, extensionMm));
  return {
    sentences: [
      `With the crow-foot in line set ${nm} N m for ${round(joint.torque)} N m: it makes the wrench ${extensionMm} mm longer than its ${leverMm} mm (measure yours, middle of the square to middle of the nut).`,
      'With the crow-foot square to the handle the reading is the torque.',
    ],
    setting: { wrench, nm, extensionMm },
  };
}

function crowFootFor(joint: Joint, aboard: Aboard) {
  for (const piece of aboard.pieces) {
    for (const offer of piece.offers) {
      if (offer.kind === 'crow-foot' && isSameSize(offer.size, joint.size))
        return { piece, drive: offer.drive };
    }
  }
  return null;
}

function covers(offer: Extract<ToolOffer, { kind: 'does' }>, torque: number): boolean {
  return torque <= (offer.amount ?? 0) && torque >= (offer.from ?? 0);
}

/** A known pull on a known bar is a torque: N m = kg x 9.80665 x m. */
function withoutWrench(joint: Joint, aboard: Aboard): readonly string[] {
  const bars = aboard.pieces
    .flatMap((piece) =>
      piece.offers.flatMap((o) =>
        o.kind === 'handle' && o.form === 'bar' ? [{ name: piece.name, length: o.length }] : [],
      ),
    )
    .sort((a, b) => b.length - a.length);
  const [bar] = bars;
  const last = 'Write down that it was not set with a torque wrench, and check it again soon.';
  if (bar === undefined || joint.drive === 'flare')
    return [`No torque wrench here covers ${round(joint.torque)} N m: firm, by feel.`, last];
  const lever = handleLever(bar.length);
  const kg = joint.torque / lever / STANDARD_GRAVITY;
  return [
    `No torque wrench here covers ${round(joint.torque)} N m: about ${kg >= 10 ? Math.round(kg) : Math.round(kg * 10) / 10} kg of pull, ${Math.round(inMillimetres(lever))} mm out on the ${bar.name}, gives it; a luggage scale shows the pull.`,
    last,
  ];
}

function round(n: number): number {
  return Math.round(n * 10) / 10;
}
