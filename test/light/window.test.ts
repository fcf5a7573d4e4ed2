import { describe, expect, it } from 'vitest';
import { samplePlace } from '../fabric/sample-places.ts';
import {
  daylightSeries,
  diffuseTransmittance,
  windowSkyFactor,
  windowStripFactor,
} from '../../core/light/index.ts';
import { revealBounce, revealReflectance } from '../../core/light/window-bounce.ts';
import { stripFactor, uprightFactor, windowBayOf } from '../../core/light/window-factor.ts';
import { covering } from '../../core/plan/coverings.ts';
import { evenSky, moment, nothing } from './moment.ts';

const site = { albedo: 0, horizon: [] };
const degree = Math.PI / 180;

/** A window bay of 1.2 × 1.1 m facing south, nothing in its frame. */
function bay(shape: object, parts: object = nothing) {
  return samplePlace({
    growingArea: 0.3,
    room: { kind: 'constant', temperature: 18 },
    shape: { kind: 'window-bay', width: 1.2, height: 1.1, depth: 0.4, azimuth: 180, ...shape },
    ...parts,
  });
}

/** Configuration factor of the pane for a level point, by summing solid angles over the pane: cos ÷ (π r²). */
function summedFactor(width: number, height: number, distance: number): number {
  const n = 400;
  let sum = 0;
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      const y = ((i + 0.5) / n - 0.5) * width;
      const z = ((j + 0.5) / n) * height;
      sum += (distance * z) / (Math.PI * (distance ** 2 + y ** 2 + z ** 2) ** 2);
    }
  }
  return (sum * width * height) / (n * n);
}

describe('configuration factor of a pane', () => {
  it.each([0.15, 0.4, 1, 2.5])('for a point %d m behind it equals the sum over the pane', (distance) => {
    expect(Math.abs(windowSkyFactor(bay({}), distance) / summedFactor(1.2, 1.1, distance) - 1)).toBeLessThan(
      1e-4,
    );
  });

  it('is a half close to a pane, whose lower edge hides nothing and whose wall hides the other half', () => {
    expect(windowSkyFactor(bay({}), 0)).toBeCloseTo(0.5, 12);
  });

  it('averaged over a strip is the mean of its points, middle and sides', () => {
    // Simpson over 41 × 41 points of the strip; a point off the middle is two half panes of unequal width.
    const n = 40;
    let sum = 0;
    for (let i = 0; i <= n; i++) {
      for (let j = 0; j <= n; j++) {
        const weight = (k: number) => (k === 0 || k === n ? 1 : k % 2 === 1 ? 4 : 2);
        const distance = 0.3 + (0.4 * i) / n;
        const y = (1.2 * j) / n;
        const half = (width: number) => uprightFactor(2 * width, 1.1, distance) / 2;
        sum += weight(i) * weight(j) * (half(y) + half(1.2 - y));
      }
    }
    const mean = sum / (3 * n) ** 2;
    expect(Math.abs(windowStripFactor(bay({}), 0.3, 0.7) / mean - 1)).toBeLessThan(1e-6);
  });

  it('is refused for a house, and strips must run away from the pane', () => {
    expect(() =>
      windowSkyFactor(
        samplePlace({ shape: { kind: 'tunnel', length: 2, width: 2, height: 1, azimuth: 0 } }),
        1,
      ),
    ).toThrow('expected a window bay, got tunnel');
    expect(() => windowStripFactor(bay({}), 0.4, 0.4)).toThrow('expected a strip');
    expect(() => windowSkyFactor(bay({}), NaN)).toThrow('expected a distance');
  });
});

