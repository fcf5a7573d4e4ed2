import { lampTechnologies } from '../../../core/index.ts';
import type { Lamp, LampTechnology, Place } from '../../../core/index.ts';
import { choice, named, number, share } from '../../forms/fields.ts';
import type { Field } from '../../forms/fields.ts';
import { formatNumber } from '../../state/units.ts';
import { optionsFrom } from './choices.ts';

const technologies = lampTechnologies.map((each) => ({ value: each.id, name: each.name }));

export const technologyOf = (id: string): LampTechnology | undefined =>
  lampTechnologies.find((each) => each.id === id);

/** Another kind of lamp gives light as is typical of it. */
export function ofTechnology(id: string, lamp: Lamp): Partial<Lamp> {
  return { technology: id, efficacy: technologyOf(id)?.efficacy.typical ?? lamp.efficacy };
}

export const nameFields: readonly Field<Lamp>[] = [named('name'), choice('technology', 'Kind', technologies)];

const moreThanHalf = 'Half its light cannot take more watts than all of it.';

export const sizeFields: readonly Field<Lamp>[] = [
  number('watts', 'At the plug, each', 'W', [0.5, 5000], {
    words: 'watts',
    refuse: (watts, { wattsAtHalf }) => (wattsAtHalf === null || wattsAtHalf <= watts ? null : moreThanHalf),
  }),
  number('count', 'How many', '', [1, 100], { integer: true, words: 'number' }),
];

export const setFields: readonly Field<Lamp>[] = [
  number('height', 'Over the plants', 'm', [0.02, 5], { words: 'height' }),
  share('dimming', 'Dimmed to', [10, 100], { words: 'dimming' }),
];

/** Which plants it hangs over, where there are two levels of them. */
export const shelfFields = (place: Place | null): readonly Field<Lamp>[] => [
  choice('shelf', 'Hangs over', optionsFrom({ lower: 'the lower plants', upper: 'the upper shelf' }), {
    words: 'shelf',
    shown: (lamp) => lamp.shelf === 'upper' || (place !== null && place.upperShelf !== null),
  }),
];

const isRound = (lamp: Lamp) => lamp.arrangement === 'bulbs';

/** How the fittings lie over the area. */
export function layoutFields(place: Place | null): readonly Field<Lamp>[] {
  return [
    choice(
      'arrangement',
      'Laid out as',
      optionsFrom({ panel: 'panels in a grid', bars: 'bars side by side', bulbs: 'round bulbs in a grid' }),
      { words: 'layout' },
    ),
    number('length', 'Length of its face', 'm', [0.01, 3], { shown: (lamp) => !isRound(lamp) }),
    number('length', 'Across its face', 'm', [0.01, 3], { shown: isRound, words: 'size of its face' }),
    number('width', 'Width of its face', 'm', [0.01, 3], { shown: (lamp) => !isRound(lamp) }),
    aside('along', 'Off the middle, along', 'length', place),
    aside('across', 'Off the middle, across', 'width', place),
  ];
}

/** Away from the middle it stays within a closed place; beside a shelf or a sill it may hang in the room. */
function aside(key: 'along' | 'across', label: string, side: 'length' | 'width', place: Place | null) {
  return number<Lamp>(key, label, 'm', [-10, 10], {
    hint: key === 'along' ? 'all lamps of this entry together' : '',
    refuse: (value) => {
      const shape = place?.shape;
      if (shape === undefined || shape.kind === 'shelf' || shape.kind === 'window-bay') return null;
      if (shape.kind === 'listed' || Math.abs(value) <= shape[side] / 2 + 1e-9) return null;
      return `It would hang outside: the place ends ${formatNumber(shape[side] / 2, 2)} m off its middle.`;
    },
  });
}

const lifeHint = (lamp: Lamp) =>
  `leave empty for ${formatNumber(technologyOf(lamp.technology)?.life.value ?? 0)}, usual of its kind`;

export function ageFields(lamp: Lamp, currency: string): readonly Field<Lamp>[] {
  return [
    choice('driver', 'Driver or ballast', optionsFrom({ inside: 'inside the place', outside: 'outside it' })),
    number('wattsAtHalf', 'At half its light it takes', 'W', [0.1, 5000], {
      empty: true,
      words: 'watts at half its light',
      hint: 'measured at the plug; leave empty for what is usual of its kind',
      refuse: (half, { watts }) => (half <= watts ? null : moreThanHalf),
    }),
    number('burnt', 'Burnt so far', 'h', [0, 500000], { digits: 0, words: 'hours burnt' }),
    number('life', 'Replaced after', 'h', [100, 500000], {
      empty: true,
      digits: 0,
      words: 'life',
      hint: lifeHint(lamp),
    }),
    number('price', 'Price of all', currency, [0, 100000], { words: 'price' }),
  ];
}
