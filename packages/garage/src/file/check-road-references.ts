import type { Garage } from '../record/schema.ts';
import type { KnownIds } from './known-ids.ts';
import type { ReferenceFinder } from './reference-finder.ts';

/** References of stowage and of what happened on the road. */
export function checkRoadReferences(garage: Garage, known: KnownIds, find: ReferenceFinder): void {
  for (const [id, { bag }] of Object.entries(garage.pockets))
    find.inFile('bags', bag, ['pockets', id, 'bag'], `pocket ${id}`);
  for (const [id, { belonging, rule, by }] of Object.entries(garage.careMarks)) {
    const whose = `care mark ${id}`;
    find.inFile('belongings', belonging, ['careMarks', id, 'belonging'], whose);
    find.inCatalogue(known.careRules, 'care rule', rule, ['careMarks', id, 'rule'], whose);
    find.inFile('people', by, ['careMarks', id, 'by'], whose);
  }
  for (const [id, { vehicle, trip, job }] of Object.entries(garage.musters)) {
    const whose = `muster ${id}`;
    find.inFile('vehicles', vehicle, ['musters', id, 'vehicle'], whose);
    find.inFile('trips', trip, ['musters', id, 'trip'], whose);
    find.inCatalogue(known.jobs, 'job', job, ['musters', id, 'job'], whose);
  }
  for (const [id, { muster, belonging }] of Object.entries(garage.counts)) {
    find.inFile('musters', muster, ['counts', id, 'muster'], `count ${id}`);
    find.inFile('belongings', belonging, ['counts', id, 'belonging'], `count ${id}`);
  }
  for (const [id, { vehicle, job, expedient, failure }] of Object.entries(garage.repairs)) {
    const whose = `repair ${id}`;
    find.inFile('vehicles', vehicle, ['repairs', id, 'vehicle'], whose);
    find.inCatalogue(known.jobs, 'job', job, ['repairs', id, 'job'], whose);
    find.inCatalogue(known.expedients, 'way through', expedient, ['repairs', id, 'expedient'], whose);
    find.inCatalogue(known.failures, 'failure', failure, ['repairs', id, 'failure'], whose);
  }
  for (const [id, { repair }] of Object.entries(garage.rechecks))
    find.inFile('repairs', repair, ['rechecks', id, 'repair'], `look at a repair ${id}`);
  for (const [id, { vehicle }] of Object.entries(garage.readings))
    find.inFile('vehicles', vehicle, ['readings', id, 'vehicle'], `odometer reading ${id}`);
  for (const [id, { vehicle, failure, repair, trip }] of Object.entries(garage.breakdowns)) {
    const whose = `breakdown ${id}`;
    find.inFile('vehicles', vehicle, ['breakdowns', id, 'vehicle'], whose);
    find.inCatalogue(known.failures, 'failure', failure, ['breakdowns', id, 'failure'], whose);
    find.inFile('repairs', repair, ['breakdowns', id, 'repair'], whose);
    find.inFile('trips', trip, ['breakdowns', id, 'trip'], whose);
  }
  for (const [id, { belonging }] of Object.entries(garage.loans))
    find.inFile('belongings', belonging, ['loans', id, 'belonging'], `loan ${id}`);
  for (const [id, { job, vehicle, by, fetched }] of Object.entries(garage.drills)) {
    const whose = `drill ${id}`;
    find.inCatalogue(known.jobs, 'job', job, ['drills', id, 'job'], whose);
    find.inFile('vehicles', vehicle, ['drills', id, 'vehicle'], whose);
    find.inFile('people', by, ['drills', id, 'by'], whose);
    fetched.forEach((thing, i) => {
      find.inCatalogue(known.belongings, 'thing', thing, ['drills', id, 'fetched', i], whose);
    });
  }
  for (const [id, { trip, belonging, thing }] of Object.entries(garage.uses)) {
    const whose = `note of use ${id}`;
    find.inFile('trips', trip, ['uses', id, 'trip'], whose);
    find.inFile('belongings', belonging, ['uses', id, 'belonging'], whose);
    find.inCatalogue(known.belongings, 'thing', thing, ['uses', id, 'thing'], whose);
  }
}
