import { coverContradictions } from './contradictory-cover.ts';
import { lampContradictions } from './contradictory-lamps.ts';
import { holdsAtNoTime, noTime } from './hours.ts';
import type { Problem } from './problem.ts';
import type { Place } from './schema.ts';

/** Fields that gainsay each other: hours that hold at no time, a tank without a flame, air from a room that is not there. */
export function contradictions(place: Place, path: string): Problem[] {
  const found = [
    ...hourProblems(place),
    ...heaterProblems(place),
    ...roomProblems(place),
    ...clothProblems(place),
    ...coverContradictions(place),
    ...lampContradictions(place),
  ];
  return found.map((each) => ({ ...each, path: `${path}.${each.path}` }));
}

interface Hours {
  readonly from: string;
  readonly to: string;
}

/** Hours that begin when they end could mean always or never; a whole day is 00:00 to 24:00. */
function hourProblems({ screen, curtain, sheer, door, heaters }: Place): Problem[] {
  const spans: [string, Hours | null][] = [
    ['screen.to', screen?.closedWhen === 'hours' ? screen : null],
    ['curtain.to', curtain?.closedWhen === 'hours' ? curtain : null],
    ['sheer.to', sheer],
    ['door.to', door],
    ...heaters.map(({ hours }, index): [string, Hours | null] => [`heaters.${index}.hours.to`, hours]),
  ];
  return spans.flatMap(([path, hours]) => {
    if (hours === null || !holdsAtNoTime(hours.from, hours.to)) return [];
    return [{ path, message: noTime(hours.from, hours.to) }];
  });
}

function heaterProblems({ heaters }: Place): Problem[] {
  return heaters.flatMap(({ kind, tank, name }, index) => {
    if (tank === null || kind === 'propane' || kind === 'paraffin') return [];
    const message = `expected no bottle or tank, ${name} runs on electricity, got ${tank}`;
    return [{ path: `heaters.${index}.tank`, message }];
  });
}

/** A fan that draws from the room and a curtain before it need one, and the curtain an open side towards it. */
function roomProblems(place: Place): Problem[] {
  const problems: Problem[] = [];
  if (place.fan?.draws === 'room' && place.room === null)
    problems.push({
      path: 'fan.draws',
      message: 'expected a room to draw air from, got a place without one',
    });
  if (place.curtain !== null && !opensToRoom(place))
    problems.push({
      path: 'curtain',
      message: 'expected a curtain only where a side is open to a room, got a place without such a side',
    });
  return problems;
}

/** A sheer curtain hangs before a window; shade cloth that is taken off the day it is laid shades no day. */
function clothProblems({ shape, sheer, shadeCloth }: Place): Problem[] {
  const problems: Problem[] = [];
  if (sheer !== null && shape.kind !== 'window-bay')
    problems.push({
      path: 'sheer',
      message: 'expected a sheer curtain only before a window, got a place of another kind',
    });
  if (shadeCloth !== null && shadeCloth.from === shadeCloth.to)
    problems.push({
      path: 'shadeCloth.to',
      message: `expected another day than it is laid on (${shadeCloth.from}; all year is 01-01 to 12-31), got ${shadeCloth.to}`,
    });
  return problems;
}

function opensToRoom({ shape }: Place): boolean {
  if (shape.kind === 'listed')
    return shape.surfaces.some(({ covering, behind }) => behind === 'room' && covering === 'open');
  return shape.kind === 'window-bay' || shape.kind === 'shelf';
}
