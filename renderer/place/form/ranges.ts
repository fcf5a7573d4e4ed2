import type { ShapeKind, ShapeOf } from '../../../core/index.ts';
import { choice, number } from '../../forms/fields.ts';
import type { Field, NumberField } from '../../forms/fields.ts';
import { optionsFrom } from './choices.ts';

/** A size of a shape. What fields accept is what the plan's schema accepts (a test holds the two together). */
type Sizes = Record<string, number>;

const metres = (key: string, label: string, minimum: number, maximum: number): NumberField<Sizes> =>
  number(key, label, 'm', [minimum, maximum], {
    refuse: (value, sizes) => heightRefusal(sizes, key, value),
  });
const facing = (label: string): NumberField<Sizes> =>
  number('azimuth', label, '°', [0, 360], { hint: '0 north, 90 east, 180 south, 270 west' });

/** Sizes of each shape in the order a tape measure takes them. */
export const shapeFields: Record<ShapeKind, readonly NumberField<Sizes>[]> = {
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
    number('floorArea', 'Floor', 'm²', [0.01, 10000], {
      refuse: (value, sizes) => heightRefusal(sizes, 'floorArea', value),
    }),
    number('volume', 'Air inside', 'm³', [0.001, 100000], {
      refuse: (value, sizes) => heightRefusal(sizes, 'volume', value),
    }),
  ],
};

/** Where a window's plants begin and how deep its panes sit. */
export const windowFields: readonly NumberField<Sizes>[] = [
  number('distance', 'Plants begin, behind the panes', 'm', [0, 2.9], {
    words: 'distance of the plants',
    refuse: (value, sizes) => heightRefusal(sizes, 'distance', value),
  }),
  number('reveal', 'Panes sit back in the wall by', 'm', [0, 1], {
    words: 'reveal',
    hint: 'from the wall’s outer face; it shades the panes',
  }),
];

/** The wall behind a lean-to. */
export const wallFields: readonly Field<ShapeOf<'lean-to'>['wall']>[] = [
  choice(
    'material',
    'Wall',
    optionsFrom({ brick: 'Brick', stone: 'Stone', insulated: 'Insulated', timber: 'Timber' }),
  ),
  number('thickness', 'Thickness of the wall', 'm', [0.01, 1]),
  choice('behind', 'Behind the wall', optionsFrom({ room: 'A room', outdoors: 'The open air' })),
];

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

/** Mean height of air over a floor that the plan takes for a place [m]. */
const meanHeight = { least: 0.02, most: 30 };

/** Two heights that must stand in order, or air that must fit its floor; null where they do. */
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
  if ('volume' in after) {
    const height = after.volume / after.floorArea;
    if (!(height >= meanHeight.least)) return 'That is too little air for such a floor.';
    if (!(height <= meanHeight.most)) return 'That is too much air over such a floor.';
  }
  if ('distance' in after && !(after.distance < after.depth)) {
    return key === 'distance'
      ? 'The plants must begin before the back of the sill.'
      : 'The sill must reach behind where the plants begin.';
  }
  if ('backHeight' in after && !(after.backHeight >= after.frontHeight)) {
    return key === 'backHeight'
      ? 'The back must be at least as high as the front.'
      : 'The front must be no higher than the back.';
  }
  return null;
}
