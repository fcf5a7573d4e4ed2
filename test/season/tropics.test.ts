import { describe, expect, it } from 'vitest';
import { isoDate, runSeason, siteCard } from '../../core/index.ts';
import type { LotSeason, SeasonResult } from '../../core/index.ts';
import { firstNotFinite } from './difference.ts';
import { equatorial, monsoon, movedTo, plateau, southern, weatherOf, withStones } from './site-climates.ts';
import type { InventedSite } from './site-climates.ts';

const run = (site: InventedSite): SeasonResult => {
  const plan = movedTo(withStones, site);
  return runSeason(plan, weatherOf(plan));
};

/** Calendar day `MM-DD` of a day of the season. */
const dayOf = ({ startMs }: SeasonResult, offsetHours: number, day: number) =>
  isoDate(startMs, offsetHours, day).slice(5);

function stonesOf(season: SeasonResult): LotSeason {
  const lot = season.lots.find(({ lotId }) => lotId === 'stones');
  if (lot === undefined) throw new Error('expected the stones, got none');
  return lot;
}

const sites = [
  { name: 'a tropical plateau', site: plateau, offset: 5.5 },
  { name: 'a monsoon coast', site: monsoon, offset: 0 },
  { name: 'the equator', site: equatorial, offset: 8 },
  { name: '35° south', site: southern, offset: 10 },
].map((each) => ({ ...each, season: run(each.site) }));

const spans: Record<string, readonly [string, string, string]> = {
  // Coolest six months running by the means of least and most: September to February, half a kelvin before the next.
  'a tropical plateau': ['07-01', '09-01', '02-28'],
  // Coolest in the rains.
  'a monsoon coast': ['04-01', '06-01', '11-30'],
  // All months alike: as north of the equator.
  'the equator': ['08-01', '10-01', '03-31'],
  '35° south': ['02-01', '04-01', '09-30'],
};

describe.each(sites)('a season at $name', ({ name, site, offset, season }) => {
  const [starts, from, to] = spans[name];

  it('has the winter of its site', () => {
    expect(dayOf(season, offset, 0)).toBe(starts);
    expect(dayOf(season, offset, season.winterFrom)).toBe(from);
    expect(dayOf(season, offset, season.winterTo)).toBe(to);
    if (name !== 'a monsoon coast') return;
    const plan = movedTo(withStones, site);
    const { winter } = siteCard(plan, weatherOf(plan));
    expect([winter.from, winter.to]).toEqual([from, to]);
  });

  it('that winter is cooler than the rest of the year, or no month is', () => {
    const mean = (of: (day: number) => boolean) => {
      const days = [...season.outdoor.mean].filter((_, day) => of(day));
      return days.reduce((sum, value) => sum + value, 0) / days.length;
    };
    const inWinter = (day: number) => day >= season.winterFrom && day <= season.winterTo;
    const cooler = mean((day) => !inWinter(day)) - mean(inWinter);
    if (name === 'the equator') expect(Math.abs(cooler)).toBeLessThan(1);
    else expect(cooler).toBeGreaterThan(1);
  });

  it('every number of it is finite, the daylight that of its latitude', () => {
    expect(firstNotFinite(season)).toBeNull();
    const longest = Math.max(...season.outdoor.dayLength);
    const shortest = Math.min(...season.outdoor.dayLength);
    // Longest day by the declination 23.44° and the sun's upper edge with refraction (0.83°).
    const rise = Math.PI / 180;
    const half = Math.acos(
      (Math.sin(-0.833 * rise) - Math.sin(Math.abs(site.latitude) * rise) * Math.sin(23.44 * rise)) /
        (Math.cos(site.latitude * rise) * Math.cos(23.44 * rise)),
    );
    expect(Math.abs(longest - (half / rise) * (2 / 15))).toBeLessThan(0.3);
    expect(shortest).toBeGreaterThan(9.4);
  });

  it('plants with a dry winter keep it in the winter of the site', () => {
    const water = stonesOf(season).waterIndex;
    // Dry from the first month of winter to a month past its end; mix dries in a fortnight and is wetted at once.
    const middle = Math.round((season.winterFrom + season.winterTo) / 2);
    expect(water[middle]).toBeLessThan(0.2);
    expect(water[season.winterFrom - 10]).toBe(1);
    expect(water[season.winterTo + 50]).toBe(1);
  });
});
