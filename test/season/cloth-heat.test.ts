/** Heat of cloth: shade over a house keeps its noons cooler, a sheer curtain warms its bay, and the account closes. */
import { describe, expect, it } from 'vitest';
import { createSeasonCache, demonstrationPlan, runSeason, weatherFromPlan } from '../../core/index.ts';
import type { PlaceSeason, WeatherYear } from '../../core/index.ts';
import { bareHouse, planOf, southWindow } from '../support/plans.ts';

const weather = weatherFromPlan(demonstrationPlan) as WeatherYear;
const cache = createSeasonCache();
const season = (place: object) => runSeason(planOf(place), weather, cache);
const of = (place: object): PlaceSeason => season(place).places[0];

const whole = season(bareHouse);
const start = Date.parse(whole.startDate);
const dayOf = (monthDay: string) => {
  const year = new Date(start).getUTCFullYear();
  const [thisYear, next] = [year, year + 1].map(
    (each) => (Date.parse(`${each}-${monthDay}`) - start) / 86_400_000,
  );
  return thisYear >= 0 ? thisYear : next;
};
const july = Array.from({ length: 31 }, (_, index) => dayOf('07-01') + index);
const mean = (values: Float64Array, days: readonly number[]) =>
  days.reduce((sum, day) => sum + values[day], 0) / days.length;
const sun = ({ heat }: PlaceSeason) =>
  heat.find((part) => part.kind === 'sun') as PlaceSeason['heat'][number];

describe('shade cloth of 50 % over a glass house', () => {
  const bare = whole.places[0];
  const shaded = of({ ...bareHouse, shadeCloth: { covering: 'shade-50', from: '06-01', to: '08-31' } });

  it('keeps every July day’s most lower, by 3 K in the mean, and takes half of the sun', () => {
    for (const day of july) expect(shaded.daily.airMost[day]).toBeLessThan(bare.daily.airMost[day]);
    const cooler = mean(bare.daily.airMost, july) - mean(shaded.daily.airMost, july);
    expect(cooler).toBeGreaterThan(3);
    expect(cooler).toBeLessThan(3.3);
    expect(Math.abs(mean(sun(shaded).days, july) / mean(sun(bare).days, july) - 0.5)).toBeLessThan(0.001);
    expect(shaded.energyResidual).toBeLessThan(1e-12);
  });

  it('changes no winter day', () => {
    const [january, february] = [dayOf('01-05'), dayOf('02-28')];
    for (let day = january; day <= february; day++)
      expect(Math.abs(shaded.daily.airMost[day] - bare.daily.airMost[day])).toBeLessThan(0.01);
  });
});

describe('a sheer curtain drawn all day', () => {
  const bare = of(southWindow);
  const drawn = of({ ...southWindow, sheer: { covering: 'sheer-net', from: '00:00', to: '24:00' } });

  it('closes the account: the plants have less sun, the net’s own warmth stays in the bay', () => {
    expect(drawn.energyResidual).toBeLessThan(1e-12);
    const [without, withNet] = [bare, drawn].map((place) => -sun(place).season);
    const light = drawn.totals.daylightShare / bare.totals.daylightShare;
    // 0.42 of the light goes straight through; the 0.28 that is spread lands on the plants as 0.15 of what they had.
    expect(Math.abs(light - 0.571)).toBeLessThan(0.002);
    // Most of the sun passes over the sill into the room; the 0.09 of it that the net takes up now warms the bay too.
    expect(Math.abs(withNet / without - 1.12)).toBeLessThan(0.002);
  });
});
