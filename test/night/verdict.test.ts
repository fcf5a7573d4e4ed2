import { describe, expect, it } from 'vitest';
import { createSeasonCache, demonstrationPlan, heaterOf, runNight } from '../../core/index.ts';
import type { NightInput, Place, PlaceNight } from '../../core/index.ts';

const cache = createSeasonCache();
const input: NightInput = {
  dateISO: '2026-01-14',
  duskTemperature: 2,
  low: -5,
  cloudOktas: 0,
  wind: 1,
  band: 2,
};

function tunnelWith(heaters: Place['heaters'], changes: Partial<NightInput> = {}): PlaceNight {
  const places = demonstrationPlan.places.map((place) =>
    place.id === 'tunnel' ? { ...place, heaters } : place,
  );
  const night = runNight({ ...demonstrationPlan, places }, { ...input, ...changes }, undefined, cache);
  const found = night.places.find((place) => place.placeId === 'tunnel');
  if (found === undefined) throw new Error('expected the tunnel');
  return found;
}

const heater = (kind: 'fan' | 'propane', power: number): Place['heaters'] => [
  heaterOf({ id: 'h', name: 'Heater', kind, power, setPointDay: 4, setPointNight: 4 }),
];

describe('the verdict on a night', () => {
  it('is harm, close or safe by the forecast and its error, and the sentence says which', () => {
    const cold = tunnelWith([]);
    expect(cold.verdict).toBe('harm');
    expect(cold.words).toContain('below what they bear');
    const mild = tunnelWith([], { low: 6, duskTemperature: 9 });
    expect(mild.verdict).toBe('safe');
    const margins = [-2, -1, 0, 0.5, 1, 1.5].map((low) => tunnelWith([], { low }));
    const close = margins.find((place) => place.verdict === 'close');
    expect(close?.margin).toBeGreaterThanOrEqual(0);
    expect(close?.words).toContain('if the night is 2 K colder');
  });

  it('says until when a heater that is too small holds: the first leaf below the limit at full power', () => {
    const small = tunnelWith(heater('fan', 150));
    expect(small.verdict).toBe('harm');
    expect(small.failsAtMs).not.toBeNull();
    expect(small.words).toMatch(/^The heater holds until \d\d:\d\d;/);
    expect(tunnelWith(heater('fan', 3000)).failsAtMs).toBeNull();
  });

  it('a flame goes on burning in a power cut, a fan heater does not', () => {
    expect(tunnelWith(heater('fan', 3000)).hoursToHarm).not.toBeNull();
    expect(tunnelWith(heater('propane', 3000)).hoursToHarm).toBeNull();
  });

  it('prices a night by hand: kilowatt-hours at the hour’s price for electricity, by weight for propane', () => {
    const electric = tunnelWith(heater('fan', 3000));
    const { dayPrice, nightPrice, propanePrice } = demonstrationPlan.tariff;
    expect(electric.cost).toBeGreaterThan(electric.heaterKwh * (nightPrice ?? dayPrice));
    expect(electric.cost).toBeLessThan(electric.heaterKwh * dayPrice);
    const gas = tunnelWith(heater('propane', 3000));
    // 12.88 kWh kg⁻¹, net heat of combustion of propane (derived from standard heats of formation).
    expect(gas.cost).toBeCloseTo((gas.heaterKwh / 12.88) * propanePrice, 9);
  });
});
