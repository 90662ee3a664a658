/** Where a word is said; absent means it is heard in many places. FR: French-speaking Africa. */
export type Region = 'UK' | 'US' | 'AU' | 'NZ' | 'ZA' | 'FR';

export interface OtherWord {
  readonly text: string;
  readonly regions?: readonly Region[];
}

/** One word of ours and what the same thing is called elsewhere, in base form (no plurals). Common practice. */
export interface Term {
  readonly word: string;
  readonly kind: 'tool' | 'material' | 'part' | 'fluid' | 'rating' | 'trip';
  readonly also: readonly OtherWord[];
  /** What a reader should know before taking one for the other. */
  readonly note?: string;
}

function said(text: string, ...regions: readonly Region[]): OtherWord {
  return regions.length === 0 ? { text } : { text, regions };
}

/**
 * The trade's words and their regional twins. One text may stand under two words (spider, uni-joint, headlight): the kind
 * and the line it is written in decide.
 */
export const VOCABULARY: readonly Term[] = [
  // hand tools
  {
    word: 'wrench',
    kind: 'tool',
    also: [said('spanner', 'UK', 'AU', 'NZ', 'ZA'), said('key')],
    note: '"Key" comes straight out of Romance languages and also means a hex key or an ignition key.',
  },
  {
    word: 'combination wrench',
    kind: 'tool',
    also: [
      said('combination spanner', 'UK', 'AU', 'NZ', 'ZA'),
      said('ring and open spanner', 'UK'),
      said('ring/open spanner', 'UK'),
      said('combo wrench'),
      said('combo spanner'),
      said('combo'),
    ],
    note: 'One size, a ring at one end and an open jaw at the other.',
  },
  {
    word: 'ring end',
    kind: 'tool',
    also: [
      said('ring spanner', 'UK', 'AU', 'NZ', 'ZA'),
      said('ring wrench'),
      said('box end', 'US'),
      said('box wrench', 'US'),
      said('bi-hex ring'),
    ],
    note: 'Holds better than an open end.',
  },
  {
    word: 'open end',
    kind: 'tool',
    also: [
      said('open-ended spanner', 'UK', 'AU', 'NZ', 'ZA'),
      said('open-end wrench'),
      said('open wrench'),
      said('jaw'),
    ],
    note: 'Weak on a tight nut.',
  },
  {
    word: 'ratcheting wrench',
    kind: 'tool',
    also: [
      said('ratchet spanner', 'UK', 'AU', 'NZ', 'ZA'),
      said('ratcheting spanner'),
      said('ratchet wrench'),
    ],
  },
  {
    word: 'flare-nut wrench',
    kind: 'tool',
    also: [
      said('line wrench'),
      said('brake-pipe spanner', 'UK'),
      said('brake spanner', 'UK'),
      said('flare spanner', 'UK', 'AU', 'NZ', 'ZA'),
      said('split ring'),
    ],
    note: 'The only wrench for brake and fuel unions.',
  },
  {
    word: 'adjustable wrench',
    kind: 'tool',
    also: [
      said('shifter', 'AU', 'NZ'),
      said('shifting spanner', 'AU', 'ZA'),
      said('adjustable spanner', 'UK', 'AU', 'NZ', 'ZA'),
      said('adjustable'),
      said('bush spanner'),
    ],
  },
  {
    word: 'pipe wrench',
    kind: 'tool',
    also: [said('pipe grip'), said("plumber's grips")],
    note: 'Ruins a hex.',
  },
  { word: 'strap wrench', kind: 'tool', also: [said('strap spanner', 'UK', 'AU', 'NZ', 'ZA')] },
  {
    word: 'water-pump pliers',
    kind: 'tool',
    also: [
      said('slip-joint pliers'),
      said('multi-grip pliers', 'AU'),
      said('multigrips', 'AU'),
      said('tongue-and-groove pliers', 'US'),
      said('adjustable pliers'),
    ],
  },
  {
    word: 'locking pliers',
    kind: 'tool',
    also: [said('self-grip pliers'), said('self-grips'), said('lock grips'), said('locking grips')],
  },
  {
    word: 'side cutters',
    kind: 'tool',
    also: [
      said('dikes', 'US'),
      said('dike', 'US'),
      said('diagonal cutters'),
      said('diagonals'),
      said('diags'),
      said('nippers'),
      said('snips'),
    ],
  },
  {
    word: 'long-nose pliers',
    kind: 'tool',
    also: [said('needle-nose pliers', 'US'), said('needle nose'), said('long nose')],
  },
  { word: 'combination pliers', kind: 'tool', also: [said('lineman pliers', 'US'), said('pliers')] },
  {
    word: 'circlip pliers',
    kind: 'tool',
    also: [said('snap-ring pliers', 'US'), said('retaining ring pliers')],
  },
  { word: 'socket', kind: 'tool', also: [said('shallow socket'), said('standard socket')] },
  {
    word: 'deep socket',
    kind: 'tool',
    also: [said('long-reach socket'), said('long socket'), said('deep-well socket', 'US')],
  },
  { word: 'spark-plug socket', kind: 'tool', also: [said('plug socket'), said('plug spanner', 'UK')] },
  { word: 'ratchet', kind: 'tool', also: [said('ratchet handle'), said('ratchet wrench handle')] },
  {
    word: 'breaker bar',
    kind: 'tool',
    also: [said('flex bar'), said('power bar'), said('knuckle bar'), said('strong-arm'), said('breaker')],
  },
  {
    word: 'slide-over tube',
    kind: 'tool',
    also: [
      said('cheater'),
      said('cheater pipe'),
      said('cheater bar'),
      said('snipe', 'NZ', 'UK'),
      said('extension tube'),
    ],
  },
  { word: 'T-bar', kind: 'tool', also: [said('sliding T'), said('sliding T-bar'), said('tommy bar', 'UK')] },
  {
    word: 'cross brace',
    kind: 'tool',
    also: [
      said('four-way wrench', 'US'),
      said('spider', 'UK'),
      said('wheel cross'),
      said('four-way brace'),
      said('cross wrench'),
    ],
  },
  {
    word: 'wheel brace',
    kind: 'tool',
    also: [said('lug wrench', 'US'), said('wheel spanner', 'ZA', 'AU'), said('wheel-nut wrench')],
  },
  { word: 'extension', kind: 'tool', also: [said('extension bar')] },
  {
    word: 'universal joint (tool)',
    kind: 'tool',
    also: [
      said('swivel'),
      said('wobble'),
      said('uni-joint'),
      said('universal joint'),
      said('flexible joint'),
    ],
    note: 'Not the joint in a shaft.',
  },
  {
    word: 'adapter',
    kind: 'tool',
    also: [
      said('adaptor'),
      said('drive adapter'),
      said('reducer'),
      said('step-up adapter'),
      said('step-down adapter'),
    ],
  },
  { word: 'torque wrench', kind: 'tool', also: [said('torque spanner', 'UK'), said('torque bar')] },
  {
    word: 'hexalobular',
    kind: 'tool',
    also: [said('star'), said('six-lobe'), said('lobe'), said('star bit'), said('hexalobular bit')],
    note: 'Outside lobes are marked E.',
  },
  {
    word: 'hex key',
    kind: 'tool',
    also: [said('L-key'), said('internal hex key'), said('hexagon key'), said('hex L-key')],
  },
  {
    word: 'cross-head',
    kind: 'tool',
    also: [said('cross-point'), said('crosshead'), said('cross-head screwdriver'), said('cross screwdriver')],
    note: 'Two shapes are in use besides a small one common on Asian vehicles.',
  },
  {
    word: 'slotted screwdriver',
    kind: 'tool',
    also: [
      said('flat-head screwdriver'),
      said('flathead'),
      said('flat-blade screwdriver'),
      said('straight screwdriver'),
      said('slot driver'),
    ],
  },
  {
    word: 'hammer',
    kind: 'tool',
    also: [said('ball-pein hammer'), said('ball-peen hammer'), said("engineer's hammer")],
  },
  {
    word: 'lump hammer',
    kind: 'tool',
    also: [said('club hammer', 'UK'), said('sledge'), said('mash hammer', 'AU')],
  },
  {
    word: 'soft hammer',
    kind: 'tool',
    also: [said('mallet'), said('dead-blow hammer'), said('soft-face hammer')],
  },
  {
    word: 'pry bar',
    kind: 'tool',
    also: [
      said('crowbar'),
      said('pinch bar', 'AU'),
      said('jemmy', 'UK'),
      said('wrecking bar'),
      said('heel bar'),
    ],
  },
  {
    word: 'tyre lever',
    kind: 'tool',
    also: [said('tire iron', 'US'), said('tire spoon', 'US'), said('tyre iron')],
  },
  {
    word: 'G-clamp',
    kind: 'tool',
    also: [said('C-clamp', 'US'), said('cramp', 'UK'), said('G-cramp', 'UK')],
  },
  {
    word: 'ball-joint separator',
    kind: 'tool',
    also: [said('ball-joint splitter'), said('tie-rod separator')],
  },
  {
    word: 'taper fork',
    kind: 'tool',
    also: [said('pickle fork', 'US'), said('wedge fork'), said('splitter fork')],
  },
  { word: 'hacksaw', kind: 'tool', also: [said('metal saw')] },
  { word: 'angle grinder', kind: 'tool', also: [said('grinder'), said('disc cutter')] },
  { word: 'bolt cutter', kind: 'tool', also: [said('bolt croppers', 'UK'), said('bolt cropper', 'UK')] },
  { word: 'multi-tool', kind: 'tool', also: [said('pocket tool'), said('multitool')] },
  // lifting, pulling, tyres
  {
    word: 'jack stand',
    kind: 'tool',
    also: [said('axle stand', 'UK'), said('safety stand'), said('stand')],
    note: 'Never bricks.',
  },
  { word: 'bottle jack', kind: 'tool', also: [said('pillar jack')] },
  { word: 'scissor jack', kind: 'tool', also: [said('pantograph jack')] },
  { word: 'trolley jack', kind: 'tool', also: [said('floor jack', 'US')] },
  {
    word: 'farm jack',
    kind: 'tool',
    also: [
      said('rack jack'),
      said('mechanical high lift'),
      said('high-lift jack'),
      said('high lift jack'),
      said('bumper jack'),
    ],
  },
  { word: 'wheel chock', kind: 'tool', also: [said('scotch', 'UK'), said('wedge'), said('chock')] },
  {
    word: 'ratchet strap',
    kind: 'tool',
    also: [said('tie-down'), said('cargo strap'), said('ratchet tie-down')],
  },
  {
    word: 'hand hoist',
    kind: 'tool',
    also: [said('come-along'), said('lever hoist'), said('pull-lift'), said('cable puller')],
  },
  {
    word: 'string plug',
    kind: 'tool',
    also: [said('rope'), said('worm'), said('sticky'), said('plug'), said('tyre worm')],
    note: 'A mushroom plug is another thing.',
  },
  { word: 'compressor', kind: 'tool', also: [said('air pump'), said('tyre pump'), said('inflator')] },
  {
    word: 'jump leads',
    kind: 'tool',
    also: [
      said('jumper cables', 'US'),
      said('booster cables'),
      said('jump cables'),
      said('jumper leads', 'AU'),
    ],
  },
  {
    word: 'jump pack',
    kind: 'tool',
    also: [said('booster pack'), said('jump starter'), said('jump-starter'), said('booster')],
  },
  {
    word: 'test lamp',
    kind: 'tool',
    also: [said('test light'), said('probe light'), said('circuit tester')],
  },
  { word: 'multimeter', kind: 'tool', also: [said('voltmeter'), said('tester'), said('DMM'), said('meter')] },
  {
    word: 'headlamp',
    kind: 'tool',
    also: [said('head torch', 'UK'), said('headlight'), said('head lamp')],
    note: '"Headlight" is also a lamp of the vehicle.',
  },
  { word: 'torch', kind: 'tool', also: [said('flashlight', 'US'), said('lamp')] },
  // materials
  { word: 'cable tie', kind: 'material', also: [said('zip tie'), said('tie wrap'), said('wire tie')] },
  {
    word: 'tie wire',
    kind: 'material',
    also: [said('lock wire'), said('baling wire'), said('binding wire')],
  },
  {
    word: 'fencing wire',
    kind: 'material',
    also: [said('number-8 wire', 'NZ'), said('number 8 wire', 'NZ'), said('no. 8 wire', 'NZ')],
  },
  {
    word: 'cloth tape',
    kind: 'material',
    also: [said('duct tape'), said('gaffer tape', 'UK'), said('gaffer'), said('hundred-mile-an-hour tape')],
  },
  {
    word: 'self-fusing tape',
    kind: 'material',
    also: [said('self-amalgamating tape', 'UK'), said('silicone tape')],
  },
  {
    word: 'insulating tape',
    kind: 'material',
    also: [said('electrical tape'), said('PVC tape'), said('sticky tape')],
  },
  {
    word: 'threadlocker',
    kind: 'material',
    also: [said('thread lock'), said('thread-locking compound'), said('locking compound')],
  },
  {
    word: 'gasket silicone',
    kind: 'material',
    also: [said('RTV'), said('silicone sealant'), said('instant gasket'), said('gasket maker')],
  },
  {
    word: 'epoxy putty',
    kind: 'material',
    also: [said('putty stick'), said('epoxy stick'), said('metal putty')],
  },
  {
    word: 'penetrating oil',
    kind: 'material',
    also: [said('penetrant'), said('release oil'), said('releasing fluid')],
  },
  {
    word: 'anti-seize',
    kind: 'material',
    also: [said('anti-seize paste'), said('copper grease', 'UK'), said('copper paste')],
  },
  {
    word: 'hose clamp',
    kind: 'material',
    also: [said('hose clip', 'UK'), said('worm clamp'), said('worm-drive clip')],
  },
  { word: 'split pin', kind: 'material', also: [said('cotter pin', 'US'), said('cotter')] },
  { word: 'spring pin', kind: 'material', also: [said('roll pin'), said('tension pin')] },
  {
    word: 'circlip',
    kind: 'material',
    also: [said('snap ring', 'US'), said('retaining ring'), said('C-clip')],
  },
  // vehicle words
  { word: 'fusible link', kind: 'part', also: [said('main fuse'), said('maxi fuse'), said('midi fuse')] },
  { word: 'bonnet', kind: 'part', also: [said('hood', 'US')] },
  { word: 'boot', kind: 'part', also: [said('trunk', 'US')] },
  { word: 'windscreen', kind: 'part', also: [said('windshield', 'US')] },
  { word: 'wing', kind: 'part', also: [said('guard', 'AU', 'NZ'), said('fender', 'US'), said('mudguard')] },
  { word: 'bulkhead', kind: 'part', also: [said('firewall', 'US', 'AU')] },
  { word: 'tyre', kind: 'part', also: [said('tire', 'US')] },
  { word: 'tread', kind: 'part', also: [] },
  { word: 'sidewall', kind: 'part', also: [said('side wall')] },
  { word: 'bead', kind: 'part', also: [said('tyre bead')] },
  { word: 'rim', kind: 'part', also: [said('wheel rim')] },
  {
    word: 'wheel nut',
    kind: 'part',
    also: [said('lug nut', 'US'), said('wheel bolt'), said('lug bolt', 'US'), said('lug', 'US')],
  },
  {
    word: 'propeller shaft',
    kind: 'part',
    also: [
      said('propshaft', 'UK'),
      said('prop shaft', 'UK'),
      said('driveshaft', 'US'),
      said('tailshaft', 'AU'),
    ],
    note: '"Driveshaft" is the half-shaft to a wheel elsewhere.',
  },
  { word: 'half-shaft', kind: 'part', also: [said('axle shaft', 'US'), said('side shaft', 'ZA')] },
  {
    word: 'drive shaft',
    kind: 'part',
    also: [said('CV axle', 'US'), said('half-shaft'), said('CV shaft')],
    note: 'On independent suspension, with joints at both ends.',
  },
  {
    word: 'universal joint',
    kind: 'part',
    also: [
      said('U-joint'),
      said('uni', 'AU'),
      said('uni joint', 'AU'),
      said('cardan cross'),
      said('spider'),
      said('UJ', 'UK'),
    ],
  },
  { word: 'differential', kind: 'part', also: [said('diff'), said('pumpkin', 'US')] },
  {
    word: 'freewheel hub',
    kind: 'part',
    also: [said('locking hub', 'US'), said('free-wheeling hub', 'AU'), said('manual hub')],
  },
  { word: 'panhard rod', kind: 'part', also: [said('track bar', 'US'), said('panhard bar')] },
  { word: 'control arm', kind: 'part', also: [said('wishbone', 'UK'), said('A-arm', 'US')] },
  { word: 'radius arm', kind: 'part', also: [said('trailing arm')] },
  {
    word: 'anti-roll bar link',
    kind: 'part',
    also: [said('sway-bar link', 'US', 'AU'), said('drop link', 'UK'), said('stabiliser link')],
  },
  { word: 'tie rod', kind: 'part', also: [said('track rod', 'UK')] },
  { word: 'drag link', kind: 'part', also: [] },
  { word: 'pitman arm', kind: 'part', also: [said('drop arm', 'UK')] },
  {
    word: 'idler arm',
    kind: 'part',
    also: [said('idler')],
    note: 'An idler is also a pulley that only guides a belt.',
  },
  {
    word: 'shock absorber',
    kind: 'part',
    also: [said('damper', 'UK'), said('shocker', 'AU'), said('shock')],
  },
  { word: 'leaf pack', kind: 'part', also: [said('leaf spring'), said('spring pack')] },
  { word: 'main leaf', kind: 'part', also: [said('main spring leaf'), said('master leaf')] },
  { word: 'centre bolt', kind: 'part', also: [said('center bolt', 'US'), said('centre pin')] },
  { word: 'U-bolt', kind: 'part', also: [] },
  {
    word: 'spring shackle',
    kind: 'part',
    also: [said('shackle')],
    note: 'A shackle is also the bow that joins two ropes.',
  },
  { word: 'spring hanger', kind: 'part', also: [said('hanger')] },
  { word: 'alternator', kind: 'part', also: [said('generator', 'US'), said('dynamo')] },
  { word: 'glow plug', kind: 'part', also: [said('heater plug')] },
  { word: 'earth', kind: 'part', also: [said('ground', 'US'), said('chassis return')] },
  {
    word: 'bleed screw',
    kind: 'part',
    also: [said('bleed nipple', 'UK'), said('bleeder', 'US'), said('bleeder screw', 'US')],
  },
  { word: 'gearbox', kind: 'part', also: [said('transmission', 'US')] },
  { word: 'transfer case', kind: 'part', also: [said('transfer box', 'UK')] },
  {
    word: 'exhaust',
    kind: 'part',
    also: [said('muffler', 'US'), said('silencer', 'UK')],
    note: 'Muffler and silencer are one box of it.',
  },
  { word: 'indicator', kind: 'part', also: [said('turn signal', 'US'), said('blinker')] },
  { word: 'number plate', kind: 'part', also: [said('license plate', 'US'), said('rego plate', 'AU')] },
  {
    word: 'rating plate',
    kind: 'part',
    also: [said('dash plate'), said('door-jamb plate'), said('type plate'), said('compliance plate', 'AU')],
    note: 'Ask for a photograph of it.',
  },
  // fluids
  {
    word: 'petrol',
    kind: 'fluid',
    also: [said('gasoline', 'US'), said('gas', 'US')],
    note: 'Never swapped silently for anything else.',
  },
  {
    word: 'diesel',
    kind: 'fluid',
    also: [said('gasoil'), said('diesel oil'), said('derv', 'UK')],
    note: 'Never swapped silently for anything else.',
  },
  {
    word: 'paraffin',
    kind: 'fluid',
    also: [said('kerosene', 'US', 'AU'), said('kero', 'AU')],
    note: 'Never swapped silently for anything else.',
  },
  { word: 'coolant', kind: 'fluid', also: [said('antifreeze'), said('anti-freeze'), said('radiator fluid')] },
  { word: 'automatic-transmission fluid', kind: 'fluid', also: [said('ATF'), said('auto trans fluid')] },
  { word: 'brake fluid', kind: 'fluid', also: [said('clutch fluid'), said('brake and clutch fluid')] },
  { word: 'gear oil', kind: 'fluid', also: [said('diff oil'), said('axle oil'), said('gearbox oil')] },
  // masses
  {
    word: 'gross mass',
    kind: 'rating',
    also: [
      said('GVM', 'AU', 'NZ', 'ZA'),
      said('GVW', 'UK'),
      said('GVWR', 'US'),
      said('gross vehicle mass'),
      said('gross vehicle weight'),
    ],
  },
  {
    word: 'kerb mass',
    kind: 'rating',
    also: [said('kerb weight', 'UK'), said('curb weight', 'US'), said('tare'), said('tare mass')],
    note: 'Payload is gross mass less this as equipped, people and fluids.',
  },
  { word: 'payload', kind: 'rating', also: [said('carrying capacity'), said('load capacity')] },
  {
    word: 'axle limit',
    kind: 'rating',
    also: [said('GAWR', 'US'), said('axle rating'), said('axle load limit')],
  },
  {
    word: 'combination mass',
    kind: 'rating',
    also: [said('GCM', 'AU'), said('GCW', 'UK'), said('GCWR', 'US')],
  },
  {
    word: 'trailer mass',
    kind: 'rating',
    also: [said('ATM', 'AU'), said('GTM', 'AU')],
    note: 'The first counts the weight on the hitch, the second does not.',
  },
  {
    word: 'nose weight',
    kind: 'rating',
    also: [
      said('ball weight'),
      said('ball load'),
      said('tongue weight', 'US'),
      said('tow-ball mass', 'AU'),
      said('download'),
    ],
  },
  // on the way
  {
    word: 'temporary repair',
    kind: 'trip',
    also: [
      said('limp'),
      said('get-you-home repair'),
      said('bush fix', 'AU'),
      said('bush repair', 'AU'),
      said('trail fix', 'US'),
      said('jury rig'),
      said('expedient'),
      said('bodge', 'UK'),
      said('jerry-rig'),
    ],
  },
  {
    word: 'stuck',
    kind: 'trip',
    also: [said('bogged', 'AU'), said('hung up'), said('high-centred')],
    note: 'Recovery, not repair.',
  },
  {
    word: 'corrugations',
    kind: 'trip',
    also: [said('washboard', 'US'), said('piste ondulée', 'FR'), said('tôle ondulée', 'FR')],
  },
  { word: 'stony plain', kind: 'trip', also: [said('gibber', 'AU')] },
  { word: 'gravel plain', kind: 'trip', also: [said('reg')] },
  { word: 'fine dust', kind: 'trip', also: [said('bulldust', 'AU')] },
  { word: 'salt pan', kind: 'trip', also: [said('sebkha'), said('salt lake')] },
  { word: 'gully', kind: 'trip', also: [said('donga', 'ZA'), said('wash')] },
  { word: 'ford', kind: 'trip', also: [said('drift', 'ZA'), said('water crossing'), said('creek crossing')] },
];
