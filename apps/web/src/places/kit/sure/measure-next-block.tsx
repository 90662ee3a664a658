import type { MeasureNext, SureAnswer } from '@waymend/planner/answer/sure-answer';
import { useTranslation } from 'react-i18next';
import { Link } from 'wouter';
import { useFormat } from '../../../format/use-format.ts';
import { Block } from '../../../look/parts.tsx';
import { few } from './few.ts';

/** Less than one trip in 10,000 is not worth a walk. */
const LEAST = 1e-4;

/** Assumed sizes that are worth knowing before choosing, most gained first. */
export function MeasureNextBlock({ answer }: { answer: SureAnswer }) {
  const { t } = useTranslation();
  const worthwhile = answer.measureNext.filter(({ gain }) => gain >= LEAST);
  return (
    <Block title={t('sure.measure')} aside={t('sure.measureAside')}>
      {worthwhile.length === 0 ? (
        <p className="prose">{t('sure.measureNone')}</p>
      ) : (
        <ul>
          {worthwhile.map((one) => (
            <Row key={one.joint} one={one} />
          ))}
        </ul>
      )}
      {answer.notLookedInto > 0 && (
        <p className="small quiet">{t('sure.notLooked', { count: answer.notLookedInto })}</p>
      )}
      <p>
        <Link href="/vehicle/walk" className="word-link">
          {t('sure.toWalk')}
        </Link>
      </p>
    </Block>
  );
}

function Row({ one }: { one: MeasureNext }) {
  const { t } = useTranslation();
  const format = useFormat();
  const weigh = ({ likely, best, planned }: MeasureNext['others'][number]): number =>
    likely * (best - planned);
  const [most] = [...one.others].sort((a, b) => weigh(b) - weigh(a));
  return (
    <li className="sure-row">
      <span>
        {one.title}, {t('sure.assumed', { size: one.assumed })}
      </span>
      <span>{format.oneIn(one.gain)}</span>
      <span className="small quiet">
        {most !== undefined &&
          most.joins.length > 0 &&
          `${t('sure.ifOther', { size: most.size, names: few(most.joins, t) })} `}
        {one.how.charAt(0).toUpperCase()}
        {one.how.slice(1)}.
      </span>
    </li>
  );
}
