import type { StowAnswer, StowedItem } from '@waymend/planner/answer/stow-answer';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { Button } from '../../../look/button.tsx';
import { Dialog } from '../../../look/dialog.tsx';
import { Choice } from '../../../look/field.tsx';
import { useRecord } from '../../../shell/stores.tsx';
import { moveTo } from './map-acts.ts';

/** Stands for no bag, and for no pocket, in a list that opens. */
const NONE = '';

/** What a piece is, what its place breaks, and another place for it by hand. */
export function PieceDialog({
  item,
  stow,
  onClose,
}: {
  item: StowedItem;
  stow: StowAnswer;
  onClose: () => void;
}) {
  const { t } = useTranslation();
  const format = useFormat();
  const { garage, edit } = useRecord();
  const owned = garage.belongings[item.belonging];
  const at = stow.bags.find((b) =>
    [...b.items, ...b.pockets.flatMap((p) => p.items)].some(({ id }) => id === item.id),
  );
  const inPocket = at?.pockets.find((p) => p.items.some(({ id }) => id === item.id));
  const [bag, setBag] = useState(at !== undefined && !stow.proposed ? at.id : NONE);
  const [pocket, setPocket] = useState(inPocket !== undefined && !stow.proposed ? inPocket.id : NONE);
  const pockets = Object.entries(garage.pockets)
    .filter(([, one]) => one.bag === bag)
    .sort(([, a], [, b]) => a.order - b.order);
  const breaks = stow.broken.filter(({ pieces }) => pieces.includes(item.id));
  return (
    <Dialog title={item.name} isOpen onClose={onClose}>
      <div className="fate">
        <p>
          {t('bags.map.pieceFacts', {
            mass: format.mass(item.grams),
            length: format.length(item.lengthMm),
            width: format.length(item.widthMm),
            thickness: format.length(item.thicknessMm),
          })}
        </p>
        <p>
          {at === undefined
            ? t('bags.map.loose')
            : t('bags.map.lies', {
                place: inPocket === undefined ? at.name : `${inPocket.name}, ${at.name}`,
                berth: at.berthName,
              })}{' '}
          {t(item.byHand ? 'bags.map.byHand' : 'bags.map.asProposed')}
        </p>
        {item.cameFrom !== null && (
          <p>{t('bags.map.cameFrom', { bag: garage.bags[item.cameFrom.bag]?.name ?? '' })}</p>
        )}
        {breaks.map((b) => (
          <p key={b.rule} className="decides">
            {b.sentence}
          </p>
        ))}
        {owned === undefined ? (
          <p className="quiet">{t('bags.map.toBuy')}</p>
        ) : Object.keys(garage.bags).length === 0 ? (
          <p className="quiet">{t('bags.map.noBags')}</p>
        ) : (
          <>
            <Choice
              label={t('bags.map.bag')}
              value={bag}
              onChange={(next) => {
                setBag(next);
                setPocket(NONE);
              }}
              options={[
                { id: NONE, label: t('bags.noBag') },
                ...Object.entries(garage.bags).map(([id, { name }]) => ({ id, label: name })),
              ]}
            />
            {pockets.length > 0 && (
              <Choice
                label={t('bags.map.pocket')}
                value={pocket}
                onChange={setPocket}
                options={[
                  { id: NONE, label: t('bags.inRoom') },
                  ...pockets.map(([id, { name }]) => ({ id, label: name })),
                ]}
              />
            )}
            <p className="small quiet">{t('bags.map.moveHint')}</p>
            <div className="acts">
              <Button
                main
                onPress={() => {
                  void edit(t('bags.map.stepMove', { name: item.name }), (g) =>
                    moveTo(
                      g,
                      item.belonging,
                      {
                        bag: bag === NONE ? null : bag,
                        pocket: pocket === NONE ? null : pocket,
                      },
                      true,
                    ),
                  );
                  onClose();
                }}
              >
                {t('bags.map.putThere')}
              </Button>
            </div>
          </>
        )}
      </div>
    </Dialog>
  );
}
