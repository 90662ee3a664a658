/**
 * The closed word lists that jobs, tools and vehicles share. A function is "what must be done"; `of` narrows it
 * (seal *of coolant*, grip *of fine* things). Fastener work is not here: it is computed from sizes (shape/offer.ts).
 */

/** Each function with its plain wording and the unit its `amount` is printed in, when it has one. */
export const FUNCTIONS = {
  // fasteners beyond plain turning
  'torque-set': { words: 'tighten to a torque', amount: 'Nm', of: [] },
  'shock-loosen': { words: 'shock a tight fastener loose', of: [] },
  free: { words: 'free rust and seizing', of: ['penetrant', 'assembly', 'heat'] },
  extract: { words: 'get out a damaged fastener', of: ['nut', 'stud', 'hex', 'wheel-nut'] },
  'chase-thread': { words: 'clean up a thread', of: ['metric', 'wheel-stud', 'valve'] },
  'cut-thread': { words: 'cut a thread', of: [] },
  'split-pin': { words: 'pull or fit a split pin', of: [] },
  threadlock: { words: 'lock a thread', of: [] },
  'turn-round': { words: 'turn something round', of: ['filter', 'soft', 'rough'] },
  // hands of steel
  grip: { words: 'grip', of: ['fine', 'wide', 'light'] },
  'lock-grip': { words: 'grip and stay locked', of: ['fine'] },
  'clamp-c': { words: 'clamp across', amount: 'mm', of: ['quick', 'chain'] },
  'pinch-hose': { words: 'pinch a hose shut', of: [] },
  circlip: { words: 'take off and fit a circlip', of: [] },
  'clip-ear': { words: 'close an ear clamp', of: [] },
  'clip-spring-band': { words: 'open a spring-band clamp', of: [] },
  pry: { words: 'pry', amount: 'mm', of: ['light', 'heavy'] },
  'strike-hard': { words: 'strike hard', of: ['light', 'heavy'] },
  'strike-soft': { words: 'strike without damage', of: [] },
  'drive-pin': { words: 'drive out a pin', of: [] },
  'drive-drift': { words: 'drive with a drift', of: [] },
  chisel: { words: 'chisel', of: [] },
  press: { words: 'press together or apart', of: ['light'] },
  pull: { words: 'pull a part off', of: [] },
  'pull-heavy': { words: 'drag something heavy into place', of: [] },
  'separate-taper': { words: 'part a taper joint', of: ['destructive'] },
  spread: { words: 'spread apart', of: [] },
  bend: { words: 'bend', of: [] },
  // cut and join
  'cut-metal': { words: 'cut metal', of: ['fast', 'slow'] },
  'cut-bolt': { words: 'cut a bolt or chain', of: [] },
  'cut-wire': { words: 'cut wire', of: [] },
  'cut-hose': { words: 'cut hose or belt', of: [] },
  'cut-tube': { words: 'cut tube square', of: [] },
  'cut-wood': { words: 'cut wood', of: [] },
  'flare-tube': { words: 'flare a tube', of: [] },
  file: { words: 'file', of: [] },
  drill: { words: 'drill', of: ['slow'] },
  // A machine without bits drills nothing, and the other way round: the substitution table joins the two.
  'turn-drill': { words: 'turn a drill bit', of: ['slow'] },
  'drill-bit': { words: 'supply a drill bit', of: [] },
  clean: { words: 'clean', of: ['degrease', 'contacts', 'rub'] },
  sand: { words: 'sand', of: [] },
  seal: {
    words: 'seal',
    of: [
      'coolant',
      'coolant-core',
      'air',
      'fuel',
      'oil',
      'gasket',
      'thread',
      'metal',
      'clamp',
      'banjo',
      'pipe-pressure',
      'weak',
    ],
  },
  'splice-hose': { words: 'join a coolant or oil hose', of: ['large', 'oil'] },
  'splice-fuel': { words: 'join a fuel line', of: [] },
  'splice-vacuum': { words: 'join a vacuum hose', of: [] },
  'splice-wire': { words: 'join or replace wire', of: ['high-current'] },
  'join-sheet': { words: 'rivet sheet', of: [] },
  bond: { words: 'bond', of: ['metal', 'plastic', 'small'] },
  patch: { words: 'patch', of: ['metal', 'hose', 'tyre-carcass'] },
  lash: { words: 'lash', of: ['hot', 'fine', 'strong'] },
  restrain: { words: 'hold back with a strap or chain', of: ['light', 'hot'] },
  splint: { words: 'splint', of: ['wood'] },
  pad: { words: 'pad', of: [] },
  weld: { words: 'weld', of: [] },
  solder: { words: 'solder', of: [] },
  crimp: { words: 'crimp', of: ['light', 'lug', 'part'] },
  strip: { words: 'strip wire', of: [] },
  insulate: { words: 'insulate', of: [] },
  fastener: {
    words: 'supply the right bolt or nut',
    of: ['general', 'driveline', 'suspension', 'body', 'wheel', 'improvised'],
  },
  'split-pin-part': { words: 'supply a split pin', of: [] },
  'glass-cover': { words: 'cover a window', of: [] },
  // lift and pull
  chock: { words: 'chock the wheels', of: [] },
  base: { words: 'give the jack a firm base', of: [] },
  lift: { words: 'lift', amount: 'kg', of: ['high'] },
  'lift-adapt': { words: 'adapt the jack to the lifting point', of: [] },
  support: { words: 'support the raised vehicle', amount: 'kg', of: [] },
  hoist: { words: 'hoist', of: [] },
  tow: { words: 'tow', of: ['joint'] },
  // tyres and air
  plug: { words: 'plug a tread', of: ['strong'] },
  'patch-tyre': { words: 'patch a tyre inside', of: [] },
  'break-bead': { words: 'break a tyre bead', of: [] },
  'lever-tyre': { words: 'lever a tyre over the rim', of: [] },
  'tyre-lube': { words: 'lubricate a bead', of: [] },
  'valve-core': { words: 'turn a valve core', of: ['part'] },
  'valve-stem': { words: 'pull in a valve stem', of: ['part'] },
  inflate: { words: 'inflate', amount: 'l/min', of: [] },
  deflate: { words: 'let air out', of: [] },
  gauge: { words: 'read tyre pressure', of: [] },
  // electric
  'start-boost': { words: 'boost a flat battery', of: ['solo', 'second-vehicle'] },
  charge: { words: 'charge a battery', of: [] },
  'test-voltage': { words: 'measure voltage', of: [] },
  'test-current': { words: 'measure current', of: [] },
  'test-continuity': { words: 'test continuity', of: [] },
  'test-lamp': { words: 'probe for live', of: [] },
  'bridge-circuit': { words: 'bridge a circuit through a fuse', amount: 'A', of: [] },
  'read-codes': { words: 'read and clear fault codes', of: [] },
  'clean-terminal': { words: 'clean a battery terminal', of: [] },
  terminal: { words: 'replace a battery terminal', of: ['cable'] },
  dry: { words: 'drive out moisture', of: [] },
  fuse: { words: 'supply a fuse', of: ['blade', 'main'] },
  relay: { words: 'supply a relay', of: [] },
  lamp: { words: 'supply a lamp bulb', of: [] },
  // fluids
  catch: { words: 'catch fluid', of: [] },
  pour: { words: 'pour', of: [] },
  'pump-oil': { words: 'pump oil into a box', of: [] },
  siphon: { words: 'siphon', of: [] },
  'bleed-brake': { words: 'bleed brakes or clutch', of: [] },
  'bleed-fuel': { words: 'bleed the fuel system', of: [] },
  vacuum: { words: 'draw a vacuum', of: [] },
  'plug-line': { words: 'blank a brake line', of: [] },
  'plug-hole': { words: 'plug a hole or open end', of: [] },
  grease: { words: 'grease', of: ['rubber-safe'] },
  fluid: {
    words: 'supply fluid',
    amount: 'l',
    of: ['coolant', 'engine-oil', 'gear-oil', 'atf', 'brake', 'power-steering'],
  },
  // see, measure, protect
  light: { words: 'see in the dark', of: ['hands-free', 'area'] },
  mirror: { words: 'look round a corner', of: [] },
  magnet: { words: 'fish out steel', of: [] },
  measure: { words: 'measure', of: [] },
  feeler: { words: 'measure a gap', of: [] },
  'temperature-reading': { words: 'measure temperature', of: [] },
  mark: { words: 'mark', of: [] },
  hands: { words: 'protect the hands', of: ['fluid'] },
  eyes: { words: 'protect the eyes', of: [] },
  mat: { words: 'lie on something', of: [] },
  shade: { words: 'make shade or shelter', of: [] },
  fire: { words: 'fight a fire', of: [] },
  warn: { words: 'warn traffic', of: [] },
  know: { words: 'look it up', of: [] },
  power: { words: 'supply cells', of: [] },
  'keep-parts': { words: 'keep small parts together', of: [] },
  carry: { words: 'carry and sort', of: [] },
  key: { words: 'supply a coded key', of: [] },
} as const satisfies Record<string, { words: string; amount?: string; of: readonly string[] }>;

