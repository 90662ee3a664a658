import { lend, loanLedger, takeBack } from '@waymend/garage/road/loans';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { dayWords } from '../../../format/day-words.ts';
import { Button } from '../../../look/button.tsx';
import { DayField } from '../../../look/day-field.tsx';
import { Choice, TextField } from '../../../look/field.tsx';
import { More } from '../../../look/more.tsx';
import { Block } from '../../../look/parts.tsx';
import { freshId } from '../../../shell/fresh-id.ts';
import { useRecord } from '../../../shell/stores.tsx';
import type { Acting } from '../use-acting.ts';
import { nameIn, useThings } from '../use-things.ts';

/** What is in other hands, with a press when it is back, and a new loan. */
export function LoansBlock({ today, act }: { today: string; act: Acting['act'] }) {
  const { t } = useTranslation();
  const { garage } = useRecord();
  const things = useThings();
  const out = loanLedger(garage, today).filter(({ backOn }) => backOn === null);
  const mine = Object.entries(garage.belongings)
    .filter(([, thing]) => thing.copies > 0 && !thing.forSale && thing.state !== 'lent')
    .map(([id]) => ({ id, label: nameIn(garage, things, id) }))
    .sort((a, b) => a.label.localeCompare(b.label, 'en', { numeric: true }));
  const [what, setWhat] = useState('');
  const [to, setTo] = useState('');
  const [due, setDue] = useState('');
  const chosen = mine.find(({ id }) => id === what);
  return (
    <Block title={t('bags.care.loans')} aside={t('bags.care.loansOut', { count: out.length })}>
      {out.length > 0 && (
        <ul className="plain-rows">
          {out.map((line) => {
            const name = nameIn(garage, things, line.belonging);
            return (
              <li key={line.id} className="loan-row">
                <span>
                  <span className="decides">{line.copies > 1 ? `${line.copies} x ${name}` : name}</span>{' '}
                  {t('bags.care.loanLine', { to: line.to, on: dayWords(line.on) })}
                  {line.dueOn !== null && ` ${t('bags.care.loanDue', { on: dayWords(line.dueOn) })}`}
                  {line.daysLate > 0 && (
                    <span className="decides"> {t('bags.care.loanLate', { count: line.daysLate })}</span>
                  )}
                </span>
                <Button
                  label={t('bags.care.loanBackLabel', { name })}
                  onPress={() =>
                    act(t('bags.care.stepLoanBack', { name }), (g) => takeBack(g, line.id, today))
                  }
                >
                  {t('bags.care.press.loan-back')}
                </Button>
              </li>
            );
          })}
        </ul>
      )}
      <More title={t('bags.care.lend')}>
        <div className="lend-fields">
          <Choice
            label={t('bags.care.lendWhat')}
            value={what}
            onChange={setWhat}
            options={[{ id: '', label: t('bags.care.lendChoose') }, ...mine]}
          />
          <TextField
            label={t('bags.care.lendTo')}
            value={to}
            onChange={(name) => setTo(name.slice(0, 100))}
          />
          <DayField label={t('bags.care.lendDue')} value={due} onChange={setDue} />
          <Button
            isDisabled={chosen === undefined || to.trim() === ''}
            onPress={() => {
              const id = freshId('loan');
              const apart = freshId('lent');
              const done = act(t('bags.care.stepLent', { name: chosen?.label ?? '' }), (g) =>
                lend(
                  g,
                  {
                    id,
                    belonging: what,
                    copies: 1,
                    to: to.trim(),
                    on: today,
                    ...(due === '' ? {} : { dueOn: due }),
                  },
                  () => apart,
                ),
              );
              if (!done) return;
              setWhat('');
              setTo('');
              setDue('');
            }}
          >
            {t('bags.care.lendAct')}
          </Button>
        </div>
      </More>
    </Block>
  );
}
