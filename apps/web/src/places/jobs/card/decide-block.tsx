import type { CourseCard, JobCard } from '@waymend/planner/answer/card-answer';
import { useTranslation } from 'react-i18next';
import { useFieldUnit } from '../../../format/use-field-unit.ts';
import { useFormat } from '../../../format/use-format.ts';
import { Check } from '../../../look/check.tsx';
import { NumberField } from '../../../look/field.tsx';
import { Block, Caution } from '../../../look/parts.tsx';
import { QuantityField } from '../../../look/quantity-field.tsx';
import { SquareMark } from '../../../look/square-mark.tsx';
import type { Roadside } from '../roadside.ts';

const FARTHEST_KM = 5000;

/** Fix, limp, wait or call: each with its reasons, the suggested one first, and what the advice goes by below. */
export function DecideBlock({
  card,
  said,
  onSay,
}: {
  card: JobCard;
  said: Roadside;
  onSay: (change: Partial<Roadside>) => void;
}) {
  const { t } = useTranslation();
  const format = useFormat();
  const distance = useFieldUnit('distance');
  const { before, courses } = card.decision;
  return (
    <Block title={t('jobs.decide.title')}>
      {before.length > 0 && (
        <Caution>
          {before.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </Caution>
      )}
      <ol className="courses">
        {courses.map((course) => (
          <Course key={course.course} course={course} />
        ))}
      </ol>
      <div className="decide-asks">
        <QuantityField
          label={t('jobs.decide.help')}
          hint={
            card.help.from === 'said'
              ? t('jobs.decide.helpSaid')
              : t('jobs.decide.helpWorst', { distance: format.distance(card.help.km) })
          }
          unit={distance}
          value={said.helpKm}
          onChange={(helpKm) => onSay({ helpKm })}
          least={0}
          most={FARTHEST_KM}
        />
        <NumberField
          label={t('jobs.decide.water')}
          unit={t('jobs.decide.days')}
          value={said.waterDays}
          onChange={(waterDays) => onSay({ waterDays })}
          least={0}
          most={365}
          digits={1}
        />
        {!said.dark && (
          <NumberField
            label={t('jobs.decide.daylight')}
            unit={t('jobs.decide.hours')}
            value={said.daylightHours}
            onChange={(daylightHours) => onSay({ daylightHours })}
            least={0}
            most={24}
            digits={1}
          />
        )}
      </div>
      <div className="decide-checks">
        <Check isOn={said.hurt} onChange={(hurt) => onSay({ hurt })}>
          {t('jobs.decide.hurt')}
        </Check>
        <Check isOn={said.danger} onChange={(danger) => onSay({ danger })}>
          {t('jobs.decide.danger')}
        </Check>
        <Check isOn={said.convoy} onChange={(convoy) => onSay({ convoy })}>
          {t('jobs.decide.convoy')}
        </Check>
      </div>
    </Block>
  );
}

const FILL = { first: 'solid', may: 'open', not: 'open' } as const;

function Course({ course: { course, verdict, reasons } }: { course: CourseCard }) {
  const { t } = useTranslation();
  return (
    <li className={verdict === 'first' ? 'course first' : 'course'}>
      <SquareMark fill={FILL[verdict]} crossed={verdict === 'not'} />
      <span className="piece-what">
        <b>
          {t(`jobs.decide.course.${course}`)}{' '}
          <span className="small quiet course-verdict">{t(`jobs.decide.verdict.${verdict}`)}</span>
        </b>
        {reasons.map((reason) => (
          <span key={reason}>{reason}</span>
        ))}
      </span>
    </li>
  );
}
