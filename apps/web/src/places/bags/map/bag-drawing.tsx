import type { StowedBag, StowedItem } from '@waymend/planner/answer/stow-answer';
import { pocketMap } from '@waymend/planner/views/pocket-map';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { useWidth } from '../../kit/curve/use-width.ts';
import type { Things } from '../use-things.ts';
import { Silhouette } from './silhouette.tsx';

/** Least height of a pocket on the screen: a thumb. */
const THUMB = 48;
/** Room for the balloons beside the rows, px. */
const MARGIN = 36;
/** No drawing is larger than life on a screen of the usual 96 px to the inch. */
const MOST_SCALE = 96 / 25.4;
/** Height that a drawing keeps to where it can, px. */
const MOST_HEIGHT = 640;
/** The bar of the scale, mm. */
const BAR = 100;

export interface BagDrawingProps {
  readonly bag: StowedBag;
  readonly things: Things | null;
  readonly chosen: string | null;
  readonly onChoose: (item: StowedItem) => void;
}

/** A bag to scale, its pockets as rows, each piece in silhouette. The list beneath says the same in words. */
export function BagDrawing({ bag, things, chosen, onChoose }: BagDrawingProps) {
  const { t } = useTranslation();
  const format = useFormat();
  const { ref, width } = useWidth();
  const plain = pocketMap(bag);
  const fits = Math.max(0.05, (width - MARGIN - 4) / plain.width);
  // Large things make a tall drawing: it is drawn smaller then, but never to less than a third.
  const scale = Math.min(MOST_SCALE, fits, Math.max(MOST_HEIGHT / plain.height, fits / 3));
  const map = pocketMap(bag, THUMB / scale);
  return (
    <div ref={ref} className="bag-drawing">
      {width > 0 && (
        <svg width={width} height={map.height * scale + 30} aria-hidden="true">
          <g transform={`translate(${MARGIN} 2)`}>
            {map.places.map((place) => (
              <g key={place.number}>
                <rect
                  x="0"
                  y={place.y * scale}
                  width={place.width * scale}
                  height={place.height * scale}
                  className="pocket-line"
                />
                <circle
                  cx={-MARGIN / 2 - 2}
                  cy={(place.y + place.height / 2) * scale}
                  r="13"
                  className="pocket-balloon"
                />
                <text
                  x={-MARGIN / 2 - 2}
                  y={(place.y + place.height / 2) * scale + 4}
                  className="pocket-number"
                >
                  {place.number}
                </text>
                {place.pieces.map(({ item, x, y, width: long, height: high }) => (
                  <g
                    key={item.id}
                    transform={`translate(${x * scale} ${y * scale})`}
                    className="pocket-piece"
                    onClick={() => onChoose(item)}
                  >
                    <rect width={long * scale} height={high * scale} className="piece-room" />
                    <Silhouette
                      outline={things?.[item.belonging]?.outline ?? 'box'}
                      width={long * scale}
                      height={high * scale}
                    />
                    {item.id === chosen && (
                      <rect
                        x="-3"
                        y="-3"
                        width={long * scale + 6}
                        height={high * scale + 6}
                        className="piece-chosen"
                      />
                    )}
                  </g>
                ))}
              </g>
            ))}
            <rect x="0" y="0" width={map.width * scale} height={map.height * scale} className="bag-line" />
            <g transform={`translate(0 ${map.height * scale + 14})`}>
              <path d={`M0 -5V5M0 0H${BAR * scale}M${BAR * scale} -5V5`} className="scale-bar" />
              <text x={BAR * scale + 8} y="4" className="scale-words">
                {t('bags.map.bar', { length: format.length(BAR) })}
              </text>
            </g>
          </g>
        </svg>
      )}
    </div>
  );
}
