import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { demonstrationPlan } from '../../../core/index.ts';
import type { Plan } from '../../../core/index.ts';
import { callNames, longestPlanText } from '../../../electron/contract.ts';
import type { CallInput, CallName, CallOutput, HostFailure } from '../../../electron/contract.ts';
import { createHost } from '../../../electron/host/host.ts';
import { openStore } from '../../../electron/host/store/open.ts';
import type { OpenStore } from '../../../electron/host/store/open.ts';
import { storeOn } from '../../../electron/host/store/store.ts';
import type { Store } from '../../../electron/host/store/store.ts';
import { useFolder } from '../store/folder.ts';

const newFolder = useFolder();
let folder: string;
let clock: number;
let database: OpenStore['database'];
let store: Store;
let answer: ReturnType<typeof createHost>;

function open() {
  const now = () => clock;
  const opened = openStore({ folder, now });
  database = opened.database;
  store = storeOn(opened, now);
  answer = createHost({ store, shell: 'local', version: '1.2.3', now });
}
beforeEach(() => {
  folder = newFolder();
  clock = Date.UTC(2026, 0, 15);
  open();
});
afterEach(() => store.close());

function call<K extends CallName>(name: K, input: CallInput<K>): CallOutput<K> {
  const given = answer(name, input);
  if (!given.ok) throw new Error(`${name}: ${given.error.message} ${JSON.stringify(given.error.problems)}`);
  return given.value as CallOutput<K>;
}
function refusal(name: string, input: unknown): HostFailure {
  const given = answer(name, input);
  if (given.ok) throw new Error(`expected ${name} to be refused, got ${JSON.stringify(given.value)}`);
  return given.error;
}
const renamed = (plan: Plan, name: string): Plan => ({ ...plan, name });
/** Everything a call could have changed. */
const everything = () =>
  JSON.stringify([
    store.plans.list(),
    store.weather.list(),
    store.plans.list().map(({ id }) => store.plans.read(id)),
  ]);

describe('the host', () => {
  it('shows the demonstration plan on the first start, and says so once', () => {
    const first = call('start', null);
    expect(first).toMatchObject({ firstStart: true, shell: 'local', version: '1.2.3', notice: null });
    expect(first.plans).toHaveLength(1);
    expect(call('readPlan', { id: first.openPlanId }).plan).toEqual(demonstrationPlan);
    expect(call('start', null)).toMatchObject({ firstStart: false, openPlanId: first.openPlanId });
  });

  it('finds plans, the open one, undo, preferences and the last night again after a restart', () => {
    const { openPlanId: id } = call('start', null);
    call('savePlan', { id, plan: renamed(demonstrationPlan, 'Changed'), words: 'Name changed' });
    const other = call('createPlan', { plan: renamed(demonstrationPlan, 'Other') });
    call('openPlan', { id });
    call('writePreferences', { theme: 'dark' });
    call('writePreferences', { temperature: 'F' });
    const night = { dateISO: '2026-01-15', duskTemperature: 4, low: -6, cloudOktas: 2, wind: null, band: 2 };
    call('rememberNight', { night });
    store.close();
    open();
    const start = call('start', null);
    expect(start.openPlanId).toBe(id);
    expect(start.plans.map((plan) => plan.id).sort()).toEqual([id, other.id].sort());
    expect(start.preferences).toMatchObject({ theme: 'dark', temperature: 'F', length: 'system' });
    expect(call('lastNight', null)).toEqual(night);
    expect(call('undo', { id })).toMatchObject({
      plan: demonstrationPlan,
      canUndo: false,
      canRedo: true,
      undoWords: null,
      redoWords: 'Name changed',
    });
    expect(call('redo', { id }).plan.name).toBe('Changed');
  });

  it('puts a plan away and back, and always has one open', () => {
    const { openPlanId: first } = call('start', null);
    const second = call('createPlan', { plan: renamed(demonstrationPlan, 'Second') }).id;
    expect(call('deletePlan', { id: second }).openPlanId).toBe(first);
    expect(refusal('readPlan', { id: second }).code).toBe('not-found');
    const afterLast = call('deletePlan', { id: first });
    expect(afterLast.plans).toHaveLength(1);
    expect([first, second]).not.toContain(afterLast.openPlanId);
    expect(call('restorePlan', { id: second }).plans.map((plan) => plan.name)).toContain('Second');
  });

  it('takes out a plan as text and in again as the same plan', () => {
    const { openPlanId: id } = call('start', null);
    const { fileName, text } = call('exportPlan', { id });
    expect(fileName).toMatch(/^[\p{L}\p{N}-]+\.winterbench\.json$/u);
    const imported = call('importPlan', { text: `\uFEFF${text}` });
    expect(imported.id).not.toBe(id);
    expect(imported.plan).toEqual(demonstrationPlan);
    expect(call('listPlans', null).openPlanId).toBe(imported.id);
  });

  it('carries out every call of the contract', () => {
    for (const name of callNames) expect(refusalOrNull(name)?.code, name).not.toBe('internal');
    function refusalOrNull(name: CallName) {
      const given = answer(
        name,
        name.endsWith('Plan') || name === 'undo' || name === 'redo' ? { id: 'absent' } : null,
      );
      return given.ok ? null : given.error;
    }
  });

  it('refuses unknown calls, also those named like parts of any object', () => {
    for (const name of ['', 'eval', 'toString', '__proto__', 'constructor', 'list']) {
      expect(refusal(name, null).code, name).toBe('unknown-call');
    }
  });
});

