import { useMemo } from 'react';
import { useTranslation } from 'react-i18next';
import type { RailPlace, RailSize, SizeRail } from '@waymend/planner/views/size-rail';
import type { SizeCure } from '@waymend/planner/views/size-cures';
import { useFormat } from '../../../format/use-format.ts';
import { Button } from '../../../look/button.tsx';
import { Block } from '../../../look/parts.tsx';
import { useRecord } from '../../../shell/stores.tsx';
import type { KitLines, VehicleRequest } from '../../../worker/vehicle/protocol.ts';
import { alwaysBring, putOnBuyingList } from '../edits.ts';
import { useAsk } from '../../../shell/use-ask.ts';
import { fitWords, listed, placeVerdict } from './rail-words.ts';

/** What the flag reads off: the places of one size, what can be done about each, the cure, and near fits. */
export function AtSize({
  trip,
  kit,
  rail,
  size,
}: {
  trip: string;
  kit: KitLines;
  rail: SizeRail;
  size: RailSize;
}) {
  const { t } = useTranslation();
  const format = useFormat();
  const cures = useCures(trip, kit, size.places);
  const fits = rail.fits.filter((f) => f.head === size.label || f.tool === size.label);
  return (
    <Block
      title={t('rail.at', { size: size.label })}
      aside={size.places.length === 0 ? t('rail.noPlace') : t('rail.places', { count: size.places.length })}
    >
      <ul className="rows at-size">
        {grouped(size.places).map(({ place, count, titles }) => (
          <li key={place.joint}>
            <div>
              <p>
                {listed(titles, t)}
                {count > titles.length && ` (${count})`}
                {place.farSide && `, ${t('rail.farSide')}`}
              </p>
              <p className="small quiet">
                <span className={place.status === 'assumed' ? 'assumed' : ''}>
                  {t(`rail.status.${place.status}`)}
                </span>
                {place.couldBe.length > 0 && ` ${t('rail.couldBe', { sizes: listed(place.couldBe, t) })}`}
                {place.jobs.length === 0 && `, ${t('rail.noJob')}`}
              </p>
            </div>
            <p className="end">{placeVerdict(place, t)}</p>
          </li>
        ))}
      </ul>
      {cures.map((cure) => (
        <Cure key={`${cure.joint} ${cure.kind}`} cure={cure} size={size} />
      ))}
      {fits.length > 0 && (
        <ul className="near-fits small">
          {fits.map((fit) => (
            <li key={`${fit.tool} ${fit.head}`} className={fit.grade === null ? 'decides' : ''}>
              {fitWords(fit, t, format)}
            </li>
          ))}
        </ul>
      )}
    </Block>
  );
}

function Cure({ cure, size }: { cure: SizeCure; size: RailSize }) {
  const { t } = useTranslation();
  const format = useFormat();
  const { edit } = useRecord();
  const place = size.places.find(({ joint }) => joint === cure.joint);
  const names = listed(
    cure.items.map(({ name }) => name),
    t,
  );
  const bring = cure.kind === 'bring';
  const title = bring ? t('rail.bringDone', { names }) : t('rail.buyDone', { names });
  const act = () =>
    edit(title, (garage) => (bring ? alwaysBring : putOnBuyingList)(garage, cure.items, cure.cents));
  return (
    <div className="cure">
      <div>
        <p>
          <span className="decides">{bring ? t('rail.bring', { names }) : t('rail.buy', { names })}</span>
        </p>
        <p className="small quiet">
          {t('rail.cureFor', { place: place?.title ?? '' })}, {format.mass(cure.grams)}
          {cure.cents !== null &&
            cure.cents > 0 &&
            `, ${t('rail.aboutMoney', { money: format.money(cure.cents) })}`}
          , {t(`rail.grade.${cure.grade}`)}
        </p>
      </div>
      <Button onPress={() => void act()} label={title}>
        {bring ? t('rail.bringIt') : t('rail.buyIt')}
      </Button>
    </div>
  );
}

/** Cures for the places that a job needs and nothing aboard undoes; the same cure is said once. */
function useCures(trip: string, kit: KitLines, places: readonly RailPlace[]): readonly SizeCure[] {
  const { garage } = useRecord();
  const open = places.filter((p) => p.missing !== null && p.jobs.length > 0).map((p) => p.joint);
  const joints = open.join('\n');
  const request = useMemo(
    (): VehicleRequest | null =>
      joints === '' ? null : { kind: 'vehicle/cures', garage, trip, kit, joints: joints.split('\n') },
    [garage, trip, kit, joints],
  );
  const { reply, fresh } = useAsk(request);
  if (!fresh || reply?.kind !== 'vehicle/cures') return [];
  const seen = new Set<string>();
  return reply.cures.filter(({ items }) => {
    const key = items.map(({ id }) => id).join();
    if (items.length === 0 || seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

/** Places that are alike in everything said here share a line. */
function grouped(
  places: readonly RailPlace[],
): readonly { readonly place: RailPlace; readonly count: number; readonly titles: readonly string[] }[] {
  const groups = new Map<string, RailPlace[]>();
  for (const place of places) {
    const key = [
      place.status,
      place.grade,
      place.missing,
      place.jobs.length > 0,
      place.farSide,
      place.couldBe.join(),
    ].join();
    groups.set(key, [...(groups.get(key) ?? []), place]);
  }
  return [...groups.values()].flatMap((alike) => {
    const [place] = alike;
    return place === undefined
      ? []
      : [{ place, count: alike.length, titles: [...new Set(alike.map(({ title }) => title))] }];
  });
}
