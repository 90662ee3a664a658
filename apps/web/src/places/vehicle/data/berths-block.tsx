import { useRef, useState } from 'react';
import { useTranslation } from 'react-i18next';
import type { Vehicle } from '@waymend/garage/record/schema';
import { useFormat } from '../../../format/use-format.ts';
import { Button } from '../../../look/button.tsx';
import { Block } from '../../../look/parts.tsx';
import { freshId } from '../../../shell/fresh-id.ts';
import { useRecord } from '../../../shell/stores.tsx';
import { shapeOf } from '../drawing/shapes.ts';
import { DESK, PHONE } from '../drawing/side-layout.ts';
import type { SideViewProps } from '../drawing/side-view.tsx';
import { layoutOf, SideView } from '../drawing/side-view.tsx';
import type { Berth } from '../edits.ts';
import { putBerth } from '../edits.ts';
import { useWide } from '../use-wide.ts';
import { BerthForm } from './berth-form.tsx';
import { BerthHandle } from './berth-handle.tsx';
import { dragBerth } from './drag-berth.ts';

/** Berths on the side view: drag one along, or type where it is. */
export function BerthsBlock({ id, vehicle }: { id: string; vehicle: Vehicle }) {
  const { t } = useTranslation();
  const format = useFormat();
  const { garage, edit } = useRecord();
  const wide = useWide();
  const figure = useRef<HTMLElement>(null);
  const [picked, setPicked] = useState<string | null>(null);
  const [dragged, setDragged] = useState<{ readonly id: string; readonly xMm: number } | null>(null);
  const berths = Object.entries(garage.berths)
    .filter(([, b]) => b.vehicle === id)
    .sort(([, a], [, b]) => a.xMm - b.xMm);
  const chosen = berths.find(([one]) => one === picked);
  const drawing: SideViewProps = {
    title: t('vehicle.berthPicture', { name: vehicle.name }),
    shape: shapeOf(vehicle.pattern ?? null, vehicle.kind, vehicle.features),
    wheelbaseMm: vehicle.wheelbaseMm,
    wheelbaseText: format.length(vehicle.wheelbaseMm),
    spots: berths.map(([one, b]) => ({
      id: one,
      name: b.name,
      xMm: dragged?.id === one ? dragged.xMm : b.xMm,
      roof: b.roof,
      kg: 0,
      assumed: false,
    })),
    axles: [],
    centre: null,
    paper: { ...(wide ? DESK : PHONE), axleArrow: 0, words: 44 },
    picked,
    onPick: setPicked,
    ghost: null,
  };
  const at = layoutOf(drawing);
  const spot = at.spots.find(({ id: one }) => one === picked);
  const place = (one: string, berth: Berth, xMm: number) =>
    void edit(t('vehicle.berthMoved', { name: berth.name, length: format.length(xMm) }), (g) =>
      putBerth(g, one, { ...berth, xMm }),
    );
  const add = () => {
    const one = freshId('berth');
    const berth: Berth = {
      vehicle: id,
      name: t('vehicle.newBerth'),
      xMm: Math.round(vehicle.wheelbaseMm / 10) * 10,
      roof: false,
    };
    void edit(t('vehicle.berthAdded'), (g) => putBerth(g, one, berth));
    setPicked(one);
  };
  return (
    <Block title={t('load.berths')} aside={t('vehicle.berthsAside')}>
      <figure
        ref={figure}
        className={chosen === undefined ? 'berth-figure' : 'berth-figure draggable'}
        onPointerDown={(event) => {
          if (chosen === undefined || figure.current === null) return;
          const [one, berth] = chosen;
          dragBerth(event, figure.current, at, berth.xMm, {
            onMove: (xMm) => setDragged({ id: one, xMm }),
            onEnd: (xMm) => {
              setDragged(null);
              if (xMm !== null && xMm !== berth.xMm) place(one, berth, xMm);
            },
          });
        }}
      >
        <SideView {...drawing} />
        {chosen !== undefined && spot !== undefined && (
          <BerthHandle
            name={chosen[1].name}
            xMm={dragged?.id === chosen[0] ? dragged.xMm : chosen[1].xMm}
            left={(spot.x / at.width) * 100}
            top={(spot.y / at.height) * 100}
            onMove={(xMm) => setDragged({ id: chosen[0], xMm })}
            onEnd={() => {
              if (dragged?.id !== chosen[0]) return;
              setDragged(null);
              if (dragged.xMm !== chosen[1].xMm) place(chosen[0], chosen[1], dragged.xMm);
            }}
          />
        )}
      </figure>
      <div className="acts" role="group" aria-label={t('load.berths')}>
        {berths.map(([one, b], n) => (
          <button
            key={one}
            type="button"
            className="act"
            aria-pressed={one === picked}
            onClick={() => setPicked(one === picked ? null : one)}
          >
            {n + 1} {b.name}
          </button>
        ))}
        <Button onPress={add}>{t('vehicle.addBerth')}</Button>
      </div>
      {chosen !== undefined && (
        <BerthForm
          key={chosen[0]}
          id={chosen[0]}
          berth={chosen[1]}
          onPlace={(xMm) => place(chosen[0], chosen[1], xMm)}
          onGone={() => setPicked(null)}
        />
      )}
    </Block>
  );
}
