import { describe, expect, it } from 'vitest';
import { applyChange, demonstrationPlan, heaterOf } from '../../core/index.ts';
import type { Heater, Plan } from '../../core/index.ts';

const heater = (kind: Heater['kind'], day: number, night: number): Heater =>
  heaterOf({
    id: `${kind}-${night}`,
    name: kind,
    kind,
    power: 1000,
    setPointDay: day,
    setPointNight: night,
  });

function heatersAfter(heaters: Heater[], setPoint: number): readonly Heater[] {
  const places = demonstrationPlan.places.map((place) =>
    place.id === 'tunnel' ? { ...place, heaters } : place,
  );
  const plan: Plan = { ...demonstrationPlan, places };
  const changed = applyChange(plan, { placeId: 'tunnel', heaterSetPoint: setPoint });
  return changed.places.find((place) => place.id === 'tunnel')?.heaters ?? [];
}

describe('a set point changed', () => {
  it('upwards lifts the night and leaves a warmer day as it is', () => {
    expect(heatersAfter([heater('fan', 15, 5)], 5.5)).toMatchObject([
      { setPointDay: 15, setPointNight: 5.5 },
    ]);
  });

  it('upwards past the day lifts both; downwards lowers both', () => {
    expect(heatersAfter([heater('fan', 8, 5)], 10)).toMatchObject([{ setPointDay: 10, setPointNight: 10 }]);
    expect(heatersAfter([heater('fan', 8, 5)], 3)).toMatchObject([{ setPointDay: 3, setPointNight: 3 }]);
  });

  it('belongs to the air heater that holds the place, not to a mat', () => {
    const after = heatersAfter([heater('heat-mat', 18, 18), heater('fan', 4, 4), heater('propane', 6, 6)], 7);
    expect(after.map((each) => each.setPointNight)).toEqual([18, 4, 7]);
  });
});
