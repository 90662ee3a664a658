import { BELONGING_BY_ID } from '@waymend/catalogue/belongings/all';
import type { ImportMatch, ImportReading } from '@waymend/garage/import/reading';
import { grouped } from '@waymend/planner/words/chance';
import { heading, paragraph, table } from './layout.ts';
import type { Paint } from './paint.ts';

export interface ImportTextInput {
  readonly reading: ImportReading;
  readonly doubtful: readonly ImportMatch[];
  /** Matches whose line the garage already holds. */
  readonly repeated: number;
  /** Belongings whose mass is left out until it is confirmed. */
  readonly unbelieved: number;
  readonly list: string | null;
  readonly garage: string;
  readonly written: boolean;
  readonly paint: Paint;
}

/** What was understood, what is doubtful, and every line that was not understood. */
export function importText(input: ImportTextInput): string {
  const { reading, doubtful, repeated, unbelieved, list, garage, written, paint } = input;
  const lines: string[] = [];
  if (list !== null) {
    const pieces = reading.matches.reduce((sum, m) => sum + (m.kind === 'thing' ? m.copies : 1), 0);
    lines.push(
      ...heading(
        `${list}: ${grouped(pieces)} belongings understood, ${grouped(reading.notUnderstood.length)} lines not.`,
        paint,
      ),
    );
  }
  if (doubtful.length > 0) {
    lines.push('', 'Look again at these:');
    lines.push(
      ...table(
        [
          { title: 'line', align: 'right' },
          { title: 'typed', most: 40 },
          { title: 'understood as', grow: true },
        ],
        doubtful.map((m) => [
          String(m.line),
          m.text,
          `${nameOf(m)}${m.why === undefined ? '' : ` (${m.why})`}`,
        ]),
      ),
    );
  }
  if (reading.notUnderstood.length > 0) {
    lines.push(
      '',
      ...paragraph(
        'Not understood, and not dropped: say them in other words, or teach a word (--teach "word = meaning"):',
      ),
    );
    for (const n of reading.notUnderstood) {
      const near = n.suggestion === null ? '' : ` Nearest: ${n.suggestion}.`;
      lines.push(...paragraph(`line ${n.line}: ${n.text}: ${n.reason}.${near}`, 2, 4));
    }
  }
  if (repeated > 0)
    lines.push(
      '',
      ...paragraph(
        `${grouped(repeated)} of these stand in the garage from the same line already: this list may have been read before.`,
      ),
    );
  if (unbelieved > 0)
    lines.push(
      '',
      ...paragraph(
        `${unbelieved === 1 ? 'One mass is' : `${grouped(unbelieved)} masses are`} left out: correct the list, or add --confirm-masses to take them as they stand.`,
      ),
    );
  lines.push(
    '',
    ...paragraph(
      written ? `Written to ${garage}.` : `Nothing written yet: add --write to put them into ${garage}.`,
    ),
  );
  return `${lines.map((l) => l.trimEnd()).join('\n')}\n`;
}

function nameOf(match: ImportMatch): string {
  if (match.kind === 'set') return match.title;
  const entry = BELONGING_BY_ID.get(match.catalogueId);
  const size = match.size ?? entry?.size;
  return `${entry?.name ?? match.catalogueId}${size === undefined ? '' : `, ${size}`}`;
}
