/** Outlines of our own, in millimetres: x behind the front axle (the coupling of a trailer), y above the ground. */
export interface Outline {
  readonly wheelbaseMm: number;
  /** Where wheels stand, x. */
  readonly wheels: readonly number[];
  readonly wheelMm: number;
  /** From the rear wheel arch forwards round over the top: x, y. */
  readonly body: readonly (readonly [x: number, y: number])[];
  readonly windows: readonly (readonly (readonly [x: number, y: number])[])[];
  /** Height of the underside between and beside the arches. */
  readonly floorMm: number;
}

export const PATTERN_IDS = [
  'frame-pickup-independent-front',
  'live-axle-wagon',
  'all-wheel-drive-car',
  'van',
  'light-truck',
  'camper-trailer',
] as const;
export type PatternId = (typeof PATTERN_IDS)[number];

/** All drawings reach from here to there, so that they stand beside each other on one scale. */
export const EXTENT = { fromMm: -1450, toMm: 5450, topMm: 3250 } as const;

export const OUTLINES: Readonly<Record<PatternId, Outline>> = {
  'frame-pickup-independent-front': {
    wheelbaseMm: 3090,
    wheels: [0, 3090],
    wheelMm: 780,
    floorMm: 480,
    body: [
      [-880, 520],
      [-900, 900],
      [-800, 1080],
      [560, 1190],
      [1120, 1740],
      [1320, 1800],
      [2330, 1780],
      [2560, 1230],
      [4300, 1230],
      [4330, 560],
    ],
    windows: [
      [
        [760, 1200],
        [1180, 1660],
        [1640, 1690],
        [1640, 1200],
      ],
      [
        [1740, 1200],
        [1740, 1690],
        [2240, 1680],
        [2420, 1200],
      ],
    ],
  },
  'live-axle-wagon': {
    wheelbaseMm: 2850,
    wheels: [0, 2850],
    wheelMm: 790,
    floorMm: 500,
    body: [
      [-760, 540],
      [-760, 1060],
      [-700, 1130],
      [660, 1200],
      [1010, 1860],
      [1120, 1920],
      [3620, 1940],
      [3740, 1880],
      [3820, 1200],
      [3820, 560],
    ],
    windows: [
      [
        [860, 1210],
        [1140, 1800],
        [1580, 1810],
        [1580, 1210],
      ],
      [
        [1680, 1210],
        [1680, 1810],
        [2480, 1820],
        [2480, 1210],
      ],
      [
        [2580, 1210],
        [2580, 1820],
        [3560, 1830],
        [3660, 1210],
      ],
    ],
  },
  'all-wheel-drive-car': {
    wheelbaseMm: 2670,
    wheels: [0, 2670],
    wheelMm: 690,
    floorMm: 340,
    body: [
      [-900, 380],
      [-930, 700],
      [-780, 900],
      [380, 1050],
      [1180, 1600],
      [1500, 1660],
      [2500, 1620],
      [3260, 1330],
      [3480, 1080],
      [3540, 440],
    ],
    windows: [
      [
        [660, 1080],
        [1250, 1520],
        [1640, 1560],
        [1640, 1080],
      ],
      [
        [1740, 1080],
        [1740, 1560],
        [2440, 1530],
        [3000, 1290],
        [2980, 1090],
      ],
    ],
  },
  van: {
    wheelbaseMm: 3660,
    wheels: [0, 3660],
    wheelMm: 700,
    floorMm: 380,
    body: [
      [-960, 420],
      [-1000, 980],
      [-780, 1180],
      [-260, 1360],
      [420, 2300],
      [720, 2620],
      [4720, 2680],
      [4900, 2560],
      [4940, 460],
    ],
    windows: [
      [
        [-20, 1400],
        [520, 2130],
        [1080, 2130],
        [1080, 1400],
      ],
      [
        [1640, 1560],
        [1640, 2130],
        [2620, 2130],
        [2620, 1560],
      ],
    ],
  },
  'light-truck': {
    wheelbaseMm: 3400,
    wheels: [0, 3400],
    wheelMm: 1010,
    floorMm: 760,
    body: [
      [-1280, 620],
      [-1310, 1450],
      [-1130, 2420],
      [-980, 2520],
      [560, 2540],
      [600, 1180],
      [820, 1180],
      [820, 3180],
      [5200, 3180],
      [5200, 1060],
    ],
    windows: [
      [
        [-1080, 1600],
        [-930, 2320],
        [330, 2320],
        [330, 1600],
      ],
      [
        [1900, 2050],
        [1900, 2620],
        [2900, 2620],
        [2900, 2050],
      ],
    ],
  },
  'camper-trailer': {
    wheelbaseMm: 3300,
    wheels: [3300],
    wheelMm: 780,
    floorMm: 560,
    body: [
      [-60, 470],
      [-60, 560],
      [560, 620],
      [620, 1000],
      [1240, 1000],
      [1300, 640],
      [1700, 640],
      [1740, 1250],
      [2050, 1560],
      [4640, 1560],
      [4760, 1240],
      [4780, 620],
    ],
    windows: [
      [
        [2160, 860],
        [2160, 1330],
        [2760, 1330],
        [2760, 860],
      ],
    ],
  },
};

/** The closed outline as the `d` of a path; y grows downwards in a drawing. */
export function bodyPath({ body, wheels, wheelMm, floorMm }: Outline): string {
  const arch = Math.round(wheelMm * 0.61);
  const front = body.map(([x, y]) => `${x} ${-y}`);
  const under = [...wheels]
    .sort((a, b) => b - a)
    .map((x) => `L${x + arch} ${-floorMm}A${arch} ${arch} 0 0 0 ${x - arch} ${-floorMm}`);
  return `M${front.join('L')}${under.join('')}Z`;
}

export function polygonPath(points: readonly (readonly [x: number, y: number])[]): string {
  return `M${points.map(([x, y]) => `${x} ${-y}`).join('L')}Z`;
}
