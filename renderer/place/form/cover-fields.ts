import type { Place } from '../../../core/index.ts';
import { choice, number, plain, share } from '../../forms/fields.ts';
import type { Field } from '../../forms/fields.ts';
import { formatNumber } from '../../state/units.ts';
import { optionsFrom, shadySideOptions } from './choices.ts';

export const isOutside = (place: Place) => !['tent', 'shelf', 'window-bay'].includes(place.shape.kind);
const onGround = (place: Place) => place.floor !== 'raised';

export const floorField: Field<Place> = choice(
  'floor',
  'Floor',
  optionsFrom({
    soil: 'Soil',
    slab: 'Concrete or paving',
    'insulated-slab': 'Concrete on insulation',
    gravel: 'Gravel',
    raised: 'Off the ground',
  }),
);

/** The upright side at the back may be built like a wall; a lean-to has its wall, a tunnel no upright side. */
export const shadySideField: Field<Place> = choice(
  'shadySide',
  'Wall away from the sun',
  shadySideOptions(),
  { shown: (place) => ['even-span', 'cold-frame'].includes(place.shape.kind) },
);

export const surroundFields: readonly Field<Place>[] = [
  choice('ground', 'Soil underneath', optionsFrom({ dry: 'dry', moist: 'moist', wet: 'wet' }), {
    shown: onGround,
    words: 'soil underneath',
    hint: 'wet soil carries heat away faster',
  }),
  choice('snow', 'Snow on the roof', optionsFrom({ cleared: 'swept off', left: 'left to lie' }), {
    shown: isOutside,
  }),
];

export const lightShareFields: readonly Field<Place>[] = [
  share('frameShare', 'Frame and bars take', [0, 60], {
    hint: 'of the cover, and gutters too where none are given by their width',
  }),
  share('dirtShare', 'Dirt takes', [0, 60], {
    hint: 'of the light, at its dirtiest',
  }),
  plain('day', 'cleanedOn', 'Washed each year on', {
    empty: true,
    words: 'day it is washed',
    hint: 'dirt builds up again after it; leave empty for as dirty all year',
  }),
];

const metres = (value: number) => `${formatNumber(value, 2)} m`;

/** A gutter lies half over the roof and half over the side, and leaves something of both. */
function gutterRefusal(gutter: number, { shape }: Place): string | null {
  if (shape.kind !== 'even-span' && shape.kind !== 'lean-to') return 'Only a house with eaves has a gutter.';
  const level = shape.kind === 'even-span' ? shape.width / 2 : shape.width;
  const most = 2 * Math.min(shape.eavesHeight, Math.hypot(level, shape.ridgeHeight - shape.eavesHeight));
  return gutter < most
    ? null
    : `Half of it would cover the whole side or roof; give less than ${metres(most)}.`;
}

export const gutterField: Field<Place> = number(
  'gutter',
  'Width of the gutter at the eaves',
  'm',
  [0.01, 1],
  {
    empty: true,
    words: 'width of the gutter',
    hint: 'no light passes it; leave empty for none',
    shown: (place) => ['even-span', 'lean-to'].includes(place.shape.kind) || place.gutter !== null,
    refuse: gutterRefusal,
  },
);

type Bars = NonNullable<Place['bars']>;
export const barFields: readonly Field<Bars>[] = [
  number('spacing', 'Bars stand apart', 'm', [0.05, 10], { words: 'distance between bars' }),
  number('depth', 'They stand out', 'mm', [1, 500], {
    factor: 1000,
    words: 'depth of the bars',
    hint: 'from the pane; they shade slanting light',
  }),
];

/** Light metal bars for panes of 60 cm (common practice, no source). */
export const firstBars: Bars = { spacing: 0.6, depth: 0.04 };

type Edge = NonNullable<Place['edgeInsulation']>;
export const edgeFields: readonly Field<Edge>[] = [
  number('thickness', 'Thickness of the boards', 'm', [0.01, 0.3]),
  number('depth', 'They go down', 'm', [0.1, 2]),
];
export const hasEdge = (place: Place) => isOutside(place) && onGround(place);

/** Boards of 5 cm half a metre deep (common practice, no source). */
export const firstEdge: Edge = { thickness: 0.05, depth: 0.5 };

export const standFields: readonly Field<Place>[] = [
  number('growingArea', 'Area plants stand on', 'm²', [0.01, 10000], { words: 'growing area' }),
  choice(
    'standing',
    'Plants stand',
    [
      { value: '', name: 'as is usual in such a place' },
      { value: 'bench', name: 'on a bench or shelf' },
      { value: 'ground', name: 'on the ground' },
    ],
    { words: 'what plants stand on' },
  ),
  number('potMass', 'Pots and mix, moist', 'kg/m²', [0, 400], {
    hint: 'small pots 20 to 30, big tubs 80',
    words: 'weight of pots',
  }),
];
