import type { Garage } from '@waymend/garage/record/schema';

/** One act of an owner in a hurry: a change of the garage, or taking the last one back. */
export type Act =
  | { readonly kind: 'edit'; readonly title: string; readonly change: (g: Garage) => Garage }
  | { readonly kind: 'undo' };

/** Acts of one sequence, the same for the same number wherever they are made: in the page, and in the test that knows better. */
export function actsOf(sequence: number, count: number): readonly Act[] {
  const random = mulberry(sequence * 7919 + 17);
  const acts: Act[] = [];
  const made: string[] = [];
  let standing = 0;
  for (let n = 0; n < count; n += 1) {
    const choice = random();
    const known = made[Math.floor(random() * made.length)];
    if (choice < 0.15 && standing > 0) {
      acts.push({ kind: 'undo' });
      standing -= 1;
      continue;
    }
    standing += 1;
    if (choice < 0.4 && known !== undefined)
      acts.push({ kind: 'edit', title: `Rename ${known}`, change: put(known, `bag ${n}`, n * 10) });
    else if (choice < 0.5 && known !== undefined)
      acts.push({ kind: 'edit', title: `Remove ${known}`, change: without(known, n) });
    else if (choice < 0.6) acts.push({ kind: 'edit', title: `Import ${n}`, change: (g) => many(g, n) });
    else {
      const id = `s${sequence}n${n}`;
      made.push(id);
      acts.push({ kind: 'edit', title: `Add ${id}`, change: put(id, `new ${n}`, n) });
    }
  }
  return acts;
}

/** What the garage must look like after each of the acts, the start first. */
export function statesOf(start: Garage, acts: readonly Act[]): readonly Garage[] {
  const states = [start];
  const past: Garage[] = [];
  let now = start;
  for (const act of acts) {
    if (act.kind === 'undo') now = past.pop() ?? now;
    else {
      past.push(now);
      now = act.change(now);
    }
    states.push(now);
  }
  return states;
}

/** Every change also counts upwards in the name, so that no act leaves the garage as it was. */
const counted = (garage: Garage, n: number): Garage => ({ ...garage, name: `after ${n}` });

const put =
  (id: string, name: string, grams: number) =>
  (garage: Garage): Garage =>
    counted({ ...garage, bags: { ...garage.bags, [id]: { name, grams } } }, Number(name.split(' ')[1]));

function without(id: string, n: number): (garage: Garage) => Garage {
  return (garage) => {
    const { [id]: _, ...bags } = garage.bags;
    return counted({ ...garage, bags }, n);
  };
}

/** A pasted list: many things in one step, all of it or nothing. */
function many(garage: Garage, n: number): Garage {
  const added = Array.from(
    { length: 40 },
    (_, i) => [`many${n}x${i}`, { name: `row ${i}`, grams: i }] as const,
  );
  return counted({ ...garage, bags: { ...garage.bags, ...Object.fromEntries(added) } }, n);
}

/** Small, repeatable numbers in 0..1 (the generator called mulberry32, public domain). */
export function mulberry(start: number): () => number {
  let state = start >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
