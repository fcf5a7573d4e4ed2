import { describe, expect, it } from 'vitest';
import type { Beam, Place } from '../../core/index.ts';
import { demonstrationPlan, lampOf, placeField, placeOf } from '../../core/index.ts';

/** A spot of four degrees to each side, without spill. */
const spot: Beam = {
  kind: 'file',
  photometry: {
    name: 'Spot',
    vertical: [0, 1, 2, 3, 4, 90],
    planes: [0],
    candela: [1000, 800, 300, 50, 0, 0],
  },
  turned: 0,
};
/** The same with a hundredth of it spilt up to the level of the face. */
const spilling: Beam = {
  ...spot,
  photometry: { ...spot.photometry, candela: [1000, 800, 300, 50, 10, 0] },
};

function closure(place: Place, height: number, beam: Beam, part: Partial<Place> = {}): number {
  const lamp = lampOf({
    ...{ id: 'lamp', name: 'Lamp', technology: 'led-white', watts: 50, efficacy: 2.5, count: 1, height },
    ...{ length: 0.5, width: 0.5, on: '07:00', off: '19:00', beam },
  });
  return Math.abs(placeField(placeOf({ ...place, ...part, lamps: [lamp] })).closure);
}

const [leanTo, tunnel, tent] = demonstrationPlan.places;
const upperShelf = { height: 0.7, length: 0.7, width: 0.3, side: 'back', plants: 0.1 } as const;

describe('a very narrow beam loses no light on the way', () => {
  // At most 0.24 % is reached; the limit of every field is 0.5 %.
  it.each([
    ['lean-to', leanTo],
    ['tunnel', tunnel],
    ['tent', tent],
  ] as const)('in a %s, from 2 cm to 1 m over the plants, within 0.3 %', (_, place) => {
    for (const height of [0.02, 0.1, 0.4, 1]) {
      expect(closure(place, height, spot), `spot at ${height} m`).toBeLessThan(0.003);
      expect(closure(place, height, spilling), `spill at ${height} m`).toBeLessThan(0.003);
    }
  });

  it('along the edge of an upper shelf, within 0.3 %', () => {
    for (const height of [1, 1.2, 1.4]) {
      expect(closure(tent, height, spot, { upperShelf, growingArea: 0.7 }), `${height} m`).toBeLessThan(
        0.003,
      );
    }
  });
});
