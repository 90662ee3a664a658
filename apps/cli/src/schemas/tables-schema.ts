import { z } from 'zod';
import { id, text } from './fields.ts';

const citation = z
  .strictObject({
    body: text('Who issued the document'),
    document: text('Document'),
    edition: text('Year or issue'),
    part: text('Clause, table or page'),
    obtained: z
      .enum(['original', 'secondary', 'recalled', 'computed', 'common-practice'])
      .describe(
        'What was read: the document, something that quotes it, nothing (from memory), or it was computed',
      ),
    through: text('What was read, when it was not the document itself').exactOptional(),
    readOn: text('Date it was read').exactOptional(),
    url: text('Where it was read').exactOptional(),
  })
  .meta({ id: 'Citation', description: 'Where the values of a table are from' });

const status = z.enum(['verified', 'computed', 'common-practice', 'estimate', 'recalled', 'gap']);

export const tablesAnswer = z
  .strictObject({
    schema: z.literal('waymend.tables/1').describe('Which answer this is'),
    lists: z
      .array(z.strictObject({ id: id('List id'), title: text('List in words') }))
      .describe('Lists of the catalogue'),
    tables: z
      .array(z.strictObject({ id: id('Table id'), title: text('Table in words'), citation }))
      .describe('Tables of standards'),
  })
  .meta({ id: 'tables', description: 'What `waymend tables --json` prints' });

const schema = z.literal('waymend.table/1').describe('Which answer this is');

const listTable = z
  .strictObject({
    schema,
    kind: z.literal('list').describe('A list of the catalogue'),
    id: id('List id'),
    title: text('List in words'),
    columns: z.array(text('Title')).describe('Titles of the columns'),
    rows: z
      .array(z.array(text('Cell')).describe('As many cells as columns'))
      .describe('Rows, in the order of the catalogue'),
  })
  .meta({ id: 'ListTable', description: 'A list of the catalogue' });

const standardTable = z
  .strictObject({
    schema,
    kind: z.literal('standard').describe('A table of a standard'),
    id: id('Table id'),
    title: text('Table in words'),
    citation,
    status: status.describe('How every cell was come by, where its row or column says nothing else'),
    columns: z
      .record(
        id('Column key'),
        z.strictObject({
          title: text('Title'),
          unit: text('Unit the source prints; `text` for words'),
          status: status.exactOptional().describe('How the cells of this column were come by'),
          gaps: z
            .literal(true)
            .exactOptional()
            .describe('Cells may be null: the source has a value that nobody supplied yet'),
        }),
      )
      .describe('Columns by key'),
    rows: z
      .array(
        z
          .record(
            id('Column key, or `status` or `note` of the row'),
            z.union([z.string(), z.number(), z.null()]),
          )
          .describe("Cells by column, in the column's unit; inch fractions as text; null for a gap"),
      )
      .describe('Rows, in the order of the source'),
    faults: z
      .array(
        z.strictObject({
          table: id('Table id'),
          check: text('Check that failed'),
          message: text('What is wrong, in a sentence'),
        }),
      )
      .describe("Breaches of the table's own checks; empty when it is sound"),
  })
  .meta({ id: 'StandardTable', description: 'A table of a standard, with its source and checks' });

export const tableAnswer = z
  .discriminatedUnion('kind', [listTable, standardTable])
  .meta({ id: 'table', description: 'What `waymend tables TABLE --json` prints' });
