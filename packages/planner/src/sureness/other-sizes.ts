import type { Place } from '@waymend/catalogue/shape/place';
import type { Size } from '@waymend/core/fastening/size';
import { parseSize } from '@waymend/core/fastening/size';
import type { Joint, Scene } from '@waymend/core/repairing/scene';

/** A size a joint may turn out to have, and how likely that is. */
export interface PossibleSize {
  readonly size: Size;
  readonly chance: number;
}

/** Of ten assumed sizes so many are right; of the others each is met half as often as the one before it (estimates). */
const ASSUMED_RIGHT = 0.7;
const NEXT = 0.5;

/** The other sizes met at the place, in its order of likelihood. Empty: nothing else is known to be made there. */
export function otherSizes(joint: Joint, place: Place | undefined): readonly PossibleSize[] {
  const others = (place?.sizes ?? []).flatMap((text) => {
    const size = parseSize(text);
    return size.ok && size.value.label !== joint.size.label && size.value.kind === joint.size.kind
      ? [size.value]
      : [];
  });
  const weights = others.map((_, n) => NEXT ** n);
  const whole = weights.reduce((sum, w) => sum + w, 0);
  return others.map((size, n) => ({ size, chance: ((1 - ASSUMED_RIGHT) * (weights[n] ?? 0)) / whole }));
}

/** The scene with one joint of another size; a far end that had the same size turns out the same again. */
export function sceneWithSize(scene: Scene, id: string, size: Size): Scene {
  return {
    ...scene,
    joints: scene.joints.map((joint) => {
      if (joint.id !== id) return joint;
      const { hold } = joint;
      const both = hold !== undefined && hold.size.label === joint.size.label;
      return { ...joint, size, ...(both ? { hold: { ...hold, size } } : {}) };
    }),
  };
}
