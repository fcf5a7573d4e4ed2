import { describe, expect, it } from 'vitest';
import { sectionOf, surfacesOf } from '../../core/fabric/index.ts';
import { allPlaces, house, leanTo, tunnel, windowBay } from './sample-places.ts';

describe('cross-section', () => {
  it.each(allPlaces.map((place) => [place.shape.kind, place] as const))(
    '%s: finite, within its frame, plants inside',
    (_kind, place) => {
      const section = sectionOf(place);
      for (const { points } of section.lines) {
        for (const [x, y] of points) {
          expect(x).toBeGreaterThanOrEqual(-1e-9);
          expect(x).toBeLessThanOrEqual(section.width + 1e-9);
          expect(y).toBeGreaterThanOrEqual(-1e-9);
          expect(y).toBeLessThanOrEqual(section.height + 1e-9);
        }
      }
      expect(section.plantsFrom).toBeGreaterThanOrEqual(0);
      expect(section.plantsTo).toBeLessThanOrEqual(section.width);
      expect(section.plantsFrom).toBeLessThan(section.plantsTo);
    },
  );

  it('draws the surfaces the engine reckons with: length of line × length of place is the area', () => {
    for (const [place, length] of [
      [house, 4],
      [leanTo, 4],
      [tunnel, 5],
      [windowBay, 1.3],
    ] as const) {
      const { surfaces } = surfacesOf(place);
      const drawn = sectionOf(place).lines.filter((line) => line.surface !== null);
      expect(drawn.length).toBeGreaterThan(2);
      for (const { points, surface } of drawn) {
        const [a, b] = points;
        const area = surfaces.find((each) => each.name === surface)?.area;
        expect(Math.hypot(b[0] - a[0], b[1] - a[1]) * length).toBeCloseTo(area ?? NaN, 9);
      }
    }
  });

  it('shows lining, fleece, lamps, heaters and water where the place has them', () => {
    const section = sectionOf({
      ...house,
      lining: 'bubble-lining',
      fleece: { covering: 'fleece-17', layers: 1, laidWhen: 'night', below: 2 },
      water: [{ name: 'Canister', litres: 20, count: 4 }],
      heaters: [
        {
          id: 'fan',
          name: 'Fan heater',
          kind: 'fan',
          power: 2000,
          setPointDay: 5,
          setPointNight: 5,
          differential: 1,
        },
      ],
    });
    const roles = new Set(section.lines.map((line) => line.role));
    for (const role of ['glass', 'wall', 'floor', 'bench', 'lining', 'fleece'] as const)
      expect(roles).toContain(role);
    expect(section.items.map((item) => item.kind)).toEqual(['heater', 'water']);
  });

  it('puts the room behind a lean-to and a window bay', () => {
    expect(sectionOf(leanTo).room).toBe('right');
    expect(sectionOf(windowBay).room).toBe('right');
    expect(sectionOf(house).room).toBeNull();
    expect(sectionOf(leanTo).front).toBe('south');
  });
});
