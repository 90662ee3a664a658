/** How an owner likes the trade's words. */
export type Wording = 'british' | 'american';

/** A word as the catalogue writes it and as it is shown; the same text twice keeps a longer word from being changed. */
export type ShownWord = readonly [ours: string, shown: string];

/**
 * The catalogue writes one word for one thing ('wrench', 'tyre'); here is what it reads as on either side of the sea. Only
 * twins that name the very same thing everywhere they stand in the catalogue: 'boot' is also a rubber sleeve, 'hose clamp'
 * also a pinching tool, 'dynamo' no alternator. Every pair but the kept ones and the spellings is one of the vocabulary.
 */
export const SHOWN_WORDS: Readonly<Record<Wording, readonly ShownWord[]>> = {
  british: [
    ['torque wrench', 'torque wrench'],
    ['pipe wrench', 'pipe wrench'],
    ['strap wrench', 'strap wrench'],
    ['chain wrench', 'chain wrench'],
    ['impact wrench', 'impact wrench'],
    ['tap wrench', 'tap wrench'],
    ['dies with wrench', 'dies with wrench'],
    ['wrench', 'spanner'],
    ['jack stand', 'axle stand'],
    ['lump hammer', 'club hammer'],
    ['bolt cutter', 'bolt cropper'],
    ['tie rod', 'track rod'],
    ['pitman arm', 'drop arm'],
    ['transfer case', 'transfer box'],
    ['bleed screw', 'bleed nipple'],
  ],
  american: [
    ['gas torch', 'gas torch'],
    ['blow torch', 'blow torch'],
    ['spanner', 'wrench'],
    ['ring wrench', 'box wrench'],
    ['ring spanner', 'box wrench'],
    ['ring end', 'box end'],
    ['tyre lever', 'tire iron'],
    ['cross brace', 'four-way wrench'],
    ['wheel brace', 'lug wrench'],
    ['wheel nut', 'lug nut'],
    ['trolley jack', 'floor jack'],
    ['G-clamp', 'C-clamp'],
    ['long-nose pliers', 'needle-nose pliers'],
    ['water-pump pliers', 'tongue-and-groove pliers'],
    ['circlip pliers', 'snap-ring pliers'],
    ['circlip', 'snap ring'],
    ['split pin', 'cotter pin'],
    ['jump leads', 'jumper cables'],
    ['booster cables', 'jumper cables'],
    ['torch', 'flashlight'],
    ['tyre', 'tire'],
    ['bonnet', 'hood'],
    ['windscreen', 'windshield'],
    ['bulkhead', 'firewall'],
    ['number plate', 'license plate'],
    ['petrol', 'gasoline'],
    ['paraffin', 'kerosene'],
    ['earth', 'ground'],
    ['gearbox', 'transmission'],
    ['transfer box', 'transfer case'],
    ['propeller shaft', 'driveshaft'],
    ['drive shaft', 'CV axle'],
    ['half-shaft', 'axle shaft'],
    ['freewheel hub', 'locking hub'],
    ['panhard rod', 'track bar'],
    ['anti-roll bar link', 'sway-bar link'],
    ['bleed screw', 'bleeder screw'],
    ['silencer', 'muffler'],
  ],
};

/** The same word, spelt otherwise. */
export const SPELT: Readonly<Record<Wording, readonly ShownWord[]>> = {
  british: [],
  american: [
    ['centre', 'center'],
    ['aluminium', 'aluminum'],
    ['litre', 'liter'],
    ['metre', 'meter'],
    ['millimetre', 'millimeter'],
    ['kilometre', 'kilometer'],
    ['colour', 'color'],
    ['grey', 'gray'],
    ['vapour', 'vapor'],
    ['immobiliser', 'immobilizer'],
    ['fibre', 'fiber'],
    ['kerb', 'curb'],
    ['sulphur', 'sulfur'],
  ],
};
