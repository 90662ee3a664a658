import { isOddMass } from '@waymend/garage/record/odd-mass';
import { useEffect, useEffectEvent, useMemo, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../../format/use-format.ts';
import { Button } from '../../../../look/button.tsx';
import { LinkButton } from '../../../../look/link-button.tsx';
import { Sentence } from '../../../../look/parts.tsx';
import { gramsOf } from '../mass-units.ts';
import type { Row } from '../rows.ts';
import { useCatalogue } from '../use-catalogue.ts';
import { useEditThing } from '../use-edit-thing.ts';
import { useRows } from '../use-rows.ts';
import { GuessBar } from './guess-bar.tsx';
import { NumberPad } from './number-pad.tsx';
import { weighQueue } from './queue.ts';
import type { Key } from './reading.ts';
import { KEYS, readingIn, typed } from './reading.ts';
import { ScaleUnits } from './scale-units.tsx';
import { UpNext } from './up-next.tsx';
import './weigh-sheet.css';

/** With the scale on the bench: one thing after the other, heaviest guess first, and how much is still a guess. */
export function WeighSheet() {
  const { t } = useTranslation();
  const format = useFormat();
  const found = useRows();
  const [passed, setPassed] = useState<readonly string[]>([]);
  const [picked, setPicked] = useState<string | null>(null);
  const queue = useMemo(() => (found === null ? null : weighQueue(found.rows, passed)), [found, passed]);
  if (queue === null) return <h1>{t('belongings.weighTitle')}</h1>;
  const current = queue.rows.find(({ id }) => id === picked) ?? queue.rows[0];
  return (
    <div className="weigh">
      <div className="weigh-head">
        <div>
          <h1>
            {current === undefined
              ? t(queue.things === 0 ? 'belongings.weighNothing' : 'belongings.weighDone')
              : t('belongings.weighHead', { mass: format.mass(queue.estimated) })}
          </h1>
          <p className="quiet">
            {t('belongings.weighCount', {
              weighed: format.count(queue.weighedThings),
              things: format.count(queue.things),
            })}
          </p>
        </div>
        <LinkButton to="/garage/belongings">{t('belongings.back')}</LinkButton>
      </div>
      <GuessBar weighed={queue.weighed} estimated={queue.estimated} />
      {current === undefined ? (
        <Sentence>{t(queue.things === 0 ? 'belongings.emptyFirst' : 'belongings.weighDoneNext')}</Sentence>
      ) : (
        <div className="weigh-columns">
          <UpNext rows={queue.rows} current={current.id} onPick={setPicked} />
          <Scale
            key={current.id}
            row={current}
            onNext={() => setPicked(null)}
            onPass={() => {
              setPassed([...passed.filter((id) => id !== current.id), current.id]);
              setPicked(null);
            }}
          />
        </div>
      )}
    </div>
  );
}

/** The reading of one thing. Made anew for each, so that no digit of the last one stays. */
function Scale({ row, onNext, onPass }: { row: Row; onNext: () => void; onPass: () => void }) {
  const { t } = useTranslation();
  const format = useFormat();
  const catalogue = useCatalogue();
  const { change } = useEditThing(row.id, row.name);
  const [unit, setUnit] = useScaleUnit(format.units === 'inch' ? 'oz' : 'g');
  const [display, setDisplay] = useState('');
  const [asked, setAsked] = useState<number | null>(null);
  const { is, copies } = row.belonging;
  const usual = is === undefined ? null : (catalogue?.byId.get(is)?.grams ?? null);
  const reading = readingIn(display);
  const keep = (grams: number, confirmed: boolean): void => {
    change(t('belongings.stepWeighed'), { grams, weighed: true, ...(confirmed ? { confirmed } : {}) });
    onNext();
  };
  const next = (): void => {
    if (reading === null) return;
    const grams = gramsOf(reading, unit);
    if (isOddMass(grams, usual)) setAsked(grams);
    else keep(grams, false);
  };
  const press = (key: Key): void => {
    setAsked(null);
    setDisplay((before) => typed(before, key, unit));
  };
  const onKey = useEffectEvent((event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const inField =
      event.target instanceof HTMLElement && event.target.closest('input, textarea, button, a') !== null;
    const key = KEYS.find((one) => one === event.key);
    if (key !== undefined) press(key);
    else if (event.key === 'Backspace') press('back');
    else if (event.key === 'Enter' && !inField) next();
    else return;
    event.preventDefault();
  });
  useEffect(() => {
    const listen = (event: KeyboardEvent): void => onKey(event);
    window.addEventListener('keydown', listen);
    return () => window.removeEventListener('keydown', listen);
  }, []);
  return (
    <section className="scale" aria-label={t('belongings.scale')}>
      <h2>{row.size === null ? row.name : `${row.name}, ${row.size}`}</h2>
      <p className="quiet">
        {row.each === null ? (
          t('belongings.weighUnknown')
        ) : (
          <>
            {t('belongings.weighGuess')} <span className="assumed">{format.mass(row.each)}</span>
          </>
        )}
        {copies > 1 ? `, ${t('belongings.weighOneOf', { copies })}` : ''}
        {row.berth === null ? '' : `, ${row.berth}`}
      </p>
      <div className="scale-line">
        <output className="scale-display" aria-label={t('belongings.reading')}>
          {display === '' ? '\u2013' : display}
        </output>
        <ScaleUnits
          unit={unit}
          onChange={(to) => {
            setUnit(to);
            setDisplay('');
          }}
        />
      </div>
      {asked !== null && (
        <div className="thing-asks" role="alert">
          <p>
            {usual === null
              ? t('belongings.oddOwn', { mass: format.mass(asked) })
              : t('belongings.oddMass', { mass: format.mass(asked), usual: format.mass(usual) })}
          </p>
          <div className="acts">
            <Button onPress={() => keep(asked, true)}>{t('belongings.oddYes')}</Button>
            <Button
              onPress={() => {
                setAsked(null);
                setDisplay('');
              }}
            >
              {t('belongings.oddAgain')}
            </Button>
          </div>
        </div>
      )}
      <NumberPad tenths={unit === 'oz'} onKey={press} />
      <div className="scale-acts">
        <Button onPress={onPass}>{t('belongings.pass')}</Button>
        <Button main isDisabled={reading === null} onPress={next}>
          {t('belongings.weighNext')}
        </Button>
      </div>
    </section>
  );
}

/** Kept from one thing to the next: the scale on the bench stays the same. */
let kept: 'g' | 'oz' | null = null;

function useScaleUnit(usual: 'g' | 'oz'): ['g' | 'oz', (unit: 'g' | 'oz') => void] {
  const [unit, set] = useState(kept ?? usual);
  return [
    unit,
    (to) => {
      kept = to;
      set(to);
    },
  ];
}
