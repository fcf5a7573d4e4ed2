import { describe, expect, it } from 'vitest';
import { plantGroups } from '../../core/plan/groups.ts';
import {
  limitingFactors,
  limitingWords,
  plantStates,
  runPlants,
  settleDays,
  restsMoist,
  seasonMonth,
  waterAdvice,
  weeklyStates,
} from '../../core/plants/index.ts';
import { course, daysOf, numbersOf, stateIdOn, steady } from './days.ts';

const repeat = (value: number, count: number) => Array<number>(count).fill(value);
const limitOn = (result: ReturnType<typeof runPlants>, day: number) =>
  limitingFactors[result.limiting[day] as number]?.id;

describe('each state is reached and left, and names what holds it', () => {
  const flat = { cyclic: false, watering: 'watered' } as const;

  it('growing to resting from cold and back', () => {
    const days = daysOf([...repeat(18, 40), ...repeat(3, 40), ...repeat(18, 40)], repeat(14, 120));
    const result = runPlants(numbersOf('echeveria'), days, flat);
    expect(course(result)).toEqual(['growing', 'slow', 'resting-cold', 'slow', 'growing']);
    expect(limitOn(result, 70)).toBe('cold');
    expect(result.marginKelvin[79]).toBeGreaterThan(4);
    expect(result.transitions[1]?.because).toMatch(/mean of day and night \d+\.\d °C, below 7\.1 °C/);
    expect(limitOn(result, 20)).toBe('none');
  });

  it('heat rest by a mean near the ceiling, by warm nights for weeks, and by hot days', () => {
    const near = daysOf([...repeat(20, 20), ...repeat(33, 30), ...repeat(20, 40)], repeat(14, 90));
    expect(course(runPlants(numbersOf('echeveria'), near, flat))).toContain('resting-heat');
    expect(stateIdOn(runPlants(numbersOf('echeveria'), near, flat))).toBe('growing');
    const nights = steady(30, 26, 14);
    expect(stateIdOn(runPlants(numbersOf('aeonium'), nights, flat))).toBe('resting-heat');
    expect(stateIdOn(runPlants(numbersOf('aeonium'), steady(30, 22, 14), flat))).toBe('growing');
  });

  it('an echeveria rests after a few days of air above 35 °C (leaves above 37), bears short peaks over cool means, and starts again', () => {
    const means = [...repeat(20, 20), ...repeat(27, 6), ...repeat(20, 30)];
    const days = daysOf(means, repeat(14, 56));
    for (let day = 20; day < 26; day += 1) days.mostLeaf[day] = 38;
    const result = runPlants(numbersOf('echeveria'), days, flat);
    expect(result.transitions.map(({ day, to }) => [day, plantStates[to]?.id])).toEqual([
      [23, 'resting-heat'],
      [33, 'growing'],
    ]);
    expect(limitOn(result, 25)).toBe('heat');
    const cool = steady(40, 18, 14);
    cool.mostLeaf.fill(37);
    expect(stateIdOn(runPlants(numbersOf('echeveria'), cool, flat))).toBe('growing');
  });

  it('an echeveria closes up, slow, where days stay above 32 °C at the leaf, and opens when they cool', () => {
    const days = daysOf([...repeat(20, 20), ...repeat(25.5, 40), ...repeat(20, 30)], repeat(14, 90));
    for (let day = 20; day < 60; day += 1) {
      days.mostLeaf[day] = 35;
      days.meanNightLeaf[day] = 18;
    }
    const result = runPlants(numbersOf('echeveria'), days, flat);
    expect(course(result)).toEqual(['growing', 'slow', 'growing']);
    expect([stateIdOn(result, 59), limitOn(result, 59)]).toEqual(['slow', 'heat']);
    // To open, days must fall from 35 to 31 °C: 5 K under the hot day and 1 K more; or the mean from 25.5 to 21.
    expect(result.marginKelvin[59]).toBeCloseTo(-4, 0);
    expect(result.transitions[0]?.because).toMatch(/closed up against the heat/);
  });

  it('resting dim for a group that stands still, stretching for one that does not; bright again, both grow', () => {
    const lights = [...repeat(12, 30), ...repeat(0.8, 40), ...repeat(12, 40)];
    const days = daysOf(repeat(20, 110), lights);
    const haworthia = runPlants(numbersOf('haworthia'), days, flat);
    // At 20 °C it wants 1.8 mol to stay compact and 1.5 to hold: by the time the lack has settled it is below both.
    expect(course(haworthia)).toEqual(['growing', 'slow', 'resting-dim', 'slow', 'growing']);
    const between = daysOf(repeat(24, 110), [...repeat(12, 30), ...repeat(1.65, 40), ...repeat(12, 40)]);
    const drawnUp = course(runPlants(numbersOf('haworthia'), between, flat));
    expect(drawnUp).toEqual(['growing', 'slow', 'stretching', 'slow', 'growing']);
    const echeveria = runPlants(numbersOf('echeveria'), days, flat);
    expect(stateIdOn(echeveria, 69)).toBe('stretching');
    expect(stateIdOn(echeveria)).toBe('growing');
    expect(limitOn(haworthia, 69)).toBe('dark');
    expect(haworthia.marginLight[69]).toBeGreaterThan(0.7);
    expect(course(runPlants(numbersOf('echeveria', { canRestDim: 1 }), days, flat))).toContain('resting-dim');
  });

  it('held dry, and started by water once it has settled', () => {
    const days = {
      ...steady(80, 20, 14),
      watered: Uint8Array.from({ length: 80 }, (_, day) => (day < 60 ? 0 : 1)),
    };
    const result = runPlants(numbersOf('echeveria'), days, { cyclic: false });
    expect(stateIdOn(result, 59)).toBe('resting-dry');
    expect(limitOn(result, 59)).toBe('dry');
    expect(result.growthIndex[59]).toBeLessThan(0.05);
    const settle = settleDays(numbersOf('echeveria'));
    expect([stateIdOn(result, 58 + settle), stateIdOn(result, 59 + settle)]).toEqual([
      'resting-dry',
      'growing',
    ]);
    // Held dry through the spin-up of the first week over again: dry from the first day, moist again on day 60.
    expect([result.wet[0], result.wet[59], result.wet[60]]).toEqual([0, 0, 1]);
  });

  it('slow from lack of light, from cool and from warmth, each named', () => {
    const slow = (mean: number, light: number) =>
      runPlants(numbersOf('echeveria'), steady(40, mean, light), flat);
    expect([stateIdOn(slow(20, 8.5)), limitOn(slow(20, 8.5), 39)]).toEqual(['slow', 'dark']);
    expect(slow(20, 8.5).marginLight[39]).toBeCloseTo(1.5, 1);
    expect([stateIdOn(slow(9, 14)), limitOn(slow(9, 14), 39)]).toEqual(['slow', 'cold']);
    expect(slow(9, 14).marginKelvin[39]).toBeCloseTo(1.2, 1);
    expect([stateIdOn(slow(28.5, 14), 3), limitOn(slow(28.5, 14), 3)]).toEqual(['resting-heat', 'heat']);
    const noWarmNights = steady(40, 28.5, 14);
    noWarmNights.meanNightLeaf.fill(19);
    const warm = runPlants(numbersOf('echeveria'), noWarmNights, flat);
    expect([stateIdOn(warm), limitOn(warm, 39)]).toEqual(['slow', 'heat']);
    expect(warm.marginKelvin[39]).toBeCloseTo(-1.5, 1);
    // Light index 0.90 under a temperature index of 0.95: still heat, for the light is good.
    const early = steady(40, 23.2, 10);
    early.meanNightLeaf.fill(19);
    expect(limitOn(runPlants(numbersOf('echeveria', { slowAbove: 22.5 }), early, flat), 39)).toBe('heat');
  });

  it('all seven are reached and left again by one echeveria or haworthia or other', () => {
    const means = [
      ...repeat(20, 30),
      ...repeat(3, 30),
      ...repeat(20, 40),
      ...repeat(33, 30),
      ...repeat(20, 60),
    ];
    const lights = repeat(14, 190);
    const warm = runPlants(numbersOf('echeveria'), daysOf(means, lights), flat);
    const dim = daysOf(repeat(20, 110), [...repeat(12, 30), ...repeat(0.8, 40), ...repeat(12, 40)]);
    const dry = {
      ...steady(80, 20, 14),
      watered: Uint8Array.from({ length: 80 }, (_, day) => (day < 10 || day > 50 ? 1 : 0)),
    };
    const runs = [
      warm,
      runPlants(numbersOf('echeveria'), dim, flat),
      runPlants(numbersOf('haworthia'), dim, flat),
      runPlants(numbersOf('echeveria'), dry, { cyclic: false }),
    ];
    const left = new Set(runs.flatMap(({ transitions }) => transitions.map(({ from }) => from)));
    const reached = new Set(runs.flatMap(({ transitions }) => transitions.map(({ to }) => to)));
    for (const states of [left, reached]) expect([...states].sort()).toEqual([0, 1, 2, 3, 4, 5, 6]);
    for (const run of runs) expect(stateIdOn(run)).toBe('growing');
  });

  it('names day length where it alone keeps a growing plant from flower', () => {
    const long = steady(30, 21, 14);
    long.photoperiod.fill(16);
    expect(limitOn(runPlants(numbersOf('kalanchoe'), long, flat), 29)).toBe('day-length');
    long.photoperiod.fill(10);
    expect(limitOn(runPlants(numbersOf('kalanchoe'), long, flat), 29)).toBe('none');
    const cool = steady(30, 17, 14);
    expect(limitOn(runPlants(numbersOf('lettuce'), cool, flat), 29)).toBe('day-length');
    cool.photoperiod.fill(15);
    expect(limitOn(runPlants(numbersOf('lettuce'), cool, flat), 29)).toBe('none');
  });
});

