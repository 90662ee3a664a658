import { BELONGING_BY_ID } from '@waymend/catalogue/belongings/all';
import Papa from 'papaparse';
import type { Garage } from '../record/schema.ts';

const COLUMNS = [
  'id',
  'name',
  'size',
  'count',
  'weight (g)',
  'price',
  'bag',
  'berth',
  'inside',
  'state',
  'note',
  'line',
] as const;

/**
 * The belongings as CSV for a table program. Text that such a program would compute (it begins with = + - or @) gets an
 * apostrophe in front, which `readTable` takes off again.
 */
export function exportCsv(garage: Garage, delimiter: ',' | ';' = ','): string {
  const rows = Object.entries(garage.belongings).map(([id, belonging]) => {
    const entry = belonging.is === undefined ? undefined : BELONGING_BY_ID.get(belonging.is);
    return [
      id,
      belonging.name ?? entry?.name ?? '',
      belonging.size ?? entry?.size ?? '',
      belonging.copies,
      belonging.grams ?? entry?.grams ?? '',
      belonging.price ?? '',
      nameIn(garage.bags, belonging.bag),
      nameIn(garage.berths, belonging.berth),
      belonging.inside ?? '',
      belonging.state,
      belonging.note ?? '',
      belonging.line ?? '',
    ];
  });
  return `${Papa.unparse({ fields: [...COLUMNS], data: rows }, { escapeFormulae: true, delimiter, newline: '\n' })}\n`;
}

function nameIn(table: Readonly<Record<string, { readonly name: string }>>, id: string | undefined): string {
  return id === undefined ? '' : (table[id]?.name ?? id);
}
