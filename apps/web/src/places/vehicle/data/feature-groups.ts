import type { Vehicle } from '@waymend/garage/record/schema';

export type FeatureId = Vehicle['features'][number];

/** What a vehicle has, in the groups an owner would look under. */
export const FEATURE_GROUPS = {
  engine: [
    'diesel',
    'petrol',
    'turbo',
    'mechanical-injection',
    'electronic-injection',
    'spark-ignition',
    'glow-plugs',
    'timing-belt',
    'v-belt',
    'multi-rib-belt',
    'viscous-fan',
    'electric-fan',
    'in-tank-pump',
    'particulate-filter',
    'snorkel',
  ],
  drive: [
    'manual-gearbox',
    'automatic-gearbox',
    'hydraulic-clutch',
    'transfer-case',
    'part-time-4wd',
    'full-time-4wd',
    'freewheel-hubs',
    'propeller-shaft',
    'lockers',
  ],
  axles: [
    'independent-front',
    'live-front-axle',
    'live-rear-axle',
    'independent-rear',
    'semi-float-rear',
    'full-float-rear',
    'taper-hubs',
    'unit-hubs',
  ],
  springs: ['leaf-front', 'leaf-rear', 'coil-front', 'coil-rear', 'assist-air-springs', 'lift-kit'],
  brakes: [
    'disc-front',
    'disc-rear',
    'drum-rear',
    'brake-servo',
    'anti-lock',
    'cable-parking-brake',
    'hydraulic-steering',
    'electric-steering',
  ],
  wheels: ['tubeless', 'large-tyres', 'locking-wheel-nuts'],
  electrics: ['immobiliser', 'replaceable-bulbs', 'second-battery', 'solar', 'fridge', 'winch'],
  body: ['roof-rack', 'bull-bar', 'bash-plate', 'canopy', 'trailer', 'camper-trailer'],
} as const satisfies Record<string, readonly FeatureId[]>;

export type FeatureGroup = keyof typeof FEATURE_GROUPS;

export const GROUP_IDS = [
  'engine',
  'drive',
  'axles',
  'springs',
  'brakes',
  'wheels',
  'electrics',
  'body',
] as const satisfies readonly FeatureGroup[];
