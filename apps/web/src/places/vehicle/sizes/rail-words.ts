import type { TFunction } from 'i18next';
import type { NearFit } from '@waymend/planner/views/near-fits';
import type { RailPlace, RailSize, SizeRail } from '@waymend/planner/views/size-rail';
import type { Format } from '../../../format/use-format.ts';
import { bare } from './rail-data.ts';

/** The sentence the rail opens with: how many holes, and where. */
export function holesSentence(rail: SizeRail, planned: boolean, t: TFunction): string {
  if (!planned) return t('rail.notPlanned', { places: rail.places });
  const holes = [
    ...rail.sizes.filter((s) => s.hole).map((s) => (s.system === 'inch' ? s.label : bare(s.label))),
    ...rail.others.filter((o) => o.hole).map((o) => o.label),
  ];
  if (holes.length === 0) return t('rail.noHoles');
  return t('rail.holes', { count: holes.length, at: listed(holes, t) });
}

export function listed(words: readonly string[], t: TFunction): string {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : t('rail.and', { some: words.slice(0, -1).join(', '), last });
}

/** '19 mm fits 3/4 in, 0.05 mm loose, with care'; the forbidden ones are said as never. */
export function fitWords(fit: NearFit, t: TFunction, format: Format): string {
  const gap = (Math.round(Math.abs(fit.looseMm) * 100) / 100).toString();
  const { tool, head } = fit;
  switch (fit.why) {
    case 'too-loose':
      return t('rail.never', { tool, head, gap });
    case 'does-not-go-on':
      return t('rail.notOn', { tool, head, gap });
    case 'fits': {
      const how = fit.looseMm >= 0 ? t('rail.loose', { gap }) : t('rail.snug', { gap });
      const limit =
        fit.upToNm === null ? t('rail.withCare') : t('rail.upTo', { torque: format.torque(fit.upToNm) });
      const tried = fit.recalled ? ` ${t('rail.tryIt')}` : '';
      return `${t('rail.fits', { tool, head, how, limit })}${tried}`;
    }
  }
}

/** What the kit can do about a place. */
export function placeVerdict(place: RailPlace, t: TFunction): string {
  if (place.grade !== null) {
    const words = {
      proper: t('rail.proper'),
      'with-care': t('rail.withCareGrade'),
      'last-resort': t('rail.lastResort'),
    };
    return words[place.grade];
  }
  switch (place.missing) {
    case 'hold':
      return t('rail.noHold');
    case 'lever':
      return t('rail.noLever');
    default:
      return t('rail.noPiece');
  }
}

/** One size said in full, for a screen reader and as the flag's words. */
export function sizeSaid(size: RailSize, t: TFunction): string {
  const along = size.cells.reduce((sum, c) => sum + c.pieces.filter((p) => p.along).length, 0);
  const home = size.cells.reduce((sum, c) => sum + c.pieces.filter((p) => !p.along).length, 0);
  const parts = [
    size.places.length === 0 ? t('rail.saidNoPlace') : t('rail.places', { count: size.places.length }),
    t('rail.saidAlong', { count: along }),
    t('rail.saidHome', { count: home }),
    ...(size.hole ? [t('rail.saidHole')] : []),
  ];
  return `${size.label}: ${parts.join(', ')}`;
}
