import { describe, expect, it } from 'vitest';
import { sectionOf, surfacesOf } from '../../core/fabric/index.ts';
import { allPlaces, coldFrame, house, leanTo, listed, solidPlaces, windowBay } from './sample-places.ts';

const lengthOf = (place: (typeof allPlaces)[number]) => surfacesOf(place).length;

describe('cross-section', () => {
  it.each(allPlaces.map((place) => [place.shape.kind, place] as const))(
    '%s: finite, within its frame, one line from foot to foot',
    (_kind, place) => {
      const section = sectionOf(place);
      const ends = new Map<string, number>();
      for (const { from, to } of section.edges) {
        for (const [x, z] of [from, to]) {
          expect(x).toBeGreaterThanOrEqual(-1e-9);
          expect(x).toBeLessThanOrEqual(section.width + 1e-9);
          expect(z).toBeGreaterThanOrEqual(-1e-9);
          expect(z).toBeLessThanOrEqual(section.height + 1e-9);
          const key = `${x.toFixed(6)} ${z.toFixed(6)}`;
          ends.set(key, (ends.get(key) ?? 0) + 1);
        }
      }
      const feet = [...ends].filter(([, count]) => count === 1).map(([key]) => key.split(' ').map(Number));
      expect(feet.sort((a, b) => a[0] - b[0])).toEqual([
        [0, 0],
        [Number(section.width.toFixed(6)), 0],
      ]);
      expect(section.plantLevel).toBeLessThan(section.height);
    },
  );

  it('is cut from the surfaces the engine reckons with: length of edge × length of place is the area', () => {
    for (const place of solidPlaces) {
      const { surfaces } = surfacesOf(place);
      const { edges } = sectionOf(place);
      expect(edges.length).toBeGreaterThan(2);
      for (const { from, to, surface } of edges) {
        const area = surfaces.find((each) => each.name === surface)?.area ?? NaN;
        expect(Math.hypot(to[0] - from[0], to[1] - from[1]) * lengthOf(place)).toBeCloseTo(area, 9);
      }
    }
  });

  it('encloses the volume the engine reckons with', () => {
    for (const place of allPlaces) {
      const { edges, length } = sectionOf(place);
      // Area under the edges by the trapezium rule; every outline is single-valued over x.
      const area = edges.reduce(
        (sum, { from, to }) => sum + (Math.abs(to[0] - from[0]) * (from[1] + to[1])) / 2,
        0,
      );
      expect(area * length).toBeCloseTo(surfacesOf(place).volume, 9);
    }
  });

  it('knows walls with their material and thickness, and where no lining hangs', () => {
    const edges = sectionOf({ ...house, shadySide: 'insulated-panel' }).edges;
    const walls = edges.filter((edge) => edge.material !== null);
    expect(walls.map((edge) => [edge.part, edge.material, edge.lined])).toEqual([
      ['base wall', 'brick', false],
      ['side', 'insulated', false],
      ['base wall', 'brick', false],
    ]);
    // The catalogue's half-brick wall of 102 mm and panel of 50 mm.
    expect(walls[0].thickness).toBeCloseTo(0.102, 9);
    expect(walls[1].thickness).toBeCloseTo(0.05, 9);
    expect(edges.filter((edge) => edge.lined).map((edge) => edge.part)).toEqual(['side', 'roof', 'roof']);
    const back = sectionOf(leanTo).edges.find((edge) => edge.part === 'wall');
    expect([back?.material, back?.thickness, back?.lined]).toEqual(['brick', 0.3, false]);
  });

  it('hangs lining on the panes of a window bay alone, and insulates the back of a frame', () => {
    expect(
      sectionOf(windowBay)
        .edges.filter((edge) => edge.lined)
        .map((edge) => edge.part),
    ).toEqual(['pane']);
    const back = sectionOf({ ...coldFrame, shadySide: 'timber-board' }).edges.filter(
      (edge) => edge.material === 'timber',
    );
    expect(back.map((edge) => edge.from[0])).toEqual([0.8]);
  });

  it('draws a hand-made list as a box of its floor and air', () => {
    const section = sectionOf(listed);
    expect([section.width, section.height, section.listed]).toEqual([2, 2, true]);
    expect(section.edges.map((edge) => edge.surface)).toEqual([null, null, null]);
  });
});
