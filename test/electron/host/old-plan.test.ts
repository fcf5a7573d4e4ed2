/** Plans that were stored or exported in an older version go on being read: 1 (vents one kind or none), 2 (light simpler). */
import { readFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { planSchemaVersion } from '../../../core/index.ts';
import type { CallName, CallOutput } from '../../../electron/contract.ts';
import { createHost } from '../../../electron/host/host.ts';
import { createStore } from '../../../electron/host/store/store.ts';
import type { Store } from '../../../electron/host/store/store.ts';
import { useFolder } from '../store/folder.ts';

const document = readFileSync(new URL('../../plan/plan-version-1.json', import.meta.url), 'utf8');
const newFolder = useFolder();
let store: Store;

beforeEach(() => {
  store = createStore({ folder: newFolder(), now: () => Date.UTC(2026, 0, 15) });
  const old = { document, schemaVersion: 1, name: 'Old', siteName: 'A', places: 3 };
  store.plans.create('old', old, 'New plan');
});
afterEach(() => store.close());

function call<K extends CallName>(name: K, input: unknown): CallOutput<K> {
  const given = createHost({ store, shell: 'local', version: '0', now: () => Date.UTC(2026, 0, 15) })(
    name,
    input,
  );
  if (!given.ok) throw new Error(`${name}: ${given.error.message} ${JSON.stringify(given.error.problems)}`);
  return given.value as CallOutput<K>;
}

describe('a stored plan of version 1', () => {
  it('opens in the present version, its one kind of vents a list', () => {
    const { plan } = call('readPlan', { id: 'old' });
    expect(plan.schemaVersion).toBe(planSchemaVersion);
    expect(plan.places.map((place) => place.vents.map((vent) => [vent.area, vent.openAt]))).toEqual([
      [[0.5, 18]],
      [[1.6, 16]],
      [],
    ]);
    expect(plan.places[0].water[0].form).toBe('drum');
    expect(plan.lots).toHaveLength(4);
  });

  it('is saved in the present version, and the old one comes back by undoing', () => {
    const { plan } = call('readPlan', { id: 'old' });
    call('savePlan', { id: 'old', plan: { ...plan, name: 'Renamed' }, words: 'Rename' });
    expect(JSON.parse(store.plans.read('old')!.document)).toMatchObject({ schemaVersion: planSchemaVersion });
    call('undo', { id: 'old' });
    expect(call('readPlan', { id: 'old' }).plan).toEqual(plan);
  });

  it('is imported from a file too', () => {
    expect(call('importPlan', { text: document }).plan.schemaVersion).toBe(planSchemaVersion);
  });
});

describe('a stored plan of version 2', () => {
  it('opens in the present version with every value it had, and saves', () => {
    const second = readFileSync(new URL('../../plan/plan-version-2.json', import.meta.url), 'utf8');
    const old = { document: second, schemaVersion: 2, name: 'Older', siteName: 'A', places: 5 };
    store.plans.create('older', old, 'New plan');
    const { plan } = call('readPlan', { id: 'older' });
    expect(plan.schemaVersion).toBe(planSchemaVersion);
    expect({ ...plan, schemaVersion: 2 }).toMatchObject(JSON.parse(second));
    call('savePlan', { id: 'older', plan: { ...plan, name: 'Renamed' }, words: 'Rename' });
    expect(call('readPlan', { id: 'older' }).plan.name).toBe('Renamed');
  });
});
