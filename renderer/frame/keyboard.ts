import { outdoors } from '../../core/index.ts';
import { firstDayOf, weekOf, weeksInSeason } from '../sheet/time.ts';
import type { Bench } from '../state/bench.svelte.ts';
import { views } from './views.ts';

/** What the keys do, as the help says it. */
export const keys: readonly { readonly keys: string; readonly does: string }[] = [
  { keys: '← →', does: 'Move the cursor a week back or on (on the winter sheet)' },
  { keys: '↑ ↓', does: 'Select the place above or below, last the open air (on the winter sheet)' },
  {
    keys: `1 to ${views.length}`,
    does: views.map((view) => view.name).join(', '),
  },
  { keys: 'Ctrl Z', does: 'Undo; drops a change being tried' },
  { keys: 'Ctrl Shift Z', does: 'Redo' },
  { keys: 'Enter', does: 'Keep the change being tried (with the focus outside fields)' },
  {
    keys: 'Enter on a plant',
    does: 'Why it does what it does that week (on its name on the winter sheet, reached with Tab)',
  },
  { keys: 'Esc', does: 'Drop the change being tried, or close a window' },
  { keys: '?', does: 'These keys' },
];

/** Fields, sliders and open windows keep their own keys. */
function takesKeys(target: EventTarget | null): boolean {
  if (!(target instanceof Element)) return false;
  return target.closest('input, select, textarea, dialog, [contenteditable="true"]') !== null;
}

function moveCursor(bench: Bench, weeks: number) {
  const week = Math.min(weeksInSeason - 1, Math.max(0, weekOf(bench.cursorDay) + weeks));
  bench.cursorDay = firstDayOf(week) + 3;
}

/** The bands of the sheet from top to bottom: the places, then the open air where anything ever stands in it. */
function bands(bench: Bench): string[] {
  const places = bench.shown.places.map((place) => place.id);
  return bench.season?.outdoors.lots.length ? [...places, outdoors] : places;
}

function movePlace(bench: Bench, by: number) {
  const ids = bands(bench);
  const at = ids.findIndex((id) => id === bench.placeId);
  const next = ids[Math.min(ids.length - 1, Math.max(0, at + by))];
  if (next !== undefined) bench.placeId = next;
}

function onSheet(bench: Bench, key: string): boolean {
  if (key === 'ArrowLeft') moveCursor(bench, -1);
  else if (key === 'ArrowRight') moveCursor(bench, 1);
  else if (key === 'ArrowUp') movePlace(bench, -1);
  else if (key === 'ArrowDown') movePlace(bench, 1);
  else return false;
  return true;
}

/** Acts on a key where it means something; says whether it did, so that the page does not scroll as well. */
function act(bench: Bench, event: KeyboardEvent, showKeys: () => void): boolean {
  if (event.ctrlKey || event.metaKey) {
    if (event.key.toLowerCase() !== 'z') return false;
    void (event.shiftKey ? bench.redo() : bench.undo());
    return true;
  }
  if (event.altKey) return false;
  if (event.key === '?') showKeys();
  else if (event.key === 'Escape' && bench.trial) bench.dropTrial();
  else if (event.key === 'Enter' && bench.trial && event.target === document.body) bench.keepTrial();
  else if (/^[1-9]$/.test(event.key) && views[Number(event.key) - 1])
    bench.show(views[Number(event.key) - 1].id);
  else return bench.view === 'sheet' && onSheet(bench, event.key);
  return true;
}

export function handleKey(bench: Bench, event: KeyboardEvent, showKeys: () => void) {
  if (!bench.ready || event.defaultPrevented) return;
  const undoing = (event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'z';
  const typing = event.target instanceof HTMLInputElement && event.target.type !== 'range';
  if (takesKeys(event.target) && !(undoing && !typing)) return;
  if (act(bench, event, showKeys)) event.preventDefault();
}
