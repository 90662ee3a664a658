import type { Garage } from '@waymend/garage/record/schema';
import type { Question } from '@waymend/planner/plan/plan-trip';
import { useCallback, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from '../../../look/button.tsx';
import { DayField } from '../../../look/day-field.tsx';
import { Block } from '../../../look/parts.tsx';
import { dateOf } from '../../../shell/date-of.ts';
import { useRecord, useStores } from '../../../shell/stores.tsx';
import { useTrip } from '../../../shell/use-trip.ts';
import { fileName, saveFile } from '../../garage/record/save-file.ts';
import { NeedsPlan } from '../../kit/needs-plan.tsx';
import { useActing } from '../use-acting.ts';
import { usePlanAsk } from '../use-plan-ask.ts';
import { LaterDues } from './later-dues.tsx';
import { leavingDay, sayLeavingDay } from './leaving-day.ts';
import { LoansBlock } from './loans-block.tsx';
import { RepairsBlock } from './repairs-block.tsx';
import { TaskRow } from './task-row.tsx';

/** Whether the planned kit is ready to leave, and the shortest list of things to do, the riskiest first. */
export function CareSheet() {
  return <NeedsPlan>{() => <Readiness />}</NeedsPlan>;
}

function Readiness() {
  const { t } = useTranslation();
  const { garage } = useRecord();
  const { tripId } = useTrip();
  const { today: clock } = useStores();
  const today = dateOf(clock());
  const [leaving, setLeaving] = useState(leavingDay(tripId) ?? today);
  const leaveOn = leaving < today ? today : leaving;
  const { refused, act } = useActing();
  const make = useCallback(
    (g: Garage, trip: string, question: Question) =>
      ({ kind: 'bags/ready', garage: g, trip, question, today, leaveOn }) as const,
    [today, leaveOn],
  );
  const { reply, fresh } = usePlanAsk(make);
  const told = reply?.kind === 'bags/ready' ? reply : null;
  return (
    <div className={reply === null ? 'bags-sheet waiting' : 'bags-sheet'}>
      <div className="care-head">
        <div>
          <h1>{told === null ? t('bags.care.title') : t(`bags.care.status.${told.ready.status}`)}</h1>
          <p role="status">{told === null ? t('bags.care.asking') : afterHeadline(told.ready.words)}</p>
          <p className="small quiet care-fresh">
            {told === null ? '' : fresh ? t('bags.care.fresh') : t('bags.care.again')}
          </p>
        </div>
        <DayField
          label={t('bags.care.leaving')}
          hint={leaving < today ? t('bags.care.leavingPast') : t('bags.care.leavingHint')}
          value={leaving}
          onChange={(day) => {
            if (day === '') return;
            setLeaving(day);
            if (tripId !== null) sayLeavingDay(tripId, day);
          }}
        />
      </div>
      {refused !== null && (
        <p role="alert" className="decides">
          {refused}
        </p>
      )}
      {reply?.kind === 'refused' && <p role="alert">{reply.refusals[0]?.message}</p>}
      {told !== null && (
        <>
          <Block
            title={t('bags.care.todo')}
            aside={
              told.ready.tasks.length === 0
                ? t('bags.care.nothing')
                : t('bags.care.minutesInAll', { count: Math.round(told.ready.minutes) })
            }
          >
            <ol className="tasks">
              {told.ready.tasks.map((task) => (
                <TaskRow key={task.id} task={task} ready={told.ready} today={today} act={act} />
              ))}
            </ol>
            <LaterDues dues={told.ready.dues} />
            <div className="acts">
              <Button
                onPress={() =>
                  saveFile(
                    told.calendar,
                    `${fileName(`${garage.name} ${t('bags.care.calendarFile')}`, clock(), 'care')}.ics`,
                    'text/calendar',
                  )
                }
              >
                {t('bags.care.calendar')}
              </Button>
            </div>
          </Block>
          <RepairsBlock repairs={told.ready.repairs} />
        </>
      )}
      {/* After what is asked for, or it would be pushed down when that comes. */}
      {reply !== null && (
        <>
          <LoansBlock today={today} act={act} />
          <p className="small quiet prose">{t('bags.care.caution')}</p>
        </>
      )}
    </div>
  );
}

/** The headline says how it stands; the sentence beneath says the rest. */
function afterHeadline(words: string): string {
  const rest = words.slice(words.indexOf(': ') + 2);
  return rest.charAt(0).toUpperCase() + rest.slice(1);
}
