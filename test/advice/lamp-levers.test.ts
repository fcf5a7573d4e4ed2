import { describe, expect, it } from 'vitest';
import { burningHours, demonstrationPlan, lampOf, parsePlan } from '../../core/index.ts';
import type { Lamp, Plan } from '../../core/index.ts';
import { applyChange } from '../../core/advice/change.ts';
import { leversOf } from '../../core/advice/levers.ts';

const lampWith = (part: Partial<Lamp>): Lamp =>
  lampOf({
    ...{ id: 'lamp', name: 'Lamp', technology: 'led-white', watts: 50, efficacy: 2.5, count: 1, height: 0.4 },
    ...{ length: 0.5, width: 0.5, on: '07:00', off: '19:00' },
    ...part,
  });

/** Plans with each setting of the lever on a lamp's hours, in the lean-to. */
function settingsOf(lamp: Lamp, direction: 'up' | 'down'): { value: number; plan: Plan; lamp: Lamp }[] {
  const places = demonstrationPlan.places.map((each, index) =>
    index === 0 ? { ...each, lamps: [lamp] } : each,
  );
  const lever = leversOf(places[0], 1, direction).find(({ id }) => id === 'lamp-hours');
  return (lever?.settings ?? []).map(({ value, change }) => {
    const plan = applyChange({ ...demonstrationPlan, places }, change);
    return { value, plan, lamp: plan.places[0].lamps[0] };
  });
}

describe.each([
  ['one block', {}],
  ['one block through midnight', { on: '20:30', off: '02:00' }],
  ['two blocks, the noon between', { on: '06:00', off: '10:00', second: { on: '11:00', off: '15:00' } }],
  ['two blocks, the night between', { on: '16:15', off: '22:00', second: { on: '05:00', off: '08:30' } }],
  ['two blocks, the first the later', { on: '20:00', off: '24:00', second: { on: '00:30', off: '03:00' } }],
])('the lever on the hours of a lamp of %s', (_, part: Partial<Lamp>) => {
  it.each(['up', 'down'] as const)('%s: the clock burns what the lever says, in a plan that holds', (way) => {
    const settings = settingsOf(lampWith(part), way);
    expect(settings.length).toBeGreaterThan(8);
    for (const { value, plan, lamp } of settings) {
      expect(burningHours(lamp), `${value} h`).toBeCloseTo(value, 9);
      expect(parsePlan(JSON.parse(JSON.stringify(plan))).ok, `${value} h`).toBe(true);
    }
  });
});

it.each(['up', 'down'] as const)(
  'a lamp that lengthens the day stays within what a plan takes, %s',
  (way) => {
    const lamp = lampWith({ control: { kind: 'extend', hours: 12, end: 'dusk' }, mostDay: 13 });
    const settings = settingsOf(lamp, way);
    expect(settings.length).toBeGreaterThan(1);
    for (const { value, plan } of settings) {
      expect(parsePlan(JSON.parse(JSON.stringify(plan))).ok, `${value} h`).toBe(true);
    }
  },
);
