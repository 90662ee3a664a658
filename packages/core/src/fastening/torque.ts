import type { Metres, Newtons, NewtonMetres } from '../quantity/units.ts';
import { newtonMetres, newtons } from '../quantity/units.ts';

/** Share of the proof load a bolt is tightened to when nothing better is known (common practice). */
const PRELOAD_SHARE = 0.75;

/**
 * Tensile stress area of a metric thread, m2: pi/4 (d - 0.9382 P)^2 (ISO 898-1).
 *
 * @param diameter Nominal diameter, m.
 * @param pitch m.
 */
export function stressArea(diameter: Metres, pitch: Metres): number {
  return (Math.PI / 4) * (diameter - 0.9382 * pitch) ** 2;
}

/** Load a bolt bears without lasting stretch, N. Area in m2, proof stress in Pa (ISO 898-1, SAE J429). */
export function proofLoad(area: number, proofStress: number): Newtons {
  return newtons(area * proofStress);
}

/**
 * T = K d F with F = 0.75 of the proof load, N m. `nutFactor` is about 0.20 dry, 0.15 oiled, 0.12 with anti-seize, 0.3 and
 * more rusty (recalled, not re-read): the answer is the middle of a wide band. The vehicle's own manual comes first.
 */
export function tighteningTorque(nutFactor: number, diameter: Metres, proof: Newtons): NewtonMetres {
  return newtonMetres(nutFactor * diameter * PRELOAD_SHARE * proof);
}

/**
 * What to set on a torque wrench that works through an extension in line with its handle: TA L / (L + A)
 * (TM 1-1500-204-23-9). Any one unit of torque and any one unit of length.
 *
 * @param torque Wanted at the fastener.
 * @param lever From the wrench's square to the hand.
 * @param extension From the wrench's square to the fastener.
 */
export function settingWithExtension(torque: number, lever: number, extension: number): number {
  return (torque * lever) / (lever + extension);
}
