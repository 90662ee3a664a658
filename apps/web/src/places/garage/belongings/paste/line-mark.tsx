import { SquareMark } from '../../../../look/square-mark.tsx';
import type { SquareFill } from '../../../../look/square-mark.tsx';
import type { PartState } from './paper-lines.ts';

/** Solid: understood. Half: look again. Hatched: not understood. Outline: left out. */
const FILLS: Readonly<Record<PartState, SquareFill>> = {
  understood: 'solid',
  own: 'solid',
  doubtful: 'half',
  unknown: 'hatched',
  struck: 'open',
};

export function LineMark({ state }: { state: PartState }) {
  return <SquareMark fill={FILLS[state]} />;
}
