import type { Garage } from '@waymend/garage/record/schema';
import type { StockOf, Count } from '@waymend/garage/road/count-pieces';
import { recount } from '@waymend/garage/road/muster';
import type { Result } from '@waymend/core/result';
import { useTranslation } from 'react-i18next';
import { Button } from '../../../look/button.tsx';
import { Check } from '../../../look/check.tsx';
import { Dialog } from '../../../look/dialog.tsx';
import type { Fate } from './acts.ts';
import { tick } from './acts.ts';
import type { MusterRow } from './groups.ts';
import { rowWords } from './row-words.ts';
import { Stepper } from './stepper.tsx';

export interface FateDialogProps {
  readonly row: MusterRow;
  readonly stockOf: StockOf;
  readonly refused: string | null;
  readonly act: (title: string, apply: (garage: Garage) => Result<Garage>) => boolean;
  readonly onClose: () => void;
}

const FATES = ['back', 'lost', 'damaged', 'used'] as const;

/** What became of a thing: all of it by one press, piece by piece below, and which of its parts came back. */
export function FateDialog({ row, stockOf, refused, act, onClose }: FateDialogProps) {
  const { t } = useTranslation();
  const title = t('bags.muster.stepCount', { name: row.name });
  const settle = (fate: Fate) => {
    if (act(title, (garage) => tick(garage, row.id, fate, stockOf)) && row.parts.length === 0) onClose();
  };
  const say = (tally: Partial<Pick<Count, Fate | 'missingParts'>>) =>
    act(title, (garage) => recount(garage, row.id, tally, stockOf));
  return (
    <Dialog title={row.name} isOpen onClose={onClose}>
      <div className="fate">
        <p role="status">{rowWords(row, t)}</p>
        {row.missing > 0 && (
          <div className="fate-acts">
            {FATES.map((fate) => (
              <Button key={fate} main={fate === 'back'} onPress={() => settle(fate)}>
                {t(`bags.muster.fate.${fate}`, { count: row.missing })}
              </Button>
            ))}
          </div>
        )}
        {row.parts.length > 0 && (
          <fieldset className="fate-parts">
            <legend className="decides">{t('bags.muster.partsAsk')}</legend>
            {row.parts.map((part) => (
              <Check
                key={part}
                isOn={!row.missingParts.includes(part)}
                onChange={(isThere) =>
                  say({
                    missingParts: isThere
                      ? row.missingParts.filter((other) => other !== part)
                      : [...row.missingParts, part],
                  })
                }
              >
                {part}
              </Check>
            ))}
          </fieldset>
        )}
        <h3>{t('bags.muster.byPiece')}</h3>
        {FATES.map((fate) => (
          <Stepper
            key={fate}
            label={t(
              fate === 'used' && row.perPiece !== null
                ? 'bags.muster.fateName.stock'
                : `bags.muster.fateName.${fate}`,
            )}
            value={row[fate]}
            step={fate === 'used' && row.perPiece !== null && row.perPiece < 2 ? 0.5 : 1}
            onChange={(next) => say({ [fate]: next })}
          />
        ))}
        {refused !== null && (
          <p role="alert" className="decides">
            {refused}
          </p>
        )}
        <div className="acts">
          <Button main={row.missing === 0} onPress={onClose}>
            {t('bags.muster.partsDone')}
          </Button>
        </div>
      </div>
    </Dialog>
  );
}
