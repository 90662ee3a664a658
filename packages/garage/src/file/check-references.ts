import type { Refusal } from '@waymend/core/result';
import type { Garage } from '../record/schema.ts';
import type { KnownIds } from './known-ids.ts';
import { checkRoadReferences } from './check-road-references.ts';
import type { PlaceInFile } from './place-in-file.ts';
import { referenceFinder } from './reference-finder.ts';

/** References that lead nowhere: to entities of the file, and to what the catalogue knows. */
export function danglingReferences(garage: Garage, known: KnownIds, at: PlaceInFile): readonly Refusal[] {
  const { refusals, add, inFile, inCatalogue } = referenceFinder(garage, at);

  for (const [id, vehicle] of Object.entries(garage.vehicles)) {
    const whose = `vehicle ${id}`;
    inCatalogue(known.patterns, 'pattern', vehicle.pattern, ['vehicles', id, 'pattern'], whose);
    vehicle.recentWork.forEach((group, i) => {
      inCatalogue(known.groups, 'failure group', group, ['vehicles', id, 'recentWork', i], whose);
    });
  }
  for (const [id, fitting] of Object.entries(garage.fittings)) {
    inFile('vehicles', fitting.vehicle, ['fittings', id, 'vehicle'], `fitting ${id}`);
    inCatalogue(known.places, 'place', fitting.place, ['fittings', id, 'place'], `fitting ${id}`);
  }
  for (const [id, berth] of Object.entries(garage.berths)) {
    inFile('vehicles', berth.vehicle, ['berths', id, 'vehicle'], `berth ${id}`);
  }
  for (const [id, person] of Object.entries(garage.people)) {
    inFile('berths', person.berth, ['people', id, 'berth'], `person ${id}`);
    for (const system of Object.keys(person.skills)) {
      inCatalogue(known.systems, 'system', system, ['people', id, 'skills', system], `person ${id}`);
    }
    person.practised.forEach((job, i) => {
      inCatalogue(known.jobs, 'job', job, ['people', id, 'practised', i], `person ${id}`);
    });
  }
  for (const [id, belonging] of Object.entries(garage.belongings)) {
    const whose = `belonging ${id}`;
    inCatalogue(known.belongings, 'thing', belonging.is, ['belongings', id, 'is'], whose);
    inFile('berths', belonging.berth, ['belongings', id, 'berth'], whose);
    inFile('bags', belonging.bag, ['belongings', id, 'bag'], whose);
    inFile('pockets', belonging.pocket, ['belongings', id, 'pocket'], whose);
    inFile('belongings', belonging.inside, ['belongings', id, 'inside'], whose);
    const box = belonging.inside === undefined ? undefined : garage.belongings[belonging.inside];
    if (box !== undefined && box.set === undefined) {
      add(
        'not-a-set',
        ['belongings', id, 'inside'],
        `${whose} is inside "${belonging.inside ?? ''}", which is not a boxed set; give that one a "set" or change the reference`,
      );
    }
    if (box?.inside !== undefined) {
      add(
        'set-in-set',
        ['belongings', id, 'inside'],
        `${whose} is inside a set that is itself inside one; take one of them out`,
      );
    }
  }
  for (const [id, bag] of Object.entries(garage.bags)) {
    inFile('berths', bag.berth, ['bags', id, 'berth'], `bag ${id}`);
  }
  for (const [id, load] of Object.entries(garage.loads)) {
    inFile('berths', load.berth, ['loads', id, 'berth'], `load ${id}`);
  }
  for (const [id, trip] of Object.entries(garage.trips)) {
    const whose = `trip ${id}`;
    inFile('vehicles', trip.vehicle, ['trips', id, 'vehicle'], whose);
    inFile('vehicles', trip.trailer, ['trips', id, 'trailer'], whose);
    inFile('berths', trip.kitBerth, ['trips', id, 'kitBerth'], whose);
    trip.people.forEach((person, i) => {
      inFile('people', person, ['trips', id, 'people', i], whose);
    });
    trip.loads.forEach((load, i) => {
      inFile('loads', load, ['trips', id, 'loads', i], whose);
    });
    trip.mustDo.forEach((job, i) => {
      inCatalogue(known.jobs, 'job', job, ['trips', id, 'mustDo', i], whose);
    });
  }
  for (const [id, leg] of Object.entries(garage.legs)) {
    inFile('trips', leg.trip, ['legs', id, 'trip'], `leg ${id}`);
  }
  for (const [id, weak] of Object.entries(garage.weakPoints)) {
    inFile('vehicles', weak.vehicle, ['weakPoints', id, 'vehicle'], `weak point ${id}`);
    inCatalogue(known.failures, 'failure', weak.failure, ['weakPoints', id, 'failure'], `weak point ${id}`);
  }
  checkRoadReferences(garage, known, { add, inFile, inCatalogue });
  return refusals;
}