const places = demonstrationPlan.places;
const bad: [string, unknown, RegExp][] = [
  ['a wrong type', { ...demonstrationPlan, places: 'none' }, /^places$/],
  [
    'a negative area',
    { ...demonstrationPlan, places: [{ ...places[0], growingArea: -1 }, ...places.slice(1)] },
    /^places\.0\.growingArea$/,
  ],
  [
    'an unknown covering',
    { ...demonstrationPlan, places: [{ ...places[0], covering: 'moonlight' }, ...places.slice(1)] },
    /^places\.0\.covering$/,
  ],
  [
    'a number as text',
    { ...demonstrationPlan, site: { ...demonstrationPlan.site, latitude: '54' } },
    /^site\.latitude$/,
  ],
  [
    'an impossible time',
    { ...demonstrationPlan, tariff: { ...demonstrationPlan.tariff, nightFrom: '25:61' } },
    /^tariff\.nightFrom$/,
  ],
  ['a version from the future', { ...demonstrationPlan, schemaVersion: 99 }, /^schemaVersion$/],
];

describe('a bad plan', () => {
  it.each(bad)(
    'with %s is refused with its path; nothing is stored and the open plan is untouched',
    (_what, plan, path) => {
      const { openPlanId: id } = call('start', null);
      const before = everything();
      const attempts = [
        refusal('savePlan', { id, plan, words: 'Bad' }),
        refusal('createPlan', { plan }),
        refusal('importPlan', { text: JSON.stringify(plan) }),
      ];
      for (const { code, message, problems } of attempts) {
        expect(code).toBe('refused');
        expect(message).toMatch(/cannot be used/);
        expect(problems!.map((problem) => problem.path).join(' ')).toMatch(path);
      }
      expect(everything()).toBe(before);
      expect(call('listPlans', null).openPlanId).toBe(id);
    },
  );

  it('that is rubbish or over ten million characters is refused in words', () => {
    call('start', null);
    const before = everything();
    expect(refusal('importPlan', { text: 'rubbish'.repeat(100_000) })).toMatchObject({ code: 'refused' });
    expect(refusal('importPlan', { text: 'x'.repeat(longestPlanText + 1) })).toEqual({
      code: 'too-large',
      message: 'This plan cannot be used: it has 10.0 million characters, and a plan has at most 10 million.',
    });
    expect(everything()).toBe(before);
  });
});

describe('a full disk', () => {
  it('is told in words; the plan stays as it was and can be changed again later', () => {
    const { openPlanId: id } = call('start', null);
    const before = everything();
    database.pragma('max_page_count = 1');
    const long = renamed(demonstrationPlan, 'x'.repeat(100));
    const failure = refusal('savePlan', {
      id,
      plan: { ...long, lots: demonstrationPlan.lots },
      words: 'Grow',
    });
    expect(failure).toEqual({
      code: 'store',
      message: 'The disk is full: the change was not kept. Make room and try again.',
    });
    expect(everything()).toBe(before);
    database.pragma('max_page_count = 1000000');
    expect(call('savePlan', { id, plan: long, words: 'Grow' }).plan.name).toBe(long.name);
  });
});
