import { useTranslation } from 'react-i18next';
import { Link } from 'wouter';
import { useFormat } from '../../../../format/use-format.ts';
import { OneOf } from '../../../../look/one-of.tsx';
import { Block } from '../../../../look/parts.tsx';
import { StandingMark } from '../mark.tsx';
import type { Row } from '../rows.ts';
import { useEditThing } from '../use-edit-thing.ts';
import type { Rows } from '../use-rows.ts';

/** How a boxed set travels. */
export function SetCarry({ row }: { row: Row }) {
  const { t } = useTranslation();
  const format = useFormat();
  const { carry } = useEditThing(row.id, row.name);
  const set = row.belonging.set;
  if (set === undefined) return null;
  return (
    <OneOf
      label={t('belongings.carry')}
      value={set.carry}
      onChange={carry}
      options={[
        { id: 'loose', label: t('belongings.carryLoose'), remark: t('belongings.carryLooseRemark') },
        {
          id: 'whole',
          label: t('belongings.carryWhole'),
          remark: t('belongings.carryWholeRemark', { mass: format.mass(row.total) }),
        },
      ]}
    />
  );
}

/** What is in a boxed set; each piece may be looked at, mended or taken out by itself. */
export function SetPieces({ row, found }: { row: Row; found: Rows }) {
  const { t } = useTranslation();
  const format = useFormat();
  const pieces = found.rows.filter(({ belonging }) => belonging.inside === row.id);
  return (
    <Block
      title={t('belongings.inside')}
      aside={t('belongings.rows', { count: pieces.length, number: format.count(pieces.length) })}
      level={3}
    >
      <ul className="thing-pieces">
        {pieces.map((piece) => (
          <li key={piece.id}>
            <Link href={`/garage/belongings/thing/${encodeURIComponent(piece.id)}`} className="thing-piece">
              <StandingMark
                standing={found.standings(piece.id, piece.belonging)}
                ready={piece.belonging.state === 'ready'}
              />
              <span style={{ flex: 1 }}>
                {piece.size === null ? piece.name : `${piece.name}, ${piece.size}`}
              </span>
              <span className={piece.estimated ? 'keep assumed' : 'keep'}>{format.mass(piece.total)}</span>
            </Link>
          </li>
        ))}
      </ul>
    </Block>
  );
}
