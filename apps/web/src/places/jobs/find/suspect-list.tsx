import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { Balloon, Block, Sentence } from '../../../look/parts.tsx';
import { GradeMark, markOf } from '../../../look/grade-mark.tsx';
import { More } from '../../../look/more.tsx';
import type { JobsReply } from '../../../worker/jobs/protocol.ts';
import { RowLink } from '../row-link.tsx';

type Symptom = Extract<JobsReply, { kind: 'jobs/symptom' }>['symptom'];
type Suspect = Symptom['suspects'][number];

/** So many are read by torchlight; the rest are folded away. */
const SHOWN = 4;
/** Above this, 'about 10 in 10' would claim too much. */
const ALMOST = 0.95;

/** What it may be, the likeliest first, each with its chance in words and the jobs that put it right. */
export function SuspectList({ card }: { card: Symptom }) {
  const { t } = useTranslation();
  const first = card.suspects.slice(0, SHOWN);
  const rest = card.suspects.slice(SHOWN);
  return (
    <Block title={t('jobs.symptom.likely')} aside={t('jobs.symptom.ofTen')}>
      {card.stop !== null && <Sentence strong>{card.stop}</Sentence>}
      <ol className="suspects">
        {first.map((suspect, n) => (
          <SuspectRow key={suspect.failure} suspect={suspect} number={n + 1} />
        ))}
      </ol>
      {rest.length > 0 && (
        <More title={t('jobs.symptom.rest', { count: rest.length })}>
          <ol className="suspects" start={SHOWN + 1}>
            {rest.map((suspect, n) => (
              <SuspectRow key={suspect.failure} suspect={suspect} number={SHOWN + n + 1} />
            ))}
          </ol>
        </More>
      )}
      <p className="small quiet prose">{card.basis}</p>
    </Block>
  );
}

function SuspectRow({ suspect, number }: { suspect: Suspect; number: number }) {
  const { t } = useTranslation();
  const format = useFormat();
  return (
    <li className="suspect">
      <div className="suspect-head">
        <Balloon number={number} />
        <h3>{suspect.title}</h3>
        <span className="decides keep">
          {suspect.share > ALMOST ? t('jobs.symptom.nearly') : format.chance(suspect.share)}
        </span>
      </div>
      {suspect.against.length > 0 && (
        <p className="small quiet">{t('jobs.symptom.against', { questions: suspect.against.join(' ') })}</p>
      )}
      {suspect.stop !== null && <Sentence>{suspect.stop}</Sentence>}
      <ul className="big-rows">
        {suspect.jobs.map(({ id, title, grade, inStock }) => (
          <li key={id}>
            <RowLink to={`/jobs/card/${id}`} mark={<GradeMark mark={inStock ? markOf(grade) : 'missing'} />}>
              {title}{' '}
              <span className="small quiet">
                {!inStock && grade !== null ? t('jobs.symptom.noStock') : t(`jobs.can.${grade ?? 'not'}`)}
              </span>
            </RowLink>
          </li>
        ))}
      </ul>
    </li>
  );
}
