import * as v from 'valibot';

/** A finite number between `least` and `most` inclusive; the message names the range and the unit. */
export function quantity(least: number, most: number, unit: string) {
  const expected = `expected a number from ${least} to ${most}${unit === '' ? '' : ` ${unit}`}`;
  return v.pipe(
    v.number((issue) => `${expected}, got ${issue.received}`),
    v.check(
      (value) => Number.isFinite(value) && value >= least && value <= most,
      (issue) => `${expected}, got ${issue.input}`,
    ),
    v.metadata({ minimum: least, maximum: most, unit }),
  );
}

/** Text of one to `longest` characters; used for names the user types. */
export function words(longest = 120) {
  return v.pipe(
    v.string((issue) => `expected text, got ${issue.received}`),
    v.check(
      (text) => text.trim().length > 0 && text.length <= longest,
      `expected 1 to ${longest} characters`,
    ),
  );
}

/** An identifier: lower-case letters, digits and hyphens. */
export const identifier = v.pipe(
  v.string((issue) => `expected an identifier, got ${issue.received}`),
  v.regex(/^[a-z0-9][a-z0-9-]{0,63}$/, 'expected lower-case letters, digits and hyphens'),
);

/** A clock time of the site's civil day, `HH:MM` from 00:00 to 24:00. */
export const clockTime = v.pipe(
  v.string((issue) => `expected a time as HH:MM, got ${issue.received}`),
  v.regex(/^(([01]\d|2[0-3]):[0-5]\d|24:00)$/, 'expected a time as HH:MM from 00:00 to 24:00'),
);

/** A day of any year, `MM-DD`. */
export const monthDay = v.pipe(
  v.string((issue) => `expected a day as MM-DD, got ${issue.received}`),
  v.regex(/^(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/, 'expected a day as MM-DD, such as 12-01'),
);

/** Azimuth clockwise from north [degrees]. */
export const azimuth = quantity(0, 360, 'degrees clockwise from north');

/** Minutes after midnight of a clock time. */
export function minutesOf(time: string): number {
  const hours = Number(time.slice(0, 2));
  const minutes = Number(time.slice(3, 5));
  return hours * 60 + minutes;
}
