import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { planSchemaVersion } from '../../../core/index.ts';
import { openStore } from '../../../electron/host/store/open.ts';
import { mergeWithinMs, versionsKept } from '../../../electron/host/store/plans.ts';
import { createStore, storeOn } from '../../../electron/host/store/store.ts';
import type { Store } from '../../../electron/host/store/store.ts';
import { useFolder } from './folder.ts';

const newFolder = useFolder();
const id = 'plan-1';
let folder: string;
let clock: number;
let store: Store;

const open = () => createStore({ folder, now: () => clock });
const text = (name: string) => ({
  document: `{"name":"${name}"}`,
  schemaVersion: planSchemaVersion,
  name,
  siteName: 'A',
  places: 1,
});
const describePlan = (document: string) => text((JSON.parse(document) as { name: string }).name);
const shown = () => (JSON.parse(store.plans.read(id)!.document) as { name: string }).name;
const save = (name: string, mergeKey: string | null = null) =>
  store.plans.save(id, text(name), `to ${name}`, mergeKey);
const undo = () => store.plans.move(id, -1, describePlan);
const redo = () => store.plans.move(id, 1, describePlan);

beforeEach(() => {
  folder = newFolder();
  clock = Date.UTC(2026, 0, 15);
  store = open();
  store.plans.create(id, text('A'), 'New plan');
});
afterEach(() => store.close());

describe('versions of a plan', () => {
  it('undo and redo across a reopening of the store', () => {
    save('B');
    save('C');
    undo();
    store.close();
    store = open();
    expect(shown()).toBe('B');
    expect(store.plans.read(id)).toMatchObject({ undoWords: 'to B', redoWords: 'to C' });
    redo();
    expect(shown()).toBe('C');
    undo();
    undo();
    expect(shown()).toBe('A');
    expect(store.plans.read(id)).toMatchObject({ undoWords: null, redoWords: 'to B' });
  });

  it('stay as they are where there is nothing to undo or redo', () => {
    const before = store.plans.read(id);
    expect(undo()).toEqual(before);
    expect(redo()).toEqual(before);
  });

  it('drop what was undone when something else is changed', () => {
    save('B');
    undo();
    save('C');
    expect(store.plans.read(id)).toMatchObject({ undoWords: 'to C', redoWords: null });
    undo();
    expect(shown()).toBe('A');
    expect(redo()).toMatchObject({ redoWords: null });
    expect(shown()).toBe('C');
  });

  it('join saves with one merge key while they follow each other within seconds', () => {
    save('B', 'lamp-hours');
    for (const name of ['C', 'D', 'E']) {
      clock += mergeWithinMs - 1;
      save(name, 'lamp-hours');
    }
    expect(shown()).toBe('E');
    undo();
    expect(shown()).toBe('A');
  });

  it('do not join under another key, without one, after a pause, or after an undo', () => {
    save('B', 'lamp-hours');
    save('C', 'heater');
    save('D');
    save('E');
    save('F', 'heater');
    clock += mergeWithinMs + 1;
    save('G', 'heater');
    undo();
    save('H', 'heater');
    const back = ['F', 'E', 'D', 'C', 'B', 'A'];
    expect(
      back.map(() => {
        undo();
        return shown();
      }),
    ).toEqual(back);
  });

  it('never join the first version, so that a plan as it began can be had back', () => {
    store.plans.save(id, text('B'), 'to B', 'k');
    undo();
    expect(shown()).toBe('A');
  });

  it('are not made by a save that changes nothing', () => {
    save('B');
    const before = store.plans.read(id);
    expect(save('B')).toEqual(before);
  });

  it(`are kept to the last ${versionsKept}`, () => {
    for (let i = 0; i < versionsKept + 20; i++) save(`P${i}`);
    let steps = 0;
    while (store.plans.read(id)!.undoWords !== null) {
      undo();
      steps++;
    }
    expect(steps).toBe(versionsKept - 1);
  });

  it('keep the list in step: name, revision, time', () => {
    clock += 1000;
    save('B');
    expect(store.plans.list()).toEqual([{ id, name: 'B', siteName: 'A', places: 1, changedMs: clock }]);
    undo();
    expect(store.plans.list()[0].name).toBe('A');
    expect(store.plans.read(id)!.revision).toBe(3);
  });
});

describe('two windows on one store', () => {
  it('see and undo each other’s changes', () => {
    const other = open();
    save('B');
    expect(other.plans.read(id)).toMatchObject({ undoWords: 'to B', revision: 2 });
    other.plans.save(id, text('C'), 'to C', null);
    undo();
    expect(other.plans.read(id)).toMatchObject({ redoWords: 'to C', revision: 4 });
    other.close();
    expect(shown()).toBe('B');
  });

  it('wait for each other rather than fail: a transaction takes the lock before it reads', () => {
    const opened = openStore({ folder, now: () => clock });
    opened.database.pragma('busy_timeout = 50');
    const other = storeOn(opened, () => clock);
    store.together(() => {
      expect(() => other.plans.save(id, text('B'), 'to B', null)).toThrow(/locked/);
      save('C');
    });
    expect(other.plans.save(id, text('D'), 'to D', null)).toMatchObject({ undoWords: 'to D' });
    other.close();
    undo();
    expect(shown()).toBe('C');
  });
});

describe('putting a plan away', () => {
  it('takes it from the list and from every call, and brings it back with its versions', () => {
    save('B');
    expect(store.plans.archive(id)).toBe(true);
    expect(store.plans.archive(id)).toBe(false);
    expect(store.plans.list()).toEqual([]);
    expect(store.plans.read(id)).toBeNull();
    expect(save('C')).toBeNull();
    expect(undo()).toBeNull();
    expect(store.plans.restore(id)).toBe(true);
    expect(store.plans.restore(id)).toBe(false);
    expect(store.plans.read(id)).toMatchObject({ undoWords: 'to B' });
  });
});
