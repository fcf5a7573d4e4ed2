import { mount, unmount } from 'svelte';
import { afterEach, describe, expect, it } from 'vitest';
import { balanceOf, heatBalance } from '../../core/index.ts';
import type { HeatAmount, HeatPart, PlaceSeason, SeasonResult } from '../../core/index.ts';
import HeatList from '../../renderer/place/HeatList.svelte';
import { accountDigits, addsUp, heatAccount, sumWords } from '../../renderer/place/heat-rows.ts';
import { spanIds, spanLabel, spanOf } from '../../renderer/place/heat-spans.ts';

/** A night that takes 13 kWh out: 5 from a heater, 8 from the store. */
const night: HeatAmount[] = [
  { name: 'south roof', kind: 'surface', kwh: 9 },
  { name: 'Draughts, vents and water vapour', kind: 'air', kwh: 4 },
  { name: 'Heaters', kind: 'heaters', kwh: -5 },
  { name: 'Stored', kind: 'storage', kwh: -8 },
];

describe('a heat account', () => {
  it('puts what the store gives back on the side of what comes in', () => {
    const { into, out } = heatAccount(balanceOf(night));
    expect(into.map(({ name, kwh }) => [name, kwh])).toEqual([
      ['Given back from store', 8],
      ['Heaters', 5],
    ]);
    expect(out.map(({ name, part }) => [name, part])).toEqual([
      ['South roof', 'south roof'],
      ['Draughts, vents and water vapour', 'Draughts, vents and water vapour'],
    ]);
    for (const rows of [into, out]) expect(rows.reduce((sum, row) => sum + row.share, 0)).toBeCloseTo(1, 12);
  });

  it('says that in and out match where they do, and what is missing where they do not', () => {
    expect(sumWords(balanceOf(night))).toBe('5.0 in + 8.0 from store = 13.0 kWh out. In and out match.');
    const day = [
      ...night.slice(0, 2),
      { name: 'Sun', kind: 'sun', kwh: -15 },
      { ...night[3], kwh: 2 },
    ] as const;
    expect(sumWords(balanceOf(day))).toBe('15.0 in = 13.0 out + 2.0 kWh into store. In and out match.');
    const broken = balanceOf(night.slice(0, 3));
    expect(addsUp(broken)).toBe(false);
    expect(sumWords(broken)).toContain('8.0 kWh is not accounted for.');
  });

  it('is written in decimals that suit its size', () => {
    const sized = (kwh: number) => accountDigits(balanceOf([{ name: 'Sun', kind: 'sun', kwh: -kwh }]));
    expect([sized(0.3), sized(30), sized(3000)]).toEqual([2, 1, 0]);
  });
});

describe('spans', () => {
  const part = (name: string, kind: HeatPart['kind'], sign: number): HeatPart => {
    const days = Float64Array.from({ length: 365 }, (_, day) => sign * (day + 1));
    return {
      name,
      kind,
      season: sign * 66795,
      coldestNight: sign * 134,
      days,
      nights: days.map((v) => v - sign),
    };
  };
  const place = { heat: [part('roof', 'surface', 1), part('Sun', 'sun', -1)] } as unknown as PlaceSeason;
  const season = {
    startDate: '2025-08-01',
    days: 365,
    winterFrom: 61,
    winterTo: 242,
    outdoor: {},
  } as unknown as SeasonResult;

  it('begin and end where they say', () => {
    const spans = spanIds.map((id) => spanOf(id, season, place, 150));
    expect(spans).toEqual([
      { from: 150, to: 151, dark: true },
      { from: 134, to: 135, dark: true },
      { from: 147, to: 154, dark: false },
      { from: 61, to: 243, dark: false },
      { from: 0, to: 365, dark: false },
    ]);
    expect(spanOf('night', season, place, 999)).toEqual({ from: 364, to: 365, dark: true });
  });

  it('are offered with their dates', () => {
    expect(spanIds.map((id) => spanLabel(id, season, place, 150))).toEqual([
      'Night at the cursor, 29 to 30 December',
      'Coldest night, 13 to 14 December',
      'Week at the cursor, 26 December to 1 January',
      'Winter half-year',
      'Whole season',
    ]);
  });

  it('each add up to nothing, whichever is chosen', () => {
    for (const id of spanIds) {
      const balance = heatBalance(place.heat, spanOf(id, season, place, 150));
      expect(balance.into, id).toBeGreaterThan(0);
      expect(balance.left, id).toBe(0);
    }
  });
});

describe('the bars', () => {
  const parts: object[] = [];
  afterEach(() => {
    for (const each of parts.splice(0)) void unmount(each);
    document.body.replaceChildren();
  });
  const draw = (props: { onopen?: (part: string | null) => void }) =>
    parts.push(mount(HeatList, { target: document.body, props: { balance: balanceOf(night), ...props } }));

  it('each open their own working, and the sum opens the whole', () => {
    const opened: (string | null)[] = [];
    draw({ onopen: (part) => opened.push(part) });
    const buttons = [...document.querySelectorAll('button')];
    expect(buttons).toHaveLength(5);
    expect(buttons[2].textContent?.replace(/\s+/g, ' ')).toMatch(/South roof.*9\.0 kWh.*69 %/);
    for (const button of buttons) button.click();
    expect(opened).toEqual(['Stored', 'Heaters', 'south roof', 'Draughts, vents and water vapour', null]);
  });

  it('are plain lines where there is no working to open', () => {
    draw({});
    expect(document.querySelectorAll('button')).toHaveLength(0);
    expect(document.querySelectorAll('li')).toHaveLength(4);
    expect(document.body.textContent).toContain('In and out match.');
  });
});
