import type { Garage, Person } from '@waymend/garage/record/schema';

/** A field set to undefined is a field that is not there. */
export function changePerson(garage: Garage, id: string, fields: Partial<Person>): Garage {
  const before = garage.people[id];
  if (before === undefined) return garage;
  const after = { ...before, ...fields };
  if (after.berth === undefined) delete after.berth;
  return { ...garage, people: { ...garage.people, [id]: after } };
}

export function addPerson(garage: Garage, id: string, name: string): Garage {
  const person: Person = { name, massKg: 78, skill: 2, skills: {}, practised: [] };
  return { ...garage, people: { ...garage.people, [id]: person } };
}

/** Trips on which this person is the only one aboard: a trip needs a driver. */
export function aloneOn(garage: Garage, id: string): readonly string[] {
  return Object.values(garage.trips).flatMap(({ name, people }) =>
    people.length === 1 && people[0] === id ? [name] : [],
  );
}

/** Off the record and off every trip; stays where nobody else would drive (see `aloneOn`). */
export function removePerson(garage: Garage, id: string): Garage {
  if (aloneOn(garage, id).length > 0) return garage;
  return {
    ...garage,
    people: Object.fromEntries(Object.entries(garage.people).filter(([key]) => key !== id)),
    trips: Object.fromEntries(
      Object.entries(garage.trips).map(([key, trip]) => [
        key,
        trip.people.includes(id) ? { ...trip, people: trip.people.filter((one) => one !== id) } : trip,
      ]),
    ),
  };
}

/** Skill in one system where it differs from the person's own; null: the same again. */
export function setSystemSkill(garage: Garage, id: string, system: string, skill: number | null): Garage {
  const person = garage.people[id];
  if (person === undefined) return garage;
  const others = Object.entries(person.skills).filter(([key]) => key !== system);
  const skills = Object.fromEntries(skill === null ? others : [...others, [system, skill] as const]);
  return changePerson(garage, id, { skills });
}
