import { demonstrationPlan } from '../../../core/index.ts';
import type { Place, Plan } from '../../../core/index.ts';
import type { Bench } from '../../../renderer/state/bench.svelte.ts';

/** What forms need of the bench: a plan that changes and what the changes were called. */
class FormBench {
  plan: Plan = $state.raw(demonstrationPlan);
  readonly changes: string[] = [];
  readonly trial = null;
  readonly season = null;
  readonly units = { temperature: 'C', length: 'm' } as const;

  get shown(): Plan {
    return this.plan;
  }

  update(words: string, change: (plan: Plan) => Plan) {
    this.changes.push(words);
    this.plan = change(this.plan);
  }
}

/** A bench with the demonstration plan, one place of it changed for the test. */
export function formBench(placeId: string, part: Partial<Place> = {}) {
  const fake = new FormBench();
  const place = (): Place => {
    const found = fake.plan.places.find((each) => each.id === placeId);
    if (!found) throw new Error(`expected a place of the plan, got ${placeId}`);
    return found;
  };
  const changed = { ...place(), ...part };
  fake.plan = {
    ...fake.plan,
    places: fake.plan.places.map((each) => (each.id === placeId ? changed : each)),
  };
  return { bench: fake as unknown as Bench, changes: fake.changes, place };
}