export type FunctionId = keyof typeof FUNCTIONS;

/**
 * `of` words that narrow a function to something else than the plain one (the part rather than the tool that fits it, a
 * link rather than the rope). An offer of one of these must not serve a need that names no `of`.
 */
export const NEVER_PLAIN: Readonly<Partial<Record<FunctionId, readonly string[]>>> = {
  crimp: ['part', 'lug', 'light'],
  'valve-core': ['part'],
  'valve-stem': ['part'],
  tow: ['joint'],
  free: ['assembly'],
  'chase-thread': ['valve'],
  // Weaker or other things, not kinds of the plain one: a light strap holds no axle, brake fluid greases no bearing.
  restrain: ['light'],
  press: ['light'],
  splint: ['wood'],
  grease: ['rubber-safe'],
  grip: ['light'],
  pry: ['light'],
  'strike-hard': ['light'],
  'cut-metal': ['slow'],
  drill: ['slow'],
  'turn-drill': ['slow'],
  bond: ['small'],
  clean: ['contacts', 'rub'],
  patch: ['tyre-carcass'],
  'splice-hose': ['large', 'oil'],
  terminal: ['cable'],
  hands: ['fluid'],
};

export const GRADES = ['proper', 'with-care', 'last-resort', 'forbidden'] as const;
export type Grade = (typeof GRADES)[number];

