import {
  compareLamps,
  createSeasonCache,
  dampChoices,
  findWays,
  flowerTogether,
  placeLampHours,
  rankGroups,
  rankPlaces,
  readEpwBytes,
  readTmy3,
  runNight,
  runSeason,
  siteCard,
  weatherFromPlan,
} from '../../core/index.ts';
import type {
  Certainty,
  LampPlacing,
  Plan,
  SeasonCache,
  SeasonResult,
  WeatherReading,
  WeatherYear,
} from '../../core/index.ts';
import { CertaintyRuns } from './certainty-runs.ts';
import { packSeason } from './season-parcel.ts';
import { winterHours } from './winter-hours.ts';
import type {
  FromWorker,
  RequestMessage,
  RequestName,
  Requests,
  ToWorker,
  WeatherMessage,
} from './messages.ts';

/** The engine behind a message port: keeps the season's intermediate results and the weather between questions. */
const files = new Map<string, WeatherReading>();
const cache: SeasonCache = createSeasonCache();
/** The season last sent; its places need not be sent again. */
let former: SeasonResult | null = null;
const certainties = new CertaintyRuns(cache);
/** Questions that are no longer wanted. */
const cancelled = new Set<number>();
let normals: { readonly key: string; readonly weather: WeatherYear } | null = null;

function tell(message: FromWorker) {
  postMessage(message);
}

function keepWeather({ weatherId, format, bytes }: WeatherMessage) {
  files.set(
    weatherId,
    format === 'epw' ? readEpwBytes(bytes) : readTmy3(new TextDecoder('latin1').decode(bytes)),
  );
}

function fileWeather(weatherId: string, name: string): WeatherYear {
  const reading = files.get(weatherId);
  if (!reading) throw new Error(`The weather file “${name}” is not there; import it again.`);
  if (reading.ok) return reading.weather;
  throw new Error(`The weather file “${name}” cannot be used: ${reading.problems[0].message}.`);
}

/** The same object for the same site and climate, so that the cache recognises it. */
function weatherOf(plan: Plan): WeatherYear {
  if (plan.climate.kind === 'file') return fileWeather(plan.climate.weatherId, plan.climate.name);
  const key = JSON.stringify([plan.site, plan.climate]);
  if (normals?.key === key) return normals.weather;
  const weather = weatherFromPlan(plan);
  if (!weather) throw new Error('expected weather from normals, got none');
  normals = { key, weather };
  return weather;
}

type Answers = {
  [N in RequestName]: (
    ask: Requests[N]['ask'],
    id: number,
  ) => Requests[N]['answer'] | Promise<Requests[N]['answer']>;
};

const answers: Answers = {
  season: ({ plan }) => {
    const season = runSeason(plan, weatherOf(plan), cache);
    const parcel = packSeason(season, former);
    former = season;
    return parcel;
  },
  night: ({ plan, input }) => runNight(plan, input, weatherOf(plan), cache),
  lamps: ({ plan, placeId, options, view }) =>
    compareLamps(options, { plan, weather: weatherOf(plan), placeId, cache }, view),
  placing: ({ plan, placeId, lampId }, id) => {
    const weather = weatherOf(plan);
    const onPlacing = (piece: LampPlacing) => tell({ kind: 'piece', id, piece });
    return {
      placings: placeLampHours(plan, weather, placeId, lampId, { cache, onPlacing }),
      outdoors: winterHours(weather),
    };
  },
  ways: ({ plan, wish }, id) =>
    findWays(plan, weatherOf(plan), wish, { cache, onWay: (piece) => tell({ kind: 'piece', id, piece }) }),
  damp: ({ plan, placeId }, id) =>
    dampChoices(plan, weatherOf(plan), placeId, {
      cache,
      onChoice: (piece) => tell({ kind: 'piece', id, piece }),
    }),
  certainty: ({ plan }, id) => {
    const onGrow = (piece: Certainty) => tell({ kind: 'piece', id, piece });
    return certainties.grow(plan, weatherOf(plan), onGrow, () => cancelled.has(id));
  },
  rankPlaces: ({ plan, groupId }) => rankPlaces(plan, weatherOf(plan), groupId, cache),
  rankGroups: ({ plan, placeId }) => rankGroups(plan, weatherOf(plan), placeId, cache),
  flower: ({ plan, one, other }, id) =>
    flowerTogether(
      plan,
      weatherOf(plan),
      { one, other },
      { cache, onWay: (piece) => tell({ kind: 'piece', id, piece }) },
    ),
  siteCard: ({ plan }) => siteCard(plan, weatherOf(plan)),
};

async function answer<N extends RequestName>({ id, name, ask }: RequestMessage<N>) {
  const started = performance.now();
  try {
    const given = await answers[name](ask, id);
    tell({ kind: 'done', id, answer: given, milliseconds: performance.now() - started });
  } catch (error) {
    tell({ kind: 'failed', id, message: error instanceof Error ? error.message : String(error) });
  } finally {
    cancelled.delete(id);
  }
}

onmessage = (event: MessageEvent<ToWorker>) => {
  const { data } = event;
  if (data.kind === 'weather') keepWeather(data);
  else if (data.kind === 'cancel') cancelled.add(data.id);
  else void answer(data);
};
