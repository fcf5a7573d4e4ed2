import { describe, expect, it } from 'vitest';
import { harmDoses, harmTotals, plantHarms, runPlants, summariseHarm } from '../../core/plants/index.ts';
import { numbersOf, steady } from './days.ts';

const hours = (days: number, temperature: number) => new Float64Array(days * 24).fill(temperature);

describe('each harm is reached by its dose and by nothing less', () => {
  it('frost: hours times depth below the limit, deeper where the mix is wet', () => {
    const leaf = hours(2, 5);
    leaf.fill(-5, 26, 30);
    const dry = harmDoses(numbersOf('echeveria'), leaf, 60, false);
    const wet = harmDoses(numbersOf('echeveria'), leaf, 60, Uint8Array.of(0, 1));
    expect(Array.from(dry.frost)).toEqual([0, 4]);
    expect(Array.from(wet.frost)).toEqual([0, 16]);
    expect(Array.from(dry.frostHours)).toEqual([0, 4]);
    expect(summariseHarm(wet.frost)).toEqual({ total: 16, days: 1, firstDay: 1, peakDay: 1, peak: 16 });
  });

  it('the same night in quarter hours gives the same dose', () => {
    const quarter = new Float64Array(96).fill(5).fill(-6, 8, 24);
    const whole = new Float64Array(24).fill(5).fill(-6, 2, 6);
    const a = harmDoses(numbersOf('aeonium'), quarter, 15, false);
    const b = harmDoses(numbersOf('aeonium'), whole, 60, false);
    expect(a.frost[0]).toBeCloseTo(b.frost[0] as number, 12);
    expect(a.frostHours[0]).toBe(4);
  });

  it('chill: degree-hours below 12 °C in tropical groups only', () => {
    expect(harmDoses(numbersOf('adenium'), hours(1, 8), 60, false).chill[0]).toBe(96);
    expect(harmDoses(numbersOf('adenium'), hours(1, 12), 60, false).chill[0]).toBe(0);
    expect(harmDoses(numbersOf('aeonium'), hours(1, 8), 60, false).chill[0]).toBe(0);
  });

  it('heat: degree-hours above what tissue bears', () => {
    const leaf = hours(1, 30);
    leaf.fill(50, 12, 14);
    expect(harmDoses(numbersOf('aeonium'), leaf, 60, false).heat[0]).toBe(8);
    expect(harmDoses(numbersOf('desert-cacti'), leaf, 60, false).heat[0]).toBe(0);
  });

  it('scorch: a plant from the dark is burnt by light that one used to it bears', () => {
    const light = new Float64Array(30).fill(3);
    light.fill(25, 20);
    const sudden = harmDoses(numbersOf('echeveria'), hours(30, 20), 60, false, light).scorch;
    expect(summariseHarm(sudden).firstDay).toBe(20);
    // 25 given, 0.6 × 35 = 21 borne by one that is not used to it.
    expect(sudden[20]).toBeCloseTo(4, 9);
    expect(sudden[29]).toBe(0);
    const used = harmDoses(
      numbersOf('echeveria'),
      hours(30, 20),
      60,
      false,
      new Float64Array(30).fill(25),
    ).scorch;
    expect(summariseHarm(used).days).toBe(0);
  });

  it('wet cold: from the sixth running day of wet and cold; a dry day starts the count again', () => {
    const wet = new Uint8Array(14).fill(1);
    wet[7] = 0;
    const harms = harmDoses(numbersOf('echeveria'), hours(14, 5), 60, wet);
    expect(Array.from(harms.wetCold)).toEqual([0, 0, 0, 0, 0, 1, 1, 0, 0, 0, 0, 0, 0, 1]);
    expect(harmTotals(harms)).toMatchObject({ wetCold: 3, frost: 0, scorch: 0, frostHours: 0 });
    expect(
      summariseHarm(harmDoses(numbersOf('echeveria'), hours(14, 5), 60, false).wetCold).firstDay,
    ).toBeNull();
  });

  it('each of the six is reached and left again', () => {
    const calm = (value: number) => Array<number>(20).fill(value);
    const leafOf = (...days: number[]) =>
      Float64Array.from(days.flatMap((value) => Array<number>(24).fill(value)));
    const lastDose = (doses: Float64Array) => doses.reduce((last, dose, day) => (dose > 0 ? day : last), -1);
    const group = { ...numbersOf('adenium'), lightMost: 30 };
    const light = Float64Array.from([...calm(5), ...Array<number>(10).fill(28), ...calm(28)]);
    const hot = runPlants(group, {
      ...steady(160, 25, 20),
      meanLeaf: Float64Array.from({ length: 160 }, (_, day) => (day < 60 ? 39 : 25)),
      meanNightLeaf: Float64Array.from({ length: 160 }, (_, day) => (day < 60 ? 37 : 22)),
    });
    const cold = (value: number) => leafOf(...calm(20), ...Array<number>(10).fill(value), ...calm(20));
    const doses: Record<string, Float64Array> = {
      frost: harmDoses(group, cold(-2), 60, false).frost,
      chill: harmDoses(group, cold(5), 60, false).chilled,
      heat: harmDoses(group, cold(60), 60, false).heat,
      scorch: harmDoses(group, cold(20), 60, false, light).scorch,
      wetCold: harmDoses(group, cold(12), 60, true).wetCold,
      decline: Float64Array.from(hot.decline),
    };
    expect(Object.keys(doses)).toEqual(plantHarms.map(({ id }) => id));
    for (const [name, of] of Object.entries(doses)) {
      const last = lastDose(of);
      expect(last, name).toBeGreaterThan(0);
      expect(of[0], name).toBe(0);
      expect(last, name).toBeLessThan(of.length - 1);
    }
  });

  it('refuses broken days and series of another length', () => {
    expect(() => harmDoses(numbersOf('aeonium'), new Float64Array(25), 60, false)).toThrow(/whole days/);
    expect(() => harmDoses(numbersOf('aeonium'), new Float64Array(0), 60, false)).toThrow(/whole days/);
    expect(() => harmDoses(numbersOf('aeonium'), hours(2, 5), 60, new Uint8Array(1))).toThrow(
      /2 days of wet/,
    );
    expect(() => harmDoses(numbersOf('aeonium'), hours(2, 5), 60, true, new Float64Array(1))).toThrow(
      /2 days of light/,
    );
  });
});
