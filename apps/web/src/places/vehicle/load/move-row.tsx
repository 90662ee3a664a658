import { useTranslation } from 'react-i18next';
import type { LoadMove } from '@waymend/planner/views/load-moves';
import { useFormat } from '../../../format/use-format.ts';
import { Button } from '../../../look/button.tsx';
import { useRecord } from '../../../shell/stores.tsx';
import { moveTo } from '../edits.ts';
import { moverName } from './mover-name.ts';

/** One move that helps, with what it takes off, and the button that makes it. */
export function MoveRow({ trip, move, detail }: { trip: string; move: LoadMove; detail: string }) {
  const { t } = useTranslation();
  const format = useFormat();
  const { edit } = useRecord();
  const name = moverName(move, t, format);
  const title = t('load.moved', { name, to: move.toName });
  return (
    <li className="move-row">
      <div>
        <p>{name}</p>
        <p className="small quiet">{detail}</p>
      </div>
      <p className="decides keep">{format.load(Math.round(move.reliefKg ?? 0))}</p>
      <Button
        label={t('load.moveSaid', { name, to: move.toName })}
        onPress={() => void edit(title, (garage) => moveTo(garage, trip, move.mover, move.to))}
      >
        {t('load.move')}
      </Button>
    </li>
  );
}
