import type { Line } from '../choose-rows.ts';
import { StandingMark } from '../mark.tsx';
import type { WordsOfRow } from './use-row-words.ts';
import './thing-row.css';

export interface ThingRowProps {
  readonly line: Line;
  readonly words: WordsOfRow;
  readonly isOpen: boolean;
  readonly tabIndex: 0 | -1;
  readonly onOpen: (id: string) => void;
  readonly onUnfold: (id: string, unfold: boolean) => void;
}

/** Mark, name, what it says, mass; a boxed set also unfolds. Plain buttons: hundreds of them are drawn in a second's flick. */
export function ThingRow({ line, words, isOpen, tabIndex, onOpen, onUnfold }: ThingRowProps) {
  const { row, standing, depth } = line;
  const { name, size, said, where, mass } = words.of(row, standing);
  return (
    <div className={depth === 1 ? 'thing under' : 'thing'}>
      <button
        type="button"
        data-main
        className="thing-main"
        tabIndex={tabIndex}
        onClick={() => onOpen(row.id)}
      >
        <StandingMark standing={standing} ready={row.belonging.state === 'ready'} />
        <span className="thing-name">{name}</span>
        <span className={row.estimated ? 'thing-mass assumed' : 'thing-mass'}>{mass}</span>
        <span className="thing-details">
          <span className="thing-size">{size}</span>
          <span className="thing-said">{said}</span>
          <span className="thing-where">{where}</span>
        </span>
        {row.estimated && <span className="hidden-text">{words.aside}</span>}
      </button>
      {row.contents !== null && (
        <button
          type="button"
          className="thing-unfold"
          tabIndex={tabIndex}
          aria-expanded={isOpen}
          aria-label={words.fold(name, isOpen)}
          onClick={() => onUnfold(row.id, !isOpen)}
        >
          <svg aria-hidden="true" width="16" height="16" viewBox="0 0 16 16">
            <path
              d={isOpen ? 'M2 11L8 5L14 11' : 'M2 5L8 11L14 5'}
              fill="none"
              stroke="currentColor"
              strokeWidth="2"
            />
          </svg>
        </button>
      )}
    </div>
  );
}
