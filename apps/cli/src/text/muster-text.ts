import type { ChangedChance } from '@waymend/planner/ready/changed-chance';
import type { RestockLine } from '@waymend/planner/ready/restock';
import { percent } from '@waymend/planner/words/chance';
import { moneyText } from '@waymend/planner/words/money';
import type { MusterLine } from '../commands/muster.ts';
import { heading, paragraph, table } from './layout.ts';
import type { Paint } from './paint.ts';

export interface MusterAnswer {
  readonly schema: 'waymend.muster/1';
  readonly file: string;
  readonly written: boolean;
  readonly musters: readonly MusterLine[];
  readonly restock: readonly RestockLine[];
  readonly chance: ChangedChance | null;
}

const WHY: Readonly<Record<RestockLine['why'], string>> = {
  lost: 'lost',
  used: 'used up',
  damaged: 'damaged: mend or replace it',
  begun: 'begun: so much is missing',
  'wished-for': 'wished for',
};

/** Musters with what is out, what to restock, and what a closing changed. */
export function musterText(answer: MusterAnswer, currency: string, changed: boolean, paint: Paint): string {
  const { musters, restock, chance } = answer;
  const lines: string[] = [];
  if (musters.length === 0) lines.push('No muster is recorded.');
  for (const m of musters) {
    const state = m.closedOn === null ? 'open: the bonnet stays up' : `closed on ${m.closedOn}`;
    lines.push(
      ...heading(`${m.id}, ${m.openedOn}${m.job === null ? '' : `, for ${m.job}`}: ${state}`, paint),
    );
    if (m.closedOn !== null) continue;
    lines.push(
      ...table(
        [
          { title: 'what', grow: true },
          { title: 'id', most: 28 },
          ...['out', 'back', 'lost', 'damaged', 'used', 'missing'].map((title) => ({
            title,
            align: 'right' as const,
          })),
        ],
        m.counts.map((c) => [
          c.name,
          c.belonging,
          ...[c.out, c.back, c.lost, c.damaged, c.used, c.missing].map(String),
        ]),
      ),
    );
  }
  if (restock.length > 0) {
    lines.push('', ...heading('To restock', paint));
    lines.push(
      ...table(
        [
          { title: '', align: 'right' },
          { title: '', grow: true },
          { title: '' },
          { title: '', align: 'right' },
        ],
        restock.map((r) => [
          String(r.amount),
          r.name,
          WHY[r.why],
          r.cents === null ? '' : `about ${moneyText(r.cents, currency)}`,
        ]),
      ),
    );
  }
  if (chance !== null) {
    lines.push('', ...paragraph(chance.words));
    lines.push(
      ...chance.weaker
        .slice(0, 12)
        .flatMap((w) =>
          paragraph(
            `${w.title}: put right in ${percent(w.before)} of cases before, in ${percent(w.after)} now${w.now === null ? '' : ` (${w.now})`}.`,
            2,
            4,
          ),
        ),
    );
  }
  if (changed)
    lines.push(
      '',
      ...paragraph(
        answer.written
          ? `Written to ${answer.file}.`
          : `Nothing written yet: add --write to put this into ${answer.file}.`,
      ),
    );
  return `${lines.map((l) => l.trimEnd()).join('\n')}\n`;
}
