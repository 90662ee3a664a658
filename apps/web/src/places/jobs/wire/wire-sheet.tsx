import { useMemo, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Check } from '../../../look/check.tsx';
import { useFieldUnit } from '../../../format/use-field-unit.ts';
import { Choice, NumberField } from '../../../look/field.tsx';
import { More } from '../../../look/more.tsx';
import { OneOf } from '../../../look/one-of.tsx';
import { Caution, Sentence } from '../../../look/parts.tsx';
import { QuantityField } from '../../../look/quantity-field.tsx';
import { useAsk } from '../../../shell/use-ask.ts';
import type { JobsReply, JobsRequest } from '../../../worker/jobs/protocol.ts';
import { Circuit } from './circuit.tsx';
import './wire.css';

/** Columns of the table of allowed currents, degrees Celsius as printed on the wire. */
const INSULATIONS = ['unknown', '60', '75', '80', '90', '105', '125'] as const;
type Insulation = (typeof INSULATIONS)[number];

type Wire = Extract<JobsReply, { kind: 'jobs/wire' }>['wire'];

/** Which wire and which fuse a circuit takes. Needs no trip and no vehicle. */
export function WireSheet() {
  const { t } = useTranslation();
  const length = useFieldUnit('height');
  const [amps, setAmps] = useState<number | null>(10);
  const [metres, setMetres] = useState<number | null>(4);
  const [volts, setVolts] = useState<'12' | '24'>('12');
  const [drop, setDrop] = useState<'3' | '10'>('3');
  const [insulation, setInsulation] = useState<Insulation>('unknown');
  const [engineSpace, setEngineSpace] = useState(false);
  const request = useMemo((): JobsRequest | null => {
    if (amps === null || metres === null) return null;
    const question = {
      amps,
      metresOneWay: metres,
      volts: Number(volts),
      mostDropPct: Number(drop),
      engineSpace,
      ...(insulation === 'unknown' ? {} : { insulationC: Number(insulation) }),
    };
    return { kind: 'jobs/wire', question };
  }, [amps, metres, volts, drop, insulation, engineSpace]);
  const { reply } = useAsk(request);
  const wire = reply?.kind === 'jobs/wire' ? reply.wire : null;
  return (
    <div className="jobs-sheet wire">
      <Headline wire={wire} />
      <div className="wire-columns">
        <div className="wire-picture">{wire !== null && <Circuit wire={wire} />}</div>
        <div className="wire-asks">
          <NumberField
            label={t('jobs.wire.amps')}
            hint={t('jobs.wire.ampsHint')}
            unit="A"
            value={amps}
            onChange={setAmps}
            least={0.1}
            most={500}
            digits={1}
          />
          <QuantityField
            label={t('jobs.wire.metres')}
            hint={t('jobs.wire.metresHint')}
            unit={length}
            value={metres}
            onChange={setMetres}
            least={0.1}
            most={50}
          />
          <OneOf
            label={t('jobs.wire.volts')}
            value={volts}
            onChange={setVolts}
            options={[
              { id: '12', label: '12 V' },
              { id: '24', label: '24 V' },
            ]}
            across
          />
          <OneOf
            label={t('jobs.wire.drop')}
            value={drop}
            onChange={setDrop}
            options={[
              { id: '3', label: t('jobs.wire.drop3') },
              { id: '10', label: t('jobs.wire.drop10') },
            ]}
          />
          <Choice
            label={t('jobs.wire.insulation')}
            value={insulation}
            onChange={setInsulation}
            options={INSULATIONS.map((id) => ({
              id,
              label: id === 'unknown' ? t('jobs.wire.unknown') : `${id} \u00b0C`,
            }))}
          />
          <Check isOn={engineSpace} onChange={setEngineSpace}>
            {t('jobs.wire.engineSpace')}
          </Check>
        </div>
        <div className="wire-answer">
          {reply?.kind === 'refused' && <Sentence strong>{reply.refusals[0]?.message ?? ''}.</Sentence>}
          {request === null && <Sentence>{t('jobs.wire.incomplete')}</Sentence>}
          {wire !== null && request !== null && <Answer wire={wire} />}
        </div>
      </div>
    </div>
  );
}

/** Wire and fuse in a few words, or what this sheet is for. */
function Headline({ wire }: { wire: Wire | null }) {
  const { t } = useTranslation();
  if (wire === null) return <h1>{t('jobs.wire.title')}</h1>;
  const size = wire.metric === null ? `${wire.gauge.awg} AWG` : `${wire.metric.mm2}\u00a0mm\u00b2`;
  return <h1>{t('jobs.wire.headline', { wire: size, fuse: `${wire.fuse.amps}\u00a0A` })}</h1>;
}

function Answer({ wire }: { wire: Wire }) {
  const { t } = useTranslation();
  return (
    <>
      <Caution>
        {wire.cautions.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </Caution>
      <ul className="card-rows">
        {wire.sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <More title={t('jobs.wire.bases')}>
        <dl className="wire-bases">
          {wire.bases.map(({ what, basis }) => (
            <div key={what}>
              <dt>{what}</dt>
              <dd className="small quiet">{basis}</dd>
            </div>
          ))}
        </dl>
      </More>
    </>
  );
}
