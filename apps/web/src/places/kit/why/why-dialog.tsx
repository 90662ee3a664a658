import type { PlanAnswer } from '@waymend/planner/answer/plan-answer';
import type { WhyAnswer } from '@waymend/planner/answer/why-answer';
import { useEffect, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from '../../../look/button.tsx';
import { Dialog } from '../../../look/dialog.tsx';
import { usePlan, useStores } from '../../../shell/stores.tsx';
import { BelongingWhySheet } from './belonging-why.tsx';
import { FailureWhySheet } from './failure-why.tsx';
import { JobWhySheet } from './job-why.tsx';
import './why.css';

export interface WhyDialogProps {
  readonly answer: PlanAnswer;
  /** Id of a belonging, job or failure; null: closed. */
  readonly what: string | null;
  readonly onClose: () => void;
}

type Told = WhyAnswer | { readonly kind: 'unknown'; readonly sentence: string };

/** The whole story of one thing in the plan; whatever it names opens in its place, with a way back. */
export function WhyDialog({ answer, what, onClose }: WhyDialogProps) {
  const { t } = useTranslation();
  const [told, setTold] = useState<Told | null>(null);
  const close = (): void => {
    setTold(null);
    onClose();
  };
  return (
    <Dialog title={titleOf(told) ?? t('why.title')} isOpen={what !== null} onClose={close}>
      {what !== null && <Story key={what} answer={answer} first={what} told={told} onTold={setTold} />}
    </Dialog>
  );
}

function Story({
  answer,
  first,
  told,
  onTold,
}: {
  answer: PlanAnswer;
  first: string;
  told: Told | null;
  onTold: (told: Told) => void;
}) {
  const { t } = useTranslation();
  const { desk } = useStores();
  const { fresh, proving } = usePlan();
  const [path, setPath] = useState<readonly string[]>([first]);
  const subject = path.at(-1) ?? first;
  useEffect(() => {
    // A question about a plan that is still being worked out waits for it.
    if (!fresh || proving) return undefined;
    let wanted = true;
    void desk.why(subject).then((reply) => {
      if (wanted) onTold(reply);
    });
    return () => {
      wanted = false;
    };
  }, [desk, subject, fresh, proving, onTold]);
  const open = (id: string): void => setPath([...path, id]);
  return (
    <div className="why">
      {path.length > 1 && <Button onPress={() => setPath(path.slice(0, -1))}>{t('why.back')}</Button>}
      {(told === null || !fresh || proving) && (
        <p role="status">{t(proving ? 'why.waits' : 'why.looking')}</p>
      )}
      {told !== null && <Told answer={answer} told={told} open={open} />}
    </div>
  );
}

function Told({ answer, told, open }: { answer: PlanAnswer; told: Told; open: (id: string) => void }) {
  const { t } = useTranslation();
  switch (told.kind) {
    case 'belonging':
      return <BelongingWhySheet why={told} answer={answer} open={open} />;
    case 'job':
      return <JobWhySheet why={told} answer={answer} />;
    case 'failure':
      return <FailureWhySheet why={told} open={open} />;
    case 'unknown':
      return <p>{told.sentence === '' ? t('why.unknown') : told.sentence}</p>;
  }
}

function titleOf(told: Told | null): string | null {
  if (told === null || told.kind === 'unknown') return null;
  return told.kind === 'belonging' ? told.name : told.title;
}