describe('sky light on the sill', () => {
  // Strips of 10 cm from the pane into the room. The engine sums the sky in steps of 6° × 3°, the factor is exact: they
  // part by 0.25 % at most down to 1.2 m.
  const strips = [0, 0.1, 0.2, 0.4, 0.7, 1.1];
  const lightOf = (from: number, parts: object) =>
    daylightSeries(bay({ distance: from, depth: from + 0.1 }, parts), site, evenSky(100)).benchSolar[0];

  it.each(strips)('a strip from %d m on has the pane’s factor of it, nothing in the frame', (from) => {
    const factor = windowStripFactor(bay({}), from, from + 0.1);
    expect(Math.abs(lightOf(from, nothing) / (100 * factor) - 1)).toBeLessThan(0.003);
  });

  it('falls with depth behind glass as the factor does, a little slower: deeper plants see the pane more squarely', () => {
    const glass = { covering: 'glass-4', frameShare: 0, dirtShare: 0 };
    const left = strips.map(
      (from) => lightOf(from, glass) / (100 * windowStripFactor(bay({}), from, from + 0.1)),
    );
    for (let i = 1; i < left.length; i++) expect(left[i]).toBeGreaterThan(left[i - 1]);
    // Next to the pane the sky comes in steeply from above and glass passes 0.62 of it; a metre in 0.81. Taking the
    // hemispherical 0.74 for every depth would err by a sixth at the pane and by a tenth a metre in.
    const even = diffuseTransmittance(covering('glass-4'));
    expect(Math.abs(left[0] / even - 0.839)).toBeLessThan(0.001);
    expect(Math.abs(left[5] / even - 1.09)).toBeLessThan(0.001);
  });

  it('has no light where the plants stand is not before the depth of the bay', () => {
    expect(() => daylightSeries(bay({ distance: 0.4 }), site, evenSky(100))).toThrow(
      'expected plants nearer than 0.4 m',
    );
  });
});

describe('a pane set back in the wall', () => {
  const reveal = 0.2;

  it.each([0, 0.2, 0.5])('a strip %d m in sees the sky through the outer opening', (from) => {
    const place = bay({ distance: from, depth: from + 0.1, reveal });
    const factor = windowStripFactor(place, from, from + 0.1);
    expect(factor).toBe(windowStripFactor(bay({}), from + reveal, from + 0.1 + reveal));
    // The sky falls on the wall with half its light on the level, and the sides throw some of it on.
    const sides = 0.5 * revealBounce(windowBayOf(place)).plants;
    expect(
      Math.abs(daylightSeries(place, site, evenSky(100)).benchSolar[0] / (100 * (factor + sides)) - 1),
    ).toBeLessThan(0.003);
  });

  it('the sun square to it: the lintel’s shadow takes reveal × tan h off the pane', () => {
    const steps = moment(180, 39, 500, 0);
    const light = daylightSeries(bay({ reveal, depth: 3 }), site, steps);
    const lit = 1.1 - reveal * Math.tan(39 * degree);
    const direct = 500 * Math.cos(39 * degree) * 1.2 * lit;
    // The rest falls on the outer sill and comes back by that sill's factor to the pane, past the plants, up into the room.
    const missed = 500 * Math.cos(39 * degree) * 1.2 * (1.1 - lit);
    const thrown = missed * revealReflectance * stripFactor(1.2, 1.1, 0, reveal);
    expect(light.transmittedSolar[0]).toBeCloseTo(direct + thrown, 6);
    // What enters straight lands on the sill, which is deep enough for all of it (39° is a row of the table of directions).
    expect(light.benchSolar[0] * light.benchArea).toBeCloseTo(direct, 6);
  });

  it('the sun aslant: both the side and the lintel shade it', () => {
    const steps = moment(225, 30, 500, 0);
    const light = daylightSeries(bay({ reveal }), site, steps);
    const wide = 1.2 - reveal * Math.tan(45 * degree);
    const high = 1.1 - (reveal * Math.tan(30 * degree)) / Math.cos(45 * degree);
    const normal = 500 * Math.cos(30 * degree) * Math.cos(45 * degree);
    // What misses the pane meets one side and the sill; where both are missed, as much of it one as the other.
    const both = ((1.2 - wide) * (1.1 - high)) / 2;
    const side = ((1.2 - wide) * 1.1 - both) * stripFactor(1.1, 1.2, 0, reveal);
    const sill = ((1.1 - high) * 1.2 - both) * stripFactor(1.2, 1.1, 0, reveal);
    expect(light.transmittedSolar[0]).toBeCloseTo(
      normal * (wide * high + revealReflectance * (side + sill)),
      6,
    );
  });

  it('a deep reveal and a high sun leave what the outer part of the sill throws on, none of it to the plants', () => {
    const light = daylightSeries(bay({ reveal: 1 }), site, moment(180, 60, 500, 0));
    const lit = 1.1 / Math.tan(60 * degree);
    const all = 500 * Math.cos(60 * degree) * 1.2 * 1.1;
    expect(light.transmittedSolar[0]).toBeCloseTo(
      all * revealReflectance * stripFactor(1.2, 1.1, 1 - lit, 1),
      6,
    );
    expect(light.benchSolar[0]).toBe(0);
  });

  it('no reveal changes nothing', () => {
    const steps = moment(200, 25, 400, 80);
    const [a, b] = [bay({}), bay({ reveal: 1e-9 })].map((place) => daylightSeries(place, site, steps));
    expect(Math.abs(a.benchSolar[0] - b.benchSolar[0])).toBeLessThan(1e-6);
    expect(Math.abs(a.transmittedSolar[0] - b.transmittedSolar[0])).toBeLessThan(1e-5);
  });
});

