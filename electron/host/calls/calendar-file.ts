import ical, { ICalEventTransparency } from 'ical-generator';
import type { CheckedInput } from '../../contract.ts';
import { fileNameOf } from '../file-name.ts';

type CalendarInput = CheckedInput<'calendarFile'>;
type Entry = CalendarInput['tasks'][number];

const dayMs = 86_400_000;

/** The call that writes a calendar for other programs. */
export function calendarFileCalls(now: () => number) {
  return { calendarFile: (input: CalendarInput) => calendarFile(input, now()) };
}

/**
 * The tasks as an iCalendar file (RFC 5545): one all-day event each, DATE values, the end exclusive. An event keeps
 * its UID from file to file of the same plan title and year, so that a calendar replaces it rather than doubling it.
 * @param nowMs when the file is written, the events' DTSTAMP [epoch ms UTC]
 */
export function calendarFile(input: CalendarInput, nowMs: number) {
  const title = plainText(input.title).replace(/[\r\n]+/g, ' ');
  const calendar = ical({
    name: escaped(title),
    prodId: { company: 'Winterbench', product: 'Winterbench', language: 'EN' },
  });
  for (const task of input.tasks) {
    const { first, end } = daysOf(task, input);
    calendar.createEvent({
      id: `${task.id}-${input.year}@${fileNameOf(title, 'plan').toLowerCase()}.winterbench`,
      stamp: new Date(nowMs),
      allDay: true,
      transparency: ICalEventTransparency.TRANSPARENT,
      start: new Date(first),
      end: new Date(end),
      summary: plainText(task.summary),
      description: task.description === '' ? null : plainText(task.description),
      location: task.location === '' ? null : plainText(task.location),
      categories: task.category === undefined ? [] : [{ name: plainText(task.category) }],
    });
  }
  return {
    fileName: `${fileNameOf(title, 'calendar')}.ics`,
    text: withZone(calendar.toString(), input.timeZone),
  };
}

/**
 * The zone's name among the calendar's properties, where other calendars look for it. The library writes it only
 * together with turning dates and stamps into local time, which dates without a clock do not want.
 */
const withZone = (text: string, timeZone: string) =>
  `${text.replace('\r\nVERSION:2.0\r\n', `$&X-WR-TIMEZONE:${timeZone}\r\n`)}\r\n`;

/** Value of a text property of one line as RFC 5545 section 3.3.11 writes it; the library does not do it for a calendar's name. */
const escaped = (text: string) => text.replace(/[\\;,]/g, '\\$&');

/**
 * First day of a task and the day after its last [epoch ms UTC of the dates' midnights]: a day before the season's
 * first is the next civil year's, and a span ends on the next such date from its beginning on. UTC midnights carry
 * the bare dates; no clock is set by them.
 */
function daysOf({ on, until, nextSeason }: Entry, { year, startsOn }: CalendarInput) {
  const first = year + (on < startsOn ? 1 : 0) + (nextSeason ? 1 : 0);
  const last = until === null || until >= on ? first : first + 1;
  return { first: midnight(first, on), end: midnight(last, until ?? on) + dayMs };
}

const midnight = (year: number, monthDay: string) => Date.parse(`${year}-${monthDay}T00:00:00Z`);

/** Text as RFC 5545 takes it: whole characters, no control characters but the line's end. */
function plainText(text: string): string {
  return text
    .replace(/\p{Surrogate}/gu, '\ufffd')
    .replace(/[\u0000-\u0009\u000b\u000c\u000e-\u001f\u007f]/g, ' ');
}
