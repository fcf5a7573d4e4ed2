import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { callNames, contract, firstPreferences, preferencesSchema } from '../../electron/contract.ts';
import type { Bridge, CallInput, CallName, CallOutput, Host, PlanDocument } from '../../electron/contract.ts';

/** One input of each call that its schema takes; `satisfies` makes a call without one a type error. */
const examples = {
  start: null,
  listPlans: {},
  readPlan: { id: 'a' },
  openPlan: { id: 'a' },
  createPlan: { plan: {} as never },
  savePlan: { id: 'a', plan: {} as never, words: 'Lamp on 12 h', mergeKey: 'lamp' },
  undo: { id: 'a' },
  redo: { id: 'a' },
  deletePlan: { id: 'a' },
  restorePlan: { id: 'a' },
  importPlan: { text: '{}' },
  exportPlan: { id: 'a' },
  importWeather: { name: 'a.epw', base64: 'AAAA' },
  listWeather: undefined,
  readWeather: { id: 'a' },
  readPreferences: null,
  writePreferences: { theme: 'dark' },
  rememberNight: {
    night: { dateISO: '2026-01-15', duskTemperature: 4, low: -6, cloudOktas: 2, wind: null, band: 2 },
  },
  lastNight: null,
  calendarFile: {
    title: 'Winter',
    timeZone: 'Europe/Dublin',
    year: 2026,
    startsOn: '08-01',
    tasks: [{ id: 'a-stop-water-1', on: '10-20', until: null, summary: 'a', description: '', location: '' }],
  },
} satisfies { [K in CallName]: CallInput<K> };

/** Types only: both ends follow from the table. Compiled by the type check, never run. */
export const derived = (host: Host, bridge: Bridge) => [
  host.readPlan({ id: 'a' }) satisfies Promise<PlanDocument>,
  host.rememberNight(examples.rememberNight) satisfies Promise<null>,
  bridge.undo({ id: 'a' }) satisfies Promise<{ ok: boolean }>,
  // @ts-expect-error a call that needs an input does not go without
  host.readPlan(),
  // @ts-expect-error an input of the wrong shape
  host.undo({ plan: 'a' }),
  null as unknown as CallOutput<'listPlans'> satisfies { openPlanId: string },
];

describe('the contract', () => {
  it('takes an example of each call', () => {
    expect(Object.keys(examples).sort()).toEqual([...callNames].sort());
    for (const name of callNames) {
      expect(v.safeParse(contract[name].input, examples[name]).success, name).toBe(true);
    }
  });

  it('refuses fields it does not know and values of another type in each call', () => {
    for (const name of callNames) {
      for (const wrong of [{ ...examples[name], more: 1 }, 7, 'text', [1], true]) {
        expect(v.safeParse(contract[name].input, wrong).success, `${name} ${JSON.stringify(wrong)}`).toBe(
          false,
        );
      }
    }
  });

  it('refuses ids and nights that cannot be', () => {
    for (const id of ['', 'A', '../x', "a' OR 1", 'a'.repeat(65), 7, null]) {
      expect(v.safeParse(contract.readPlan.input, { id }).success, String(id)).toBe(false);
    }
    const { night } = examples.rememberNight;
    for (const wrong of [
      { low: NaN },
      { low: '4' },
      { cloudOktas: 9 },
      { wind: -1 },
      { dateISO: '2026-13-01' },
      { band: Infinity },
    ]) {
      const reading = v.safeParse(contract.rememberNight.input, { night: { ...night, ...wrong } });
      expect(reading.success, JSON.stringify(wrong)).toBe(false);
    }
  });

  it('begins with preferences that its own schema takes', () => {
    expect(v.parse(preferencesSchema, firstPreferences)).toEqual(firstPreferences);
  });
});
