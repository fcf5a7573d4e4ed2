import { describe, expect, it } from 'vitest';
import { daylightSeries } from '../../core/light/index.ts';
import { contradictions } from '../../core/plan/contradictions.ts';
import type { Place } from '../../core/plan/schema.ts';
import {
  coldFrame,
  house,
  leanTo,
  listed,
  samplePlace,
  shelf,
  tent,
  tunnel,
  windowBay,
} from '../fabric/sample-places.ts';
import { evenSky, moment, nothing } from './moment.ts';
import { sampleYear, sum } from './sample-year.ts';

const site = { albedo: 0, horizon: [] };
const degree = Math.PI / 180;
const gutter = 0.2;
const open = samplePlace({
  ...nothing,
  shape: { kind: 'even-span', length: 4, width: 2.5, eavesHeight: 1.5, ridgeHeight: 2.3, azimuth: 180 },
});
const pitch = Math.atan2(0.8, 1.25);
const lost = (place: Place, steps: ReturnType<typeof moment>, of: 'benchSolar' | 'transmittedSolar') =>
  daylightSeries(place, site, steps)[of][0] - daylightSeries({ ...place, gutter }, site, steps)[of][0];

describe('gutters along the eaves', () => {
  it('keep out the beam on their halves of roof and side', () => {
    const steps = moment(180, 30, 500, 0);
    // The sun at 30° is just under the slope's 32.6° behind: front side and front roof alone are lit.
    const onSide = Math.cos(30 * degree);
    const onRoof = Math.cos(90 * degree - pitch - 30 * degree);
    expect(lost(open, steps, 'transmittedSolar')).toBeCloseTo(500 * 4 * (gutter / 2) * (onSide + onRoof), 6);
  });

  it('throw on the plants the shadow that geometry says', () => {
    const elevation = 30;
    const steps = moment(180, elevation, 500, 0);
    const half = gutter / 2;
    // From the gutter's lower edge (x 0, z eaves − half) to its upper (half·cos, eaves + half·sin), thrown on to a level.
    const deep = half * Math.cos(pitch) + (half * (1 + Math.sin(pitch))) / Math.tan(elevation * degree);
    const shadow = (deep * 4) / (4 * 2.5);
    expect(lost(open, steps, 'benchSolar')).toBeCloseTo(500 * Math.sin(elevation * degree) * shadow, 6);
  });

  it('take of an even sky their area times its view of it, front and back', () => {
    const views = (1 + Math.cos(pitch)) / 2 + 1 / 2;
    expect(lost(open, evenSky(100), 'transmittedSolar')).toBeCloseTo(100 * 4 * (gutter / 2) * views * 2, 6);
  });

  it('a lean-to has one, on its front', () => {
    const place = { ...leanTo, ...nothing } as Place;
    const slope = Math.atan2(0.9, 2);
    const views = (1 + Math.cos(slope)) / 2 + 1 / 2;
    expect(lost(place, evenSky(100), 'transmittedSolar')).toBeCloseTo(100 * 4 * (gutter / 2) * views, 6);
  });

  it('take light the wider they are; as wide as what they lie over, nothing comes by there', () => {
    const year = sampleYear(20);
    const lights = [null, 0.1, 0.3, 0.6].map((width) =>
      sum(daylightSeries({ ...house, gutter: width }, site, year).benchPhotons),
    );
    for (let i = 1; i < lights.length; i++) expect(lights[i]).toBeLessThan(lights[i - 1]);
    const low = { ...open, shape: { ...open.shape, eavesHeight: 0.3, ridgeHeight: 0.5 } } as Place;
    const blind = daylightSeries({ ...low, gutter: 0.6, standing: 'ground' }, site, moment(180, 3, 500, 0));
    expect(blind.transmittedSolar[0]).toBeCloseTo(
      // Left is the front roof above the gutter's half.
      500 * 4 * (Math.hypot(1.25, 0.2) - 0.3) * Math.cos(90 * degree - Math.atan2(0.2, 1.25) - 3 * degree),
      6,
    );
  });
});

describe('a gutter where none can be', () => {
  it.each(
    [tunnel, coldFrame, windowBay, tent, shelf, listed].map((place) => [place.shape.kind, place] as const),
  )('is refused on a %s', (_kind, place) => {
    expect(contradictions({ ...place, gutter }, 'places.0').map(({ path }) => path)).toEqual([
      'places.0.gutter',
    ]);
    expect(contradictions(place, 'places.0')).toEqual([]);
  });

  it('is refused where its half covers the whole side or slope, and let by below that', () => {
    const short = {
      ...house,
      baseWall: null,
      shape: { ...house.shape, eavesHeight: 0.4, ridgeHeight: 0.5 },
    } as Place;
    expect(contradictions({ ...short, gutter: 0.8 }, 'p')[0].message).toBe(
      'expected a gutter that leaves something of roof and sides, less than 0.8 m wide, got 0.8 m',
    );
    expect(contradictions({ ...short, gutter: 0.79 }, 'p')).toEqual([]);
    expect(contradictions({ ...leanTo, gutter: 0.15 }, 'p')).toEqual([]);
  });
});
