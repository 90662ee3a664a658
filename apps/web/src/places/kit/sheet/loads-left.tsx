import type { LoadAnswer, Margin } from '@waymend/planner/answer/plan-answer';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { LimitBar } from '../../../look/limit-bar.tsx';
import { Block } from '../../../look/parts.tsx';

/** What axles, gross mass and roof still take with this kit aboard. */
export function LoadsLeft({ load }: { load: LoadAnswer }) {
  const { t } = useTranslation();
  return (
    <Block title={t('kit.loadsLeft')} aside={t('kit.asYouSetOut')}>
      <div className="kit-loads">
        <Bar title={t('kit.front')} margin={load.front} />
        <Bar title={t('kit.rear')} margin={load.rear} />
        <Bar title={t('kit.gross')} margin={load.gross} />
        {load.roof !== null && <Bar title={t('kit.roof')} margin={load.roof} />}
      </div>
    </Block>
  );
}

function Bar({ title, margin }: { title: string; margin: Margin }) {
  const { t } = useTranslation();
  const format = useFormat();
  const { kg, limitKg, marginKg } = margin;
  const verdict =
    marginKg === null
      ? t('kit.noLimitKnown')
      : marginKg < 0
        ? t('kit.over', { mass: format.load(Math.ceil(-marginKg)) })
        : t('kit.left', { mass: format.load(Math.floor(marginKg)) });
  const detail =
    limitKg === null ? format.load(kg) : t('kit.of', { kg: format.load(kg), limit: format.load(limitKg) });
  return <LimitBar title={title} verdict={verdict} detail={detail} value={kg} limit={limitKg} />;
}
