import { holdsAtNoTime } from '../../../core/index.ts';
import type { Fleece, Place, Screen, SecondSkin, ShadeCloth, Sheer } from '../../../core/index.ts';
import { choice, number, plain } from '../../forms/fields.ts';
import type { Field } from '../../forms/fields.ts';
import { optionsFrom } from './choices.ts';

export const secondSkinFields: readonly Field<SecondSkin>[] = [
  number('gap', 'Air between it and the cover', 'm', [0.003, 0.5]),
];

/** A film a hand's breadth inside the cover (common practice, no source). */
export const firstSecondSkin = (covering: string): SecondSkin => ({ covering, gap: 0.05 });

const noTime = 'It would be drawn at no time. A whole day is 0:00 to 24:00.';

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
  plain('clock', 'from', 'Drawn from', {
    shown: (screen) => screen.closedWhen === 'hours',
    refuse: (from, { to }) => (holdsAtNoTime(from, to) ? noTime : null),
  }),
  plain('clock', 'to', 'Drawn to', {
    shown: (screen) => screen.closedWhen === 'hours',
    refuse: (to, { from }) => (holdsAtNoTime(from, to) ? noTime : null),
  }),
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

const noDay = 'It would shade on no day. All year is 1 January to 31 December.';
export const shadeFields: readonly Field<ShadeCloth>[] = [
  plain('day', 'from', 'Laid on', { refuse: (from, { to }) => (from === to ? noDay : null) }),
  plain('day', 'to', 'Taken off on', { refuse: (to, { from }) => (from === to ? noDay : null) }),
];

/** Over the bright half of the year of the hemisphere (common practice, no source). */
export const firstShade = (covering: string, latitude: number): ShadeCloth =>
  latitude >= 0 ? { covering, from: '05-01', to: '09-01' } : { covering, from: '11-01', to: '03-01' };

export const sheerFields: readonly Field<Sheer>[] = [
  plain('clock', 'from', 'Drawn from', {
    refuse: (from, { to }) => (holdsAtNoTime(from, to) ? noTime : null),
    hint: '0:00 to 24:00 for always',
  }),
  plain('clock', 'to', 'Drawn to', {
    refuse: (to, { from }) => (holdsAtNoTime(from, to) ? noTime : null),
  }),
];

/** Sheer curtains mostly stay drawn (common practice, no source). */
export const firstSheer = (covering: string): Sheer => ({ covering, from: '00:00', to: '24:00' });

type BaseWall = NonNullable<Place['baseWall']>;
export const baseWallFields: readonly Field<BaseWall>[] = [
  number('height', 'Height of the base wall', 'm', [0.05, 3], { words: 'height' }),
];

/** Half a metre of wall, which is two or three courses of block (common practice, no source). */
export const firstBaseWall = (covering: string): BaseWall => ({ height: 0.5, covering });
