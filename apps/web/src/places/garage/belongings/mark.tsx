import { SquareMark } from '../../../look/square-mark.tsx';
import type { SquareFill } from '../../../look/square-mark.tsx';
import type { Standing } from './rows.ts';

/** Solid comes along, outline stays, half when some copies come, a cross to add when it is for sale. */
export function StandingMark({ standing, ready }: { standing: Standing; ready: boolean }) {
  return <SquareMark fill={fillOf(standing)} crossed={!ready} />;
}

function fillOf(standing: Standing): SquareFill {
  switch (standing.kind) {
    case 'along':
      return 'solid';
    case 'some':
      return 'half';
    case 'buy':
      return standing.chosen ? 'solid' : 'plus';
    case 'home':
    case 'unknown':
      return 'open';
  }
}
