import type { WireAnswer } from '@waymend/planner/answer/wire-answer';
import { useTranslation } from 'react-i18next';
import { useFieldUnit } from '../../../format/use-field-unit.ts';

/** The circuit with its figures: battery, fuse near it, the wire out and back, and what is fed. Not to scale, and it says so. */
export function Circuit({ wire }: { wire: WireAnswer }) {
  const { t } = useTranslation();
  const length = useFieldUnit('height');
  const { gauge, metric, fuse, asked } = wire;
  const size = metric === null ? `${gauge.awg} AWG` : `${metric.mm2} mm\u00b2 / ${gauge.awg} AWG`;
  return (
    <figure className="circuit">
      <svg viewBox="0 0 330 150" width="100%" aria-hidden="true">
        {/* Battery: the long line is plus. */}
        <path d="M28 66V50M28 84V100M12 66H44" className="line-wide" />
        <path d="M20 84H36" className="circuit-minus" />
        <path d="M28 50V36H66M114 36H268V58M268 92V114H28V100" className="line-wide" />
        <rect x="66" y="26" width="48" height="20" className="line-wide" />
        <path d="M66 36H114" className="line-narrow" />
        <circle cx="268" cy="75" r="17" className="line-wide" />
        <path d="M256 63L280 87M280 63L256 87" className="line-narrow" />
        <text x="90" y="18" textAnchor="middle" className="lever-kg">
          {fuse.amps} A
        </text>
        <text x="90" y="62" textAnchor="middle" className="lever-small">
          {t('jobs.wire.within', { mm: fuse.withinMm })}
        </text>
        <text x="192" y="26" textAnchor="middle" className="lever-text">
          {size}
        </text>
        <text x="166" y="106" textAnchor="middle" className="lever-small">
          {t('jobs.wire.oneWay', {
            length: `${length.show(asked.metresOneWay) ?? ''}\u00a0${t(length.name)}`,
          })}
        </text>
        <text x="54" y="80" className="lever-text">
          {asked.volts} V
        </text>
        <text x="244" y="80" textAnchor="end" className="lever-text">
          {asked.amps} A
        </text>
        <text x="12" y="142" className="lever-small">
          {t('jobs.wire.notToScale')}
        </text>
      </svg>
    </figure>
  );
}
