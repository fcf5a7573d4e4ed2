import { describe, expect, it } from 'vitest';
import {
  createSeasonCache,
  demonstrationPlan,
  heaterOf,
  isoDate,
  runNight,
  runSeason,
  weatherFromPlan,
} from '../../core/index.ts';
import type { NightInput, NightResult, Place, Plan, PlaceNight, WeatherYear } from '../../core/index.ts';
import { firstDifference, firstNotFinite } from '../season/difference.ts';

const plan = demonstrationPlan;
const weather = weatherFromPlan(plan) as WeatherYear;
const cache = createSeasonCache();
const input: NightInput = {
  dateISO: '2026-01-14',
  duskTemperature: 3,
  low: -5,
  cloudOktas: 0,
  wind: 1,
  band: 2,
};

const tonight = (changes: Partial<NightInput> = {}, of: Plan = plan): NightResult =>
  runNight(of, { ...input, ...changes }, weather, cache);

function placeOf(night: NightResult, id: string): PlaceNight {
  const found = night.places.find((place) => place.placeId === id);
  if (found === undefined) throw new Error(`expected ${id} in the night, got none`);
  return found;
}

const withPlace = (id: string, change: Partial<Place>): Plan => ({
  ...plan,
  places: plan.places.map((place) => (place.id === id ? { ...place, ...change } : place)),
});

const fan = (power: number, setPoint: number): Place['heaters'] => [
  heaterOf({
    id: 'h',
    name: 'Heater',
    kind: 'fan',
    power,
    setPointDay: setPoint,
    setPointNight: setPoint,
  }),
];

const ids = plan.places.map((place) => place.id);
const least = (values: Float64Array) => values.reduce((found, value) => Math.min(found, value), Infinity);

describe('a night', () => {
  it('is finite throughout and the same twice, from a cache and afresh', () => {
    const night = tonight();
    expect(firstNotFinite(night)).toBeNull();
    expect(firstDifference(tonight(), night)).toBeNull();
    expect(firstDifference(runNight(plan, input, weather), night)).toBeNull();
  });

  it('lists the worst place first', () => {
    const margins = tonight().places.map((place) => place.margin ?? Infinity);
    expect(margins).toEqual([...margins].sort((a, b) => a - b));
  });

  it.each([
    ['forecast low', [-1, -3, -6, -10].map((low) => ({ low }))],
    ['temperature at dusk', [8, 5, 2, -1].map((duskTemperature) => ({ duskTemperature }))],
    ['clearer sky', [8, 5, 2, 0].map((cloudOktas) => ({ cloudOktas }))],
  ])('a lower or colder %s never gives a warmer inside, nor less heat', (_, inputs) => {
    // Colder days outdoors leave a lived-in room damper, into which a tent's pots evaporate less: 0.003 K reached.
    const damper = 0.005;
    const nights = inputs.map((each) => tonight(each));
    for (let at = 1; at < nights.length; at++) {
      for (const id of ids) {
        const [before, after] = [nights[at - 1], nights[at]].map((night) => placeOf(night, id));
        expect(after.leastUnheated, id).toBeLessThanOrEqual(before.leastUnheated + damper);
        expect(after.least, id).toBeLessThanOrEqual(before.least + damper);
        expect(least(after.leaf), id).toBeLessThanOrEqual(least(before.leaf) + damper);
        expect(after.heaterKwh, id).toBeGreaterThanOrEqual(before.heaterKwh - 1e-9);
        expect(after.powerNeeded, id).toBeGreaterThanOrEqual(before.powerNeeded - 1);
      }
    }
  });

  it('the colder and the warmer forecast lie on their sides of the night', () => {
    for (const place of tonight().places) {
      place.airUnheated.forEach((_, step) => {
        expect(place.airColdForecast[step]).toBeLessThanOrEqual(place.air[step] + 1e-9);
        expect(place.airWarmForecast[step]).toBeGreaterThanOrEqual(place.air[step] - 1e-9);
        expect(place.airUnheated[step]).toBeLessThanOrEqual(place.air[step] + 1e-9);
      });
    }
  });
});