describe('rules of the trade on single groups (common practice, no source)', () => {
  const midwinter = { firstSeasonDay: 120, cyclic: false };
  const at = (id: string, mean: number, light: number) =>
    stateIdOn(runPlants(numbersOf(id), steady(60, mean, light), midwinter));

  it('a warm tent under a strong lamp keeps aeoniums, echeverias and crassulas growing', () => {
    for (const id of ['aeonium', 'echeveria', 'crassula']) {
      for (const mean of [19, 21, 23.5])
        for (const light of [12, 15, 18]) expect(at(id, mean, light), id).toBe('growing');
    }
  });
  it('a like tent under a weak lamp leaves them warm and stretching', () => {
    for (const id of ['aeonium', 'echeveria', 'crassula']) expect(at(id, 18.5, 5), id).toBe('stretching');
    for (const id of ['aeonium', 'echeveria', 'crassula']) expect(at(id, 18.5, 6.5), id).not.toBe('growing');
  });
  it('an unheated house in deep winter rests every group from cold, and holds its water', () => {
    for (const { id } of plantGroups) {
      expect(at(id, 4, 4), id).toBe('resting-cold');
      expect(waterAdvice(2, numbersOf(id), 4).advice).toBe('hold');
    }
  });
  it('a south window is too dim for echeverias while haworthias hold', () => {
    for (const light of [2, 2.5, 3]) {
      expect(at('echeveria', 16, light)).toBe('stretching');
      expect(['slow', 'resting-dim']).toContain(at('haworthia', 16, light));
      expect(['slow', 'resting-dim']).toContain(at('gasteria', 16, light));
    }
  });
  it('a day at freezing rests every group at once, winter growers too', () => {
    for (const { id } of plantGroups) {
      const days = steady(40, 20, 25, 1);
      days.meanLeaf[20] = -1;
      const result = runPlants(numbersOf(id), days, { cyclic: false, watering: 'watered' });
      expect(stateIdOn(result, 20), id).toBe('resting-cold');
      expect(stateIdOn(result), id).not.toBe('resting-cold');
    }
  });
  it('a series from 1 October finds Lithops still moist from September, and dry some weeks on', () => {
    const result = runPlants(numbersOf('lithops'), steady(40, 20, 30), { cyclic: false, firstSeasonDay: 61 });
    expect([stateIdOn(result, 0), result.wet[0], stateIdOn(result)]).toEqual(['growing', 1, 'resting-dry']);
  });
  it('Lithops is dry in winter and watered in early summer; Conophytum the other way about', () => {
    const year = steady(365, 20, 30);
    const lithops = runPlants(numbersOf('lithops'), year);
    const conophytum = runPlants(numbersOf('conophytum'), steady(365, 18, 20));
    const [january, july] = [165, 345];
    expect([stateIdOn(lithops, january), stateIdOn(lithops, july)]).toEqual(['resting-dry', 'growing']);
    expect([stateIdOn(conophytum, january), stateIdOn(conophytum, july)]).toEqual(['growing', 'resting-dry']);
  });
});

