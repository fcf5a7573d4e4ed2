import { flushSync, mount, unmount } from 'svelte';
import { demonstrationPlan, parsePlan } from '../../../core/index.ts';
import type { GroupRank, PlaceRank, Plan, SeasonResult, WinterFit } from '../../../core/index.ts';
import type { Bench, Selection, ViewId } from '../../../renderer/state/bench.svelte.ts';
import OnPlants from './OnPlants.svelte';

/** A winter somewhere, as a ranking gives it. */
export const fit = (part: Partial<WinterFit> = {}): WinterFit => ({
  stateDays: [30, 0, 152, 0, 0, 0, 0],
  leastLeaf: 3,
  sparedKelvin: 2,
  light: 6,
  harms: [],
  score: 0.8,
  verdict: 'well',
  words: 'Rests safely.',
  ...part,
});

/** What the Plants view needs of the bench: a plan that changes, its season, an engine that ranks as the test says. */
export class PlantsBench {
  plan: Plan = $state.raw(demonstrationPlan);
  season: SeasonResult | null = $state.raw(null);
  readonly changes: string[] = $state([]);
  readonly shownViews: [ViewId, Selection | undefined][] = [];
  readonly asked: string[] = [];
  readonly trial = null;
  readonly units = { temperature: 'C', length: 'm' } as const;
  readonly lot = null;
  readonly lotId = null;
  placeId: string | null = null;
  placeRanks: PlaceRank[] = [];
  groupRanks: GroupRank[] = [];
  undone = 0;

  readonly engine = {
    rankPlaces: (_plan: Plan, groupId: string) => {
      this.asked.push(`places of ${groupId}`);
      return Promise.resolve(this.placeRanks);
    },
    rankGroups: (_plan: Plan, placeId: string) => {
      this.asked.push(`groups in ${placeId}`);
      return Promise.resolve(this.groupRanks);
    },
  };

  get shown(): Plan {
    return this.plan;
  }
  get undoWords(): string | null {
    return this.changes.at(-1) ?? null;
  }
  update(words: string, change: (plan: Plan) => Plan) {
    const reading = parsePlan(change(this.plan));
    if (!reading.ok) throw new Error(reading.problems[0].message);
    this.changes.push(words);
    this.plan = reading.plan;
  }
  undo() {
    this.undone += 1;
  }
  show(view: ViewId, selection?: Selection) {
    this.shownViews.push([view, selection]);
  }
}

/** Lets answers of the engine arrive and the page follow. */
export async function settle() {
  for (let i = 0; i < 5; i += 1) {
    flushSync();
    await new Promise((done) => setTimeout(done));
  }
}

/** The Plants view as a user meets it. */
export async function openPlants(fake: PlantsBench) {
  const app = mount(OnPlants, { target: document.body, props: { bench: fake as unknown as Bench } });
  await settle();
  const said = (element: Element) => element.textContent?.replaceAll(/\s+/g, ' ').trim() ?? '';
  const buttons = () => [...document.querySelectorAll('button')];
  const all = (selector: string) => [...document.querySelectorAll(selector)].map(said);
  return {
    text: () => said(document.body),
    all,
    buttons: () => buttons().map(said),
    async press(name: string | RegExp) {
      const found = buttons().find((each) =>
        typeof name === 'string' ? said(each) === name : name.test(said(each)),
      );
      if (!found) throw new Error(`expected a button ${name}, got ${buttons().map(said).join(' | ')}`);
      found.click();
      await settle();
    },
    async tick(name: string) {
      const label = [...document.querySelectorAll('label')].find((each) => said(each).startsWith(name));
      const box = label?.querySelector('input');
      if (!box) throw new Error(`expected a tick ${name}, got ${all('label').join(' | ')}`);
      box.click();
      await settle();
    },
    async type(label: string, text: string) {
      const input = [...document.querySelectorAll<HTMLInputElement>('input')].find(
        (each) =>
          (each.getAttribute('aria-label') ?? '').startsWith(label) ||
          document.querySelector(`label[for="${each.id}"]`)?.textContent === label,
      );
      if (!input) throw new Error(`expected a field ${label}`);
      input.value = text;
      input.dispatchEvent(new Event('input', { bubbles: true }));
      input.dispatchEvent(new Event('blur'));
      await settle();
    },
    async choose(label: string, value: string) {
      const select = document.querySelector<HTMLSelectElement>(`select[aria-label^="${label}"]`);
      if (!select) throw new Error(`expected a list ${label}`);
      select.value = value;
      select.dispatchEvent(new Event('change', { bubbles: true }));
      await settle();
    },
    close: () => unmount(app),
  };
}
