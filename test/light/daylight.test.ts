import { describe, expect, it } from 'vitest';
import { screenOf } from '../../core/index.ts';
import { surfacesOf } from '../../core/fabric/index.ts';
import { covering } from '../../core/plan/coverings.ts';
import { daylightSeries, diffuseTransmittance } from '../../core/light/index.ts';
import {
  allPlaces,
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
import { moment, nothing } from './moment.ts';
import { sampleYear, sum } from './sample-year.ts';

const site = { albedo: 0.2, horizon: [] };
const year = sampleYear();
const outdoors = sum(year.globalHorizontal);
const share = (values: Float64Array) => sum(values) / outdoors;

describe('daylight at the plants’ level over a year', () => {
  // House total 50–70 % of outdoors (from memory; no published value found): photons come through a little better
  // than the whole spectrum, so 0.50–0.75 for them.
  it.each([
    ['even-span', house],
    ['lean-to', leanTo],
    ['tunnel', tunnel],
    ['cold-frame', coldFrame],
  ] as const)('%s keeps a half to three quarters', (_kind, place) => {
    const { benchSolar, benchPhotons } = daylightSeries(place, site, year);
    expect(share(benchSolar)).toBeGreaterThan(0.5);
    expect(share(benchSolar)).toBeLessThan(0.72);
    expect(share(benchPhotons) / 2.02).toBeGreaterThan(0.5);
    expect(share(benchPhotons) / 2.02).toBeLessThan(0.75);
  });

  it('a tent and a shelf get none', () => {
    for (const place of [tent, shelf]) {
      const light = daylightSeries(place, site, year);
      expect([
        sum(light.benchSolar),
        sum(light.benchPhotons),
        sum(light.transmittedSolar),
        sum(light.insideSolar),
      ]).toEqual([0, 0, 0, 0]);
    }
  });

  it.each(allPlaces.map((place) => [place.shape.kind, place] as const))(
    '%s: finite, dark at night, no more kept inside than enters',
    (_kind, place) => {
      const light = daylightSeries(place, site, year);
      for (const series of [
        light.benchSolar,
        light.benchPhotons,
        light.transmittedSolar,
        light.insideSolar,
        light.wallSolar,
        ...light.incident,
      ]) {
        for (let k = 0; k < year.n; k++) {
          if (!(series[k] >= 0 && series[k] < 1e6))
            throw new Error(`expected a finite light, got ${series[k]} at step ${k}`);
          if (year.globalHorizontal[k] === 0 && series[k] !== 0)
            throw new Error(`expected night at step ${k}, got ${series[k]}`);
        }
      }
      expect(sum(light.insideSolar)).toBeLessThanOrEqual(sum(light.transmittedSolar));
      expect(share(light.benchSolar)).toBeLessThan(1);
    },
  );

  it('a lining takes light and never gives any', () => {
    const bare = daylightSeries(house, site, year);
    const lined = daylightSeries({ ...house, lining: 'bubble-lining' }, site, year);
    for (let k = 0; k < year.n; k++) expect(lined.benchPhotons[k] <= bare.benchPhotons[k]).toBe(true);
    expect(sum(lined.benchPhotons) / sum(bare.benchPhotons)).toBeGreaterThan(0.75);
  });

  it('a skyline takes light; one all round and to the zenith takes all of it', () => {
    const hills = {
      albedo: 0,
      horizon: [
        { azimuth: 90, elevation: 20, passes: 0 },
        { azimuth: 180, elevation: 20, passes: 0 },
        { azimuth: 270, elevation: 20, passes: 0 },
        { azimuth: 0, elevation: 0, passes: 0 },
      ],
    };
    const open = daylightSeries(house, { ...site, albedo: 0 }, year);
    expect(sum(daylightSeries(house, hills, year).benchSolar)).toBeLessThan(0.9 * sum(open.benchSolar));
    const pit = { albedo: 0, horizon: [{ azimuth: 0, elevation: 89, passes: 0 }] };
    expect(sum(daylightSeries(house, pit, year).benchSolar)).toBeLessThan(0.002 * sum(open.benchSolar));
  });

  it('a hand-made box comes within a sixth of the same box by geometry', () => {
    const box = samplePlace({
      covering: 'glass-3',
      growingArea: 4,
      shape: { kind: 'even-span', length: 2, width: 2, eavesHeight: 1.99, ridgeHeight: 2, azimuth: 180 },
    });
    const byHand = daylightSeries(listed, site, year);
    const byGeometry = daylightSeries(box, site, year);
    expect(Math.abs(sum(byHand.benchSolar) / sum(byGeometry.benchSolar) - 1)).toBeLessThan(0.16);
  });
});

describe('single moments, by geometry', () => {
  const bare = samplePlace({
    ...nothing,
    shape: { kind: 'even-span', length: 4, width: 2.5, eavesHeight: 1.5, ridgeHeight: 2.3, azimuth: 160 },
  });

  it.each([
    [180, 12],
    [133, 47],
    [290, 3],
    [20, 80],
  ])(
    'a house with nothing in its frame has the outdoors’ beam inside: sun at %d°, %d° high',
    (azimuth, elevation) => {
      const steps = moment(azimuth, elevation, 700, 0);
      const { benchSolar } = daylightSeries(bare, site, steps);
      expect(Math.abs(benchSolar[0] / steps.globalHorizontal[0] - 1)).toBeLessThan(1e-9);
    },
  );

  it('and the outdoors’ even sky: the openings close the hemisphere over the bench', () => {
    const steps = moment(180, 1, 0, 100);
    expect(Math.abs(daylightSeries(bare, site, steps).benchSolar[0] - 100)).toBeLessThan(1e-9);
  });

  // Pane facing the sun straight on: the patch on the sill is as deep as height ÷ tan(elevation), here deeper than
  // the sill, cut at the sides by nothing since the sun stands square to the pane.
  it('window bay: the sun’s patch on the sill by hand', () => {
    const bay = samplePlace({
      ...nothing,
      growingArea: 0.4,
      room: { kind: 'constant', temperature: 18 },
      shape: { kind: 'window-bay', width: 1.3, height: 1.2, depth: 1, azimuth: 180 },
    });
    const low = daylightSeries(bay, site, moment(180, 30, 500, 0));
    expect(low.benchSolar[0]).toBeCloseTo(250, 6);
    // At 66° the patch is 1.2 ÷ tan 66° = 0.534 m deep of 1 m; the table is straight between 3° steps.
    const high = daylightSeries(bay, site, moment(180, 66, 500, 0));
    const patch = 1.2 / Math.tan((66 * Math.PI) / 180);
    expect(Math.abs(high.benchSolar[0] - 500 * Math.sin((66 * Math.PI) / 180) * patch)).toBeLessThan(1e-6);
    expect(daylightSeries(bay, site, moment(0, 30, 500, 0)).benchSolar[0]).toBe(0);
  });

  // Even sky on the sill: mean over the sill of the pane's configuration factor, which by reciprocity is the factor
  // of two rectangles at right angles (0.2000 for a cube's). The table's steps of 6° and 3° leave 2 %.
  it('window bay: the sky on the sill of a cube is 0.20 of outdoors', () => {
    const bay = samplePlace({
      ...nothing,
      growingArea: 0.4,
      room: { kind: 'constant', temperature: 18 },
      shape: { kind: 'window-bay', width: 1, height: 1, depth: 1, azimuth: 180 },
    });
    expect(Math.abs(daylightSeries(bay, site, moment(180, 1, 0, 100)).benchSolar[0] / 20 - 1)).toBeLessThan(
      0.02,
    );
  });

  it('what enters a lean-to with nothing in its frame is beam on its openings', () => {
    const place = samplePlace({
      ...nothing,
      room: { kind: 'constant', temperature: 18 },
      shape: leanTo.shape,
    });
    const steps = moment(200, 25, 600, 0);
    const { transmittedSolar } = daylightSeries(place, { albedo: 0, horizon: [] }, steps);
    let expected = 0;
    for (const { transparent, area, normal } of surfacesOf(place).surfaces) {
      const [az, el] = [(200 * Math.PI) / 180, (25 * Math.PI) / 180];
      const cosine =
        normal[0] * Math.cos(el) * Math.sin(az) +
        normal[1] * Math.cos(el) * Math.cos(az) +
        normal[2] * Math.sin(el);
      if (transparent) expected += area * Math.max(0, cosine) * 600;
    }
    expect(transmittedSolar[0]).toBeCloseTo(expected, 6);
  });

  it('and with a black wall all of it falls on bench, wall or floor, or leaves by the gables', () => {
    const place = samplePlace({
      ...nothing,
      wallReflectance: 0,
      room: { kind: 'constant', temperature: 18 },
      shape: leanTo.shape,
    });
    // Square to the front nothing leaves by the gables, and what enters above the bench's level must land above it.
    const steps = moment(180, 36, 600, 0);
    const light = daylightSeries(place, { albedo: 0, horizon: [] }, steps);
    const below = 4 * 0.7 * 600 * Math.cos((36 * Math.PI) / 180);
    const landed = light.benchSolar[0] * light.benchArea + light.wallSolar[0];
    expect(Math.abs(landed / (light.transmittedSolar[0] - below) - 1)).toBeLessThan(1e-6);
  });

  it('under an even sky what enters is area × view × hemispherical transmittance × frame and dirt', () => {
    // The sun within 3° of the horizon: the sky is taken as even.
    const light = daylightSeries(house, { albedo: 0, horizon: [] }, moment(180, 1, 0, 100));
    const glass = diffuseTransmittance(covering('glass-3'));
    let expected = 0;
    for (const { transparent, area, skyView } of surfacesOf(house).surfaces) {
      if (transparent) expected += area * skyView * 100 * glass * 0.9 * 0.95;
    }
    expect(Math.abs(light.transmittedSolar[0] / expected - 1)).toBeLessThan(1e-9);
  });

  it('light thrown back by the wall carries photons as the rest does', () => {
    const steps = moment(180, 15, 500, 50);
    const ratio = (wallReflectance: number) => {
      const light = daylightSeries({ ...leanTo, wallReflectance }, site, steps);
      return light.benchPhotons[0] / light.benchSolar[0];
    };
    // Glass passes photons better than the whole spectrum, by about 1.1; the two angles differ a little in it.
    expect(Math.abs(ratio(0.8) / ratio(0) - 1)).toBeLessThan(0.01);
    expect(ratio(0)).toBeGreaterThan(2.02);
  });

  it('a white back wall gives the bench more than a black one', () => {
    const steps = moment(180, 15, 500, 50);
    const light = (wallReflectance: number) =>
      daylightSeries({ ...leanTo, wallReflectance }, site, steps).benchSolar[0];
    expect(light(0.8)).toBeGreaterThan(light(0));
  });
});

describe('layers that are drawn', () => {
  it('gives the light left under screen and fleece', () => {
    const light = daylightSeries(
      {
        ...house,
        screen: screenOf({ covering: 'woven-screen', closedWhen: 'night' }),
        fleece: { covering: 'fleece-17', layers: 2, hangs: 'floor', laidWhen: 'always', below: 2 },
      },
      site,
      moment(180, 20, 100, 100),
    );
    expect(light.screenShare).toBeCloseTo(0.75, 6);
    expect(light.fleeceShare).toBeCloseTo(0.85 ** 2, 6);
  });

  it('windows keep the sill darker than a house keeps its bench', () => {
    const bay = daylightSeries(windowBay, site, year);
    expect(share(bay.benchPhotons)).toBeLessThan(share(daylightSeries(house, site, year).benchPhotons));
    expect(bay.skyPhotons).toBeLessThan(0.3);
  });
});