describe('a sheer curtain', () => {
  const sheer = { covering: 'sheer-net', from: '00:00', to: '24:00' };
  const drawn = { sheerDrawn: Uint8Array.of(1) };
  const steps = moment(180, 20, 600, 60);

  it('passes 0.42 straight through its holes and lets the pane shine evenly with the other 0.28', () => {
    const bare = daylightSeries(bay({}), site, steps);
    const light = daylightSeries(bay({}, { ...nothing, sheer }), site, steps, drawn);
    const entering = bare.transmittedSolar[0] / (1.2 * 1.1);
    const [straight, spread] = [0.42, 0.28];
    const shining = entering * spread * windowStripFactor(bay({}), 0, 0.4);
    expect(light.benchSolar[0]).toBeCloseTo(straight * bare.benchSolar[0] + shining, 6);
    // Of the 0.3 a white net holds it throws 0.7 back out and takes up the rest, which warms the bay.
    const taken = 0.3 * 0.3 * bare.transmittedSolar[0];
    expect(light.transmittedSolar[0]).toBeCloseTo(0.7 * bare.transmittedSolar[0] + taken, 6);
    const landed = straight * bare.insideSolar[0] + 0.85 * shining * light.benchArea;
    expect(light.insideSolar[0]).toBeCloseTo(landed + taken, 6);
    // Light from straight ahead, most of which would have gone on into the room, is turned on to the sill in part.
    expect(light.benchSolar[0]).toBeLessThan(bare.benchSolar[0]);
  });

  it('hanging open changes nothing', () => {
    const open = daylightSeries(bay({}, { ...nothing, sheer }), site, steps, {
      sheerDrawn: Uint8Array.of(0),
    });
    expect(open.benchSolar[0]).toBe(daylightSeries(bay({}), site, steps).benchSolar[0]);
  });

  it('keeps photons with the sunlight behind glass', () => {
    const glass = { covering: 'glass-4', frameShare: 0.2, dirtShare: 0, sheer };
    const light = daylightSeries(bay({}, glass), site, steps, { ...drawn, photonsPerJoule: 2 });
    // Glass passes photons better than the whole of the sun, by about a tenth.
    const ratio = light.benchPhotons[0] / (2 * light.benchSolar[0]);
    expect(ratio).toBeGreaterThan(1.05);
    expect(ratio).toBeLessThan(1.12);
  });
});
