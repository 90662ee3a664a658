import type { Fit } from '@waymend/core/fastening/fit';
import { fitOf } from '@waymend/core/fastening/fit';
import type { Flats } from '@waymend/core/fastening/size';
import { inMillimetres } from '@waymend/core/quantity/units';
import type { Grade } from '@waymend/core/repairing/scene';

/** A tool of one size on a head of another, close enough that a hand would try it. */
export interface NearFit {
  readonly tool: string;
  readonly toolMm: number;
  readonly head: string;
  readonly headMm: number;
  /** Nominal width of the tool less that of the head, mm; negative: the tool is the smaller. */
  readonly looseMm: number;
  /** Null: never. */
  readonly grade: Grade | null;
  /** Greatest torque to undo, N m; null: no limit of its own. */
  readonly upToNm: number | null;
  readonly why: 'fits' | 'too-loose' | 'does-not-go-on';
  /** A remembered list of openings decided that it goes on: to be tried on the vehicle. */
  readonly recalled: boolean;
}

/** Looser than this nobody tries; smaller than this nobody gets on. Shares of the head's width. */
const TEMPTING = 0.036;
const NEARLY_ON = 0.012;

/** Near fits of tool sizes on head sizes, those that serve first, then those that never do (M2 "Opening on head"). */
export function nearFits(tools: readonly Flats[], heads: readonly Flats[]): readonly NearFit[] {
  const out: NearFit[] = [];
  for (const head of heads)
    for (const tool of tools) {
      const fit = fitOf(tool, head);
      if (fit.oversize === 0 || fit.oversize > TEMPTING || fit.oversize < -NEARLY_ON) continue;
      out.push(nearFit(tool, head, fit));
    }
  return out.sort(
    (a, b) =>
      Number(a.grade === null) - Number(b.grade === null) || a.headMm - b.headMm || a.toolMm - b.toolMm,
  );
}

function nearFit(tool: Flats, head: Flats, fit: Fit): NearFit {
  const toolMm = round(inMillimetres(tool.width));
  const headMm = round(inMillimetres(head.width));
  return {
    tool: tool.label,
    toolMm,
    head: head.label,
    headMm,
    looseMm: round(inMillimetres(tool.width) - inMillimetres(head.width)),
    grade: fit.kind === 'fits' ? fit.grade : null,
    upToNm: fit.kind === 'fits' ? fit.upTo : null,
    why: fit.kind === 'fits' ? 'fits' : fit.why === 'too-loose' ? 'too-loose' : 'does-not-go-on',
    recalled: fit.rests === 'recalled-openings',
  };
}

function round(mm: number): number {
  return Math.round(mm * 1000) / 1000;
}
