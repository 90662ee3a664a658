import { calendarText } from '@waymend/core/caring/icalendar';
import { calendarEntries } from '@waymend/planner/ready/calendar-entries';
import { readyAnswer } from '@waymend/planner/ready/ready';
import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import type { ExitCode, Io } from '../io.ts';
import { EXIT } from '../io.ts';
import { careText } from '../text/care-text.ts';
import { paintFor } from '../text/paint.ts';
import { refuse, writeText } from './garage-at.ts';
import type { Options } from './options.ts';
import { dayOption, numberOption, textOption } from './options.ts';
import { planned } from './planned.ts';

/** Whether the planned kit is ready, and what care asks for; writes due days as a calendar when asked to. */
export async function careCommand(io: Io, path: string, options: Options): Promise<ExitCode> {
  const today = dayOption(options, 'on');
  const leave = options['leave'] === undefined ? today : dayOption(options, 'leave');
  const kept = numberOption(options, 'kept', -40, 'a temperature in C');
  const km = numberOption(options, 'km', 0, 'a distance in km');
  for (const read of [today, leave, kept, km])
    if (!read.ok) {
      refuse(io, [read.error]);
      return EXIT.refused;
    }
  if (!today.ok || !leave.ok || !kept.ok || !km.ok) return EXIT.refused;
  if (leave.value < today.value) {
    refuse(io, [
      { id: 'day-past', message: `Leaving on ${leave.value} is before ${today.value}; say a later day` },
    ]);
    return EXIT.refused;
  }
  const made = await planned(io, path, options);
  if (made.kind === 'code') return made.code;
  const { prepared, solved, answer, asked, garage } = made.planned;
  const ready = readyAnswer(
    prepared,
    solved,
    answer,
    {
      today: today.value,
      leaveOn: leave.value,
      ...(kept.value === null ? {} : { keptAtC: kept.value }),
      ...(km.value === null ? {} : { nowKm: km.value }),
    },
    SHIPPED_TRADE,
  );
  const calendar = textOption(options, 'calendar');
  if (calendar !== undefined) {
    const pace = {
      today: today.value,
      leaveOn: leave.value,
      kmPerDay: answer.trip.km / Math.max(1, answer.trip.days),
    };
    const dues = ready.dues.map(({ charge, ...due }) => ({ ...due, ...(charge === null ? {} : { charge }) }));
    const entries = calendarEntries(dues, ready.repairs, pace);
    if (!(await writeText(io, calendar, calendarText(garage.name, today.value, entries))))
      return EXIT.refused;
    io.err(`Wrote ${entries.length} days to ${calendar}.\n`);
  }
  if (asked.json) io.out(`${JSON.stringify(ready, null, 2)}\n`);
  else io.out(careText(ready, paintFor(io.colour), options['all'] === true));
  return EXIT.done;
}
