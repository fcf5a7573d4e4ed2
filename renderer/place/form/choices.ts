import { coveringsFor } from '../../../core/index.ts';
import type { CoveringUse, Heater, ShapeKind } from '../../../core/index.ts';
import type { Option } from '../../forms/option.ts';

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
export const secondSkinOptions = (): Option[] => [none, ...optionsOf('film'), ...optionsOf('glazing')];
export const screenOptions = (): Option[] => [none, ...optionsOf('screen')];
export const shadeOptions = (): Option[] => [none, ...optionsOf('shade')];
export const sheerOptions = (): Option[] => [none, ...optionsOf('sheer')];
export const fleeceOptions = (): Option[] => [none, ...optionsOf('fleece')];
export const wallOptions = (): Option[] => [none, ...optionsOf('wall')];
export const shadySideOptions = (): Option[] => [
  { value: '', name: 'Same as the rest' },
  ...optionsOf('wall'),
];

/** Options in the order they are written. */
export const optionsFrom = (names: Record<string, string>): Option[] =>
  Object.entries(names).map(([value, name]) => ({ value, name }));

export const heaterNames: Record<Heater['kind'], string> = {
  fan: 'Fan heater',
  tubular: 'Tube heater',
  'oil-filled': 'Oil-filled radiator',
  propane: 'Propane heater',
  paraffin: 'Paraffin heater',
  'heat-mat': 'Heat mat',
  'heat-pump': 'Heat pump',
};
export const heaterOptions = optionsFrom(heaterNames);

/** Least and most heat at full output [W] that is sold for a garden's places (common practice, no source). */
const sold: Record<Exclude<Heater['kind'], 'heat-mat'>, readonly [number, number]> = {
  fan: [300, 3000],
  tubular: [100, 500],
  'oil-filled': [300, 3000],
  propane: [1500, 8000],
  paraffin: [300, 3000],
  'heat-pump': [2000, 8000],
};

/**
 * Usual heat at full output [W] of a first heater: an even 100 W a square metre of floor for air heaters, the mat
 * 150 W a square metre of plants, within what is sold (common practice, no source).
 */
export function usualHeaterPower(kind: Heater['kind'], floorArea: number, growingArea: number): number {
  if (kind === 'heat-mat') return Math.max(20, Math.round((150 * growingArea) / 10) * 10);
  const [least, most] = sold[kind];
  return Math.min(most, Math.max(least, Math.round((100 * floorArea) / 100) * 100));
}
