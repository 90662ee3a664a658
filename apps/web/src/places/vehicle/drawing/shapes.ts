/** A point of an outline: millimetres behind the front axle, and above the ground. */
export type Point = readonly [x: number, y: number];

/** A plain outline of our own for one kind of vehicle, stretched to the wheelbase; no maker's face. */
export interface Shape {
  /** From the foremost point at the sill, over the roof, to the rearmost at the sill. */
  readonly top: readonly Point[];
  /** Narrow lines within: windows (closed) and seams (open). */
  readonly windows: readonly (readonly Point[])[];
  readonly seams: readonly (readonly Point[])[];
  readonly sill: number;
  readonly wheel: number;
  readonly arch: number;
  readonly roof: number;
  /** A trailer has a coupling where others have a front axle. */
  readonly coupling: boolean;
}

export type ShapeId = 'wagon' | 'pickup' | 'canopy' | 'van' | 'car' | 'truck' | 'trailer';

const BY_PATTERN: Readonly<Record<string, ShapeId>> = {
  'live-axle-wagon': 'wagon',
  'frame-pickup-independent-front': 'pickup',
  van: 'van',
  'all-wheel-drive-car': 'car',
  'light-truck': 'truck',
  'camper-trailer': 'trailer',
};

/**
 * The outline for a pattern; a vehicle without one is drawn as a wagon, a trailer as a trailer, and a pickup with a canopy
 * has it on.
 */
export function shapeOf(
  pattern: string | null,
  kind: 'vehicle' | 'trailer',
  features: readonly string[],
): ShapeId {
  const plain =
    (pattern === null ? undefined : BY_PATTERN[pattern]) ?? (kind === 'trailer' ? 'trailer' : 'wagon');
  return plain === 'pickup' && features.includes('canopy') ? 'canopy' : plain;
}

function pickup(w: number): Shape {
  return {
    top: [
      [-870, 530],
      [-870, 730],
      [-800, 760],
      [-800, 1000],
      [-700, 1070],
      [0.16 * w, 1140],
      [0.3 * w, 1690],
      [0.35 * w, 1780],
      [0.61 * w, 1780],
      [0.65 * w, 1720],
      [0.68 * w, 1150],
      [w + 1190, 1150],
      [w + 1190, 660],
      [w + 1230, 640],
      [w + 1230, 530],
    ],
    windows: [
      [
        [0.22 * w, 1180],
        [0.33 * w, 1660],
        [0.35 * w, 1700],
        [0.46 * w, 1700],
        [0.46 * w, 1180],
      ],
      [
        [0.485 * w, 1180],
        [0.485 * w, 1700],
        [0.6 * w, 1700],
        [0.625 * w, 1660],
        [0.645 * w, 1180],
      ],
    ],
    seams: [
      [
        [0.69 * w, 1150],
        [0.69 * w, 580],
      ],
      [
        [0.472 * w, 1140],
        [0.472 * w, 560],
      ],
      [
        [0.16 * w, 1140],
        [0.68 * w, 1150],
      ],
    ],
    sill: 530,
    wheel: 390,
    arch: 510,
    roof: 1780,
    coupling: false,
  };
}

/** A canopy over the tray, with its side window. */
function canopy(w: number): readonly (readonly Point[])[] {
  return [
    [
      [0.69 * w, 1150],
      [0.69 * w, 1740],
      [w + 940, 1740],
      [w + 1185, 1150],
    ],
    [
      [0.73 * w, 1240],
      [0.73 * w, 1660],
      [w + 820, 1660],
      [w + 990, 1240],
    ],
  ];
}

