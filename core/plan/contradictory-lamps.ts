import { daylightReaches } from './daylit.ts';
import { holdsAtNoTime, hoursOverlap, noTime } from './hours.ts';
import type { Lamp } from './lamp.ts';
import type { Problem } from './problem.ts';
import { shown } from './problem.ts';
import type { Place } from './schema.ts';

/** What a lamp's own fields, or they and its place, gainsay: light of a file that is not there, hours at no time. */
export function lampContradictions(place: Place): Problem[] {
  const daylit = daylightReaches(place);
  return place.lamps.flatMap((lamp, index) =>
    [
      ...lightProblems(lamp),
      ...hourProblems(lamp),
      ...controlProblems(lamp, daylit),
      ...shelfProblems(lamp, place),
    ].map((each) => ({ ...each, path: `lamps.${index}.${each.path}` })),
  );
}

const beamWords = { even: 'an even face', 'cosine-power': 'a narrower beam', file: 'a file' } as const;

function lightProblems({ light, beam, watts, wattsAtHalf }: Lamp): Problem[] {
  const problems: Problem[] = [];
  if (light.kind === 'file' && beam.kind !== 'file')
    problems.push({
      path: 'light',
      message: `expected a beam from a photometric file where the light is taken from one, got ${beamWords[beam.kind]}`,
    });
  if (wattsAtHalf !== null && !(wattsAtHalf <= watts))
    problems.push({
      path: 'wattsAtHalf',
      message: `expected no more watts at half its light than at full (${shown(watts)} W), got ${shown(wattsAtHalf)} W`,
    });
  return problems;
}

/** Clock times of a lamp that lengthens the natural day are not read. */
function hourProblems({ on, off, second, control }: Lamp): Problem[] {
  if (control.kind === 'extend') return [];
  if (holdsAtNoTime(on, off)) return [{ path: 'off', message: noTime(on, off) }];
  if (second === null) return [];
  if (holdsAtNoTime(second.on, second.off))
    return [{ path: 'second.off', message: noTime(second.on, second.off) }];
  if (!hoursOverlap({ on, off }, second)) return [];
  const message = `expected a second block clear of the first (${on} to ${off}), got ${second.on} to ${second.off}`;
  return [{ path: 'second', message }];
}

function controlProblems({ control, mostDay }: Lamp, daylit: boolean): Problem[] {
  if (control.kind === 'clock') return [];
  if (!daylit) {
    const message = `expected the clock to switch it where no daylight reaches the plants, got a lamp that follows the ${control.kind === 'extend' ? 'natural day' : 'daylight'}`;
    return [{ path: 'control', message }];
  }
  if (control.kind !== 'extend' || mostDay === null || control.hours <= mostDay) return [];
  const message = `expected a longest day of at least the ${shown(control.hours)} h it makes, got ${shown(mostDay)} h`;
  return [{ path: 'mostDay', message }];
}

function shelfProblems({ shelf }: Lamp, { upperShelf }: Place): Problem[] {
  if (shelf === 'lower' || upperShelf !== null) return [];
  return [{ path: 'shelf', message: 'expected an upper shelf under it, got a place without one' }];
}
