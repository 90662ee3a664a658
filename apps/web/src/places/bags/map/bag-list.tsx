import type { StowedBag, StowedItem } from '@waymend/planner/answer/stow-answer';
import { Button as AriaButton } from 'react-aria-components';
import { useTranslation } from 'react-i18next';
import { Balloon } from '../../../look/parts.tsx';

/** The pieces of each pocket by name, in the order they lie; each can be pressed. */
export function BagList({ bag, onChoose }: { bag: StowedBag; onChoose: (item: StowedItem) => void }) {
  const { t } = useTranslation();
  const places = [
    ...bag.pockets.map(({ id, name, items }) => ({ id, name, items })),
    ...(bag.items.length > 0 || bag.pockets.length === 0
      ? [{ id: '', name: t('bags.inRoom'), items: bag.items }]
      : []),
  ];
  return (
    <ol className="pocket-list">
      {places.map(({ id, name, items }, i) => (
        <li key={id} className="pocket-row">
          <Balloon number={i + 1} />
          <div>
            <p className="small quiet">{items.length === 0 ? t('bags.map.empty', { pocket: name }) : name}</p>
            <PieceWords items={items} onChoose={onChoose} />
          </div>
        </li>
      ))}
    </ol>
  );
}

export function PieceWords({
  items,
  onChoose,
}: {
  items: readonly StowedItem[];
  onChoose: (item: StowedItem) => void;
}) {
  const { t } = useTranslation();
  return (
    <ul className="piece-words">
      {items.map((item) => (
        <li key={item.id}>
          <AriaButton className="piece-word" onPress={() => onChoose(item)}>
            {item.name}
            {item.standsOutMm > 0 ? ` ${t('bags.map.standsOut')}` : ''}
          </AriaButton>
        </li>
      ))}
    </ul>
  );
}
