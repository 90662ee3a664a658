import type { ReadyAnswer } from '@waymend/planner/answer/ready-answer';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { Button } from '../../../look/button.tsx';
import { LinkButton } from '../../../look/link-button.tsx';
import { SquareMark } from '../../../look/square-mark.tsx';
import { freshId } from '../../../shell/fresh-id.ts';
import { useRecord } from '../../../shell/stores.tsx';
import type { Acting } from '../use-acting.ts';
import type { ReadyTask, TaskAct } from './care-acts.ts';
import { actOf, careToday, duesOfTask, putRight } from './care-acts.ts';
import { ChargeDialog } from './charge-dialog.tsx';

/** Less than one trip in ten thousand is not worth a number. */
const LEAST_SAID = 1e-4;

export interface TaskRowProps {
  readonly task: ReadyTask;
  readonly ready: ReadyAnswer;
  readonly today: string;
  readonly act: Acting['act'];
}

/** One thing to do: why, what it risks and takes, and the press that records it as done. */
export function TaskRow({ task, ready, today, act }: TaskRowProps) {
  const { t } = useTranslation();
  const format = useFormat();
  const { garage } = useRecord();
  const [charging, setCharging] = useState(false);
  const can = actOf(task, ready, garage);
  const step = t('bags.care.stepDone', { name: task.title });
  const care = (rules: readonly string[], chargePct?: number): void => {
    const ids = rules.map(() => freshId('care'));
    const mark = { on: today, ...(chargePct === undefined ? {} : { chargePct }) };
    act(step, (g) => careToday(g, task, rules, mark, ids));
  };
  const press = (): void => {
    if (can.kind === 'charge') setCharging(true);
    else if (can.kind === 'care') care(can.rules);
    else act(step, (g) => putRight(g, task, can.kind, today));
  };
  const advice = [...new Set(duesOfTask(task, ready.dues).map((due) => due.advice))].join(' ');
  const facts = [
    task.blocks ? t('bags.care.blocks') : null,
    task.chanceLost >= LEAST_SAID ? t('bags.care.costs', { chance: format.chance(task.chanceLost) }) : null,
    task.minutes === null ? null : t('bags.care.minutes', { count: Math.round(task.minutes) }),
    task.takes.length === 0 ? null : t('bags.care.takes', { what: task.takes.join(', ') }),
  ].filter((fact) => fact !== null);
  return (
    <li className="task-row">
      <SquareMark fill={task.blocks ? 'hatched' : 'open'} crossed={task.blocks} />
      <div className="task-words">
        <p className="decides">{task.title}</p>
        <p>{task.words}.</p>
        {advice !== '' && <p>{advice}</p>}
        {facts.length > 0 && <p className="small quiet">{facts.join(' · ')}</p>}
      </div>
      <div className="task-act">
        <TaskPress can={can} name={task.title} onPress={press} />
      </div>
      {charging && can.kind === 'charge' && (
        <ChargeDialog
          name={task.title}
          onClose={() => setCharging(false)}
          onDone={(pct) => {
            setCharging(false);
            care(can.rules, pct);
          }}
        />
      )}
    </li>
  );
}

function TaskPress({ can, name, onPress }: { can: TaskAct; name: string; onPress: () => void }) {
  const { t } = useTranslation();
  if (can.kind === 'none') return null;
  if (can.kind === 'go') return <LinkButton to={can.to}>{t(`bags.care.go.${can.act}`)}</LinkButton>;
  const words = t(`bags.care.press.${can.kind}`);
  return (
    <Button onPress={onPress} label={`${words}: ${name}`}>
      {words}
    </Button>
  );
}
