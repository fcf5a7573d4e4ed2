import { surfacesOf } from '../../../core/index.ts';
import type { Place, UpperShelf } from '../../../core/index.ts';
import { choice, number } from '../../forms/fields.ts';
import type { Field } from '../../forms/fields.ts';
import { formatNumber } from '../../state/units.ts';
import { optionsFrom } from './choices.ts';

/** What a place has room for [m]; a list of surfaces only as its floor and mean height tell. */
function roomOf(place: Place): { length: number; width: number; height: number; open: boolean } {
  const { shape } = place;
  const { length, width, volume, floorArea } = surfacesOf(place);
  const open = shape.kind === 'shelf' || shape.kind === 'window-bay';
  if ('ridgeHeight' in shape) return { length, width, height: shape.ridgeHeight, open };
  if ('backHeight' in shape) return { length, width, height: shape.backHeight, open };
  if ('height' in shape) return { length, width, height: shape.height, open };
  return { length, width, height: volume / floorArea, open };
}

const metres = (value: number) => `${formatNumber(value, 2)} m`;

/** The upper shelf within its place, with room left to grow below it. */
export function upperShelfFields(place: Place): readonly Field<UpperShelf>[] {
  const room = roomOf(place);
  const listed = place.shape.kind === 'listed';
  const within = (key: 'length' | 'width', value: number, shelf: UpperShelf): string | null => {
    if (!listed && value > room[key] + 1e-6)
      return `The place is only ${metres(room[key])} ${key === 'length' ? 'long' : 'wide'}.`;
    const area = value * (key === 'length' ? shelf.width : shelf.length);
    if (area < place.growingArea) return null;
    return `The upper shelf would take all ${formatNumber(place.growingArea, 2)} m² that plants stand on; both levels count in it.`;
  };
  const under = (top: number): string | null =>
    listed || top <= room.height + 1e-6 ? null : `The place is only ${metres(room.height)} high.`;
  return [
    number('height', 'Boards over the plants below', 'm', [0.05, 4], {
      words: 'height of the upper shelf',
      refuse: (height, { plants }) => under(room.open ? height : height + plants),
    }),
    number('plants', 'Height of its own plants', 'm', [0.01, 2], {
      words: 'height of plants on the upper shelf',
      refuse: (plants, { height }) => (room.open ? null : under(height + plants)),
    }),
    number('length', 'Length of the boards', 'm', [0.05, 60], {
      refuse: (value, shelf) => within('length', value, shelf),
    }),
    number('width', 'Width of the boards', 'm', [0.05, 20], {
      refuse: (value, shelf) => within('width', value, shelf),
    }),
    choice(
      'side',
      'It lies',
      optionsFrom({ middle: 'in the middle', front: 'along the front', back: 'along the back' }),
      { words: 'side of the upper shelf' },
    ),
  ];
}

const down = (value: number, least: number) => Math.max(least, Math.floor(value * 100) / 100);

/** A first upper shelf over the back third, a hand's breadth of plants on it (common practice, no source). */
export function firstUpperShelf(place: Place): UpperShelf {
  const room = roomOf(place);
  const plants = Math.min(0.1, Math.max(0.01, down(0.2 * room.height, 0.01)));
  const length = down(Math.min(60, room.length), 0.05);
  const area = 0.5 * place.growingArea;
  const width = down(Math.min(room.width / 3, 20, area / length), 0.05);
  return {
    height: Math.min(4, down(room.open ? room.height : 0.5 * room.height, 0.05)),
    plants,
    length: width * length < place.growingArea ? length : down(area / width, 0.05),
    width,
    side: 'back',
  };
}
