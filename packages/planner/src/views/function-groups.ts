import type { CatalogueBelonging } from '@waymend/catalogue/shape/belonging';
import type { Offer } from '@waymend/catalogue/shape/offer';
import type { FunctionId } from '@waymend/catalogue/shape/words';
import { FUNCTIONS } from '@waymend/catalogue/shape/words';

/** What a thing is for, as an owner leafs through a shop: first a group, then what must be done. */
export const FUNCTION_GROUPS = [
  'turn',
  'hold',
  'grip',
  'strike',
  'cut',
  'seal',
  'lift',
  'tyres',
  'electric',
  'fluids',
  'measure',
  'light',
  'protect',
  'parts',
] as const;
export type FunctionGroup = (typeof FUNCTION_GROUPS)[number];

/** Group of every function of the catalogue; a new function does not compile until it stands here. */
const GROUP_OF: Readonly<Record<FunctionId, FunctionGroup>> = {
  'torque-set': 'turn',
  'shock-loosen': 'turn',
  free: 'turn',
  extract: 'turn',
  'chase-thread': 'turn',
  'cut-thread': 'turn',
  'split-pin': 'grip',
  threadlock: 'turn',
  'turn-round': 'turn',
  grip: 'grip',
  'lock-grip': 'grip',
  'clamp-c': 'grip',
  'pinch-hose': 'grip',
  circlip: 'grip',
  'clip-ear': 'grip',
  'clip-spring-band': 'grip',
  pry: 'strike',
  'strike-hard': 'strike',
  'strike-soft': 'strike',
  'drive-pin': 'strike',
  'drive-drift': 'strike',
  chisel: 'strike',
  press: 'strike',
  pull: 'strike',
  'pull-heavy': 'lift',
  'separate-taper': 'strike',
  spread: 'strike',
  bend: 'strike',
  'cut-metal': 'cut',
  'cut-bolt': 'cut',
  'cut-wire': 'cut',
  'cut-hose': 'cut',
  'cut-tube': 'cut',
  'cut-wood': 'cut',
  'flare-tube': 'cut',
  file: 'cut',
  drill: 'cut',
  'turn-drill': 'cut',
  'drill-bit': 'cut',
  clean: 'cut',
  sand: 'cut',
  seal: 'seal',
  'splice-hose': 'seal',
  'splice-fuel': 'seal',
  'splice-vacuum': 'seal',
  'splice-wire': 'electric',
  'join-sheet': 'seal',
  bond: 'seal',
  patch: 'seal',
  lash: 'seal',
  restrain: 'lift',
  splint: 'seal',
  pad: 'protect',
  weld: 'seal',
  solder: 'electric',
  crimp: 'electric',
  strip: 'electric',
  insulate: 'electric',
  fastener: 'parts',
  'split-pin-part': 'parts',
  'glass-cover': 'protect',
  chock: 'lift',
  base: 'lift',
  lift: 'lift',
  'lift-adapt': 'lift',
  support: 'lift',
  hoist: 'lift',
  tow: 'lift',
  plug: 'tyres',
  'patch-tyre': 'tyres',
  'break-bead': 'tyres',
  'lever-tyre': 'tyres',
  'tyre-lube': 'tyres',
  'valve-core': 'tyres',
  'valve-stem': 'tyres',
  inflate: 'tyres',
  deflate: 'tyres',
  gauge: 'tyres',
  'start-boost': 'electric',
  charge: 'electric',
  'test-voltage': 'electric',
  'test-current': 'electric',
  'test-continuity': 'electric',
  'test-lamp': 'electric',
  'bridge-circuit': 'electric',
  'read-codes': 'electric',
  'clean-terminal': 'electric',
  terminal: 'electric',
  dry: 'electric',
  fuse: 'electric',
  relay: 'electric',
  lamp: 'electric',
  catch: 'fluids',
  pour: 'fluids',
  'pump-oil': 'fluids',
  siphon: 'fluids',
  'bleed-brake': 'fluids',
  'bleed-fuel': 'fluids',
  vacuum: 'fluids',
  'plug-line': 'seal',
  'plug-hole': 'seal',
  grease: 'fluids',
  fluid: 'fluids',
  light: 'light',
  mirror: 'light',
  magnet: 'light',
  measure: 'measure',
  feeler: 'measure',
  'temperature-reading': 'measure',
  mark: 'measure',
  hands: 'protect',
  eyes: 'protect',
  mat: 'protect',
  shade: 'protect',
  fire: 'protect',
  warn: 'protect',
  know: 'measure',
  power: 'light',
  'keep-parts': 'parts',
  carry: 'parts',
  key: 'parts',
};

/** One thing that a belonging does: its group and plain wording. */
export interface Purpose {
  /** Stable: a function's id, or the kind of a turning tool. */
  readonly id: string;
  readonly group: FunctionGroup;
  readonly words: string;
}

const purpose = (id: string, group: FunctionGroup, words: string): Purpose => ({ id, group, words });

const NUT = purpose('nut', 'turn', 'turn a nut or bolt head');
const INSIDE = purpose('inside', 'turn', 'turn a screw with a hole or slot in its head');
const HANDLE = purpose('handle', 'turn', 'drive sockets and bits');
const REACH = purpose('reach', 'turn', 'reach further or join two drives');
const HOLD = purpose('hold', 'hold', 'hold the other end of a bolt');
const PIPE_NUT = purpose('pipe-nut', 'turn', 'turn a pipe nut');
const HUB_NUT = purpose('hub-nut', 'turn', 'turn a hub nut or ring nut');
const PART = purpose('part', 'parts', 'replace a part');

/** What an offer is for; turning tools by their form (M2, M3), everything else by its function. */
function purposesOf(offer: Offer): readonly Purpose[] {
  switch (offer.kind) {
    case 'socket':
      return [NUT];
    case 'brace':
      return [NUT];
    case 'adjustable':
      return [NUT, HOLD];
    case 'pliers':
      return [HOLD];
    case 'wrench':
      return offer.ends.some(({ form }) => form === 'flare') ? [PIPE_NUT, HOLD] : [NUT, HOLD];
    case 'crow-foot':
      return [offer.form === 'flare' ? PIPE_NUT : NUT];
    case 'locknut-socket':
      return [HUB_NUT];
    case 'bit-socket':
      return [offer.head === 'lobe-external' ? NUT : INSIDE];
    case 'key':
    case 'driver':
      return [INSIDE];
    case 'handle':
    case 'lever-tube':
      return [HANDLE];
    case 'extension':
    case 'joint':
    case 'adapter':
      return [REACH];
    case 'does':
      return [purpose(offer.fn, GROUP_OF[offer.fn], FUNCTIONS[offer.fn].words)];
  }
}

/** Everything a catalogue entry is for, each once, in the order of its offers. A spare without an offer replaces a part. */
export function purposes(entry: CatalogueBelonging): readonly Purpose[] {
  const all = entry.offers.flatMap(purposesOf);
  const once = [...new Map(all.map((one) => [one.id, one])).values()];
  return once.length === 0 || entry.kind === 'spare' ? [...once, PART] : once;
}