describe('months of a season', () => {
  it('are those of the calendar in the north, and begin on the first of a month everywhere', () => {
    const month = (day: number, startDay?: number) => seasonMonth(day, startDay);
    expect([0, 30, 31, 152, 153, 364, 365, -1].map((day) => month(day))).toEqual([8, 8, 9, 12, 1, 7, 8, 7]);
    // From 1 February: the last of February is still August, 1 April begins October, 31 January is July.
    expect([0, 27, 28, 58, 59, 364, -1].map((day) => month(day, 31))).toEqual([8, 8, 9, 9, 10, 7, 7]);
    for (const startDay of [0, 31, 59, 120, 212, 304])
      for (let day = -40; day < 400; day += 1) {
        const turns = month(day, startDay) !== month(day - 1, startDay);
        const first =
          new Date(Date.UTC(2025, 0, 1 + ((((startDay + day) % 365) + 365) % 365))).getUTCDate() === 1;
        expect(turns, `${startDay} ${day}`).toBe(first);
      }
  });
});

describe('advice, weeks and words', () => {
  it('waters a growing plant, and holds where the week ahead is cold', () => {
    const echeveria = numbersOf('echeveria');
    expect(waterAdvice(0, echeveria, 18)).toMatchObject({ advice: 'water', code: 0 });
    expect(waterAdvice(0, echeveria, 5)).toMatchObject({ advice: 'hold', code: 2 });
    for (const state of [1, 3, 4, 6]) expect(waterAdvice(state, echeveria, 18).advice).toBe('sparingly');
    expect(() => waterAdvice(7, echeveria, 18)).toThrow(/state from 0 to 6/);
    expect(() => waterAdvice(0, echeveria, Number.NaN)).toThrow(/finite/);
  });
  it('keeps groups whose rest the catalogue calls moist just moist through it, short of cold that rots wet roots', () => {
    const moist = plantGroups.filter(restsMoist).map(({ id }) => id);
    expect(moist).toEqual(['easter-cactus', 'epiphyllum', 'citrus', 'fuchsia', 'olive']);
    const citrus = numbersOf('citrus');
    expect(waterAdvice(2, citrus, citrus.wetColdBelow + 1, true).advice).toBe('sparingly');
    expect(waterAdvice(0, citrus, 15, true).advice).toBe('water');
    expect(waterAdvice(2, citrus, citrus.wetColdBelow - 1, true).advice).toBe('hold');
    expect(waterAdvice(2, citrus, citrus.wetColdBelow + 1).advice).toBe('hold');
  });
  it('sums days into weeks whose days add up, and names the state of most', () => {
    const result = runPlants(
      numbersOf('echeveria'),
      daysOf([...repeat(20, 30), ...repeat(2, 20)], repeat(14, 50)),
      {
        cyclic: false,
      },
    );
    const weeks = weeklyStates(result);
    expect(weeks.length).toBe(8);
    expect(weeks.reduce((sum, { days }) => sum + days, 0)).toBe(50);
    for (const week of weeks) {
      expect(week.stateDays.reduce((a, b) => a + b, 0)).toBe(week.days);
      expect(week.stateDays[week.state]).toBe(Math.max(...week.stateDays));
    }
    expect(weeks[0]?.state).toBe(0);
    expect(weeks[7]?.state).toBe(2);
    expect(weeks[7]?.limiting).toBe(1);
  });
  it('gives every state a letter and every code its words', () => {
    expect(new Set(plantStates.map(({ letter }) => letter)).size).toBe(7);
    expect(limitingFactors.map((_, code) => limitingWords(code)).every((text) => text.endsWith('.'))).toBe(
      true,
    );
    expect(() => limitingWords(6)).toThrow();
  });
  it('refuses days of unequal length, none at all, or holding what is no number', () => {
    const days = steady(10, 20, 10);
    expect(() => runPlants(numbersOf('echeveria'), { ...days, dailyLight: new Float64Array(9) })).toThrow(
      /10 days of dailyLight/,
    );
    expect(() => runPlants(numbersOf('echeveria'), steady(0, 20, 10))).toThrow(/at least one day/);
    days.meanLeaf[3] = Number.NaN;
    expect(() => runPlants(numbersOf('echeveria'), days)).toThrow(/finite meanLeaf on day 3/);
  });
});
