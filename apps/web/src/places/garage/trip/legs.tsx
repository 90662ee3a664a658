import { useTranslation } from 'react-i18next';
import type { Leg } from '@waymend/garage/record/schema';
import { useFormat } from '../../../format/use-format.ts';
import { Button } from '../../../look/button.tsx';
import { More } from '../../../look/more.tsx';
import { Balloon, Block } from '../../../look/parts.tsx';
import { freshId } from '../../../shell/fresh-id.ts';
import { useRecord } from '../../../shell/stores.tsx';
import { addLeg, legsOf, PLAIN_LEG } from './edit-trip.ts';
import { LegForm } from './leg-form.tsx';
import { RouteFigure } from './route-figure.tsx';
import { SurfaceSample } from './surface-fills.tsx';

export interface LegsProps {
  readonly tripId: string;
  readonly chosen: string | null;
  readonly onChoose: (leg: string | null) => void;
}

/** The route as a drawing, its sum, and one row for each leg that opens into its form. */
export function Legs({ tripId, chosen, onChoose }: LegsProps) {
  const { t } = useTranslation();
  const format = useFormat();
  const { garage, edit } = useRecord();
  const legs = legsOf(garage, tripId);
  const km = legs.reduce((sum, [, leg]) => sum + leg.km, 0);
  const add = async () => {
    const id = freshId('leg');
    const like = legs.at(-1)?.[1];
    const leg = { ...PLAIN_LEG, km: 100, surface: 'gravel', helpKm: 80 } as const;
    await edit(t('trip.leg.added'), (before) =>
      addLeg(before, tripId, id, {
        ...leg,
        ...(like === undefined ? {} : { surface: like.surface, helpKm: like.helpKm, stones: like.stones }),
      }),
    );
    onChoose(id);
  };
  return (
    <Block
      title={t('trip.route.title')}
      aside={
        <span className="decides" role="status">
          {t('trip.route.sum', { count: legs.length, distance: format.distance(km) })}
        </span>
      }
    >
      <p className="small quiet">{t('trip.route.scale')}</p>
      <RouteFigure legs={legs} chosen={chosen} onChoose={onChoose} />
      <ol className="legs">
        {legs.map(([id, leg], n) => (
          <li key={id} className="leg">
            <Balloon number={n + 1} />
            <SurfaceSample of={leg.surface} />
            <div className="leg-body">
              <More
                title={leg.name ?? t('trip.leg.unnamed', { number: n + 1 })}
                summary={summaryOf(leg)}
                isOpen={id === chosen}
                onOpenChange={(isOpen) => onChoose(isOpen ? id : null)}
              >
                {id === chosen && (
                  <LegForm
                    id={id}
                    leg={leg}
                    number={n + 1}
                    isFirst={n === 0}
                    isLast={n === legs.length - 1}
                  />
                )}
              </More>
            </div>
          </li>
        ))}
      </ol>
      <div>
        <Button onPress={() => void add()}>{t('trip.leg.add')}</Button>
      </div>
    </Block>
  );

  function summaryOf(leg: Leg): string {
    return t('trip.leg.summary', {
      distance: format.distance(leg.km),
      surface: t(`trip.surface.${leg.surface}`),
      help: format.distance(leg.helpKm),
    });
  }
}
