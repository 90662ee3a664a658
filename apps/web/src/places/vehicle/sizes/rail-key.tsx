import type { ReactNode } from 'react';
import { useTranslation } from 'react-i18next';
import { Block } from '../../../look/parts.tsx';
import { CellMark, PlaceMark, TieMark } from './cell-mark.tsx';
import type { DrawnCell } from './rail-data.ts';

const cell = (along: number, home: number, more: Partial<DrawnCell> = {}): DrawnCell => ({
  along,
  home,
  hole: false,
  bring: false,
  names: [],
  ...more,
});

/** What the marks of the rail mean. */
export function RailKey() {
  const { t } = useTranslation();
  const rows: readonly (readonly [ReactNode, string])[] = [
    [<PlaceMark key="m" x={16} y={13} length={24} status="measured" isKey={false} />, t('rail.keyMeasured')],
    [<PlaceMark key="r" x={16} y={13} length={24} status="read" isKey={false} />, t('rail.keyRead')],
    [<PlaceMark key="a" x={16} y={13} length={24} status="assumed" isKey={false} />, t('rail.keyAssumed')],
    [<PlaceMark key="k" x={16} y={13} length={24} status="measured" isKey />, t('rail.keyKey')],
    [<CellMark key="c" cell={cell(1, 0)} x={16} y={13} size={20} />, t('rail.keyAlong')],
    [<CellMark key="h" cell={cell(0, 1)} x={16} y={13} size={20} />, t('rail.keyHome')],
    [<CellMark key="o" cell={cell(0, 0, { hole: true })} x={16} y={13} size={20} />, t('rail.keyHole')],
    [<CellMark key="b" cell={cell(0, 1, { bring: true })} x={16} y={11} size={18} />, t('rail.keyBring')],
    [<CellMark key="2" cell={cell(1, 1)} x={16} y={13} size={20} />, t('rail.keyTwo')],
    [<TieMark key="t" x={16} y={13} tie="both" />, t('rail.keyTie')],
    [<TieMark key="u" x={16} y={13} tie="one" />, t('rail.keyOpen')],
  ];
  return (
    <Block title={t('rail.key')}>
      <ul className="rail-key small">
        {rows.map(([mark, words]) => (
          <li key={words}>
            <svg width="32" height="26" aria-hidden="true">
              {mark}
            </svg>
            {words}
          </li>
        ))}
      </ul>
    </Block>
  );
}
