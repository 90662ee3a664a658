import { addDays } from '@waymend/core/caring/calendar';
import type { CareDue } from '@waymend/core/caring/due';
import type { CalendarEntry } from '@waymend/core/caring/icalendar';
import { grouped } from '../words/chance.ts';
import type { OpenRepair } from './repairs-open.ts';

/**
 * Due days of care and looks at repairs as entries for a calendar. A look is due at a distance: its day is guessed from the
 * km a day of the trip, and the entry says the distance. What is overdue stands on the day of asking.
 */
export function calendarEntries(
  dues: readonly CareDue[],
  repairs: readonly OpenRepair[],
  pace: { readonly today: string; readonly leaveOn: string; readonly kmPerDay: number },
): readonly CalendarEntry[] {
  const care = dues.flatMap((due): readonly CalendarEntry[] =>
    due.on === null
      ? []
      : [
          {
            id: `care-${due.thing === '' ? 'kit' : due.thing}-${due.rule}-${due.kind}`,
            on: due.on < pace.today ? pace.today : due.on,
            summary: `${due.name}: ${WHAT[due.kind]}`,
            description: `${due.words}.\n${due.advice}`,
          },
        ],
  );
  const looks = repairs.flatMap((repair): readonly CalendarEntry[] => {
    if (repair.lookInKm === null || repair.nextLookKm === null) return [];
    const days = pace.kmPerDay > 0 ? Math.floor(Math.max(0, repair.lookInKm) / pace.kmPerDay) : 0;
    return [
      {
        id: `look-${repair.id}-${Math.round(repair.nextLookKm)}`,
        on: repair.lookInKm <= 0 ? pace.today : addDays(pace.leaveOn, days),
        summary: `Look again: ${repair.title}`,
        description: `Due at ${grouped(Math.round(repair.nextLookKm))} km; the day is a guess from the distance.${repair.limits === null ? '' : `\n${repair.limits}`}`,
      },
    ];
  });
  // A thing may be due twice by the same rule (its printed date, and since it was opened): the sooner day stands.
  const seen = new Set<string>();
  return [...care, ...looks].filter(({ id }) => {
    const first = !seen.has(id);
    seen.add(id);
    return first;
  });
}

const WHAT: Readonly<Record<CareDue['kind'], string>> = {
  expiry: 'past its date',
  charge: 'charge it',
  replace: 'due for a new one',
  pressure: 'look at the pressure',
  service: 'service it',
  calibration: 'check its setting',
  check: 'look it over',
  storage: 'keep it cooler',
};
