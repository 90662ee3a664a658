import { Button } from 'react-aria-components';
import { Balloon } from '../../../look/parts.tsx';
import { ScaleBar, type BarFill } from './scale-bar.tsx';
import './row.css';

export interface RowProps {
  readonly balloon?: number | null;
  readonly name: string;
  /** Second line, small. */
  readonly detail?: string | null;
  readonly mass: string;
  /** The mass was never weighed: dashed underline. */
  readonly assumed: boolean;
  /** Length of the bar, 0..1 of the list's scale. */
  readonly bar: number;
  readonly fill: BarFill;
  readonly worth: string;
  /** The owner's own mark, in red pencil. */
  readonly mark?: string | null;
  /** All of it in one sentence. */
  readonly label: string;
  readonly onPress: () => void;
}

/** Balloon, name, mass, bar, worth in words; the whole row opens its why. */
export function Row({
  balloon = null,
  name,
  detail = null,
  mass,
  assumed,
  bar,
  fill,
  worth,
  mark = null,
  label,
  onPress,
}: RowProps) {
  return (
    <Button className={mass === '' ? 'kit-row no-mass' : 'kit-row'} aria-label={label} onPress={onPress}>
      <span className="kit-row-number">{balloon !== null && <Balloon number={balloon} />}</span>
      <span className="kit-row-name">
        <span className="kit-row-words">{name}</span>
        {mark !== null && <span className="pencil small">{mark}</span>}
        {detail !== null && <span className="kit-row-detail small quiet">{detail}</span>}
      </span>
      <span className={assumed ? 'kit-row-mass keep assumed' : 'kit-row-mass keep'}>{mass}</span>
      <span className="kit-row-bar">
        <ScaleBar share={bar} fill={fill} />
      </span>
      <span className="kit-row-worth small quiet keep">{worth}</span>
    </Button>
  );
}
