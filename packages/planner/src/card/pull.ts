import { chainLimit } from '@waymend/core/fastening/drive-limit';
import {
  EASY_PULL,
  handleLever,
  HARD_PULL,
  leverTorque,
  STRUCK_RING,
  torqueToUndo,
  tubeLever,
  wrenchLever,
} from '@waymend/core/fastening/lever';
import { inMillimetres, metres, STANDARD_GRAVITY } from '@waymend/core/quantity/units';
import type { Metres } from '@waymend/core/quantity/units';
import type { Crew, Joint, ScenePiece } from '@waymend/core/repairing/scene';
import type { Pull } from '../answer/card-answer.ts';

/** Below this nobody asks how hard to pull, N m (M2 "Lever"). */
const LITTLE_NM = 10;

interface Lever {
  readonly name: string;
  readonly length: Metres;
  /** From the fastener to the hand. */
  readonly lever: Metres;
}

/** How hard somebody must pull to undo a joint with a way's longest lever (M2); null where fingers do, or nothing is pulled. */
export function pullOf(pieces: readonly ScenePiece[], joint: Joint, crew: Crew): Pull | null {
  const torque = torqueToUndo(joint);
  if (torque < LITTLE_NM) return null;
  const [longest] = leversIn(pieces, torque).sort((a, b) => b.lever - a.lever);
  if (longest === undefined) return null;
  const most = leverTorque(longest.lever, { stance: joint.stance, heaviest: crew.heaviest });
  const newtons = torque / longest.lever;
  const kg = newtons / STANDARD_GRAVITY;
  const strikes = torque > most.withCare;
  if (strikes && torque > STRUCK_RING) return null;
  const how = strikes ? 'strike' : newtons <= EASY_PULL ? 'easy' : newtons <= HARD_PULL ? 'hard' : 'body';
  const size = `${Math.round(inMillimetres(longest.length))} mm`;
  const tool = longest.name.includes(size) ? longest.name : `${longest.name} (${size})`;
  const needs = `${Math.round(newtons)} N with the hand ${Math.round(inMillimetres(longest.lever))} mm from the fastener, about ${Math.round(kg)} kg of pull`;
  return {
    torqueNm: round(torque),
    leverMm: Math.round(inMillimetres(longest.lever)),
    newtons: Math.round(newtons),
    kg: Math.round(kg),
    how,
    words:
      how === 'strike'
        ? `To undo ${round(torque)} N m the ring is struck with the hammer, eyes covered: your ${tool} is too short to pull.`
        : `To undo ${round(torque)} N m your ${tool} needs ${needs}${HOW_WORDS[how]}.`,
  };
}

const HOW_WORDS: Readonly<Record<'easy' | 'hard' | 'body', string>> = {
  easy: '',
  hard: ': hard, feet set, never towards your face',
  body: ': lean your weight on it, downwards, and be ready for it to let go',
};

function leversIn(pieces: readonly ScenePiece[], torque: number): Lever[] {
  const tube = Math.max(
    0,
    ...pieces.flatMap((p) => p.offers.map((o) => (o.kind === 'lever-tube' ? o.length : 0))),
  );
  return pieces.flatMap(({ name, offers }) =>
    offers.flatMap((offer): Lever[] => {
      switch (offer.kind) {
        case 'handle': {
          if (offer.form === 'spinner' || offer.form === 'impact' || torque > chainLimit(offer, []))
            return [];
          const bare = { name, length: offer.length, lever: handleLever(offer.length) };
          return tube > 0 && offer.form === 'bar'
            ? [
                {
                  name: `${name} with the tube`,
                  length: metres(offer.length + tube),
                  lever: tubeLever(offer.length, metres(tube)),
                },
              ]
            : [bare];
        }
        case 'wrench':
        case 'adjustable':
        case 'pliers':
          return [{ name, length: offer.length, lever: wrenchLever(offer.length) }];
        case 'brace':
          return [{ name, length: offer.lever, lever: offer.lever }];
        case 'key':
          return [{ name, length: offer.arm, lever: offer.arm }];
        default:
          return [];
      }
    }),
  );
}

function round(n: number): number {
  return Math.round(n * 10) / 10;
}
