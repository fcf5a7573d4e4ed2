import { lampTechnologies } from '../../../core/index.ts';
import type { Lamp } from '../../../core/index.ts';
import { choice, named, number, plain, share } from '../../forms/fields.ts';
import type { Field } from '../../forms/fields.ts';
import { formatNumber } from '../../state/units.ts';
import { optionsFrom } from './choices.ts';

const technologies = lampTechnologies.map((each) => ({ value: each.id, name: each.name }));
const technologyOf = (id: string) => lampTechnologies.find((each) => each.id === id);

/** Another kind of lamp gives light as is typical of it. */
export function ofTechnology(id: string, lamp: Lamp): Partial<Lamp> {
  return { technology: id, efficacy: technologyOf(id)?.efficacy.typical ?? lamp.efficacy };
}

function soldWords(id: string): string {
  const efficacy = technologyOf(id)?.efficacy;
  return efficacy ? `sold with ${formatNumber(efficacy.low, 1)} to ${formatNumber(efficacy.high, 1)}` : '';
}

/** Rows of fields of a lamp, the everyday ones first. */
export function lampRows(lamp: Lamp): readonly (readonly Field<Lamp>[])[] {
  return [
    [named('name'), choice('technology', 'Kind', technologies)],
    [
      number('watts', 'At the plug, each', 'W', [0.5, 5000], { words: 'watts' }),
      number('count', 'How many', '', [1, 100], { integer: true, words: 'number' }),
      number('efficacy', 'Light for a watt', 'µmol/J', [0.05, 4.2], { hint: soldWords(lamp.technology) }),
      share('dimming', 'Dimmed to', [10, 100], { words: 'dimming' }),
    ],
    [
      plain('clock', 'on', 'On at', { words: 'on at another time' }),
      plain('clock', 'off', 'Off at', { words: 'off at another time' }),
      number('height', 'Over the plants', 'm', [0.02, 5], { words: 'height' }),
    ],
  ];
}

export function lampMore(currency: string): readonly Field<Lamp>[] {
  return [
    number('length', 'Length of its face', 'm', [0.01, 3]),
    number('width', 'Width of its face', 'm', [0.01, 3]),
    choice('driver', 'Driver or ballast', optionsFrom({ inside: 'inside the place', outside: 'outside it' })),
    number('price', 'Price of all', currency, [0, 100000], { words: 'price' }),
  ];
}