describe('heaters tonight', () => {
  it('never give more than they have, nor less than nothing', () => {
    for (const power of [50, 400, 2000]) {
      const night = tonight({ low: -10 }, withPlace('lean-to', { heaters: fan(power, 8) }));
      const place = placeOf(night, 'lean-to');
      expect(place.powerThere).toBe(power);
      expect(Math.max(...place.heaterPower)).toBeLessThanOrEqual(power);
      expect(Math.min(...place.heaterPower)).toBeGreaterThanOrEqual(0);
      const kwh = place.heaterPower.reduce((sum, watts) => sum + watts, 0) * (night.stepMinutes / 60_000);
      expect(place.heaterKwh).toBeCloseTo(kwh, 9);
    }
  });

  it('one too weak is found out, with the hour; one that holds is not', () => {
    const weak = placeOf(tonight({ low: -10 }, withPlace('lean-to', { heaters: fan(150, 8) })), 'lean-to');
    const strong = placeOf(tonight({ low: -10 }, withPlace('lean-to', { heaters: fan(5000, 8) })), 'lean-to');
    expect(weak.failsAtMs).not.toBeNull();
    expect(weak.least).toBeLessThan(8);
    expect(strong.failsAtMs).toBeNull();
    expect(strong.least).toBeGreaterThan(7.9);
  });

  it.each([-3, -6, -10])(
    'the power said to be needed holds every limit at a low of %d °C, and half of it falls short',
    (low) => {
      for (const id of ['tunnel', 'lean-to']) {
        const bare = withPlace(id, { heaters: [] });
        const { powerNeeded, lots } = placeOf(tonight({ low }, bare), id);
        const limit = Math.max(...lots.map((lot) => lot.limit));
        if (powerNeeded === 0) {
          expect(placeOf(tonight({ low }, bare), id).margin).toBeGreaterThanOrEqual(0.5);
          continue;
        }
        const holding = placeOf(
          tonight({ low }, withPlace(id, { heaters: fan(powerNeeded, limit + 3) })),
          id,
        );
        expect(holding.margin, `${id} with ${powerNeeded} W`).toBeGreaterThanOrEqual(0);
        const short = placeOf(
          tonight({ low }, withPlace(id, { heaters: fan(0.5 * powerNeeded, limit + 3) })),
          id,
        );
        expect(short.margin, `${id} with half`).toBeLessThan(0.5);
      }
    },
  );
});

describe('a power cut', () => {
  it('brings harm the sooner, the colder the night; and never where no heat is needed', () => {
    const hours = [-5, -7, -10].map((low) => placeOf(tonight({ low }), 'lean-to').hoursToHarm);
    expect(hours.every((each) => each !== null)).toBe(true);
    expect(hours).toEqual([...hours].sort((a, b) => (b ?? 0) - (a ?? 0)));
    // Desert roses bear no less than 5 °C and need heat even so.
    const hardier = { ...plan, lots: plan.lots.filter((lot) => lot.group !== 'adenium') };
    expect(placeOf(tonight({ low: 4, duskTemperature: 9 }, hardier), 'lean-to').hoursToHarm).toBeNull();
  });
});

describe('the night and the season', () => {
  it('say the same of the six coldest nights under like skies: warmer or colder than outdoors, and within 1.3 K', () => {
    // Reached 1.23 K at the most, in the tunnel: the night takes one cloud and one wind for all its hours.
    // The season’s lows already hold the frost hollow; a forecast is for the station, so the site has none here.
    const level = { ...plan, site: { ...plan.site, frostHollow: 0 } };
    const season = runSeason(level, weather, cache);
    const coldest = [...season.outdoor.least.keys()].sort(
      (a, b) => season.outdoor.least[a] - season.outdoor.least[b],
    );
    for (const day of coldest.slice(0, 6)) {
      const midnight = ((season.startDay + day) % 365) * 24;
      const hours = { from: midnight - 7, to: midnight + 7 };
      const mean = (values: Float64Array) =>
        values.subarray(hours.from, hours.to).reduce((sum, value) => sum + value, 0) / 14;
      const night = tonight(
        {
          dateISO: isoDate(season.startMs, weather.utcOffsetHours, day - 1),
          low: season.outdoor.least[day],
          duskTemperature: weather.dryBulb[hours.from],
          cloudOktas: Math.round(8 * mean(weather.cloudCover)),
          wind: mean(weather.windSpeed),
        },
        level,
      );
      for (const place of season.places) {
        const here = placeOf(night, place.placeId);
        const inSeason = place.daily.airLeast[day];
        const excess = [here.least - least(night.outdoor), inSeason - season.outdoor.least[day]];
        // Within half a kelvin of outdoors either sign may stand.
        const clear = excess.every((each) => Math.abs(each) > 0.5);
        if (clear) expect(Math.sign(excess[0]), `${place.placeId}, day ${day}`).toBe(Math.sign(excess[1]));
        expect(Math.abs(here.least - inSeason), `${place.placeId}, day ${day}`).toBeLessThan(1.3);
      }
    }
  });
});
