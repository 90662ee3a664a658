import type { Standing } from './rows.ts';
import './mark.css';

/** The fill of a square says where a thing is: solid comes along, outline stays, half solid when some copies come. */
export function StandingMark({ standing, ready }: { standing: Standing; ready: boolean }) {
  const kind =
    standing.kind === 'buy'
      ? standing.chosen
        ? 'along'
        : 'buy'
      : standing.kind === 'unknown'
        ? 'home'
        : standing.kind;
  return (
    <svg className="mark" aria-hidden="true" width="18" height="18" viewBox="0 0 18 18">
      <rect
        x="1.5"
        y="1.5"
        width="15"
        height="15"
        className={kind === 'along' ? 'mark-solid' : 'mark-open'}
      />
      {kind === 'some' && <path d="M1.5 16.5V1.5H16.5Z" className="mark-solid" />}
      {kind === 'buy' && <path d="M5 9H13M9 5V13" className="mark-line" />}
      {!ready && <path d="M1.5 1.5L16.5 16.5M16.5 1.5L1.5 16.5" className="mark-cross" />}
    </svg>
  );
}
