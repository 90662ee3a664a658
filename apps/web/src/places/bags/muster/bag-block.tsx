import { Button as AriaButton } from 'react-aria-components';
import { useTranslation } from 'react-i18next';
import { Button } from '../../../look/button.tsx';
import { Block } from '../../../look/parts.tsx';
import { SquareMark } from '../../../look/square-mark.tsx';
import type { MusterBag, MusterRow } from './groups.ts';
import { rowWords } from './row-words.ts';

export interface BagBlockProps {
  readonly of: MusterBag;
  readonly onBack: (row: MusterRow) => void;
  readonly onOther: (row: MusterRow) => void;
  readonly onAll: () => void;
  readonly onSeal: () => void;
}

/** A bag with its pockets: one press for the whole of it, one for each piece. */
export function BagBlock({ of, onBack, onOther, onAll, onSeal }: BagBlockProps) {
  const { t } = useTranslation();
  const name = of.name ?? t('bags.noBag');
  const rows = of.pockets.flatMap((pocket) => pocket.rows);
  const untouched = rows.every(({ out, missing }) => out === missing);
  return (
    <Block
      title={of.berth === null ? name : t('bags.bagIn', { bag: name, berth: of.berth })}
      aside={t('bags.muster.bagBack', { n: of.out - of.missing, of: of.out })}
    >
      {of.missing > 1 && (
        <div className="acts">
          <Button onPress={onAll} label={t('bags.muster.allOfLabel', { bag: name })}>
            {t('bags.muster.allOf', { count: of.missing })}
          </Button>
          {of.bag !== null && untouched && (
            <Button onPress={onSeal} label={t('bags.muster.sealLabel', { bag: name })}>
              {t('bags.muster.seal')}
            </Button>
          )}
        </div>
      )}
      {of.pockets.map(({ pocket, name: title, rows: inIt }) => (
        <div key={pocket ?? ''} className="muster-pocket">
          {(title !== null || of.pockets.length > 1) && (
            <h3 className="small quiet">{title ?? t('bags.inRoom')}</h3>
          )}
          <ul>
            {inIt.map((row) => (
              <li key={row.id} className="muster-row">
                <AriaButton
                  className="muster-tick"
                  aria-pressed={row.missing === 0}
                  onPress={() => (row.missing > 0 ? onBack(row) : onOther(row))}
                >
                  <SquareMark fill={fillOf(row)} crossed={row.lost + row.damaged > 0} />
                  <span className="muster-name">
                    {row.out > 1 ? `${row.out} x ${row.name}` : row.name}{' '}
                    <span className="small quiet muster-state">{rowWords(row, t)}</span>
                  </span>
                </AriaButton>
                {row.missing > 0 && (
                  <Button
                    onPress={() => onOther(row)}
                    label={t('bags.muster.otherLabel', { name: row.name })}
                  >
                    {t('bags.muster.other')}
                  </Button>
                )}
              </li>
            ))}
          </ul>
        </div>
      ))}
    </Block>
  );
}

function fillOf({ missing, back }: MusterRow): 'solid' | 'hatched' | 'open' {
  if (missing > 0) return 'hatched';
  return back > 0 ? 'solid' : 'open';
}
