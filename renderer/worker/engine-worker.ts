import {
  compareLamps,
  createSeasonCache,
  findWays,
  readEpwBytes,
  runNight,
  runSeason,
  weatherFromPlan,
} from '../../core/index.ts';
import type { Plan, SeasonCache, WeatherYear } from '../../core/index.ts';
import type { FromWorker, RequestMessage, RequestName, Requests, ToWorker, WeatherMessage } from './messages.ts';

/** The engine behind a message port: keeps the season's intermediate results and the weather between questions. */
const files = new Map<string, WeatherYear>();
const cache: SeasonCache = createSeasonCache();
let normals: { readonly key: string; readonly weather: WeatherYear } | null = null;

function tell(message: FromWorker) {
  postMessage(message);
}

function keepWeather(message: WeatherMessage) {
  if (message.format !== 'epw') throw new Error(`expected an EPW file, got a ${message.format} file`);
  files.set(message.weatherId, readEpwBytes(message.bytes));
}

/** The same object for the same site and climate, so that the cache recognises it. */
function weatherOf(plan: Plan): WeatherYear {
  if (plan.climate.kind === 'file') {
    const weather = files.get(plan.climate.weatherId);
    if (!weather) throw new Error(`the weather file “${plan.climate.name}” is not there; import it again`);
    return weather;
  }
  const key = JSON.stringify([plan.site, plan.climate]);
  if (normals?.key !== key) normals = { key, weather: weatherFromPlan(plan) };
  return normals.weather;
}

type Answers = { [N in RequestName]: (ask: Requests[N]['ask'], id: number) => Requests[N]['answer'] };

const answers: Answers = {
  season: ({ plan }) => runSeason(plan, weatherOf(plan), cache),
  night: ({ plan, input }) => runNight(plan, input, weatherOf(plan)),
  lamps: ({ plan, placeId, options }) => compareLamps([...options], { plan, weather: weatherOf(plan), placeId, cache }),
  ways: ({ plan, wish }, id) =>
    findWays(plan, weatherOf(plan), wish, { cache, onWay: (way) => tell({ kind: 'way', id, way }) }),
};

function answer<N extends RequestName>({ id, name, ask }: RequestMessage<N>) {
  const started = performance.now();
  try {
    const given = answers[name](ask, id);
    tell({ kind: 'done', id, answer: given, milliseconds: performance.now() - started });
  } catch (error) {
    tell({ kind: 'failed', id, message: error instanceof Error ? error.message : String(error) });
  }
}

onmessage = (event: MessageEvent<ToWorker>) => {
  if (event.data.kind === 'weather') keepWeather(event.data);
  else answer(event.data);
};
