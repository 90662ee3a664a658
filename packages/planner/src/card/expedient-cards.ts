import type { Job } from '@waymend/catalogue/shape/job';
import type { Metres } from '@waymend/core/quantity/units';
import type { SceneJob } from '@waymend/core/repairing/scene';
import type { ExpedientCard } from '../answer/card-answer.ts';
import { needWords } from '../explain/why-job.ts';
import type { BuiltScene } from '../scene/build-scene.ts';
import type { Trade } from '../trade.ts';
import type { Aboard } from './aboard.ts';
import { gradeOfWays } from './aboard.ts';
import { stockName } from './stock-name.ts';
import { pieceRef } from './where.ts';

/** Kilometres a result is trusted for; null to the end of the trip. */
export function trustedKm(trusted: Metres): number | null {
  return trusted >= 1e8 ? null : trusted / 1000;
}

/** The weaker ways through the same trouble, those that are possible here and trusted furthest first. */
export function expedientCards(
  { scene, garage }: BuiltScene,
  trade: Pick<Trade, 'belongings'>,
  aboard: Aboard,
  job: SceneJob,
  record: Job,
  help: Metres,
): readonly ExpedientCard[] {
  const mine = scene.jobs.filter((j) => j.expedient && j.job === job.job && j.position === job.position);
  const cards = record.expedients.flatMap((expedient): ExpedientCard[] => {
    const found = mine.find((j) => j.id.replace(/@.*$/, '').endsWith(expedient.id));
    if (found === undefined) return [];
    const ways = aboard.ways(found);
    const grade = gradeOfWays(ways);
    const missing = [
      ...found.needs.flatMap((need, n) => (ways[n]?.length === 0 ? [needWords(need, { scene })] : [])),
      ...found.uses.flatMap(({ of, units }) => (aboard.units(of) < units ? [stockName(of, trade)] : [])),
      ...(aboard.hasPeople(found) ? [] : [`somebody of skill ${found.skill}`]),
    ];
    const ids = new Set(ways.flatMap(([best]) => best?.pieces ?? []));
    return [
      {
        id: found.id,
        title: expedient.title,
        possible: missing.length === 0,
        grade: missing.length === 0 ? grade : null,
        trustedKm: trustedKm(found.trusted),
        reachesHelp: found.trusted > 0 && found.trusted >= help,
        speedKmh: expedient.speedKmh ?? null,
        lookAgainKm: expedient.lookAgainKm ?? null,
        missing,
        with: [...ids].flatMap((id) => {
          const piece = aboard.piece(id);
          return piece === undefined ? [] : [pieceRef(garage, piece)];
        }),
        steps: expedient.steps,
        limits: expedient.limits,
      },
    ];
  });
  const reach = (card: ExpedientCard) => card.trustedKm ?? Number.POSITIVE_INFINITY;
  return cards.sort((a, b) => Number(b.possible) - Number(a.possible) || reach(b) - reach(a));
}
