import { useLayoutEffect, useRef, useState } from 'react';
import { useTranslation } from 'react-i18next';
import type { Leg } from '@waymend/garage/record/schema';
import { useFormat } from '../../../format/use-format.ts';
import { fieldUnit } from '../../../format/field-units.ts';
import { useRecord } from '../../../shell/stores.tsx';
import { routeStrip } from './route-strip-layout.ts';
import { SurfaceFills } from './surface-fills.tsx';

const HELP = 96;
const BAND_Y = 150;
const BAND = 28;
const TOP = 40;

export interface RouteFigureProps {
  readonly legs: readonly (readonly [string, Leg])[];
  readonly chosen: string | null;
  readonly onChoose: (leg: string) => void;
}

/** The route to scale: the road below by surface, above it a step for how far help is; arrow keys walk along the legs. */
export function RouteFigure({ legs, chosen, onChoose }: RouteFigureProps) {
  const { t } = useTranslation();
  const format = useFormat();
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame);
  const left = 82;
  const { garage } = useRecord();
  const unit = fieldUnit('distance', garage.units);
  const strip = routeStrip(legs, Math.max(0, width - left - 8), HELP, unit.read(1) ?? 1);
  const step = (by: number) => {
    const at = legs.findIndex(([id]) => id === chosen);
    const next = legs[Math.min(legs.length - 1, Math.max(0, at + by))];
    if (next) onChoose(next[0]);
  };
  const foot = TOP + HELP;
  const end = Math.max(0, width - left - 8);
  return (
    <div
      ref={frame}
      className="route-figure"
      role="listbox"
      tabIndex={0}
      aria-label={t('trip.route.figure')}
      aria-orientation="horizontal"
      aria-activedescendant={chosen === null ? undefined : `route-${chosen}`}
      onKeyDown={(event) => {
        const by = { ArrowRight: 1, ArrowLeft: -1, Home: -legs.length, End: legs.length }[event.key];
        if (by === undefined) return;
        event.preventDefault();
        step(by);
      }}
    >
      <svg width={width} height="236" role="presentation">
        <SurfaceFills />
        <g transform={`translate(${left} 0)`}>
          {strip.legs.map(({ id, leg, x, width: w, balloonX, help }, n) => (
            <g
              key={id}
              id={`route-${id}`}
              role="option"
              aria-selected={id === chosen}
              aria-label={t('trip.route.leg', {
                number: n + 1,
                name: leg.name ?? '',
                distance: format.distance(leg.km),
                surface: t(`trip.surface.${leg.surface}`),
                help: format.distance(leg.helpKm),
              })}
              onClick={() => onChoose(id)}
              className="route-leg"
            >
              <rect x={x} y={0} width={Math.max(w, 1)} height="220" fill="transparent" />
              <path
                d={`M${x} ${foot}V${foot - help}H${x + w}V${foot}`}
                fill="none"
                stroke="var(--ink)"
                strokeWidth="2"
              />
              <rect x={x} y={BAND_Y} width={w} height={BAND} fill="var(--paper)" />
              <rect
                x={x}
                y={BAND_Y}
                width={w}
                height={BAND}
                fill={`url(#surface-${leg.surface})`}
                stroke={id === chosen ? 'var(--hand)' : 'var(--ink)'}
                strokeWidth={id === chosen ? 3 : 1}
              />
              <path
                d={`M${balloonX} 27L${x + w / 2} ${foot - help - 2}`}
                stroke="var(--ink)"
                strokeWidth="1"
              />
              <circle
                cx={balloonX}
                cy="14"
                r="13"
                fill="var(--paper)"
                stroke={id === chosen ? 'var(--hand)' : 'var(--ink)'}
                strokeWidth={id === chosen ? 3 : 1.25}
              />
              <text
                x={balloonX}
                y="18.5"
                textAnchor="middle"
                fontSize="12"
                fontWeight={id === chosen ? 700 : 400}
              >
                {n + 1}
              </text>
            </g>
          ))}
          <text x={-left} y="18" fontSize="12" aria-hidden="true">
            {t(unit.name)} {t('trip.route.toHelp')}
          </text>
          {strip.limits.map(({ km, y }) => (
            <g key={km} aria-hidden="true">
              <path d={`M0 ${foot - y}H${end}`} className="route-limit" />
              <path d={ticksAbove(foot - y, end)} stroke="var(--ink)" strokeWidth="1" />
              <text x="-8" y={foot - y + 4} fontSize="12" textAnchor="end">
                {format.distance(km).replace(/\D+$/, '')}
              </text>
            </g>
          ))}
          <path d={`M0 ${foot}H${end}`} stroke="var(--ink)" strokeWidth="1" />
          {strip.ticks.map(({ km, x }, n) => (
            <g key={km}>
              <path d={`M${x} ${BAND_Y + BAND}v8`} stroke="var(--ink)" strokeWidth="1" />
              <text
                x={x}
                y={BAND_Y + BAND + 22}
                fontSize="12"
                textAnchor={
                  n === 0 ? 'start' : n === strip.ticks.length - 1 && x > width - 60 ? 'end' : 'middle'
                }
              >
                {n === strip.ticks.length - 1 ? format.distance(km) : format.distance(km).replace(/\D+$/, '')}
              </text>
            </g>
          ))}
        </g>
      </svg>
    </div>
  );
}

/** Slanted strokes on the side that is not allowed, every 60 px. */
function ticksAbove(y: number, end: number): string {
  return Array.from({ length: Math.floor(end / 60) }, (_, n) => `M${n * 60 + 8} ${y}l6 -6`).join('');
}

/** Width of the frame in pixels, kept up with the window; known before the first paint. */
function useWidth(frame: React.RefObject<HTMLDivElement | null>): number {
  const [width, setWidth] = useState(0);
  useLayoutEffect(() => {
    const element = frame.current;
    if (element === null) return;
    const read = () => setWidth(Math.floor(element.clientWidth));
    read();
    const watch = new ResizeObserver(read);
    watch.observe(element);
    return () => watch.disconnect();
  }, [frame]);
  return width;
}
