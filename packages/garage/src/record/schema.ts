import { ACCESSES, DRIVES, FEATURES, SURFACES } from '@waymend/catalogue/shape/words';
import { z } from 'zod';
import * as road from './road-schema.ts';
import { amount, date, id, note, text } from './schema-parts.ts';
import { bag, pocket } from './stow-schema.ts';

/**
 * The garage file, version 1: one human-readable file, every entity flat and keyed by a stable id of its own, references by
 * id. Units are the ones people read off a scale, a plate or a map and are named in the key (`grams`, `lengthMm`,
 * `torqueNm`, `km`); a mass may also be written with its unit (`"1.2 kg"`), see ./quantity-text.ts. Nothing here is
 * computed.
 */
export const FILE_VERSION = 1;

const status = z.enum(['assumed', 'read', 'measured']);

/** A size as marked; a bare number is millimetres. */
const size = z.union([text, z.number().transform((mm) => `${mm} mm`)]);

export const vehicle = z.strictObject({
  name: text,
  /** Catalogue pattern the typical fittings come from. */
  pattern: text.optional(),
  kind: z.enum(['vehicle', 'trailer']).default('vehicle'),
  features: z.array(z.enum(FEATURES)).default([]),
  wheelbaseMm: amount('mm'),
  /** Weighed or from the plate, empty but as equipped, full tank only if `tankIncluded`. */
  emptyFrontKg: amount('kg'),
  emptyRearKg: amount('kg'),
  weighed: z.boolean().default(false),
  ratedFrontKg: amount('kg'),
  ratedRearKg: amount('kg'),
  ratedGrossKg: amount('kg'),
  ratedRoofKg: amount('kg').optional(),
  /** The ratings are typical of the pattern; nobody has read them off the plate yet. */
  ratingsAssumed: z.boolean().optional(),
  tyre: z
    .strictObject({
      loadIndex: z.number().int(),
      passenger: z.boolean().default(false),
      label: text.optional(),
      ageYears: z.number().optional(),
    })
    .optional(),
  wheelMassKg: amount('kg').optional(),
  modelYear: z.number().int().optional(),
  ageYears: z.number().optional(),
  odometerKm: z.number().optional(),
  batteryAgeYears: z.number().optional(),
  care: z.enum(['fresh', 'good', 'average', 'neglected']).default('average'),
  rusty: z.boolean().default(false),
  liftMm: amount('mm').default(0),
  tyreOversizePct: z.number().default(0),
  addedCircuits: z.number().int().default(0),
  /** Failure groups whose parts were disturbed in the last 1,000 km. */
  recentWork: z.array(text).default([]),
  note: note.optional(),
});

export const fitting = z.strictObject({
  vehicle: id,
  /** Catalogue place. */
  place: text,
  /** 'front', 'rear', 'left' ...: places in several positions are several joints. Absent: every position. */
  position: text.optional(),
  drive: z.enum(DRIVES).optional(),
  size: size.optional(),
  torqueNm: amount('Nm').optional(),
  access: z.enum(ACCESSES).optional(),
  counterHold: z.union([z.boolean(), z.strictObject({ drive: z.enum(DRIVES).optional(), size })]).optional(),
  status: status.default('assumed'),
  by: text.optional(),
  on: text.optional(),
  /** Confirmed by the owner although off every standard. */
  confirmed: z.boolean().default(false),
  note: note.optional(),
});

export const berth = z.strictObject({
  vehicle: id,
  name: text,
  /** Behind the front axle; negative is ahead of it. */
  xMm: amount('mm'),
  limitKg: amount('kg').optional(),
  litres: amount('l').optional(),
  /** Its floor above the load floor; negative is below it. */
  zMm: amount('mm').optional(),
  roof: z.boolean().default(false),
  /** Reached without unloading anything. */
  atHand: z.boolean().optional(),
  note: note.optional(),
});

export const person = z.strictObject({
  name: text,
  massKg: amount('kg').default(78),
  skill: z.number().int().min(1).max(5),
  /** Skill by system where it differs. */
  skills: z.record(text, z.number().int().min(1).max(5)).default({}),
  practised: z.array(text).default([]),
  berth: id.optional(),
});

export const belonging = z.strictObject({
  /** Catalogue id. Absent: the owner's own thing, described by `name` (counted, not understood). */
  is: text.optional(),
  name: text.optional(),
  /** None: lost or used up, and not yet replaced. */
  copies: z.number().int().min(0).default(1),
  grams: amount('g').optional(),
  weighed: z.boolean().default(false),
  lengthMm: amount('mm').optional(),
  bulkMl: amount('ml').optional(),
  /** Size or length where it differs from the catalogue entry, e.g. bar length. */
  handleMm: amount('mm').optional(),
  /** Real size where it differs from the catalogue entry's ('25 mm'). */
  size: size.optional(),
  /** Stock left where it differs: jobs' worth, or litres. */
  stock: z.number().optional(),
  berth: id.optional(),
  bag: id.optional(),
  /** Its place in the bag. */
  pocket: id.optional(),
  /** Put in its bag or pocket by hand: a plan of stowage leaves it there. Absent: where it is now, free to move. */
  fixed: z.boolean().optional(),
  pin: z.enum(['always', 'never']).optional(),
  state: z.enum(['ready', 'flat', 'expired', 'damaged', 'lent', 'unproven']).default('ready'),
  /** Inside this boxed set (a belonging with `set`). */
  inside: id.optional(),
  /** A boxed set: its case; its contents are the belongings that are `inside` it. */
  set: z
    .strictObject({ carry: z.enum(['whole', 'loose']).default('loose'), caseGrams: amount('g').default(0) })
    .optional(),
  /** For sale rather than owned: price of one (or of the whole set). */
  forSale: z.boolean().default(false),
  price: z.number().optional(),
  /** Spare does not fit this vehicle. */
  doesNotFit: z.boolean().default(false),
  /** An absurd value the owner has confirmed. */
  confirmed: z.boolean().default(false),
  /** Printed on it: not to be used after. */
  expiresOn: date.optional(),
  /** When the seal was broken, for what keeps less long once opened. */
  openedOn: date.optional(),
  madeOn: date.optional(),
  wattHours: z.number().min(0).optional(),
  /** Pieces a muster asks for one by one ('bit holder', 'key'). */
  parts: z.array(text).optional(),
  line: text.optional(),
  note: note.optional(),
});

