/**
 * Words in the form they are compared in: singular, one spelling, shorthand spelt out. Both the catalogue's names and what
 * is typed go through here, so a form need not be a word ('plier').
 */

/** Other spellings and workshop shorthand of single words. Common practice. */
const SPELLINGS: Readonly<Record<string, string>> = {
  spanner: 'wrench',
  spnr: 'wrench',
  wrnch: 'wrench',
  skt: 'socket',
  sckt: 'socket',
  comb: 'combination',
  combo: 'combination',
  combi: 'combination',
  ext: 'extension',
  extn: 'extension',
  adj: 'adjustable',
  scdr: 'screwdriver',
  sdriver: 'screwdriver',
  tire: 'tyre',
  calliper: 'caliper',
  adaptor: 'adapter',
  pein: 'peen',
  pane: 'peen',
  center: 'centre',
  aluminum: 'aluminium',
  alu: 'aluminium',
  alloy: 'aluminium',
  guage: 'gauge',
  gage: 'gauge',
  plyer: 'plier',
  dyke: 'dike',
  hexagonal: 'hex',
  hexagon: 'hex',
  elec: 'electrical',
  electric: 'electrical',
  insulation: 'insulating',
  lith: 'lithium',
  batt: 'battery',
  alt: 'alternator',
  thermo: 'thermometer',
  litre: 'liter',
  rad: 'radiator',
  diff: 'differential',
  prop: 'propeller',
  propshaft: 'propeller shaft',
  uj: 'universal joint',
  temp: 'temperature',

  uni: 'universal',
  shocker: 'shock',
  absorber: 'shock',
  hiviz: 'hi vis',
  hivis: 'hi vis',
  spec: 'glass',
  spectacle: 'glass',
};

/** Words that say nothing about what a thing is. */
const FILLERS = new Set(
  (
    'a an the of my our your his her its and or plus another other good old older oldest new newer nearly brand extra ' +
    'decent cheap nice best better bad worn rusty used unused bent second first last one ones some few about approx roughly ' +
    'ca only also still size sizes type types style assorted assortment asst various misc mixed full complete each all both ' +
    'from for in on at with w under behind inside near by to is are was it they them that this these those which when ' +
    'always never maybe probably etc eg ie mm lot lots bunch couple f m female'
  ).split(' '),
);

/** Words after which a line says where or what for, no longer what. */
const ASIDE = new Set(
  'for from in on at with w under behind inside near off since because if that which was were not'.split(' '),
);

/** How a thing is, for choosing between two of a name; not knowing them costs little. */
const MODIFIERS = new Set(
  (
    'large big long heavy small little short mini wide thin thick front rear left right upper lower top bottom rh lh ' +
    'black red blue green yellow white steel metal plastic rubber metric chrome impact strong light set kit box tin pack ' +
    'bottle can tube tin roll spray pair single double twin duty professional pro spare normal regular standard depth  quality medium mid middle'
  ).split(' '),
);

const MODIFIER_STEMS = new Set([...MODIFIERS].map((word) => stem(word)));

export function isFiller(word: string): boolean {
  return FILLERS.has(word);
}

export function opensAside(word: string): boolean {
  return ASIDE.has(word);
}

export function isModifier(word: string): boolean {
  return MODIFIERS.has(word) || MODIFIER_STEMS.has(word);
}

/** Singular by the ending alone. */
export function singular(word: string): string {
  if (word.length < 4 || /(?:ss|us|is)$/.test(word)) return word;
  if (word.endsWith('ies')) return `${word.slice(0, -3)}y`;
  if (/(?:ches|shes|xes|sses|zes)$/.test(word)) return word.slice(0, -2);
  return word.endsWith('s') ? word.slice(0, -1) : word;
}

/** Without '-ing' and a last 'e': crimping and crimp, fencing and fence. Both sides are treated alike, so it may be wrong. */
export function stem(word: string): string {
  // 'spring' and 'string' have no vowel before the ending.
  const bare = /^(.*[aeiouy].*)ing$/.exec(word)?.[1];
  if (bare !== undefined && bare.length >= 4) return bare.replace(/([^aeiouyls])\1$/, '$1');
  return word.length >= 5 && word.endsWith('e') ? word.slice(0, -1) : word;
}

/** The compared forms of one typed word: usually one, two where a shorthand stands for two. */
export function formsOf(word: string): readonly string[] {
  const bare = word.toLowerCase().replace(/'s?$|'/g, '');
  const one = singular(bare);
  const spelt =
    (Object.hasOwn(SPELLINGS, bare) ? SPELLINGS[bare] : undefined) ??
    (Object.hasOwn(SPELLINGS, one) ? SPELLINGS[one] : undefined);
  return (spelt === undefined ? [one] : spelt.split(' ')).map(stem);
}

/** All compared forms of a text, fillers left out. */
export function formsOfText(text: string): readonly string[] {
  return wordsOf(text).flatMap(formsOf);
}

/** The words of a text as written, in lower case, fillers left out. */
export function wordsOf(text: string): readonly string[] {
  return (text.toLowerCase().match(/\p{L}[\p{L}\d']*/gu) ?? []).filter((word) => !isFiller(word));
}
