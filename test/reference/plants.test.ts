import { describe, expect, it } from 'vitest';
import { groupNumbers, plantGroup } from '../../core/plan/groups.ts';
import {
  carbonNightResponse,
  coldLimitAt,
  constantDays,
  harmDoses,
  lightResponse,
  plantStates,
  runPlants,
  summariseHarm,
  temperatureResponse,
  wangEngel,
  yanHunt,
} from '../../core/plants/index.ts';
import type { PlantDays } from '../../core/plants/index.ts';

const numbersOf = (id: string) => groupNumbers(plantGroup(id) as NonNullable<ReturnType<typeof plantGroup>>);
const stateOn = (id: string, days: PlantDays, day: number) => {
  const result = runPlants(numbersOf(id), days, { watering: 'watered' });
  return plantStates[result.state[day] as number]?.id;
};

describe('Yan & Hunt 1999, beta response (computed table; the five parameter sets are placeholders)', () => {
  const temperatures = [5, 8, 10, 12, 15, 18, 20, 22, 25, 28, 30, 32, 35];
  const sets: [string, number, number, number, number[]][] = [
    ['alpine', 2, 18, 30, [0.22, 0.5, 0.66, 0.8, 0.95, 1, 0.98, 0.9, 0.68, 0.32, 0, 0, 0]],
    ['winter grower', 3, 17, 32, [0.29, 0.61, 0.77, 0.88, 0.98, 1, 0.96, 0.89, 0.71, 0.46, 0.25, 0, 0]],
    ['rosette', 5, 20, 36, [0, 0.39, 0.58, 0.73, 0.9, 0.98, 1, 0.98, 0.9, 0.75, 0.61, 0.43, 0.12]],
    ['desert cactus', 8, 25, 42, [0, 0, 0.22, 0.42, 0.65, 0.83, 0.91, 0.97, 1, 0.97, 0.91, 0.83, 0.65]],
    ['tropical', 12, 28, 42, [0, 0, 0, 0, 0.28, 0.56, 0.71, 0.83, 0.96, 1, 0.98, 0.92, 0.76]],
  ];
  for (const [name, base, optimum, ceiling, values] of sets) {
    it(`gives the ${name} row within rounding to two places`, () => {
      temperatures.forEach((temperature, column) => {
        const response = yanHunt(temperature, base, optimum, ceiling);
        expect(Math.abs(response - (values[column] as number)), `${temperature} °C`).toBeLessThanOrEqual(
          0.005001,
        );
      });
    });
    it(`differs from Wang & Engel by 0.02 at most for the ${name} set`, () => {
      let most = 0;
      for (let temperature = base; temperature <= ceiling; temperature += 0.1) {
        const beta = yanHunt(temperature, base, optimum, ceiling);
        most = Math.max(most, Math.abs(beta - wangEngel(temperature, base, optimum, ceiling)));
      }
      expect(most).toBeLessThanOrEqual(0.0205);
    });
  }
});

describe('Nobel & Hartsock 1983, Opuntia ficus-indica and daily light', () => {
  // I = 1 − exp(−0.128 (DLI − 4)), computed from net zero at 4 and 90 % at 22; on the plane of the cladode.
  const table: [number, number][] = [
    [4, 0],
    [6, 0.23],
    [8, 0.4],
    [10, 0.54],
    [15, 0.76],
    [20, 0.87],
    [22, 0.9],
    [30, 0.96],
  ];
  it('is nil at 4 and follows the computed index within rounding', () => {
    const cactus = numbersOf('hardy-cacti');
    for (const [light, index] of table) {
      expect(Math.abs(lightResponse(cactus, light) - index), `${light} mol`).toBeLessThanOrEqual(0.006);
    }
  });
  it('bleaches above 36 mol within a week: every such day adds scorch, none at 30 does', () => {
    const leaf = new Float64Array(7 * 24).fill(25);
    const scorchAt = (light: number) =>
      summariseHarm(
        harmDoses(numbersOf('hardy-cacti'), leaf, 60, false, new Float64Array(7).fill(light)).scorch,
      );
    expect(scorchAt(40)).toMatchObject({ days: 7, firstDay: 0 });
    expect(scorchAt(40).total).toBeCloseTo(28, 9);
    expect(scorchAt(30)).toMatchObject({ days: 0, firstDay: null });
  });
  it('rises in Agave lechuguilla from 6 to 17 mol nearly threefold (Quero & Nobel; good to 25 %)', () => {
    const agave = { ...numbersOf('agave'), lightHold: 3, lightGood: 20 };
    const ratio = lightResponse(agave, 17) / lightResponse(agave, 6);
    // With compensation 3 and 90 % at 20 the form gives 2.5 (computed); nearly 3 was seen.
    expect(ratio).toBeGreaterThan(2.4);
    expect(ratio).toBeLessThan(3);
  });
});

