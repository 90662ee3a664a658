import { useTranslation } from 'react-i18next';
import type { LoadMove } from '@waymend/planner/views/load-moves';
import type { LoadView } from '@waymend/planner/views/load-view';
import { useFormat } from '../../../format/use-format.ts';
import { useRecord } from '../../../shell/stores.tsx';
import { shapeOf } from '../drawing/shapes.ts';
import { DESK, keyKilograms, PHONE } from '../drawing/side-layout.ts';
import type { Ghost, SideViewProps } from '../drawing/side-view.tsx';
import { layoutOf, SideView } from '../drawing/side-view.tsx';
import { useWide } from '../use-wide.ts';
import { BerthList } from './berth-list.tsx';
import { LimitList } from './limit-list.tsx';
import { LoadKey } from './load-key.tsx';
import { Moves } from './moves.tsx';
import { PickedBerth } from './picked-berth.tsx';
import { headline, ofLimit, spotName, verdict } from './words.ts';

export interface LoadPictureProps {
  readonly trip: string;
  readonly view: LoadView;
  readonly moves: readonly LoadMove[];
  readonly planned: boolean;
  readonly picked: string | null;
  readonly onPick: (id: string | null) => void;
}

/** The sentence, the side view, its key, and the lists that say the same. */
export function LoadPicture({ trip, view, moves, planned, picked, onPick }: LoadPictureProps) {
  const { t } = useTranslation();
  const format = useFormat();
  const { garage } = useRecord();
  const wide = useWide();
  const paper = wide ? DESK : PHONE;
  const { load } = view;
  const kind = garage.vehicles[view.vehicle]?.kind ?? 'vehicle';
  const chosen = view.spots.find(({ id }) => id === picked) ?? null;
  const best = bestMove(moves, chosen?.id ?? null);
  const shown = view.spots.map((spot) => ({ ...spot, name: spotName(spot, t) }));
  const drawing: SideViewProps = {
    title: t('load.picture', { name: view.name }),
    shape: shapeOf(view.pattern, kind, garage.vehicles[view.vehicle]?.features ?? []),
    wheelbaseMm: view.wheelbaseMm,
    wheelbaseText: t(wide ? 'load.wheelbase' : 'load.wheelbaseShort', {
      length: format.length(view.wheelbaseMm),
    }),
    spots: shown,
    axles: [
      {
        title: t('load.front'),
        xMm: 0,
        ...load.front,
        verdict: verdict(load.front.marginKg, t, format),
        detail: ofLimit(load.front.kg, load.front.limitKg, t, format),
        decides: view.tightest?.of === 'front',
      },
      {
        title: t('load.rear'),
        xMm: view.wheelbaseMm,
        ...load.rear,
        verdict: verdict(load.rear.marginKg, t, format),
        detail: ofLimit(load.rear.kg, load.rear.limitKg, t, format),
        decides: view.tightest?.of === 'rear',
      },
    ],
    centre: {
      xMm: view.centreMm,
      text: t(wide ? 'load.centre' : 'load.centreShort', {
        length: format.length(view.centreMm),
        mass: format.load(load.gross.kg),
      }),
    },
    paper,
    picked: chosen?.id ?? null,
    onPick: (id) => onPick(id === picked ? null : id),
    ghost: ghostOf(best, view, format.length),
  };
  const layout = layoutOf(drawing);
  return (
    <div className="load">
      <header className="load-head">
        <h1>{headline(view, t, format)}</h1>
        <p className="quiet">
          {planned ? t('load.standing', { mass: format.load(load.gross.kg) }) : t('load.noKitYet')}
        </p>
      </header>
      <figure className="load-figure">
        <SideView {...drawing} />
        <LoadKey
          axle={{ kg: keyKilograms(layout.axleScale, paper.axleArrow), scale: layout.axleScale }}
          berth={{ kg: keyKilograms(layout.berthScale, paper.berthArrow * 1.8), scale: layout.berthScale }}
        />
      </figure>
      <LimitList view={view} />
      <div className="load-lists">
        <BerthList spots={shown} picked={chosen?.id ?? null} onPick={onPick} />
        {chosen === null ? (
          <Moves trip={trip} view={view} moves={moves} />
        ) : (
          <PickedBerth key={chosen.id} trip={trip} spot={chosen} moves={moves} />
        )}
      </div>
    </div>
  );
}

/** The best move out of the picked berth; drawn where it would go. */
function bestMove(moves: readonly LoadMove[], picked: string | null): LoadMove | null {
  if (picked === null) return null;
  const out = moves.filter(
    (m) => m.from === picked && m.mover.kind !== 'ten' && m.blocked === null && (m.reliefKg ?? 0) >= 0.5,
  );
  return out[0] ?? null;
}

function ghostOf(move: LoadMove | null, view: LoadView, length: (mm: number) => string): Ghost | null {
  const to = view.spots.find(({ id }) => id === move?.to);
  if (move === null || to === undefined) return null;
  return {
    fromMm: to.xMm + move.forwardMm,
    toMm: to.xMm,
    toId: to.id,
    text: length(Math.abs(move.forwardMm)),
  };
}
