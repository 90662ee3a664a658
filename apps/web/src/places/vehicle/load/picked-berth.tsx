import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import type { LoadMove, Mover } from '@waymend/planner/views/load-moves';
import type { LoadSpot } from '@waymend/planner/views/load-view';
import { useFormat } from '../../../format/use-format.ts';
import { Button } from '../../../look/button.tsx';
import { Choice } from '../../../look/field.tsx';
import { Block } from '../../../look/parts.tsx';
import { useRecord } from '../../../shell/stores.tsx';
import { moveTo } from '../edits.ts';
import { moverName } from './mover-name.ts';
import { blockedWords, signed, spotName } from './words.ts';

/** What a picked berth holds, and what every other berth would make of one thing out of it, or of any 10 kg. */
export function PickedBerth({
  trip,
  spot,
  moves,
}: {
  trip: string;
  spot: LoadSpot;
  moves: readonly LoadMove[];
}) {
  const { t } = useTranslation();
  const format = useFormat();
  const { edit } = useRecord();
  const out = moves.filter(({ from }) => from === spot.id);
  const movers = new Map(out.map((m) => [moverKey(m.mover), m]));
  const first = movers.keys().next().value ?? '';
  const [key, setKey] = useState(first);
  const chosen = movers.has(key) ? key : first;
  const rows = out
    .filter((m) => moverKey(m.mover) === chosen)
    .sort((a, b) => (b.reliefKg ?? 0) - (a.reliefKg ?? 0));
  const name = spotName(spot, t);
  return (
    <Block title={t('load.outOf', { name })} aside={t('load.holds', { count: spot.aboard.length })}>
      <Contents spot={spot} />
      {movers.size === 0 ? (
        <p className="prose">{t('load.nothingMoves')}</p>
      ) : (
        <>
          <Choice
            label={t('load.whatGoes')}
            value={chosen}
            onChange={setKey}
            options={[...movers].map(([id, m]) => ({ id, label: moverName(m, t, format) }))}
          />
          <div className="scroll">
            <table className="plain-table">
              <thead>
                <tr>
                  <th scope="col">{t('load.toBerth')}</th>
                  <th scope="col" className="number">
                    {t('load.front')}
                  </th>
                  <th scope="col" className="number">
                    {t('load.rear')}
                  </th>
                  <th scope="col">
                    <span className="hidden-text">{t('load.move')}</span>
                  </th>
                </tr>
              </thead>
              <tbody>
                {rows.map((m) => (
                  <tr key={m.to}>
                    <th scope="row">
                      {m.toName}
                      {m.blocked !== null && <p className="small quiet">{blockedWords(m, t, format)}</p>}
                    </th>
                    <td className="number keep">{signed(m.frontKg, format)}</td>
                    <td className="number keep">{signed(m.rearKg, format)}</td>
                    <td className="end">
                      {m.mover.kind !== 'ten' && (
                        <Button
                          isDisabled={m.blocked !== null}
                          label={t('load.moveSaid', { name: moverName(m, t, format), to: m.toName })}
                          onPress={() =>
                            void edit(
                              t('load.moved', { name: moverName(m, t, format), to: m.toName }),
                              (garage) => moveTo(garage, trip, m.mover, m.to),
                            )
                          }
                        >
                          {t('load.move')}
                        </Button>
                      )}
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
        </>
      )}
    </Block>
  );
}

/** What rides there, the heaviest first; light pieces of the kit are counted together. */
function Contents({ spot }: { spot: LoadSpot }) {
  const { t } = useTranslation();
  const format = useFormat();
  const heavy = spot.aboard.filter(({ kind, kg }) => kind !== 'kit' || kg >= 1).sort((a, b) => b.kg - a.kg);
  const light = spot.aboard.filter(({ kind, kg }) => kind === 'kit' && kg < 1);
  const grams = (kg: number) => format.mass(Math.round(kg * 1000));
  if (spot.aboard.length === 0) return <p className="quiet">{t('load.empty')}</p>;
  return (
    <ul className="rows contents">
      {heavy.map(({ kind, id, name, kg, assumed }) => (
        <li key={`${kind} ${id}`}>
          <span className={assumed ? 'assumed' : ''}>{name}</span>
          <span className="keep">{grams(kg)}</span>
        </li>
      ))}
      {light.length > 0 && (
        <li>
          <span className="quiet">{t('load.light', { count: light.length })}</span>
          <span className="keep">{grams(light.reduce((sum, { kg }) => sum + kg, 0))}</span>
        </li>
      )}
    </ul>
  );
}

function moverKey(mover: Mover): string {
  return 'id' in mover ? `${mover.kind} ${mover.id}` : mover.kind;
}
