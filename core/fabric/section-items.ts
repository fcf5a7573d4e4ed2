import type { Place } from '../plan/schema.ts';

/** A thing standing or hanging in the cross-section; x and y are its middle [m]. */
export interface SectionItem {
  readonly kind: 'lamp' | 'heater' | 'water' | 'vent' | 'fan';
  /** Id of the lamp or heater, else the kind with its number. */
  readonly id: string;
  readonly name: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

interface Room {
  readonly width: number;
  readonly height: number;
  readonly level: number;
  readonly from: number;
  readonly to: number;
}

/** Lamps over the plants, heaters and water on the floor, vent and fan high up; where they stand is a drawing's choice. */
export function sectionItems(place: Place, room: Room): SectionItem[] {
  const items: SectionItem[] = [];
  for (const lamp of place.lamps) {
    const length = Math.min(room.width * 0.9, Math.min(lamp.length, lamp.width));
    const y = Math.min(room.height * 0.95, room.level + lamp.height);
    items.push({
      kind: 'lamp',
      id: lamp.id,
      name: lamp.name,
      x: (room.from + room.to) / 2,
      y,
      width: length,
      height: 0.05,
    });
  }
  place.heaters.forEach((heater, i) => {
    const mat = heater.kind === 'heat-mat';
    const size = Math.min(0.3, room.height * 0.2);
    items.push({
      kind: 'heater',
      id: heater.id,
      name: heater.name,
      x: mat ? (room.from + room.to) / 2 : room.width * 0.15 + i * size * 1.3,
      y: mat ? room.level + 0.01 : size / 2,
      width: mat ? room.to - room.from : size,
      height: mat ? 0.02 : size,
    });
  });
  place.water.forEach((store, i) => {
    const edge = Math.min(0.5, Math.cbrt(store.litres / 1000), room.height * 0.4);
    const x = Math.max(edge / 2, room.width - edge / 2 - 0.05 - i * edge * 1.1);
    items.push({
      kind: 'water',
      id: `water-${i}`,
      name: store.name,
      x,
      y: edge / 2,
      width: edge,
      height: edge,
    });
  });
  if (place.vents.length > 0) {
    const y = room.height * 0.97;
    items.push({
      kind: 'vent',
      id: 'vent',
      name: 'Vents',
      x: room.width / 2,
      y,
      width: room.width * 0.2,
      height: 0.03,
    });
  }
  if (place.fan !== null) {
    const size = Math.min(0.25, room.height * 0.15);
    items.push({
      kind: 'fan',
      id: 'fan',
      name: 'Fan',
      x: room.width * 0.85,
      y: room.height * 0.8,
      width: size,
      height: size,
    });
  }
  return items;
}
