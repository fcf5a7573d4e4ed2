import { calendarOf, demonstrationPlan, parsePlan, runSeason, weatherFromPlan } from '../../core/index.ts';
import type { CalendarTask, LotSeason, Plan, SeasonResult, TaskKind, WeatherYear } from '../../core/index.ts';

export interface Judged {
  readonly name: string;
  readonly season: SeasonResult;
  readonly tasks: readonly CalendarTask[];
}

/** Lots for climates of all kinds: carried, outdoors all year, kept dry, watered, and of groups that rest in summer. */
const lots = [
  { id: 'agaves', name: 'Agaves', group: 'agave', place: 'tunnel', area: 1 },
  { id: 'step', name: 'On the steps', group: 'agave', place: 'outdoors', area: 0.2 },
  {
    id: 'carried',
    name: 'Carried',
    group: 'echeveria',
    place: 'outdoors',
    area: 0.2,
    moves: [
      { on: '10-20', to: 'tunnel' },
      { on: '04-25', to: 'outdoors' },
    ],
  },
  { id: 'aeoniums', name: 'Aeoniums', group: 'aeonium', place: 'tunnel', area: 0.4 },
  { id: 'conophytums', name: 'Conophytums', group: 'conophytum', place: 'tunnel', area: 0.2 },
  { id: 'desert-roses', name: 'Desert roses', group: 'adenium', place: 'tunnel', area: 0.4 },
  { id: 'kept-dry', name: 'Kept dry', group: 'echeveria', place: 'tunnel', area: 0.2, watering: 'dry' },
  { id: 'lemon', name: 'Lemon', group: 'citrus', place: 'tunnel', area: 0.4, watering: 'watered' },
  { id: 'houseleeks', name: 'Houseleeks', group: 'sempervivum', place: 'outdoors', area: 0.5 },
];

interface Climate {
  readonly name: string;
  readonly latitude: number;
  readonly longitude: number;
  readonly timeZone: string;
  /** Mean of the year and half the swing of its months, half the daily range [°C], usual and rare least [°C]. */
  readonly mean: number;
  readonly swing: number;
  readonly range: number;
  readonly lows: readonly [number, number];
}

/** Invented climates, in the manner of published normals (from memory, rounded). */
const southern: Climate = {
  name: 'a southern site',
  latitude: -43.5,
  longitude: 172.6,
  timeZone: 'Pacific/Auckland',
  mean: 11.5,
  swing: 5.8,
  range: 5,
  lows: [-4, -7],
};
const tropical: Climate = {
  name: 'a tropical site',
  latitude: 2,
  longitude: 104,
  timeZone: 'Asia/Singapore',
  mean: 27.5,
  swing: 0.7,
  range: 3.8,
  lows: [22, 20.5],
};
const arctic: Climate = {
  name: 'a site at 68° N',
  latitude: 68,
  longitude: 14,
  timeZone: 'Europe/Oslo',
  mean: 5,
  swing: 7,
  range: 2.5,
  lows: [-10, -16],
};

function planAt({ name, latitude, longitude, timeZone, mean, swing, range, lows }: Climate): Plan {
  const months = Array.from({ length: 12 }, (_, month) => {
    const middle = mean - swing * Math.cos((2 * Math.PI * (month - (latitude >= 0 ? 0 : 6))) / 12);
    const [meanMinimum, meanMaximum] = [middle - range, middle + range];
    return { meanMinimum, meanMaximum, globalRadiation: null, sunshineHours: null, wind: 3 };
  });
  const reading = parsePlan({
    schemaVersion: demonstrationPlan.schemaVersion,
    name,
    site: { name, latitude, longitude, elevation: 20, timeZone },
    climate: { kind: 'normals', months, typicalLow: lows[0], rareLow: lows[1], seed: 3 },
    tariff: { currency: 'EUR', dayPrice: 0.3, nightPrice: 0.15 },
    places: demonstrationPlan.places.filter(({ id }) => id === 'tunnel'),
    lots,
  });
  if (!reading.ok) throw new Error(reading.problems.map(({ path, message }) => `${path}: ${message}`).join());
  return reading.plan;
}

export function weatherOf(plan: Plan): WeatherYear {
  const weather = weatherFromPlan(plan);
  if (weather === null) throw new Error('expected a climate of normals, got a file');
  return weather;
}

/** The same year with every hour colder: air, dew point and sky alike [K]. */
export function colder(weather: WeatherYear, kelvin: number): WeatherYear {
  const share = (hour: number) => (1 - kelvin / (weather.dryBulb[hour] + 273.15)) ** 4;
  return {
    ...weather,
    name: `${weather.name}, ${kelvin} K colder`,
    dryBulb: weather.dryBulb.map((value) => value - kelvin),
    dewPoint: weather.dewPoint.map((value) => value - kelvin),
    skyLongWave: weather.skyLongWave.map((value, hour) => value * share(hour)),
  };
}

export function judged(name: string, plan: Plan, weather = weatherOf(plan)): Judged {
  const season = runSeason(plan, weather);
  return { name, season, tasks: calendarOf(season) };
}

const known = new Map<string, Judged>();
const once = (name: string, make: () => Judged) => () => {
  const made = known.get(name) ?? make();
  known.set(name, made);
  return made;
};

export const demonstration = once('demo', () => judged('the demonstration', demonstrationPlan));
/** Seasons run when they are asked for, once. */
export const everywhere: readonly (readonly [string, () => Judged])[] = [
  ['the demonstration', demonstration],
  ...[southern, tropical, arctic].map(
    (climate) => [climate.name, once(climate.name, () => judged(climate.name, planAt(climate)))] as const,
  ),
];

/** A day of the season taken as a ring of 365 days. */
export const ring = (day: number) => ((day % 365) + 365) % 365;

export const lotOf = ({ season }: Judged, task: CalendarTask): LotSeason => {
  const lot = season.lots.find(({ lotId }) => lotId === task.lotId);
  if (lot === undefined) throw new Error(`expected a lot of the season, got ${task.lotId}`);
  return lot;
};
export const ofKind = (at: Judged, ...kinds: TaskKind[]) =>
  at.tasks.filter(({ kind }) => kinds.includes(kind));
