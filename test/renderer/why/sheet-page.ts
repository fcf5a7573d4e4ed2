import { flushSync, mount, unmount } from 'svelte';
import { demonstrationPlan, runSeason, weatherFromPlan } from '../../../core/index.ts';
import type { Certainty, Plan } from '../../../core/index.ts';
import type { Host, PlanDocument } from '../../../electron/contract.ts';
import { Bench } from '../../../renderer/state/bench.svelte.ts';
import type { Engine } from '../../../renderer/state/engine.ts';
import SheetOnBench from './SheetOnBench.svelte';

/** The lean-to of the demonstration with what stands in it, also what is only carried in for the winter. */
export const leanToPlan: Plan = {
  ...demonstrationPlan,
  places: demonstrationPlan.places.filter((place) => place.id === 'lean-to'),
  lots: demonstrationPlan.lots.filter(
    (lot) => lot.place === 'lean-to' || lot.moves.some((move) => move.to === 'lean-to'),
  ),
};
const weather = weatherFromPlan(leanToPlan);
if (weather === null) throw new Error('expected the demonstration plan to carry monthly normals');
export const season = runSeason(leanToPlan, weather);

/** How a run of an engine's certainty was asked for, and the ways to answer it. */
export interface AskedCertainty {
  readonly plan: Plan;
  readonly grow: (certainty: Certainty) => void;
  readonly signal: AbortSignal;
  readonly answer: (certainty: Certainty) => void;
}

function bench() {
  const asked: AskedCertainty[] = [];
  const engine = {
    season: () => Promise.resolve(season),
    certainty: (plan: Plan, grow: AskedCertainty['grow'], signal: AbortSignal) =>
      new Promise<Certainty>((answer) => asked.push({ plan, grow, signal, answer })),
  };
  const document: PlanDocument = {
    id: 'plan',
    plan: leanToPlan,
    revision: 0,
    canUndo: false,
    canRedo: false,
    undoWords: null,
    redoWords: null,
  };
  const preferences = { theme: 'light', temperature: 'C', length: 'm' };
  const host = {
    start: () => Promise.resolve({ openPlanId: 'plan', firstStart: false, notice: null, preferences }),
    readPlan: () => Promise.resolve(document),
    savePlan: () => Promise.resolve(document),
  };
  return { bench: new Bench(host as unknown as Host, engine as unknown as Engine), asked };
}

/** Left edge of the plots on a sheet of no measured width: edge, lead, gap and scale figures [px]; and their width. */
const plotLeft = 16 + 124 + 8 + 34;
export const plotWidth = 260;

/** The winter sheet as a user meets it. */
export async function openSheet() {
  const { bench: given, asked } = bench();
  await given.open();
  const app = mount(SheetOnBench, { target: document.body, props: { bench: given } });
  flushSync();

  function found<E extends Element>(selector: string, what: string, root: ParentNode = document): E {
    const element = root.querySelector<E>(selector);
    if (!element) throw new Error(`expected ${what}, got none`);
    return element;
  }
  const named = (name: string) => {
    const all = [...document.querySelectorAll<HTMLButtonElement>('button')];
    const button = all.find((each) => (each.getAttribute('aria-label') ?? each.textContent?.trim()) === name);
    if (!button)
      throw new Error(
        `expected a button ${name}, got ${all.map((each) => each.textContent?.trim()).join(' | ')}`,
      );
    return button;
  };

  return {
    bench: given,
    asked,
    found,
    named,
    ribbon: (placeId: string, lotId: string) =>
      found<SVGGElement>(
        `[data-place="${placeId}"] [data-lot="${lotId}"]`,
        `a ribbon of ${lotId} in ${placeId}`,
      ),
    /** A press and a click of the pointer in the middle of a day. */
    clickDay(ribbon: Element, day: number) {
      const at = { bubbles: true, clientX: plotLeft + ((day + 0.5) / 365) * plotWidth, clientY: 0 };
      const target = found('.reach', 'the ribbon’s reach', ribbon);
      target.dispatchEvent(new PointerEvent('pointerdown', { ...at, button: 0 }));
      target.dispatchEvent(new MouseEvent('click', at));
      flushSync();
    },
    press(name: string) {
      named(name).click();
      flushSync();
    },
    panel: () => document.querySelector<HTMLElement>('section.why'),
    heading: () => document.querySelector('#why-heading')?.textContent?.replace(/\s+/g, ' ').trim() ?? '',
    close: () => unmount(app),
  };
}
