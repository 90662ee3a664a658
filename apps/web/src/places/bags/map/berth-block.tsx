import type { StowedBag, StowedBerth, StowedItem } from '@waymend/planner/answer/stow-answer';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { Button } from '../../../look/button.tsx';
import { Block } from '../../../look/parts.tsx';
import type { Things } from '../use-things.ts';
import { BagDrawing } from './bag-drawing.tsx';
import { BagList, PieceWords } from './bag-list.tsx';

export interface BerthBlockProps {
  readonly berth: StowedBerth;
  readonly bags: readonly StowedBag[];
  readonly things: Things | null;
  readonly chosen: string | null;
  readonly onChoose: (item: StowedItem) => void;
  /** Null: the bags are only proposed, there is nothing to change yet. */
  readonly onBag: ((id: string) => void) | null;
}

/** A berth: its bags drawn to scale, then what rides in it loose. */
export function BerthBlock({ berth, bags, things, chosen, onChoose, onBag }: BerthBlockProps) {
  const { t } = useTranslation();
  const format = useFormat();
  if (bags.length === 0 && berth.loose.length === 0) return null;
  return (
    <Block
      title={berth.name}
      aside={
        berth.limitGrams === null
          ? format.mass(berth.grams)
          : t('bags.map.ofLimit', { mass: format.mass(berth.grams), limit: format.mass(berth.limitGrams) })
      }
    >
      <div className="berth-bags">
        {bags.map((bag) => (
          <section key={bag.id} className="map-bag" aria-label={bag.name}>
            <div className="map-bag-head">
              <h3>{bag.name}</h3>
              <p className="small quiet">
                {[
                  t(`bags.map.kinds.${bag.kind}`),
                  format.mass(bag.grams),
                  ...(bag.firstGrab ? [t('bags.map.firstGrabShort')] : []),
                  ...(bag.spillproof ? [t('bags.map.spillproofShort')] : []),
                ].join(', ')}
              </p>
              {onBag !== null && (
                <Button onPress={() => onBag(bag.id)} label={t('bags.map.changeBag', { name: bag.name })}>
                  {t('bags.map.change')}
                </Button>
              )}
            </div>
            <BagDrawing bag={bag} things={things} chosen={chosen} onChoose={onChoose} />
            <BagList bag={bag} onChoose={onChoose} />
          </section>
        ))}
      </div>
      {berth.loose.length > 0 && (
        <section>
          <h3>{t('bags.map.looseIn')}</h3>
          <PieceWords items={berth.loose} onChoose={onChoose} />
        </section>
      )}
    </Block>
  );
}
