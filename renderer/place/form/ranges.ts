import type { ShapeKind } from '../../../core/index.ts';

/** What the fields of a place accept, as the plan's schema does (a test holds the two together). */
export interface FieldDescription {
  readonly key: string;
  readonly label: string;
  readonly unit: string;
  readonly minimum: number;
  readonly maximum: number;
}

const metres = (key: string, label: string, minimum: number, maximum: number): FieldDescription => ({
  key,
  label,
  unit: 'm',
  minimum,
  maximum,
});
const facing = (label: string): FieldDescription => ({
  key: 'azimuth',
  label,
  unit: '°',
  minimum: 0,
  maximum: 360,
});

/** Sizes of each shape in the order a tape measure takes them. */
export const shapeFields: Record<ShapeKind, readonly FieldDescription[]> = {
  'even-span': [
    metres('length', 'Length, along the ridge', 0.5, 60),
    metres('width', 'Width', 0.5, 20),
    metres('eavesHeight', 'Height at the eaves', 0.3, 6),
    metres('ridgeHeight', 'Height at the ridge', 0.5, 10),
    facing('One long side faces'),
  ],
  'lean-to': [
    metres('length', 'Length, along the wall', 0.5, 60),
    metres('width', 'Width, out from the wall', 0.4, 10),
    metres('eavesHeight', 'Height at the front', 0.3, 6),
    metres('ridgeHeight', 'Height at the wall', 0.5, 10),
    facing('Front faces'),
  ],
  tunnel: [
    metres('length', 'Length', 0.5, 100),
    metres('width', 'Width', 0.4, 12),
    metres('height', 'Height in the middle', 0.3, 6),
    facing('One long side faces'),
  ],
  'cold-frame': [
    metres('length', 'Length', 0.3, 10),
    metres('width', 'Width, front to back', 0.3, 3),
    metres('frontHeight', 'Height at the front', 0.05, 2),
    metres('backHeight', 'Height at the back', 0.05, 2),
    facing('Front faces'),
  ],
  tent: [
    metres('length', 'Length', 0.2, 10),
    metres('width', 'Width', 0.2, 10),
    metres('height', 'Height', 0.2, 4),
  ],
  shelf: [
    metres('length', 'Length', 0.2, 10),
    metres('width', 'Depth', 0.1, 3),
    metres('height', 'Height to the shelf above', 0.1, 3),
  ],
  'window-bay': [
    metres('width', 'Width of the panes', 0.2, 8),
    metres('height', 'Height of the panes', 0.2, 4),
    metres('depth', 'Depth of the sill', 0.1, 3),
    facing('Window faces'),
  ],
  listed: [
    { key: 'floorArea', label: 'Floor', unit: 'm²', minimum: 0.01, maximum: 10000 },
    { key: 'volume', label: 'Air inside', unit: 'm³', minimum: 0.001, maximum: 100000 },
  ],
};

export const shapeNames: Record<ShapeKind, string> = {
  'even-span': 'House with two equal slopes',
  'lean-to': 'Lean-to on a wall',
  tunnel: 'Polythene tunnel',
  'cold-frame': 'Cold frame',
  tent: 'Tent in a room',
  shelf: 'Open lit shelf',
  'window-bay': 'Window',
  listed: 'Surfaces listed by hand',
};

/** Two heights that must stand in order; null where they do. */
export function heightRefusal(
  shape: { readonly [key: string]: unknown },
  key: string,
  value: number,
): string | null {
  const after = { ...shape, [key]: value } as Record<string, number>;
  if ('ridgeHeight' in after && !(after.ridgeHeight > after.eavesHeight)) {
    return key === 'ridgeHeight'
      ? 'The ridge must stand above the eaves.'
      : 'The eaves must stay below the ridge.';
  }
  if ('backHeight' in after && !(after.backHeight >= after.frontHeight)) {
    return key === 'backHeight'
      ? 'The back must be at least as high as the front.'
      : 'The front must be no higher than the back.';
  }
  return null;
}
