import { expect, it } from 'vitest';
import {
  demonstrationPlan,
  judgeLot,
  lotOf,
  outdoors,
  seasonSetting,
  weatherFromPlan,
} from '../../core/index.ts';
import type { WeatherYear } from '../../core/index.ts';

it('a lot that is carried indoors has the light of its own spot there, not that of the whole bench', () => {
  const plan = {
    ...demonstrationPlan,
    lots: [],
    places: demonstrationPlan.places.filter(({ id }) => id === 'lean-to'),
  };
  const setting = seasonSetting(plan, weatherFromPlan(demonstrationPlan) as WeatherYear);
  const spot = { across: 'back', along: 'ends', level: 'all' } as const;
  const moves = [
    { on: '10-20', to: 'lean-to' },
    { on: '04-25', to: outdoors },
  ];
  const lot = lotOf({ id: 'one', name: 'One', group: 'agave', place: outdoors, area: 1 });
  const { dailyLight } = judgeLot(setting, { ...lot, spot, moves }).lived;
  const climate = setting.climates.get('lean-to');
  const [own, whole] = [climate?.lightAt(spot), climate?.lightAt(lot.spot)];
  // From 20 October, day 80 of a season from 1 August, to 24 April.
  const stay = (values: Float64Array | undefined) => values?.subarray(80, 267);
  expect(stay(dailyLight)).toEqual(stay(own));
  expect(stay(dailyLight)).not.toEqual(stay(whole));
  const open = setting.climates.get(outdoors)?.lightAt(spot);
  expect(dailyLight.subarray(0, 80)).toEqual(open?.subarray(0, 80));
  expect(dailyLight.subarray(267)).toEqual(open?.subarray(267));
});
