import type { Measures } from '../belongings/row.ts';
import { FROM_VOLUME, proper, spare, upTo, withCare } from '../belongings/row.ts';
import type { Basis } from '../shape/basis.ts';
import { estimate } from '../shape/basis.ts';
import type { CatalogueBelonging } from '../shape/belonging.ts';

const FROM_MEMORY: Basis = estimate(
  'Middle of what such parts weigh on a vehicle of 2 to 3 t, from memory; within 30 % until weighed; lengths, bulk and price guessed',
);

interface More extends Pick<CatalogueBelonging, 'care' | 'marks' | 'fits'> {
  readonly size?: string;
  readonly offers?: Parameters<typeof spare>[4];
  /** Further stock words it counts under, in the same units. */
  readonly also?: readonly string[];
  readonly basis?: Basis;
}

/** A spare with the jobs' worth (or litres) it holds, and when it earns its place. */
function part(
  id: string,
  name: string,
  units: number,
  measures: Measures,
  when: string,
  more: More = {},
): CatalogueBelonging {
  const { size = '', offers = [], also = [], basis = FROM_MEMORY, ...rest } = more;
  const stock = [id, ...also].map((of) => ({ of, units }));
  return spare(id, name, size, measures, offers, { stock, when, basis, ...rest });
}

/**
 * Spares and parts. Stock units are jobs' worth; liquids count litres, brake fluid half litres. Where a line of the
 * materials list is the same goods under another name, it carries the spare's stock word too, so that either serves.
 */
