import { describe, expect, it } from 'vitest';
import { createSeasonCache, demonstrationPlan, lotOf, outdoors, weatherFromPlan } from '../../core/index.ts';
import type { Certainty, Plan, WeatherYear } from '../../core/index.ts';
import { CertaintyRuns } from '../../renderer/worker/certainty-runs.ts';

const weather = weatherFromPlan(demonstrationPlan) as WeatherYear;
const lot = lotOf({ id: 'one', name: 'One', group: 'echeveria', place: outdoors, area: 1 });
const plan: Plan = { ...demonstrationPlan, places: [], lots: [lot] };

/** Grows by so many winters and then wants no more; gives the number of winters in each piece told. */
async function growBy(runs: CertaintyRuns, of: Plan, winters: number, year = weather): Promise<number[]> {
  const told: number[] = [];
  let grown = -1;
  const tell = (piece: Certainty) => void told.push(piece.winters);
  await expect(runs.grow(of, year, tell, () => (grown += 1) >= winters)).rejects.toThrow(
    'certainty was stopped',
  );
  return told;
}

describe('certainties kept in the worker', () => {
  it('goes on where it was left when the same plan comes back, whatever its names', async () => {
    const runs = new CertaintyRuns(createSeasonCache());
    expect(await growBy(runs, plan, 2)).toEqual([1, 2]);
    const changed = { ...plan, lots: [{ ...lot, watering: 'dry' as const }] };
    expect(await growBy(runs, changed, 1)).toEqual([1]);
    const renamed = { ...plan, name: 'Other', lots: [{ ...lot, name: 'Renamed' }] };
    expect(await growBy(runs, renamed, 1)).toEqual([2, 3]);
    expect(await growBy(runs, changed, 1)).toEqual([1, 2]);
  });
  it('begins anew in other weather', async () => {
    const runs = new CertaintyRuns(createSeasonCache());
    await growBy(runs, plan, 2);
    expect(await growBy(runs, plan, 1, { ...weather })).toEqual([1]);
  });
  it('forgets what was asked longest ago', async () => {
    const runs = new CertaintyRuns(createSeasonCache());
    const bench = (area: number): Plan => ({ ...plan, lots: [{ ...lot, area }] });
    for (let area = 1; area <= 9; area += 1) await growBy(runs, bench(area), 1);
    expect(await growBy(runs, bench(9), 0)).toEqual([1]);
    expect(await growBy(runs, bench(1), 0)).toEqual([]);
  });
  it('gives the whole at once where there is nothing to vary', async () => {
    const runs = new CertaintyRuns(createSeasonCache());
    const bare = { ...plan, lots: [] };
    const never = () => false;
    expect(await runs.grow(bare, weather, () => undefined, never)).toMatchObject({
      enough: true,
      winters: 0,
    });
  });
});