/** Other loads: counted, never chosen. */
export const load = z.strictObject({
  name: text,
  kg: amount('kg'),
  kind: z.enum(['water', 'fuel', 'recovery', 'medical', 'air', 'camping', 'trailer-nose', 'other']),
  berth: id.optional(),
  xMm: amount('mm').optional(),
});

export const trip = z.strictObject({
  name: text,
  vehicle: id,
  /** A trailer record: its fittings and features come along, its nose is a load. */
  trailer: id.optional(),
  people: z.array(id).min(1),
  loads: z.array(id).default([]),
  days: z.number().default(1),
  campNights: z.number().int().default(0),
  driver: z.enum(['gentle', 'average', 'hard']).default('average'),
  /** Where the kit rides unless a belonging says otherwise. */
  kitBerth: id.optional(),
  limitKg: amount('kg').optional(),
  limitLitres: amount('l').optional(),
  budget: z.number().default(0),
  /** What the budget may go on: anything in the catalogue at its guide price, or only what the garage lists as for sale. */
  buyFrom: z.enum(['catalogue', 'listed']).default('catalogue'),
  mustDo: z.array(text).default([]),
  note: note.optional(),
});

export const leg = z.strictObject({
  trip: id,
  order: z.number().int(),
  name: text.optional(),
  km: amount('km'),
  surface: z.enum(SURFACES),
  /** Distance to help (a town with parts or a workshop) from the worst point of the leg. */
  helpKm: amount('km'),
  iri: z.number().optional(),
  stones: z.enum(['none', 'gravel', 'sharp', 'staked']).default('none'),
  maxC: z.number().optional(),
  minC: z.number().optional(),
  /** Winter diesel is in the tank on this leg. */
  winterFuel: z.boolean().default(false),
  /** The tyres are let down and not pumped up again for this leg. */
  softTyres: z.boolean().default(false),
  altitudeM: z.number().optional(),
  dusty: z.boolean().default(false),
  doubtfulFills: z.number().int().default(0),
  resonancePace: z.boolean().default(false),
  crossings: z
    .strictObject({
      belowHub: z.number().int().default(0),
      hubToSill: z.number().int().default(0),
      sillToBonnet: z.number().int().default(0),
      aboveIntake: z.number().int().default(0),
    })
    .optional(),
});

/** 'My words': a word the importer did not know, taught once. */
export const word = z.strictObject({ means: text });

/** The owner's own known weak point: multiplies one failure's rate. */
export const weakPoint = z.strictObject({
  vehicle: id,
  failure: text,
  factor: z.number(),
  note: note.optional(),
});

export const garageFile = z.strictObject({
  waymend: z.literal(FILE_VERSION),
  name: text,
  currency: z
    .string()
    .regex(/^[A-Z]{3}$/)
    .default('EUR'),
  units: z.enum(['metric', 'inch']).default('metric'),
  vehicles: z.record(id, vehicle).default({}),
  fittings: z.record(id, fitting).default({}),
  berths: z.record(id, berth).default({}),
  people: z.record(id, person).default({}),
  belongings: z.record(id, belonging).default({}),
  bags: z.record(id, bag).default({}),
  pockets: z.record(id, pocket).default({}),
  loads: z.record(id, load).default({}),
  trips: z.record(id, trip).default({}),
  legs: z.record(id, leg).default({}),
  weakPoints: z.record(id, weakPoint).default({}),
  careMarks: z.record(id, road.careMark).default({}),
  musters: z.record(id, road.muster).default({}),
  counts: z.record(id, road.count).default({}),
  repairs: z.record(id, road.repair).default({}),
  rechecks: z.record(id, road.recheck).default({}),
  readings: z.record(id, road.reading).default({}),
  breakdowns: z.record(id, road.breakdown).default({}),
  loans: z.record(id, road.loan).default({}),
  drills: z.record(id, road.drill).default({}),
  uses: z.record(id, road.use).default({}),
  words: z.record(z.string().min(1).max(80), word).default({}),
});

export type Garage = z.output<typeof garageFile>;
export type Vehicle = z.output<typeof vehicle>;
export type Fitting = z.output<typeof fitting>;
export type Person = z.output<typeof person>;
export type Belonging = z.output<typeof belonging>;
export type Trip = z.output<typeof trip>;
export type Leg = z.output<typeof leg>;
