import type { Room } from '../../../core/index.ts';
import { number, plain, share } from '../../forms/fields.ts';
import type { Field } from '../../forms/fields.ts';

type RoomOf<K extends Room['kind']> = Extract<Room, { kind: K }>;
const range = [-40, 60] as const;

export const constantFields: readonly Field<RoomOf<'constant'>>[] = [
  number('temperature', 'Room', '°C', range),
];

export const scheduleFields: readonly Field<RoomOf<'schedule'>>[] = [
  number('day', 'Room by day', '°C', range),
  number('night', 'Room by night', '°C', range),
  plain('clock', 'dayFrom', 'Day from'),
  plain('clock', 'dayTo', 'Day to'),
];

export const followingFields: readonly Field<RoomOf<'following'>>[] = [
  number('temperature', 'Room when it just freezes outdoors', '°C', range),
  share('factor', 'Follows the outdoors by', [0, 100]),
];

/** A temperature that another kind of room may start from [°C]. */
export function middleOf(room: Room): number {
  if (room.kind === 'schedule') return room.night;
  return room.kind === 'series' ? room.otherwise : room.temperature;
}
