import type { PlanAnswer } from '@waymend/planner/answer/plan-answer';
import { useEffect, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { Button } from '../../../look/button.tsx';
import { Choice, TextField } from '../../../look/field.tsx';
import { Block } from '../../../look/parts.tsx';
import { useRecord, useStores } from '../../../shell/stores.tsx';
import { useTrip } from '../../../shell/use-trip.ts';
import { tripsSentence } from '../sheet/worth-words.ts';
import { copyOf, type KitCopy } from './differ.ts';
import { dropKit, keepKit, useKeptKits } from './kept-kits.ts';
import { SideBySide } from './side-by-side.tsx';
import { WithoutPlan } from './without-plan.tsx';
import './compare.css';

const THIS = 'this';

/** Two kits or two trips side by side; and what people do without a plan, on the same scale. */
export function CompareSheet({ answer }: { answer: PlanAnswer }) {
  const { t } = useTranslation();
  const format = useFormat();
  const kept = useKeptKits();
  const { garage } = useRecord();
  const { tripId } = useTrip();
  const others = Object.entries(garage.trips).filter(([id]) => id !== tripId);
  const options = [
    { id: THIS, label: t('compare.thisKit', { trip: answer.trip.name }) },
    ...kept.map(({ name }) => ({ id: `kept:${name}`, label: name })),
    ...others.map(([id, trip]) => ({ id: `trip:${id}`, label: t('compare.trip', { trip: trip.name }) })),
  ];
  const [first, setFirst] = useState(THIS);
  const [second, setSecond] = useState<string | null>(null);
  const a = options.some(({ id }) => id === first) ? first : THIS;
  const b = options.find(({ id }) => id === second)?.id ?? options[1]?.id ?? THIS;
  const left = useSide(a, answer, kept);
  const right = useSide(b, answer, kept);
  return (
    <div className="compare">
      <header className="kit-head">
        <h1>{t('compare.title')}</h1>
        <p className="quiet prose">{t('compare.words')}</p>
      </header>
      <Keep answer={answer} />
      <div className="fields">
        <Choice label={t('compare.first')} value={a} options={options} onChange={setFirst} />
        <Choice label={t('compare.second')} value={b} options={options} onChange={setSecond} />
      </div>
      {options.length === 1 && <p>{t('compare.onlyOne')}</p>}
      {left !== null && right !== null ? (
        a !== b && <SideBySide a={left} b={right} />
      ) : (
        <p role="status">{t('compare.planning')}</p>
      )}
      {kept.length > 0 && (
        <Block title={t('compare.kept')} aside={t('compare.keptAside')}>
          <ul className="kept-list">
            {kept.map((kit) => (
              <li key={kit.name} className="kept">
                <span>
                  {kit.name}
                  <span className="small quiet kept-words">
                    {format.mass(kit.grams)}, {tripsSentence(1 - kit.unaided, format, t)}
                  </span>
                </span>
                <Button onPress={() => dropKit(kit.name)} label={t('compare.dropNamed', { name: kit.name })}>
                  {t('compare.drop')}
                </Button>
              </li>
            ))}
          </ul>
        </Block>
      )}
      <WithoutPlan rows={answer.comparisons} />
    </div>
  );
}

/** Keeps the kit as it is now under a name. */
function Keep({ answer }: { answer: PlanAnswer }) {
  const { t } = useTranslation();
  const format = useFormat();
  const kept = useKeptKits();
  const suggested = t('compare.nameFor', { trip: answer.trip.name, mass: format.mass(answer.kit.massGrams) });
  const [typed, setTyped] = useState<string | null>(null);
  const name = (typed ?? suggested).trim().slice(0, 80);
  return (
    <div className="keep-kit">
      <TextField
        label={t('compare.name')}
        hint={t('compare.nameHint')}
        value={typed ?? suggested}
        onChange={setTyped}
      />
      <Button
        isDisabled={name === ''}
        onPress={() => {
          keepKit(copyOf(answer, name));
          setTyped(null);
        }}
      >
        {t(kept.some((kit) => kit.name === name) ? 'compare.keepAgain' : 'compare.keep')}
      </Button>
    </div>
  );
}

/** A side as it was chosen; another trip is planned for it. Null while that goes on. */
function useSide(chosen: string, answer: PlanAnswer, kept: readonly KitCopy[]): KitCopy | null {
  const { t } = useTranslation();
  const { client } = useStores();
  const { garage } = useRecord();
  const [planned, setPlanned] = useState<{ readonly for: string; readonly kit: KitCopy } | null>(null);
  const trip = chosen.startsWith('trip:') ? chosen.slice(5) : null;
  useEffect(() => {
    if (trip === null) return undefined;
    let wanted = true;
    void client
      .once({ kind: 'plan', garage, trip, question: { aim: { kind: 'best-chance' } } })
      .then((reply) => {
        if (wanted && reply.kind === 'plan')
          setPlanned({ for: trip, kit: copyOf(reply.answer, reply.answer.trip.name) });
      });
    return () => {
      wanted = false;
    };
  }, [client, garage, trip]);
  if (trip !== null) return planned?.for === trip ? planned.kit : null;
  return (
    kept.find(({ name }) => chosen === `kept:${name}`) ??
    copyOf(answer, t('compare.thisKit', { trip: answer.trip.name }))
  );
}
