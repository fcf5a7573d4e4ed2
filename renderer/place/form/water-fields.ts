import { waterOf } from '../../../core/index.ts';
import type { WaterStore } from '../../../core/index.ts';
import { choice, named, number } from '../../forms/fields.ts';
import type { Field } from '../../forms/fields.ts';
import { optionsFrom } from './choices.ts';

export const waterFields: readonly Field<WaterStore>[] = [
  named('name'),
  choice(
    'form',
    'Form',
    optionsFrom({ drum: 'drum or barrel', canister: 'canister', bottle: 'bottle', trough: 'open trough' }),
    { hint: 'small things give their heat faster' },
  ),
  number('litres', 'Holds, each', 'litres', [0.1, 5000], { words: 'litres' }),
  number('count', 'How many', '', [1, 500], { integer: true, words: 'number' }),
];

/** A barrel of 100 litres (common practice, no source). */
export const firstWater = waterOf({ name: 'Barrel', litres: 100, count: 1, form: 'drum' });
