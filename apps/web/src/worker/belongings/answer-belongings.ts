import { BELONGINGS } from '@waymend/catalogue/belongings/all';
import { BOXED_SETS } from '@waymend/catalogue/boxed-sets';
import { parseSize } from '@waymend/core/fastening/size';
import type { Refusal, Result } from '@waymend/core/result';
import { nearestStandard } from '@waymend/garage/file/check-sizes';
import { isOfAStandard } from '@waymend/garage/file/standard-sizes';
import { exportCsv } from '@waymend/garage/import/export-csv';
import { findThings } from '@waymend/garage/import/find-things';
import { importInto } from '@waymend/garage/import/import-into';
import { emptyGarage } from '@waymend/garage/log/empty-garage';
import { teach } from '@waymend/garage/import/own-words';
import { readAny } from '@waymend/garage/import/read-any';
import { readList } from '@waymend/garage/import/read-list';
import type { ImportMatch, ImportReading } from '@waymend/garage/import/reading';
import type { Garage } from '@waymend/garage/record/schema';
import { catalogueView } from '@waymend/planner/views/catalogue-view';
import { nameOf } from '@waymend/planner/scene/pieces';
import type { Reply } from '../protocol.ts';
import type { BelongingsRequest, Into, Suggested } from './protocol.ts';

const EMPTY: ImportReading = { matches: [], notUnderstood: [], headings: [] };

/** A garage with nothing in it but what is handed over. */
function garageOf(parts: Partial<Garage>): Garage {
  return { ...emptyGarage(), ...parts };
}

/** Answers one request of the belongings screens; only reads and makes, what is kept the page decides. */
export async function answerBelongings(request: BelongingsRequest): Promise<Reply> {
  switch (request.kind) {
    case 'belongings/catalogue':
      return { kind: 'belongings/catalogue', view: catalogueView(BELONGINGS) };
    case 'belongings/find':
      return { kind: 'belongings/found', ids: findThings(request.text, { words: request.words }) };
    case 'belongings/read': {
      // An empty field is not a refusal: nothing has been typed yet.
      if (request.text.trim() === '') return readingReply(EMPTY, null);
      return replyOf(readList(request.text, { words: request.words }), (reading) =>
        readingReply(reading, null),
      );
    }
    case 'belongings/read-file': {
      const { bytes, name, words } = request;
      return replyOf(await readAny(bytes, { name, words }), ({ reading, list }) =>
        readingReply(reading, list),
      );
    }
    case 'belongings/make':
      return made(request.into, request.matches);
    case 'belongings/teach': {
      const { words, word, means } = request;
      return replyOf(teach(garageOf({ words }), word, means), (garage) => ({
        kind: 'belongings/taught',
        words: garage.words,
      }));
    }
    case 'belongings/size':
      return replyOf(parseSize(request.text), (size) => {
        const odd = !isOfAStandard(size, 'tool');
        return {
          kind: 'belongings/size',
          label: size.label,
          odd,
          nearest: odd ? nearestStandard(size) : null,
        };
      });
    case 'belongings/csv':
      return { kind: 'text', text: exportCsv(request.garage) };
  }
}

function readingReply(reading: ImportReading, list: string | null): Reply {
  const names = new Set(reading.notUnderstood.flatMap(({ suggestion }) => suggestion ?? []));
  const suggested = [...names].flatMap((name): [string, Suggested][] => {
    const thing =
      BELONGINGS.find((entry) => nameOf(entry) === name) ?? BELONGINGS.find((entry) => entry.name === name);
    if (thing !== undefined) return [[name, { kind: 'thing', id: thing.id }]];
    const set = BOXED_SETS.find(({ title }) => title === name);
    return set === undefined ? [] : [[name, { kind: 'set', id: set.id }]];
  });
  return { kind: 'belongings/reading', reading, suggested: Object.fromEntries(suggested), list };
}

function made(into: Into, matches: readonly ImportMatch[]): Reply {
  const { garage, added, repeated, unbelieved } = importInto(garageOf(into), matches);
  const fresh = added.flatMap((id) => {
    const one = garage.belongings[id];
    return one === undefined ? [] : [[id, one] as const];
  });
  const again = new Set(repeated);
  return {
    kind: 'belongings/made',
    added: Object.fromEntries(fresh),
    repeated: matches.flatMap((match, i) => (again.has(match) ? [i] : [])),
    unbelieved: unbelieved.map(({ sentence }) => sentence),
  };
}

function replyOf<T>(result: Result<T>, reply: (value: T) => Reply): Reply {
  return result.ok ? reply(result.value) : refused(result.error);
}

function refused(refusal: Refusal): Reply {
  return { kind: 'refused', refusals: [refusal] };
}