export const SPARES: readonly CatalogueBelonging[] = [
  // wheels and tyres
  part(
    'P-WHEEL',
    'mounted spare wheel',
    1,
    { g: 37000, mm: 780, ml: 150000, price: 'P5' },
    'always; a second one where sharp stone or more than 300 km lies between towns',
    { care: ['tyres'] },
  ),
  part(
    'P-CARC',
    'tyre without wheel',
    1,
    { g: 25000, mm: 780, ml: 130000, price: 'P5' },
    'long stony routes, when tyres are changed by hand',
    { offers: [withCare('patch', 'tyre-carcass')], care: ['tyres'] },
  ),
  part(
    'P-TUBE',
    'inner tube',
    1,
    { g: 2850, mm: 320, ml: 6000, price: 'P3' },
    'together with the tools to break a bead',
    { offers: [withCare('pad')], care: ['shelf-5-years'] },
  ),
  part('P-VALVE', 'tyre valves and cores', 4, { g: 110, mm: 50, ml: 90, price: 'P1' }, 'always', {
    offers: [proper('valve-stem', 'part'), proper('valve-core', 'part')],
    care: ['shelf-5-years'],
  }),
  part('P-NUT', 'wheel studs and nuts', 2, { g: 400, mm: 80, ml: 150, price: 'P2' }, 'always', {
    size: '2 studs, 4 nuts, plain nuts in place of locks',
    offers: [proper('fastener', 'wheel')],
  }),
  // brakes
  part(
    'P-BPIPE',
    'copper-nickel brake pipe with nuts and joiners',
    1,
    { g: 320, mm: 300, ml: 600, price: 'P3' },
    'brake pipes over ten years old, salt or stones',
    { size: '2 m, 6 nuts, 2 joiners', offers: [withCare('bend')] },
  ),
  part(
    'P-BHOSE',
    'flexible brake hoses',
    1,
    { g: 450, mm: 400, ml: 500, price: 'P3' },
    'hoses over six years old, or a lifted vehicle',
    { size: 'one front, one rear', care: ['shelf-6-years'] },
  ),
  part(
    'P-BPLUG',
    'brake-line blanks',
    1,
    { g: 80, mm: 30, ml: 40, price: 'P2' },
    'always: weighs next to nothing',
    { size: 'M10x1, M12x1, caps', offers: [proper('plug-line')] },
  ),
  part('P-BF', 'brake fluid, sealed', 1.5, { g: 835, mm: 200, ml: 850, price: 'P2' }, 'half a litre always', {
    size: '0.5-1 l',
    offers: [upTo('fluid', 0.75, { of: 'brake' }), withCare('grease', 'rubber-safe')],
    also: ['brake'],
    care: ['brake-fluid'],
    marks: ['liquid'],
  }),
  part(
    'P-PADS',
    'brake pads',
    1,
    { g: 1550, mm: 180, ml: 900, price: 'P4' },
    'pads more than half worn, mud or mountains',
    {
      size: 'one axle',
      offers: [withCare('grease', 'rubber-safe')],
      fits: { any: ['disc-front', 'disc-rear'] },
    },
  ),
  part(
    'P-WCYL',
    'wheel cylinder or its seal kit',
    1,
    { g: 335, mm: 100, ml: 250, price: 'P2' },
    'old drum brakes',
    { care: ['shelf-5-years'], fits: { all: ['drum-rear'] } },
  ),
  // driveline
  part(
    'P-UJ',
    'universal joint',
    1,
    { g: 430, mm: 100, ml: 250, price: 'P3' },
    'lifted vehicle, more than 80,000 km on the joints, or travelling alone',
    { fits: { all: ['propeller-shaft'] } },
  ),
  part('P-FBOLT', 'shaft flange bolts and locknuts', 1, { g: 180, mm: 60, ml: 80, price: 'P2' }, 'always', {
    size: 'class 10.9',
    offers: [proper('fastener', 'driveline')],
    fits: { all: ['propeller-shaft'] },
  }),
  part(
    'P-CV',
    'drive shaft with joints, complete',
    1,
    { g: 9500, mm: 750, ml: 9000, price: 'P5' },
    'hard low-range work with lockers; shared in a group',
    { fits: { any: ['independent-front', 'independent-rear'] } },
  ),
  part(
    'P-HNUT',
    'hub nut, pin and tab washer',
    1,
    { g: 180, mm: 70, ml: 60, price: 'P2' },
    'whenever hub or shaft work is planned for',
  ),
  part(
    'P-BOOT',
    'split joint-boot kit with grease',
    1,
    { g: 350, mm: 150, ml: 450, price: 'P3' },
    'always with independent front suspension',
    {
      offers: [withCare('grease')],
      care: ['shelf-5-years'],
      fits: { any: ['independent-front', 'independent-rear'] },
    },
  ),
  part(
    'P-WB',
    'taper wheel bearings and seal',
    1,
    { g: 1150, mm: 110, ml: 500, price: 'P4' },
    'more than 80,000 km, water crossings',
    { size: 'one hub', care: ['wrapped-parts'], fits: { any: ['taper-hubs'] } },
  ),
  part(
    'P-HUBU',
    'wheel hub unit',
    1,
    { g: 4500, mm: 200, ml: 3500, price: 'P5' },
    'very remote, with a known weakness',
    { fits: { all: ['unit-hubs'] } },
  ),
  part(
    'P-HALF',
    'half-shaft',
    1,
    { g: 7750, mm: 800, ml: 4000, price: 'P5' },
    'semi-floating axle or lockers; shared in a group',
    { care: ['oiled-parts'], fits: { any: ['live-front-axle', 'live-rear-axle'] } },
  ),
  part(
    'P-FWH',
    'freewheel-hub clips, gasket and screws',
    1,
    { g: 60, mm: 90, ml: 60, price: 'P2' },
    'if freewheel hubs are fitted',
    { fits: { all: ['freewheel-hubs'] } },
  ),
  part(
    'P-PLUG',
    'drain and fill plugs, washers, rubber expander',
    1,
    { g: 150, mm: 60, ml: 80, price: 'P2' },
    'always',
    { offers: [proper('plug-hole')], care: ['shelf-5-years'] },
  ),
  // suspension and steering
  part(
    'P-CBOLT',
    'spring centre bolts, two',
    2,
    { g: 220, mm: 120, ml: 80, price: 'P1' },
    'always with leaf springs',
    { fits: { any: ['leaf-front', 'leaf-rear'] } },
  ),
  part(
    'P-UBOLT',
    'U-bolt with nuts',
    1,
    { g: 1150, mm: 280, ml: 700, price: 'P2' },
    'leaf springs and corrugations',
    { fits: { any: ['leaf-front', 'leaf-rear'] } },
  ),
  part(
    'P-LEAF',
    'main spring leaf',
    1,
    { g: 12500, mm: 1300, ml: 9000, price: 'P5' },
    'expedition loads only',
    { fits: { any: ['leaf-front', 'leaf-rear'] } },
  ),
  part(
    'P-SHBUSH',
    'shock and arm bushes',
    1,
    { g: 275, mm: 80, ml: 300, price: 'P2' },
    'always for corrugations',
    { offers: [withCare('pad')], care: ['shelf-6-years'] },
  ),
  part(
    'P-SHOCK',
    'shock absorber',
    1,
    { g: 4000, mm: 500, ml: 3500, price: 'P4' },
    'more than 500 km of corrugations; one for each end',
    { care: ['upright'] },
  ),
  part(
    'P-BJ',
    'ball joint or tie-rod end with pins',
    1,
    { g: 750, mm: 200, ml: 450, price: 'P3' },
    'when play has been found; one for each worn hand',
  ),
  part(
    'P-ARMB',
    'suspension arm bolts and nuts',
    1,
    { g: 400, mm: 120, ml: 150, price: 'P2' },
    'corrugations',
    { size: 'M12-M16, class 10.9', offers: [proper('fastener', 'suspension')] },
  ),
  part(
    'P-PSHOSE',
    'steering return hose with clamps',
    1,
    { g: 250, mm: 300, ml: 400, price: 'P2' },
    'hydraulic steering',
    {
      offers: [proper('splice-hose', 'oil')],
      care: ['shelf-6-years'],
      fits: { all: ['hydraulic-steering'] },
    },
  ),
  // cooling and belts
  part('P-BELT', 'drive belts, set', 1, { g: 250, mm: 250, ml: 400, price: 'P3' }, 'always', {
    care: ['dark-rubber'],
    fits: { any: ['v-belt', 'multi-rib-belt'] },
  }),
  part(
    'P-SBELT',
    'short belt that skips an accessory',
    1,
    { g: 180, mm: 200, ml: 300, price: 'P3' },
    'always, once its length has been measured at home',
    { care: ['dark-rubber'], fits: { any: ['v-belt', 'multi-rib-belt'] } },
  ),
  part(
    'P-IDLER',
    'idler or tensioner pulley',
    1,
    { g: 600, mm: 120, ml: 450, price: 'P4' },
    'more than 120,000 km',
    { fits: { any: ['v-belt', 'multi-rib-belt'] } },
  ),
  part(
    'P-THOSE',
    'moulded coolant hoses',
    1,
    { g: 600, mm: 450, ml: 2500, price: 'P3' },
    'hoses over six to eight years old, or no silicone tape aboard',
    { care: ['shelf-8-years'] },
  ),
  part(
    'P-THERM',
    'thermostat with seal',
    1,
    { g: 150, mm: 80, ml: 150, price: 'P3' },
    'more than eight years old',
    { care: ['flat-gaskets'] },
  ),
  part('P-CAP', 'pressure cap', 1, { g: 70, mm: 60, ml: 80, price: 'P2' }, 'always'),
  part(
    'P-WPUMP',
    'water pump with gasket',
    1,
    { g: 2250, mm: 200, ml: 2000, price: 'P4' },
    'more than 150,000 km, if it can be reached at the roadside',
    { care: ['flat-gaskets'] },
  ),
  part(
    'P-COOL',
    'coolant, ready mixed',
    3.5,
    { g: 3900, mm: 300, ml: 4000, price: 'P2' },
    'half of what the system holds',
    {
      size: '2-5 l',
      offers: [upTo('fluid', 3.5, { of: 'coolant' })],
      also: ['coolant'],
      care: ['coolant'],
      marks: ['liquid'],
    },
  ),
  // fuel and air
  part(
    'P-FF',
    'fuel filters with seals',
    1,
    { g: 575, mm: 150, ml: 900, price: 'P3' },
    'one always, two where fuel is doubtful',
    { size: 'one or two' },
  ),
  part('P-FHOSE', 'fuel hose and clips', 1, { g: 400, mm: 250, ml: 800, price: 'P2' }, 'always', {
    offers: [proper('splice-fuel'), proper('splice-hose', 'oil')],
    care: ['shelf-5-years'],
  }),
  part(
    'P-PUMP',
    'in-line fuel feed pump of the right pressure',
    1,
    { g: 625, mm: 150, ml: 500, price: 'P4' },
    'an engine that depends on an electric pump, more than 150,000 km',
  ),
  part('P-AIRF', 'air filter', 1, { g: 475, mm: 280, ml: 4000, price: 'P3' }, 'more than 1,000 km of dust', {
    care: ['bagged-parts'],
  }),
  part(
    'P-ICH',
    'boost hose clamps and silicone patch',
    1,
    { g: 120, mm: 100, ml: 150, price: 'P2' },
    'turbocharged engines',
    { offers: [proper('seal', 'air', 'clamp')], fits: { all: ['turbo'] } },
  ),
  // starting, charging, engine management
  part(
    'P-BATT',
    'auxiliary battery, linked for starting',
    1,
    { g: 0, mm: 0, ml: 0, price: 'P3' },
    'if fitted: wire it so that it can start the engine',
    { size: 'already aboard', offers: [proper('start-boost', 'solo')], fits: { all: ['second-battery'] } },
  ),
  part(
    'P-BRUSH',
    'alternator brushes and regulator',
    1,
    { g: 150, mm: 70, ml: 120, price: 'P3' },
    'more than 120,000 km, mud',
  ),
  part(
    'P-ALT',
    'alternator',
    1,
    { g: 6500, mm: 200, ml: 4500, price: 'P5' },
    'a group, or far away in the wet',
  ),
  part(
    'P-STC',
    'starter contacts or solenoid',
    1,
    { g: 250, mm: 120, ml: 250, price: 'P3' },
    'more than 150,000 km',
  ),
  part(
    'P-PLUGS',
    'spark plugs and one coil',
    1,
    { g: 430, mm: 120, ml: 350, price: 'P4' },
    'petrol engines',
    { size: '4 plugs, 1 coil', fits: { all: ['spark-ignition'] } },
  ),
  part('P-GLOW', 'glow plug and relay', 1, { g: 80, mm: 120, ml: 80, price: 'P3' }, 'diesel in winter', {
    fits: { all: ['glow-plugs'] },
  }),
  part('P-SENS', 'crankshaft sensor', 1, { g: 60, mm: 90, ml: 80, price: 'P3' }, 'engines known for it'),
  part(
    'P-KEY',
    'spare coded key with cell',
    1,
    { g: 60, mm: 70, ml: 30, price: 'P5' },
    "always, in somebody else's pocket",
    { offers: [proper('key')], care: ['keys'] },
  ),
  // electrical
  part('P-FUSE', 'fuses, all formats, and links', 2, { g: 160, mm: 120, ml: 200, price: 'P2' }, 'always', {
    offers: [proper('fuse', 'blade', 'main')],
  }),
  part('P-RELAY', 'relays, two', 2, { g: 70, mm: 50, ml: 60, price: 'P2' }, 'always', {
    offers: [proper('relay')],
  }),
  part('P-WIRE', 'wire, terminals and heat-shrink', 5, { g: 600, mm: 150, ml: 700, price: 'P3' }, 'always', {
    offers: [proper('splice-wire'), proper('crimp', 'part'), proper('insulate')],
  }),
  part('P-BULB', 'lamp bulbs', 1, { g: 90, mm: 120, ml: 250, price: 'P2' }, 'if the bulbs can be changed', {
    offers: [proper('lamp')],
    fits: { all: ['replaceable-bulbs'] },
  }),
  part(
    'P-TERM',
    'battery clamps and strap cable',
    1,
    { g: 480, mm: 200, ml: 320, price: 'P2' },
    'one clamp always',
    { offers: [proper('terminal'), proper('terminal', 'cable')] },
  ),
  // fasteners, winch, trailer
  part(
    'P-BOLT',
    'bolts and nuts, mixed classes',
    5,
    { g: 1900, mm: 150, ml: 900, price: 'P3' },
    'always, trimmed to what the vehicle takes',
    {
      size: '8.8, fine 10.9, washers, locknuts',
      offers: [proper('fastener', 'general', 'driveline', 'suspension')],
    },
  ),
  part('P-PINS', 'split pins, R-clips and circlips', 5, { g: 120, mm: 90, ml: 80, price: 'P1' }, 'always', {
    offers: [proper('split-pin-part')],
  }),
  part(
    'P-WINCH',
    'winch contactor and link',
    1,
    { g: 500, mm: 130, ml: 600, price: 'P4' },
    'where the winch is used',
    { care: ['dry-parts'], fits: { all: ['winch'] } },
  ),
  part(
    'P-TRHUB',
    'trailer wheel bearing, seal and cap',
    1,
    { g: 700, mm: 110, ml: 400, price: 'P3' },
    'towing a trailer',
    { care: ['wrapped-parts'], fits: { any: ['trailer', 'camper-trailer'] } },
  ),
  // fluids by the litre
  part(
    'P-OIL',
    'engine oil, a litre',
    1,
    { g: 920, mm: 250, ml: 1100, price: 'P2' },
    'two, more if the engine burns oil',
    {
      offers: [upTo('fluid', 1, { of: 'engine-oil' })],
      also: ['engine-oil'],
      care: ['oils'],
      marks: ['liquid'],
      basis: FROM_VOLUME,
    },
  ),
  part(
    'P-GOIL',
    'gear oil, a litre',
    1,
    { g: 930, mm: 250, ml: 1100, price: 'P2' },
    'one, and one for each day of deep fords',
    {
      offers: [upTo('fluid', 1, { of: 'gear-oil' })],
      also: ['gear-oil'],
      care: ['oils'],
      marks: ['liquid'],
      basis: FROM_VOLUME,
    },
  ),
  part(
    'P-ATF',
    'automatic-transmission fluid, a litre',
    1,
    { g: 900, mm: 250, ml: 1100, price: 'P2' },
    'two with an automatic gearbox or hydraulic steering',
    {
      offers: [upTo('fluid', 1, { of: 'atf' }), upTo('fluid', 1, { of: 'power-steering' })],
      also: ['atf', 'power-steering'],
      care: ['oils'],
      fits: { any: ['automatic-gearbox', 'hydraulic-steering'] },
      marks: ['liquid'],
      basis: FROM_VOLUME,
    },
  ),
  // clutch, wipers, glass
  part(
    'P-SLAVE',
    'clutch slave cylinder or its seal kit',
    1,
    { g: 385, mm: 130, ml: 350, price: 'P3' },
    'more than ten years old',
    { care: ['shelf-5-years'], fits: { all: ['hydraulic-clutch'] } },
  ),
  part(
    'P-LINK',
    'gear linkage bushes and clips',
    1,
    { g: 30, mm: 50, ml: 30, price: 'P1' },
    'gearboxes known for it',
  ),
  part('P-WIPER', 'wiper blades, pair', 1, { g: 350, mm: 600, ml: 700, price: 'P3' }, 'mud and rain', {
    care: ['shelf-2-years'],
  }),
  part('P-RESIN', 'glass chip patch', 1, { g: 30, mm: 100, ml: 40, price: 'P2' }, 'gravel roads', {
    care: ['shelf-2-years'],
  }),
];
