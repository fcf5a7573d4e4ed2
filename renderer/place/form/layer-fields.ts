import type { Fleece, Place, Screen, SecondSkin } from '../../../core/index.ts';
import { choice, number, plain } from '../../forms/fields.ts';
import type { Field } from '../../forms/fields.ts';
import { optionsFrom } from './choices.ts';

export const secondSkinFields: readonly Field<SecondSkin>[] = [
  number('gap', 'Air between it and the cover', 'm', [0.003, 0.5]),
];

/** A film a hand's breadth inside the cover (common practice, no source). */
export const firstSecondSkin = (covering: string): SecondSkin => ({ covering, gap: 0.05 });

/** A screen inside the cover and a curtain before a room are drawn by the same rules. */
export const screenFields: readonly Field<Screen>[] = [
  choice(
    'closedWhen',
    'Drawn',
    optionsFrom({
      night: 'every night, dusk to dawn',
      'cold-night': 'on cold nights',
      hours: 'by the clock',
    }),
    { words: 'when it is drawn' },
  ),
  number('below', 'When colder outdoors than', '°C', [-30, 30], {
    shown: (screen) => screen.closedWhen === 'cold-night',
  }),
  plain('clock', 'from', 'Drawn from', { shown: (screen) => screen.closedWhen === 'hours' }),
  plain('clock', 'to', 'Drawn to', { shown: (screen) => screen.closedWhen === 'hours' }),
];

export const fleeceFields: readonly Field<Fleece>[] = [
  number('layers', 'Layers', '', [1, 4], { integer: true }),
  choice(
    'hangs',
    'Over a bench it hangs',
    optionsFrom({ floor: 'down to the floor', bench: 'to the bench' }),
    {
      words: 'how far it hangs',
    },
  ),
  choice(
    'laidWhen',
    'Laid',
    optionsFrom({ 'cold-night': 'on cold nights', night: 'every night', always: 'all winter' }),
    { words: 'when it is laid' },
  ),
  number('below', 'When colder outdoors than', '°C', [-30, 15], {
    shown: (fleece) => fleece.laidWhen === 'cold-night',
  }),
];

export const firstFleece = (covering: string): Fleece => ({
  covering,
  layers: 1,
  hangs: 'floor',
  laidWhen: 'cold-night',
  below: 2,
});

type BaseWall = NonNullable<Place['baseWall']>;
export const baseWallFields: readonly Field<BaseWall>[] = [
  number('height', 'Height of the base wall', 'm', [0.05, 3], { words: 'height' }),
];

/** Half a metre of wall, which is two or three courses of block (common practice, no source). */
export const firstBaseWall = (covering: string): BaseWall => ({ height: 0.5, covering });
