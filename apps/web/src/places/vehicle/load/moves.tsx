import { useTranslation } from 'react-i18next';
import type { LoadMove } from '@waymend/planner/views/load-moves';
import type { LoadView } from '@waymend/planner/views/load-view';
import { useFormat } from '../../../format/use-format.ts';
import { Block } from '../../../look/parts.tsx';
import { MoveRow } from './move-row.tsx';
import { offWhat } from './words.ts';

/** Lines shown before a berth is picked. */
const SHOWN = 5;

/** The moves that take most off the limit that comes first, one for each thing. */
export function Moves({ trip, view, moves }: { trip: string; view: LoadView; moves: readonly LoadMove[] }) {
  const { t } = useTranslation();
  const format = useFormat();
  const helping = bestOfEach(moves).slice(0, SHOWN);
  return (
    <Block title={t('load.movesThatHelp')} aside={offWhat(view, t)}>
      {view.tightest?.of === 'gross' && <p className="prose small quiet">{t('load.grossNoMove')}</p>}
      {helping.length === 0 ? (
        <p className="prose">{t('load.noMove')}</p>
      ) : (
        <ul className="rows">
          {helping.map((move) => (
            <MoveRow
              key={`${move.name} ${move.from} ${move.to}`}
              trip={trip}
              move={move}
              detail={t('load.fromTo', {
                from: view.spots.find(({ id }) => id === move.from)?.name ?? '',
                to: move.toName,
                length: format.length(Math.abs(move.forwardMm)),
                way: move.forwardMm >= 0 ? t('load.forward') : t('load.backward'),
              })}
            />
          ))}
        </ul>
      )}
    </Block>
  );
}

/** Moves are sorted best first: the first of each thing that gives half a kilogram or more. */
function bestOfEach(moves: readonly LoadMove[]): readonly LoadMove[] {
  const seen = new Set<string>();
  return moves.filter((m) => {
    const key = `${m.mover.kind} ${m.name} ${m.from}`;
    if (m.mover.kind === 'ten' || m.blocked !== null || (m.reliefKg ?? 0) < 0.5 || seen.has(key))
      return false;
    seen.add(key);
    return true;
  });
}