describe('Nobel 1986, Ferocactus: uptake most at 23/14 °C, half at 11/5 and at 32/23', () => {
  it('gives 1, 0.5 and 0.5 by night temperature (the curve is drawn through these; a check of the drawing)', () => {
    const gain = (night: number) => carbonNightResponse(numbersOf('desert-cacti'), night);
    expect(gain(14)).toBeCloseTo(1, 9);
    expect(gain(5)).toBeCloseTo(0.5, 9);
    expect(gain(23)).toBeCloseTo(0.5, 9);
  });
  it('is the beta response through the same points, within rounding', () => {
    for (let night = 0; night <= 28; night += 1) {
      const beta = yanHunt(night, 14 - 9 * Math.SQRT2, 14, 14 + 9 * Math.SQRT2);
      expect(carbonNightResponse(numbersOf('desert-cacti'), night)).toBeCloseTo(beta, 9);
    }
  });
  it('fits 24-h means with base 1.4, optimum 18.5, ceiling 31.0 (equal days and nights, computed)', () => {
    expect(yanHunt(8, 1.4, 18.5, 31)).toBeCloseTo(0.5, 1);
    expect(yanHunt(27.5, 1.4, 18.5, 31)).toBeCloseTo(0.5, 1);
  });
  it('moves the best night by 12 K from growth at 5 to growth at 40 °C (Nobel & Hartsock 1984: 11 to 23 °C)', () => {
    const best = (growthMean: number) => {
      let [at, most] = [0, 0];
      for (let night = -10; night <= 40; night += 0.1) {
        const gain = carbonNightResponse(numbersOf('hardy-cacti'), night, growthMean) as number;
        if (gain > most) [at, most] = [night, gain];
      }
      return at;
    };
    // 0.34 K a kelvin over 35 K is 11.9 K; the rounded slope, not the 12 K itself, is in the model.
    expect(Math.abs(best(40) - best(5) - 12)).toBeLessThan(0.25);
    expect(Math.abs(best(5) - 11)).toBeLessThan(0.25);
    expect(Math.abs(best(40) - 23)).toBeLessThan(0.25);
  });
});

describe('Agave by night temperature', () => {
  const gain = (night: number) => carbonNightResponse(numbersOf('agave'), night) as number;
  it('takes up most at 25/15 °C day/night (Nobel 1984, A. deserti)', () => {
    for (const night of [5, 10, 20, 25]) expect(gain(night)).toBeLessThan(gain(15));
  });
  it('takes up 70 % less at 35/25 than at 25/15, and not much less at 15/5 (Nobel et al. 1998, A. tequilana)', () => {
    expect(gain(25) / gain(15)).toBeCloseTo(0.3, 1);
    expect(gain(5) / gain(15)).toBeGreaterThan(0.7);
  });
});

describe('carbon gain beside development', () => {
  it('a Mammillaria in warm nights develops ahead of its carbon, so grows soft; in cool nights it does not', () => {
    const at = (mean: number, night: number) =>
      runPlants(
        numbersOf('desert-cacti'),
        constantDays(30, {
          meanLeaf: mean,
          leastLeaf: night,
          mostLeaf: 2 * mean - night,
          meanNightLeaf: night,
          dailyLight: 25,
          photoperiod: 12,
        }),
        { watering: 'watered' },
      );
    expect(at(26, 25).softness[29]).toBeGreaterThan(0.3);
    expect(at(22, 14).softness[29]).toBe(0);
    expect(plantStates[at(26, 25).state[29] as number]?.id).toBe('growing');
  });
  it('says nothing of groups without a carbon curve of their own in the literature', () => {
    const days = constantDays(10, {
      meanLeaf: 24,
      leastLeaf: 22,
      mostLeaf: 26,
      meanNightLeaf: 24,
      dailyLight: 12,
      photoperiod: 12,
    });
    for (const id of ['echeveria', 'aeonium', 'citrus', 'tomato-seedlings']) {
      expect(carbonNightResponse(numbersOf(id), 14), id).toBeNull();
      const { carbonIndex, temperatureIndex, softness } = runPlants(numbersOf(id), days);
      expect(Array.from(carbonIndex), id).toEqual(Array.from(temperatureIndex));
      expect(softness.every((value) => value === 0)).toBe(true);
    }
  });
});

