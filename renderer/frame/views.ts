import type { ViewId } from '../state/bench.svelte.ts';

/** The views in the order of the bar; the number key of each is its place in it. */
export const views: readonly { readonly id: ViewId; readonly name: string }[] = [
  { id: 'sheet', name: 'Winter sheet' },
  { id: 'calendar', name: 'Calendar' },
  { id: 'tonight', name: 'Tonight' },
  { id: 'place', name: 'Places' },
  { id: 'lamps', name: 'Lamps' },
  { id: 'ways', name: 'What would it take' },
  { id: 'plants', name: 'Plants' },
  { id: 'site', name: 'Site and weather' },
  { id: 'meters', name: 'Light meter' },
];
