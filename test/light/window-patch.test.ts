import { describe, expect, it } from 'vitest';
import { beamPatch, beamPatches, coverTransmittance, daylightSeries } from '../../core/light/index.ts';
import { surfacesOf } from '../../core/fabric/index.ts';
import { covering } from '../../core/plan/coverings.ts';
import { allPlaces, house, leanTo, samplePlace, tent } from '../fabric/sample-places.ts';
import { moment, nothing } from './moment.ts';

const site = { horizon: [], albedo: 0 };
const degree = Math.PI / 180;
const bay = (shape: object, parts: object = {}) =>
  samplePlace({
    growingArea: 0.3,
    covering: 'glass-4',
    room: { kind: 'constant', temperature: 18 },
    shape: { kind: 'window-bay', width: 1.2, height: 1.1, depth: 0.8, azimuth: 180, ...shape },
    ...parts,
  });

describe('the sun’s patch behind a window', () => {
  it('square to the pane: as deep as height ÷ tan h, as wide as the pane', () => {
    const patch = beamPatch(bay({}), site, { azimuth: 180, elevation: 60 });
    const deep = 1.1 / Math.tan(60 * degree);
    expect(patch?.area).toBeCloseTo(deep * 1.2, 9);
    expect(Math.max(...(patch?.polygon.map(({ x }) => x) ?? []))).toBeCloseTo(deep, 9);
    expect(patch?.incidence).toBeCloseTo(60, 9);
    expect(patch?.transmittance).toBeCloseTo(coverTransmittance(60, covering('glass-4')), 12);
    expect(patch?.past).toBe(1);
  });

  it('December noon at 55° N through the actual glass: 11.6° high, 0.89 of the light, over the whole sill', () => {
    const patch = beamPatch(bay({}), site, { azimuth: 180, elevation: 11.6 });
    expect(patch?.area).toBeCloseTo(1.2 * 0.8, 9);
    // Float glass of 4 mm passes 0.89 of the light straight on (ESP-r optics database), as good as that at 11.6°.
    expect(Math.abs((patch?.parTransmittance ?? 0) - 0.89)).toBeLessThan(0.004);
  });

  it('aslant it moves away from the sun, cut by the side of the bay', () => {
    const patch = beamPatch(bay({}), site, { azimuth: 225, elevation: 45 });
    // It ends at 1.1·cos 45° = 0.778 m, before the sill does, and runs as far along as it is deep (tan 45°): a
    // parallelogram less the triangle that falls past the side of the bay.
    const deep = 1.1 * Math.cos(45 * degree);
    expect(patch?.area).toBeCloseTo(1.2 * deep - (deep * deep) / 2, 9);
  });

  it('starts where the plants do and is cut by the reveal', () => {
    const near = beamPatch(bay({ distance: 0.3 }), site, { azimuth: 180, elevation: 60 });
    expect(near?.area).toBeCloseTo(1.2 * (1.1 / Math.tan(60 * degree) - 0.3), 9);
    const behind = beamPatch(bay({ reveal: 0.2 }), site, { azimuth: 180, elevation: 60 });
    expect(behind?.area).toBeCloseTo(1.2 * (1.1 / Math.tan(60 * degree) - 0.2), 9);
  });

  it('is none with the sun down, behind the wall, behind a hill; weaker behind bare trees', () => {
    expect(beamPatch(bay({}), site, { azimuth: 180, elevation: -1 })).toBe(null);
    expect(beamPatch(bay({}), site, { azimuth: 20, elevation: 30 })).toBe(null);
    const hill = { horizon: [{ azimuth: 0, elevation: 20, passes: 0 }] };
    expect(beamPatch(bay({}), hill, { azimuth: 180, elevation: 19 })).toBe(null);
    const trees = { horizon: [{ azimuth: 0, elevation: 20, passes: 0.4 }] };
    expect(beamPatch(bay({}), trees, { azimuth: 180, elevation: 19 })?.past).toBe(0.4);
    // A skyline of the place's own comes before the site's.
    expect(beamPatch(bay({}, { horizon: [] }), hill, { azimuth: 180, elevation: 19 })?.past).toBe(1);
    expect(() => beamPatch(house, site, { azimuth: 180, elevation: 30 })).toThrow('expected a window bay');
    expect(() => beamPatch(bay({}), site, { azimuth: NaN, elevation: 30 })).toThrow('expected a sun');
  });
});

describe('the sun’s patches in a house', () => {
  it('without gables’ shadows they tile the bench: every opening that faces the sun, none twice', () => {
    const bare = { ...house, ...nothing, baseWall: null };
    const patches = beamPatches(bare, site, { azimuth: 160, elevation: 35 });
    expect(new Set(patches.map((patch) => patch.surface)).size).toBe(patches.length);
    const total = patches.reduce((sum, patch) => sum + patch.area, 0);
    expect(total).toBeCloseTo(4 * 2.5, 9);
  });

  it('carry the light the daylight run gives: Σ area × transmittance', () => {
    for (const place of [house, leanTo, bay({})]) {
      const [azimuth, elevation] = [186, 27];
      const patches = beamPatches(place, site, { azimuth, elevation });
      const { benchSolar, benchArea } = daylightSeries(
        { ...place, wallReflectance: 0, frameShare: 0, dirtShare: 0 },
        site,
        moment(azimuth, elevation, 500, 0),
      );
      const beam = 500 * Math.sin(elevation * degree);
      const byPatches = patches.reduce((sum, patch) => sum + patch.area * patch.transmittance, 0) / benchArea;
      // Sun on a node of the table of directions: only the curve's straight lines are between them.
      expect(Math.abs(benchSolar[0] / beam / byPatches - 1)).toBeLessThan(1e-4);
    }
  });

  it('name surfaces of the fabric', () => {
    for (const place of allPlaces) {
      const names = new Set(surfacesOf(place).surfaces.map(({ name }) => name));
      for (const { surface } of beamPatches(place, site, { azimuth: 170, elevation: 25 }))
        expect(names.has(surface)).toBe(true);
    }
    expect(beamPatches(tent, site, { azimuth: 170, elevation: 25 })).toEqual([]);
  });
});