/** `w` is the wheelbase, mm. */
export const SHAPES: Readonly<Record<ShapeId, (w: number) => Shape>> = {
  wagon: (w) => ({
    top: [
      [-800, 500],
      [-800, 690],
      [-730, 720],
      [-730, 980],
      [-650, 1040],
      [0.2 * w, 1110],
      [0.37 * w, 1740],
      [0.42 * w, 1850],
      [w + 740, 1850],
      [w + 840, 1780],
      [w + 960, 1130],
      [w + 960, 660],
      [w + 1010, 640],
      [w + 1010, 500],
    ],
    windows: [
      [
        [0.26 * w, 1160],
        [0.4 * w, 1700],
        [0.43 * w, 1770],
        [0.6 * w, 1770],
        [0.6 * w, 1160],
      ],
      [
        [0.63 * w, 1160],
        [0.63 * w, 1770],
        [0.91 * w, 1770],
        [0.91 * w, 1160],
      ],
      [
        [0.94 * w, 1160],
        [0.94 * w, 1770],
        [w + 710, 1770],
        [w + 820, 1160],
      ],
    ],
    seams: [
      [
        [0.2 * w, 1110],
        [w + 960, 1130],
      ],
      [
        [0.615 * w, 1110],
        [0.615 * w, 520],
      ],
      [
        [0.24 * w, 1110],
        [0.24 * w, 640],
      ],
    ],
    sill: 500,
    wheel: 390,
    arch: 510,
    roof: 1850,
    coupling: false,
  }),
  pickup,
  canopy: (w) => ({ ...pickup(w), windows: [...pickup(w).windows, ...canopy(w)] }),
  van: (w) => ({
    top: [
      [-900, 460],
      [-900, 640],
      [-830, 690],
      [-800, 960],
      [-560, 1120],
      [-0.03 * w, 1290],
      [0.12 * w, 2080],
      [0.19 * w, 2480],
      [0.26 * w, 2620],
      [w + 1180, 2640],
      [w + 1260, 2560],
      [w + 1320, 1200],
      [w + 1320, 460],
    ],
    windows: [
      [
        [0.025 * w, 1360],
        [0.135 * w, 1960],
        [0.235 * w, 1960],
        [0.235 * w, 1360],
      ],
      [
        [0.31 * w, 1420],
        [0.31 * w, 1960],
        [0.6 * w, 1960],
        [0.6 * w, 1420],
      ],
    ],
    seams: [
      [
        [0.26 * w, 2480],
        [0.26 * w, 540],
      ],
      [
        [0.65 * w, 2480],
        [0.65 * w, 540],
      ],
      [
        [-0.03 * w, 1290],
        [w + 1316, 1290],
      ],
    ],
    sill: 460,
    wheel: 360,
    arch: 460,
    roof: 2640,
    coupling: false,
  }),
  car: (w) => ({
    top: [
      [-860, 390],
      [-860, 560],
      [-800, 740],
      [-640, 850],
      [0.12 * w, 970],
      [0.33 * w, 1440],
      [0.44 * w, 1550],
      [w + 320, 1550],
      [w + 660, 1350],
      [w + 790, 1010],
      [w + 830, 700],
      [w + 830, 390],
    ],
    windows: [
      [
        [0.22 * w, 1010],
        [0.38 * w, 1430],
        [0.43 * w, 1480],
        [0.56 * w, 1490],
        [0.56 * w, 1010],
      ],
      [
        [0.59 * w, 1010],
        [0.59 * w, 1490],
        [0.88 * w, 1490],
        [0.95 * w, 1010],
      ],
      [
        [0.99 * w, 1020],
        [0.92 * w, 1490],
        [w + 290, 1480],
        [w + 560, 1310],
        [w + 640, 1030],
      ],
    ],
    seams: [
      [
        [0.575 * w, 980],
        [0.575 * w, 420],
      ],
      [
        [0.12 * w, 970],
        [w + 790, 1000],
      ],
    ],
    sill: 390,
    wheel: 335,
    arch: 420,
    roof: 1550,
    coupling: false,
  }),
  truck: (w) => ({
    top: [
      [-1200, 620],
      [-1200, 1350],
      [-1090, 2280],
      [-980, 2440],
      [640, 2460],
      [720, 2400],
      [720, 960],
      [860, 960],
      [860, 3000],
      [w + 1560, 3000],
      [w + 1560, 960],
      [w + 1600, 940],
      [w + 1600, 620],
    ],
    windows: [
      [
        [-1110, 1460],
        [-1020, 2260],
        [-420, 2280],
        [-420, 1460],
      ],
      [
        [-360, 1460],
        [-360, 2280],
        [330, 2280],
        [330, 1460],
      ],
      [
        [0.55 * w, 1900],
        [0.55 * w, 2500],
        [0.8 * w, 2500],
        [0.8 * w, 1900],
      ],
    ],
    seams: [
      [
        [860, 960],
        [w + 1560, 960],
      ],
      [
        [430, 2380],
        [430, 1000],
      ],
      [
        [-1195, 1400],
        [720, 1400],
      ],
    ],
    sill: 620,
    wheel: 490,
    arch: 600,
    roof: 3000,
    coupling: false,
  }),
  trailer: (w) => ({
    top: [
      [1250, 560],
      [1250, 1150],
      [1400, 1280],
      [w + 1180, 1280],
      [w + 1300, 1180],
      [w + 1300, 560],
    ],
    windows: [],
    seams: [
      [
        [0, 480],
        [140, 480],
        [1250, 640],
      ],
      [
        [140, 480],
        [1250, 560],
      ],
      [
        [0.62 * w, 1250],
        [0.62 * w, 640],
      ],
      [
        [1250, 1000],
        [w + 1300, 1000],
      ],
    ],
    sill: 560,
    wheel: 380,
    arch: 480,
    roof: 1280,
    coupling: true,
  }),
};
