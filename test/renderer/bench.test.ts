import { flushSync } from 'svelte';
import { beforeEach, describe, expect, it } from 'vitest';
import { demonstrationPlan } from '../../core/index.ts';
import type { Plan, SeasonResult } from '../../core/index.ts';
import type { Host, PlanDocument } from '../../electron/contract.ts';
import { Bench } from '../../renderer/state/bench.svelte.ts';
import type { Engine } from '../../renderer/state/engine.ts';
import { HostError } from '../../renderer/state/host.ts';

/** An engine whose answers come when the test says. The season carries the plan's name, to tell whose it is. */
class SlowEngine {
  asked: { plan: Plan; answer: () => Promise<void> }[] = [];

  season(plan: Plan): Promise<SeasonResult | null> {
    return new Promise((settle) => {
      const season = {
        planName: plan.name,
        winterFrom: 61,
        winterTo: 242,
        places: [],
      } as unknown as SeasonResult;
      const answer = async () => {
        settle(season);
        await new Promise((done) => setTimeout(done));
        flushSync();
      };
      this.asked.push({ plan, answer });
    });
  }

  async answerAll() {
    await new Promise((done) => setTimeout(done));
    while (this.asked.length > 0) await this.asked.shift()?.answer();
  }
}

/** A host with versions in memory, as the store keeps them. */
function memoryHost() {
  const versions: { plan: Plan; words: string | null }[] = [{ plan: demonstrationPlan, words: null }];
  let at = 0;
  let refuse: HostError | null = null;
  const document = (): PlanDocument => ({
    id: 'plan',
    plan: versions[at].plan,
    revision: at,
    canUndo: at > 0,
    canRedo: at < versions.length - 1,
    undoWords: versions[at].words,
    redoWords: versions[at + 1]?.words ?? null,
  });
  const host = {
    start: () =>
      Promise.resolve({
        openPlanId: 'plan',
        plans: [],
        firstStart: true,
        shell: 'local',
        version: '0',
        notice: null,
        preferences: {
          theme: 'light',
          temperature: 'C',
          length: 'm',
          firstDay: 'system',
          motion: 'system',
          currency: null,
        },
      }),
    readPlan: () => Promise.resolve(document()),
    savePlan: ({ plan, words }: { plan: Plan; words: string }) => {
      if (refuse) return Promise.reject(refuse);
      versions.splice(at + 1);
      versions.push({ plan, words });
      at += 1;
      return Promise.resolve(document());
    },
    undo: () => ((at -= 1), Promise.resolve(document())),
    redo: () => ((at += 1), Promise.resolve(document())),
  };
  return {
    host: host as unknown as Host,
    versions,
    refuseWith: (error: HostError | null) => (refuse = error),
  };
}

const named = (name: string) => (plan: Plan) => ({ ...plan, name });
let engine: SlowEngine;
let memory: ReturnType<typeof memoryHost>;
let bench: Bench;

beforeEach(async () => {
  engine = new SlowEngine();
  memory = memoryHost();
  bench = new Bench(memory.host, engine as unknown as Engine);
  const opening = bench.open();
  await engine.answerAll();
  await opening;
});

describe('the bench', () => {
  it('opens the plan with its season and puts the cursor in mid-winter, in the middle of a week', () => {
    expect(bench.season?.planName).toBe(demonstrationPlan.name);
    expect(bench.cursorDay).toBe(150);
    expect(bench.placeId).toBe(demonstrationPlan.places[0].id);
  });

  it('selects the open air over an undo, and keeps the levers of the place that was selected before', async () => {
    bench.placeId = demonstrationPlan.places[1].id;
    bench.show('sheet', { placeId: 'outdoors' });
    expect([bench.placeId, bench.place, bench.leverPlace?.id]).toEqual([
      'outdoors',
      null,
      demonstrationPlan.places[1].id,
    ]);
    bench.update('Rename', named('Second'));
    await engine.answerAll();
    const undoing = bench.undo();
    await engine.answerAll();
    await undoing;
    expect([bench.placeId, bench.leverPlace?.id]).toEqual(['outdoors', demonstrationPlan.places[1].id]);
  });

  it('keeps a change at once, saves it under its name and can take it back and bring it again', async () => {
    bench.update('Rename', named('Second'));
    expect(bench.plan.name).toBe('Second');
    await engine.answerAll();
    expect([bench.season?.planName, bench.undoWords, bench.canRedo]).toEqual(['Second', 'Rename', false]);
    const undoing = bench.undo();
    await engine.answerAll();
    await undoing;
    expect([bench.plan.name, bench.season?.planName, bench.redoWords]).toEqual([
      demonstrationPlan.name,
      demonstrationPlan.name,
      'Rename',
    ]);
    const redoing = bench.redo();
    await engine.answerAll();
    await redoing;
    expect(bench.plan.name).toBe('Second');
  });

  it('shows a trial with what was before behind it, and drops it without a trace', async () => {
    bench.tryPlan('Try', named('Tried')(bench.plan));
    await engine.answerAll();
    expect([bench.season?.planName, bench.ghost?.planName, bench.plan.name, bench.shown.name]).toEqual([
      'Tried',
      demonstrationPlan.name,
      demonstrationPlan.name,
      'Tried',
    ]);
    bench.dropTrial();
    expect([bench.season?.planName, bench.ghost, bench.trial, bench.canUndo]).toEqual([
      demonstrationPlan.name,
      null,
      null,
      false,
    ]);
    expect(memory.versions).toHaveLength(1);
  });

  it('does not let the late answer of a dropped trial onto the sheet', async () => {
    bench.tryPlan('Try', named('Tried')(bench.plan));
    const late = engine.asked.shift();
    bench.dropTrial();
    await engine.answerAll();
    await late?.answer();
    expect(bench.season?.planName).toBe(demonstrationPlan.name);
  });

  it('keeps a trial as one change', async () => {
    for (const name of ['One', 'Two', 'Three']) bench.tryPlan(name, named(name)(bench.plan));
    bench.keepTrial();
    await engine.answerAll();
    expect([bench.plan.name, bench.season?.planName, bench.ghost, bench.undoWords]).toEqual([
      'Three',
      'Three',
      null,
      'Three',
    ]);
    expect(memory.versions.map((version) => version.plan.name)).toEqual([demonstrationPlan.name, 'Three']);
  });

  it('refuses a change that makes no plan, and says why', async () => {
    bench.update('Shrink', (plan) => ({ ...plan, places: [{ ...plan.places[0], growingArea: -1 }] }));
    expect(bench.plan).toBe(demonstrationPlan);
    expect(bench.error).toMatch(/Shrink: expected a number from .* got -1/);
    expect(memory.versions).toHaveLength(1);
  });

  it('takes back what the host refuses, and keeps what it could not write', async () => {
    memory.refuseWith(new HostError({ code: 'refused', message: 'Not like that.' }));
    bench.update('Rename', named('Refused'));
    await engine.answerAll();
    await engine.answerAll();
    expect([bench.plan.name, bench.error]).toEqual([demonstrationPlan.name, 'Not like that.']);
    memory.refuseWith(new HostError({ code: 'store', message: 'The disk is full.' }));
    bench.update('Rename', named('Unsaved'));
    await engine.answerAll();
    expect([bench.plan.name, bench.error]).toEqual(['Unsaved', 'The disk is full.']);
  });
});
