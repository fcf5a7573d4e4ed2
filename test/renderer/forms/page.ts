import { flushSync, mount, unmount } from 'svelte';
import type { Place } from '../../../core/index.ts';
import { formBench } from './bench.svelte.ts';
import OnBench from './OnBench.svelte';

/** The form of a place as a user meets it: fields by label, buttons by name. */
export function openForm(placeId: string, part: Partial<Place> = {}, site = false) {
  const { bench, changes, place } = formBench(placeId, part);
  const app = mount(OnBench, { target: document.body, props: { bench, placeId: site ? null : placeId } });
  flushSync();

  /** Fields so labelled within `root`, in the order they stand. */
  function fields(label: string, root: ParentNode = document): HTMLInputElement[] {
    const named = [...root.querySelectorAll('label')]
      .filter((each) => each.textContent?.trim() === label)
      .map((each) => (each.htmlFor ? document.getElementById(each.htmlFor) : each.querySelector('input')))
      .filter((each): each is HTMLInputElement => each !== null);
    return [...named, ...root.querySelectorAll<HTMLInputElement>(`input[aria-label="${label}"]`)];
  }

  function field(label: string, root: ParentNode = document): HTMLInputElement {
    const [found] = fields(label, root);
    if (!found) throw new Error(`expected a field ${label}, got ${labels(root).join(' | ')}`);
    return found;
  }

  const labels = (root: ParentNode = document) =>
    [...root.querySelectorAll('label')].map((each) => each.textContent?.trim() ?? '');

  return {
    changes,
    place,
    plan: () => bench.plan,
    field,
    fields,
    has: (label: string) => fields(label).length > 0,
    text: () => document.body.textContent ?? '',
    alerts: () => [...document.querySelectorAll('[role="alert"]')].map((each) => each.textContent ?? ''),
    thing(name: string): HTMLElement {
      const found = document.querySelector<HTMLElement>(`[role="group"][aria-label="${name}"]`);
      if (!found) throw new Error(`expected a thing called ${name}, got none`);
      return found;
    },
    type(label: string, text: string, root?: ParentNode) {
      const input = field(label, root);
      input.value = text;
      input.dispatchEvent(new Event('input', { bubbles: true }));
      input.dispatchEvent(new Event('blur'));
      flushSync();
    },
    choose(label: string, value: string, root?: ParentNode) {
      const select = field(label, root);
      select.value = value;
      select.dispatchEvent(new Event('change', { bubbles: true }));
      flushSync();
    },
    tick(label: string, root?: ParentNode) {
      field(label, root).click();
      flushSync();
    },
    press(name: string) {
      const found = [...document.querySelectorAll('button')].find(
        (each) => each.textContent?.trim() === name,
      );
      if (!found) throw new Error(`expected a button ${name}, got none`);
      found.click();
      flushSync();
    },
    close: () => unmount(app),
  };
}