/** How far a temporary repair may be trusted: not at all, out of danger, 50 km, 300 km, to the end of the trip. */
export const TRUSTS = ['T0', 'T1', 'T2', 'T3', 'T4'] as const;
export type Trust = (typeof TRUSTS)[number];

/** 1 anyone shown once, 2 careful owner, 3 does own servicing, 4 has rebuilt axles or brakes, 5 trade mechanic. */
export type Skill = 1 | 2 | 3 | 4 | 5;

export const SYSTEMS = [
  'wheels-tyres',
  'brakes',
  'driveline',
  'suspension-steering',
  'cooling',
  'fuel-air',
  'starting-charging',
  'wiring',
  'body-trailer',
  'exhaust',
  'clutch-gearbox',
  'engine-oil',
  'keys-glass',
] as const;
export type System = (typeof SYSTEMS)[number];

export const SURFACES = ['sealed', 'gravel', 'corrugated', 'rock', 'sand'] as const;
export type Surface = (typeof SURFACES)[number];

export const GROUPS = [
  'tyre',
  'battery',
  'charging-starting',
  'wiring',
  'ignition-management',
  'fuel-air',
  'cooling',
  'brakes',
  'steering',
  'suspension',
  'driveline',
  'transmission',
  'exhaust',
  'body',
  'engine',
  'locks-glass',
] as const;
export type GroupId = (typeof GROUPS)[number];

/** What a vehicle has. Jobs, places and failures name the features they need (or cannot stand). */
export const FEATURES = [
  'diesel',
  'petrol',
  'turbo',
  'manual-gearbox',
  'automatic-gearbox',
  'hydraulic-clutch',
  'transfer-case',
  'part-time-4wd',
  'full-time-4wd',
  'independent-front',
  'live-front-axle',
  'live-rear-axle',
  'independent-rear',
  'semi-float-rear',
  'full-float-rear',
  'freewheel-hubs',
  'taper-hubs',
  'unit-hubs',
  'propeller-shaft',
  'leaf-front',
  'leaf-rear',
  'coil-front',
  'coil-rear',
  'assist-air-springs',
  'disc-front',
  'disc-rear',
  'drum-rear',
  'brake-servo',
  'anti-lock',
  'cable-parking-brake',
  'hydraulic-steering',
  'electric-steering',
  'timing-belt',
  'v-belt',
  'multi-rib-belt',
  'viscous-fan',
  'electric-fan',
  'in-tank-pump',
  'mechanical-injection',
  'electronic-injection',
  'spark-ignition',
  'glow-plugs',
  'immobiliser',
  'second-battery',
  'solar',
  'winch',
  'roof-rack',
  'bull-bar',
  'bash-plate',
  'canopy',
  'lift-kit',
  'large-tyres',
  'lockers',
  'trailer',
  'camper-trailer',
  'snorkel',
  'particulate-filter',
  'replaceable-bulbs',
  'tubeless',
  'locking-wheel-nuts',
  'fridge',
] as const;
export type Feature = (typeof FEATURES)[number];

/** All of `all`, at least one of `any` (when given), none of `none`. An empty condition always holds. */
export interface Condition {
  readonly all?: readonly Feature[];
  readonly any?: readonly Feature[];
  readonly none?: readonly Feature[];
}

export const DRIVES = [
  'hex',
  'hex-key',
  'lobe',
  'lobe-external',
  'spline',
  'square',
  'slot',
  'cross',
  'flare',
  'locknut-hex',
  'locknut-peg',
] as const;
/** The shape a fastener is turned by. */
export type Drive = (typeof DRIVES)[number];

/** Square drives as printed on tools. */
export type SquareDrive = '1/4 in' | '3/8 in' | '1/2 in' | '3/4 in' | '1 in';

export const ACCESSES = [
  'open',
  'deep',
  'recess',
  'side',
  'tight',
  'remote',
  'angle',
  'slotted',
  'retain',
] as const;
/**
 * How a head can be reached: open (from above and from the side), deep (a stud stands through), recess (sunk: sockets
 * only), side (no room above: wrenches only), tight (little swing), remote (down a hole: long extension), angle
 * (joint needed), slotted (a wire or pipe leaves the head), retain (spark plug well: thin retaining socket).
 */
export type Access = (typeof ACCESSES)[number];
