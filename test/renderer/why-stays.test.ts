/** Lots that are carried: each band draws them on the days on which they stand there, and says where they are else. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { flower, flowerX } from '../../renderer/marks/flower.ts';
import { runsWithin } from '../../renderer/marks/stays.ts';
import { runsOf } from '../../renderer/sheet/paths.ts';
import { stayWords, verdict } from '../../renderer/sheet/words.ts';
import { leanToPlan, openSheet, plotWidth, season } from './why/sheet-page.ts';

const carried = season.lots.find((lot) => lot.stays.length > 1);
if (!carried) throw new Error('expected a lot of the demonstration that is carried, got none');
const name = leanToPlan.lots.find((lot) => lot.id === carried.lotId)!.name;
const days = (placeId: string) => carried.stays.filter((stay) => stay.placeId === placeId);

describe('a carried lot', () => {
  let page: Awaited<ReturnType<typeof openSheet>>;
  beforeEach(async () => (page = await openSheet()));
  afterEach(() => page.close());

  it('is drawn in each band on its days there alone, so that the bands together hold the season once', () => {
    let drawn = 0;
    for (const placeId of ['lean-to', 'outdoors']) {
      const edges = [...page.ribbon(placeId, carried.lotId).querySelectorAll('rect.edge')].map((rect) => [
        Number(rect.getAttribute('x')),
        Number(rect.getAttribute('width')),
      ]);
      const expected = days(placeId).map(({ from, to }) => [
        (from / 365) * plotWidth,
        ((to + 1 - from) / 365) * plotWidth,
      ]);
      expect(edges.length).toBe(expected.length);
      edges.forEach(([x, width], index) => {
        expect(x).toBeCloseTo(expected[index][0], 9);
        expect(width).toBeCloseTo(expected[index][1], 9);
        drawn += width;
      });
    }
    expect(drawn).toBeCloseTo(plotWidth, 6);
  });

  it('has an arrow at each cut, two for the two carryings in each band', () => {
    for (const placeId of ['lean-to', 'outdoors'])
      expect(page.ribbon(placeId, carried.lotId).querySelectorAll('path.arrow').length).toBe(2);
    expect(page.ribbon('lean-to', 'pelargoniums').querySelectorAll('path.arrow').length).toBe(0);
  });

  it('stands on the margin card only on the days on which it stands in the place', async () => {
    const card = () => page.found('section.card ul', 'the card’s list').textContent!;
    const [inside] = days('lean-to');
    page.bench.cursorDay = inside.from + 7;
    await Promise.resolve();
    expect(card()).toContain(name);
    page.bench.cursorDay = inside.to + 7;
    await Promise.resolve();
    expect(card()).not.toContain(name);
    page.press('Outdoors');
    expect(card()).toContain(name);
  });
});

describe('the words of a carried lot', () => {
  it('give its days outdoors as one span over the turn of the season', () => {
    const [inside] = days('lean-to');
    const date = (day: number) =>
      new Intl.DateTimeFormat(undefined, { day: 'numeric', month: 'long', timeZone: 'UTC' }).format(
        Date.parse(`${season.startDate}T00:00Z`) + day * 86_400_000,
      );
    const words = stayWords(carried, 'outdoors', season);
    expect(words).toBe(`from ${date(inside.to + 1)} to ${date(inside.from - 1)}`);
    expect(verdict({ placeId: 'outdoors', lots: [carried] }, leanToPlan, season).words).toBe(
      `${name} will stand here ${words}.`,
    );
  });
});

describe('runs within spans', () => {
  it('are cut at both ends and left out beside them', () => {
    const states = new Uint8Array(365).fill(2, 100, 200);
    const runs = runsWithin(runsOf(states), [
      { from: 50, to: 149 },
      { from: 300, to: 364 },
    ]);
    expect(runs.map((run) => [run.state, run.fromDay, run.toDay])).toEqual([
      [0, 50, 100],
      [2, 100, 150],
      [0, 300, 365],
    ]);
  });
});

describe('the flower', () => {
  it('stands in the middle of its days, steps aside for letters, and stays on the sheet', () => {
    expect(flowerX(100, 200, 400, [])).toBe(150);
    expect(flowerX(100, 200, 400, [152])).toBe(136);
    expect(flowerX(390, 400, 400, [])).toBe(393);
    expect(flowerX(100, 200, 400, [122, 136, 150, 164, 178])).toBe(null);
  });

  it('has three petals on a stalk within its height', () => {
    const path = flower(10, 2, 12);
    expect(path.match(/z/g)).toHaveLength(3);
    const heights = [...path.matchAll(/[\d.]+ ([\d.]+)/g)].map(([, y]) => Number(y));
    expect(Math.min(...heights)).toBeGreaterThanOrEqual(2);
    expect(Math.max(...heights)).toBeLessThanOrEqual(14);
  });
});
