import { stringify } from 'yaml';
import { z } from 'zod';
import type { Garage } from '../record/schema.ts';
import { garageFile } from '../record/schema.ts';

/**
 * A garage as YAML that `readGarage` reads back to the same garage. Fields stand in the order of the schema, entities in
 * the order of the garage, and what is as by default is left out, so that two versions differ only where they differ.
 */
export function writeGarage(garage: Garage): string {
  return stringify(brief(garageFile, garage), {
    version: '1.2',
    schema: 'core',
    lineWidth: 0,
    aliasDuplicateObjects: false,
  });
}

/** The value without defaults, keys in the schema's order. */
function brief(schema: z.core.$ZodType, value: unknown): unknown {
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodDefault) return brief(schema.unwrap(), value);
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return value;
  const entries = new Map<string, unknown>(Object.entries(value));
  if (schema instanceof z.ZodUnion) {
    const object = schema.options.find((option) => option instanceof z.ZodObject);
    return object === undefined ? value : brief(object, value);
  }
  if (schema instanceof z.ZodRecord) {
    const { valueType } = schema;
    return Object.fromEntries([...entries].map(([key, inner]) => [key, brief(valueType, inner)]));
  }
  if (!(schema instanceof z.ZodObject)) return value;
  const shape: Readonly<Record<string, z.core.$ZodType>> = schema.shape;
  return Object.fromEntries(
    Object.entries(shape).flatMap(([key, field]) => {
      const inner = entries.get(key);
      if (inner === undefined || isDefault(field, inner)) return [];
      return [[key, brief(field, inner)]];
    }),
  );
}

function isDefault(schema: z.core.$ZodType, value: unknown): boolean {
  return schema instanceof z.ZodDefault && JSON.stringify(schema.def.defaultValue) === JSON.stringify(value);
}
