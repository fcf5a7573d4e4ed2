import type { Circulation, Door, Fan, Place, Vent } from '../../../core/index.ts';
import { choice, number, plain, share } from '../../forms/fields.ts';
import type { Field } from '../../forms/fields.ts';
import { optionsFrom } from './choices.ts';

export const ventFields: readonly Field<Vent>[] = [
  choice('position', 'Where', optionsFrom({ roof: 'in the roof', side: 'in a side', end: 'in an end' })),
  number('area', 'Opening, fully open', 'm²', [0.001, 100]),
  number('height', 'Height between low and high opening', 'm', [0.05, 5]),
  number('openAt', 'Begins to open at', '°C', [-60, 50], { hint: '−60 stands open always' }),
  number('band', 'Fully open after another', 'K', [0.5, 20]),
];

/** A room can only be drawn from where there is one; what stands in the plan stays in the list. */
export function fanFields(place: Place): readonly Field<Fan>[] {
  const sources = {
    around: 'from around the place',
    room: 'from the room',
    outdoors: 'from outdoors',
  };
  const options = optionsFrom(sources).filter(
    ({ value }) => value !== 'room' || place.room !== null || place.fan?.draws === 'room',
  );
  return [
    number('flow', 'Air moved', 'm³/h', [1, 50000]),
    number('watts', 'Electricity', 'W', [0, 5000]),
    number('onAt', 'Begins at', '°C', [-10, 60]),
    number('band', 'Full speed after another', 'K', [0.5, 20]),
    share('leastSpeed', 'Never slower than', [0, 100], { hint: 'of full speed; 0 lets it stop' }),
    choice('draws', 'Its air comes', options, { words: 'where the fan’s air comes from' }),
  ];
}

/** A first fan: 100 m³ an hour from 28 °C (common practice, no source). */
export const firstFan: Fan = { flow: 100, watts: 6, onAt: 28, band: 3, leastSpeed: 0, draws: 'around' };

export const circulationFields: readonly Field<Circulation>[] = [
  number('watts', 'Electricity', 'W', [0, 2000]),
  number('airSpeed', 'Air moves among the plants at', 'm/s', [0.05, 3], {
    hint: '0.3 just stirs a leaf, 1 is a breeze',
  }),
  choice('runs', 'Runs', optionsFrom({ always: 'day and night', day: 'by day', night: 'by night' })),
];

/** A small desk fan on its lowest speed (common practice, no source). */
export const firstCirculation: Circulation = { watts: 20, airSpeed: 0.3, runs: 'always' };

export const doorFields: readonly Field<Door>[] = [
  number('area', 'Opening of the door', 'm²', [0.01, 50]),
  number('height', 'Height of the door', 'm', [0.1, 5]),
  plain('clock', 'from', 'Open from'),
  plain('clock', 'to', 'Open to'),
  number('above', 'Only when warmer outdoors than', '°C', [-30, 40], {
    empty: true,
    hint: 'leave empty for any weather',
  }),
];

/** A door 0.7 m by 1.9 m, or as fits the place, open over midday in mild weather (common practice, no source). */
export function firstDoor(tall: number): Door {
  const height = Math.max(0.1, Math.min(1.9, Number((0.8 * tall).toFixed(2))));
  return { area: Number((0.7 * height).toFixed(2)), height, from: '11:00', to: '15:00', above: 8 };
}
