import { coveringsFor } from '../../../core/index.ts';
import type { CoveringUse, Heater, ShapeKind } from '../../../core/index.ts';

export interface Option {
  readonly value: string;
  readonly name: string;
}

/** What a shape is covered with, the usual first. */
const coverUses: Record<ShapeKind, readonly CoveringUse[]> = {
  'even-span': ['glazing', 'film'],
  'lean-to': ['glazing', 'film'],
  tunnel: ['film', 'glazing'],
  'cold-frame': ['glazing', 'film'],
  tent: ['fabric', 'film'],
  shelf: ['open'],
  'window-bay': ['glazing'],
  listed: ['glazing', 'film', 'fabric', 'wall'],
};

const optionsOf = (...uses: CoveringUse[]): Option[] =>
  coveringsFor(...uses).map((each) => ({ value: each.id, name: each.name }));

/** Coverings to choose from; one that stands in the plan already is kept in the list. */
export function coverOptions(kind: ShapeKind, current: string): Option[] {
  const options = coverUses[kind].flatMap((use) => optionsOf(use));
  if (options.some((option) => option.value === current)) return options;
  return [
    ...options,
    ...coveringsFor('glazing', 'film', 'fabric', 'wall', 'open')
      .filter((each) => each.id === current)
      .map((each) => ({ value: each.id, name: each.name })),
  ];
}

const none: Option = { value: '', name: 'None' };
export const liningOptions = (): Option[] => [none, ...optionsOf('lining')];
export const screenOptions = (): Option[] => [none, ...optionsOf('screen')];
export const fleeceOptions = (): Option[] => [none, ...optionsOf('fleece')];
export const wallOptions = (): Option[] => [none, ...optionsOf('wall')];

export const floorOptions: readonly Option[] = [
  { value: 'soil', name: 'Soil' },
  { value: 'slab', name: 'Concrete or paving' },
  { value: 'gravel', name: 'Gravel' },
  { value: 'raised', name: 'Off the ground' },
];

export const heaterNames: Record<Heater['kind'], string> = {
  fan: 'Fan heater',
  tubular: 'Tube heater',
  'oil-filled': 'Oil-filled radiator',
  propane: 'Propane heater',
  paraffin: 'Paraffin heater',
  'heat-mat': 'Heat mat',
};
export const heaterOptions: readonly Option[] = Object.entries(heaterNames).map(([value, name]) => ({
  value,
  name,
}));

/**
 * Usual heat at full output [W] of a first heater: an even 100 W a square metre of floor for air heaters, the mat
 * 150 W a square metre of plants, within what is sold (common practice, no source).
 */
export function usualHeaterPower(kind: Heater['kind'], floorArea: number, growingArea: number): number {
  if (kind === 'heat-mat') return Math.max(20, Math.round((150 * growingArea) / 10) * 10);
  const wanted = Math.round((100 * floorArea) / 100) * 100;
  return Math.min(kind === 'tubular' ? 500 : 3000, Math.max(kind === 'tubular' ? 100 : 300, wanted));
}
