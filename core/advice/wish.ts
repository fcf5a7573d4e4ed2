import type { SeasonResult } from '../season/index.ts';
import { plantStates } from '../plants/index.ts';
import type { Wish } from './result.ts';

/** How far a season fulfils a wish: `score` 1 is fulfilled, less is nearer to 0 the further off; `words` say it. */
export interface Fulfilment {
  readonly fulfilled: boolean;
  readonly score: number;
  readonly words: string;
}

const index = (id: string) => plantStates.findIndex((state) => state.id === id);

/** Judges a season against a wish. A day counts as growing when its state is growing or slow, and half must be growing. */
export function fulfilment(season: SeasonResult, wish: Wish): Fulfilment {
  switch (wish.kind) {
    case 'keep-growing':
      return keepGrowing(season, wish.lotId, wish.fromDay, wish.toDay);
    case 'safe-rest':
      return safeRest(season, wish.lotId, wish.neverBelow, wish.weeks);
    case 'hold-temperature':
      return holdTemperature(season, wish.placeId, wish.temperature);
    case 'daily-light':
      return dailyLight(season, wish.placeId, wish.least);
  }
}

function lotOf(season: SeasonResult, lotId: string) {
  for (const place of season.places) {
    const lot = place.lots.find((each) => each.lotId === lotId);
    if (lot !== undefined) return { lot, place };
  }
  throw new RangeError(`expected a lot of the plan, got ${lotId}`);
}

function placeOf(season: SeasonResult, placeId: string) {
  const place = season.places.find((each) => each.placeId === placeId);
  if (place === undefined) throw new RangeError(`expected a place of the plan, got ${placeId}`);
  return place;
}

function keepGrowing(season: SeasonResult, lotId: string, from: number, to: number): Fulfilment {
  const { lot } = lotOf(season, lotId);
  const growing = index('growing');
  const slow = index('slow');
  let kept = 0;
  let full = 0;
  let total = 0;
  let temperature = 0;
  let light = 0;
  for (let day = from; day <= to; day++) {
    total += 1;
    temperature += lot.temperatureIndex[day];
    light += lot.lightIndex[day];
    if (lot.state[day] === growing) full += 1;
    if (lot.state[day] === growing || lot.state[day] === slow) kept += 1;
  }
  const harmed = lot.harm.frostHours > 0;
  const fulfilled = total > 0 && kept === total && full * 2 >= total && !harmed;
  const holds = temperature < light ? 'cold' : 'lack of light';
  const words = fulfilled
    ? `grows on ${kept} of ${total} days`
    : `grows on ${kept} of ${total} days; held by ${holds}${harmed ? '; frost reaches it' : ''}`;
  const score = (kept + full) / (2 * total) / 2 + (temperature + light) / (4 * total);
  return { fulfilled, score: fulfilled ? 1 : Math.min(0.999, score), words };
}

function safeRest(season: SeasonResult, lotId: string, neverBelow: number, weeks: number): Fulfilment {
  const { lot, place } = lotOf(season, lotId);
  const cold = index('resting-cold');
  const dry = index('resting-dry');
  let run = 0;
  let longest = 0;
  let least = Infinity;
  for (let day = season.winterFrom; day <= season.winterTo; day++) {
    least = Math.min(least, place.daily.leafLeast[day]);
    run = lot.state[day] === cold || lot.state[day] === dry ? run + 1 : 0;
    longest = Math.max(longest, run);
  }
  const warmEnough = least >= neverBelow;
  const longEnough = longest >= weeks * 7;
  const words = `rests ${Math.floor(longest / 7)} weeks at a stretch; leaves never below ${least.toFixed(1)} °C`;
  const score =
    Math.min(1, longest / (weeks * 7)) * 0.5 + (warmEnough ? 0.5 : 0.5 * Math.exp((least - neverBelow) / 5));
  return {
    fulfilled: warmEnough && longEnough,
    score: warmEnough && longEnough ? 1 : Math.min(0.999, score),
    words,
  };
}

function holdTemperature(season: SeasonResult, placeId: string, temperature: number): Fulfilment {
  const place = placeOf(season, placeId);
  // The season holds the thermostat's mean; between switching off and on the air falls half a differential lower.
  const heater = season.plan.places.find((each) => each.id === placeId)?.heaters[0];
  const swing = heater !== undefined && place.totals.heaterHeat > 0 ? heater.differential / 2 : 0;
  const least = place.totals.leastAir - swing;
  const fulfilled = least >= temperature - 0.05;
  return {
    fulfilled,
    score: fulfilled ? 1 : Math.min(0.999, Math.exp((least - temperature) / 10)),
    words: `the coldest night ends at ${least.toFixed(1)} °C`,
  };
}

/** The weakest week of the winter half-year counts. */
function dailyLight(season: SeasonResult, placeId: string, least: number): Fulfilment {
  const { daily } = placeOf(season, placeId);
  let weakest = Infinity;
  for (let day = season.winterFrom; day + 7 <= season.winterTo + 1; day++) {
    let sum = 0;
    for (let k = day; k < day + 7; k++) sum += daily.daylight[k] + daily.lampLight[k];
    weakest = Math.min(weakest, sum / 7);
  }
  const fulfilled = weakest >= least;
  return {
    fulfilled,
    score: fulfilled ? 1 : Math.min(0.999, weakest / least),
    words: `the darkest week gives ${weakest.toFixed(1)} mol m⁻² a day`,
  };
}
