import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { BERTH_RANGE_MM, stepped } from './berth-step.ts';

/**
 * Takes hold of the picked berth for the keyboard: arrows move it 10 mm, with Shift 100 mm. Recorded when the key is let go, so
 * that a long press is one step of undo.
 */
export function BerthHandle({
  name,
  xMm,
  left,
  top,
  onMove,
  onEnd,
}: {
  name: string;
  xMm: number;
  /** Where its mark is drawn, in per cent of the picture. */
  left: number;
  top: number;
  onMove: (xMm: number) => void;
  onEnd: () => void;
}) {
  const { t } = useTranslation();
  const format = useFormat();
  const length = format.length(Math.abs(xMm));
  return (
    <div
      className="berth-handle"
      role="slider"
      tabIndex={0}
      aria-label={t('vehicle.berthHandle', { name })}
      aria-orientation="horizontal"
      aria-valuemin={BERTH_RANGE_MM.least}
      aria-valuemax={BERTH_RANGE_MM.most}
      aria-valuenow={xMm}
      aria-valuetext={t(xMm < 0 ? 'vehicle.berthAhead' : 'vehicle.berthBehind', { length })}
      style={{ left: `${left}%`, top: `${top}%` }}
      onKeyDown={(event) => {
        const to = stepped(xMm, event.key, event.shiftKey);
        if (to === null) return;
        event.preventDefault();
        onMove(to);
      }}
      onKeyUp={(event) => {
        if (stepped(xMm, event.key, event.shiftKey) !== null) onEnd();
      }}
      onBlur={onEnd}
    />
  );
}
