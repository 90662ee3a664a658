import { z } from 'zod';
import { garageFile } from '../record/schema.ts';

/** JSON Schema (draft 2020-12) of the garage file as a person writes it: defaults may be left out. */
export function garageJsonSchema(): Record<string, unknown> {
  return {
    ...z.toJSONSchema(garageFile, { io: 'input' }),
    title: 'Waymend garage file',
    description:
      'Vehicles, people, belongings, bags and trips of one owner; entities are flat and keyed by stable ids.',
  };
}