describe('Erwin et al., constant 10, 16, 22, 28 °C and 13 mol/d', () => {
  const at = (id: string, temperature: number) => temperatureResponse(numbersOf(id), temperature);
  const trial = (temperature: number) =>
    constantDays(105, {
      meanLeaf: temperature,
      leastLeaf: temperature,
      mostLeaf: temperature,
      meanNightLeaf: temperature,
      dailyLight: 13,
      photoperiod: 12,
    });
  it('slows Aeonium from 22 to 28', () => expect(at('aeonium', 28)).toBeLessThan(at('aeonium', 22)));
  it('speeds Mammillaria from 16 to 28', () => {
    // The trial also found 10 and 16 °C alike. No curve with a base of 10 °C, which was inferred from just that, can
    // give this: alike means near nil at both, and the response at 16 is 0.6. Only the rise is asserted.
    expect(at('desert-cacti', 22)).toBeGreaterThan(at('desert-cacti', 16));
    expect(at('desert-cacti', 28)).toBeGreaterThan(at('desert-cacti', 16));
  });
  it('speeds Aloe from 22 to 28', () => expect(at('aloe', 28)).toBeGreaterThan(at('aloe', 22)));
  it('lets Gasteria grow at 22 as at 28 within a tenth', () => {
    expect(Math.abs(at('gasteria', 28) - at('gasteria', 22))).toBeLessThan(0.2);
  });
  it('kills Sempervivum by dose at a constant 28 within 10–15 weeks, though the curve is not nil there', () => {
    const days = trial(28);
    const result = runPlants(numbersOf('sempervivum'), days, { watering: 'watered', spinUpDays: 0 });
    expect(at('sempervivum', 28)).toBeGreaterThan(0.1);
    expect(plantStates[result.state[104] as number]?.id).toBe('resting-heat');
    const first = result.decline.indexOf(1);
    expect(first).toBeGreaterThan(35);
    expect(first).toBeLessThan(70);
  });
  it('keeps Sempervivum from decline at 16 and 22, developing fast', () => {
    for (const temperature of [16, 22]) {
      const result = runPlants(numbersOf('sempervivum'), trial(temperature), { watering: 'watered' });
      expect(result.decline.indexOf(1)).toBe(-1);
      expect(at('sempervivum', temperature)).toBeGreaterThan(0.8);
      // 13 mol/d is under the placeholder of 15 for good growth, so the state is slow for light alone.
      expect(['growing', 'slow']).toContain(plantStates[result.state[104] as number]?.id);
      expect(result.marginKelvin[104]).toBe(0);
    }
  });
});

describe('Echeveria', () => {
  const at = (temperature: number) => temperatureResponse(numbersOf('echeveria'), temperature);
  it('is smaller at 30 than at 10 and 20 °C (Cabahug et al. 2019, E. agavoides)', () => {
    // The paper's equality of 10 and 20 °C cannot be met by a beta curve (0.6–0.7 at 10 for any base from 0 to 5).
    expect(at(30)).toBeLessThan(at(10));
    expect(at(30)).toBeLessThan(at(20));
    expect(at(10)).toBeGreaterThan(0.63);
  });
  it('stretches within four weeks at 35 µmol, 12 h (1.5 mol/d), but not at 300 (light trial; order only)', () => {
    const warm = { meanLeaf: 20, leastLeaf: 18, mostLeaf: 23, meanNightLeaf: 18, photoperiod: 12 };
    const dim = constantDays(28, { ...warm, dailyLight: 1.5 });
    const bright = constantDays(28, { ...warm, dailyLight: 13 });
    expect(stateOn('echeveria', dim, 27)).toBe('stretching');
    expect(stateOn('echeveria', bright, 27)).toBe('growing');
  });
});

describe('frost in gardens', () => {
  const night = (least: number) => {
    const leaf = new Float64Array(24).fill(4);
    leaf.fill(least, 2, 6);
    return leaf;
  };
  const frostOf = (id: string, least: number, wet: boolean) =>
    harmDoses(numbersOf(id), night(least), 60, wet).frost[0] as number;
  it('a wet rosette garden is fine at −1, marked at −2.2, worse at −4 °C (Davis freeze notes)', () => {
    expect(frostOf('echeveria', -1, true)).toBe(0);
    expect(frostOf('echeveria', -2.2, true)).toBeCloseTo(4 * 1.2, 9);
    expect(frostOf('echeveria', -4, true)).toBeCloseTo(4 * 3, 9);
  });
  it('at about −4 °C aloes suffer more than aeoniums, haworthias and dudleyas less (San Luis Obispo, 1998)', () => {
    // The least temperature was not measured there; the limits stand 1–2 K on the safe side.
    expect(frostOf('aloe', -4, false)).toBeGreaterThan(frostOf('aeonium', -4, false));
    expect(frostOf('haworthia', -4, false)).toBeLessThan(frostOf('aloe', -4, false));
    expect(frostOf('dudleya', -4, false)).toBeLessThan(frostOf('aloe', -4, false));
  });
  it('citrus leaves die below −4.4 °C unhardened, below −9 °C hardened (University of Florida extension)', () => {
    expect(coldLimitAt(numbersOf('citrus'), 0, false)).toBeCloseTo(-4.4, 9);
    expect(coldLimitAt(numbersOf('citrus'), 1, false)).toBeCloseTo(-9, 9);
  });
  it('citrus makes no growth at 12.8 °C and some above', () => {
    expect(temperatureResponse(numbersOf('citrus'), 12.8)).toBe(0);
    expect(temperatureResponse(numbersOf('citrus'), 14)).toBeGreaterThan(0);
  });
});
