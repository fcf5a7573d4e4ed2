import { describe, expect, it } from 'vitest';
import {
  clearSky,
  horizonElevation,
  irradianceOnPlane,
  skyViewCut,
  splitGlobal,
  sunPosition,
} from '../../core/sun/index.ts';

const sun = { apparentZenith: 60, azimuth: 200, extraterrestrialNormal: 1361 };
const sky = { globalHorizontal: 500, beamNormal: 700, diffuseHorizontal: 150 };

describe('light on a plane', () => {
  it('is the horizontal sum on a level plane, by either model', () => {
    for (const model of ['perez', 'isotropic'] as const) {
      const level = irradianceOnPlane({ tilt: 0, azimuth: 123 }, sun, sky, { model });
      expect(level.incidence).toBeCloseTo(60, 9);
      expect(level.beam).toBeCloseTo(350, 9);
      expect(level.skyDiffuse).toBeCloseTo(150, 9);
      expect(level.ground).toBe(0);
    }
  });

  it('has no beam behind the plane or below the horizon, and half the sky on a wall in an even sky', () => {
    const behind = irradianceOnPlane({ tilt: 90, azimuth: 20 }, sun, sky, {
      model: 'isotropic',
      albedo: 0.5,
    });
    expect(behind.beam).toBe(0);
    expect(behind.skyDiffuse).toBeCloseTo(75, 9);
    expect(behind.ground).toBeCloseTo(125, 9);
    const set = irradianceOnPlane({ tilt: 90, azimuth: 200 }, { ...sun, apparentZenith: 91 }, sky);
    expect(set.beam).toBe(0);
  });

  it('falls back to the even sky at low sun', () => {
    const low = { ...sun, apparentZenith: 88 };
    const plane = { tilt: 70, azimuth: 200 };
    expect(irradianceOnPlane(plane, low, sky)).toEqual(
      irradianceOnPlane(plane, low, sky, { model: 'isotropic' }),
    );
  });

  it('refuses planes and options that are none', () => {
    expect(() => irradianceOnPlane({ tilt: -1, azimuth: 0 }, sun, sky)).toThrow('expected a tilt');
    expect(() => irradianceOnPlane({ tilt: 1, azimuth: NaN }, sun, sky)).toThrow('expected a finite azimuth');
    expect(() => irradianceOnPlane({ tilt: 1, azimuth: 0 }, sun, sky, { albedo: NaN })).toThrow(
      'expected an albedo',
    );
  });

  it('splits so that the parts make the whole', () => {
    for (const global of [0, 20, 200, 500, 900]) {
      const split = splitGlobal(global, 50, 20);
      const cosine = Math.cos((50 * Math.PI) / 180);
      expect(split.beamNormal * cosine + split.diffuseHorizontal).toBeCloseTo(global, 9);
    }
    expect(splitGlobal(30, 89, 20)).toEqual({ beamNormal: 0, diffuseHorizontal: 30 });
    expect(() => splitGlobal(NaN, 50, 20)).toThrow('expected global radiation');
  });

  it('has a clear sky that closes and is dark by night', () => {
    const place = { latitude: 54, longitude: -7, elevation: 60 };
    const noon = sunPosition(Date.UTC(2025, 11, 21, 12, 25), place);
    const clear = clearSky(noon, place);
    const cosine = Math.cos((noon.apparentZenith * Math.PI) / 180);
    expect(clear.beamNormal * cosine + clear.diffuseHorizontal).toBeCloseTo(clear.globalHorizontal, 9);
    expect(clear.globalHorizontal).toBeGreaterThan(100);
    expect(clearSky(sunPosition(Date.UTC(2025, 11, 21, 0), place), place).globalHorizontal).toBe(0);
    expect(() => clearSky(noon, place, NaN)).toThrow('expected a Linke turbidity');
  });
});

describe('skyline', () => {
  const profile = [
    { azimuth: 90, elevation: 10 },
    { azimuth: 180, elevation: 30 },
    { azimuth: 270, elevation: 0 },
  ];

  it('runs straight between its points and round through north', () => {
    expect(horizonElevation([], 40)).toBe(0);
    expect(horizonElevation([{ azimuth: 10, elevation: 7 }], 300)).toBe(7);
    expect(horizonElevation(profile, 180)).toBe(30);
    expect(horizonElevation(profile, 135)).toBeCloseTo(20, 9);
    expect(horizonElevation(profile, 0)).toBeCloseTo(5, 9);
    expect(horizonElevation(profile, 360 + 45)).toBeCloseTo(7.5, 9);
    expect(horizonElevation(profile, -45)).toBeCloseTo(2.5, 9);
  });

  it('hides sin² of an even skyline from a level plane (derived, exact)', () => {
    for (const elevation of [5, 17, 30, 60]) {
      const cut = skyViewCut([{ azimuth: 0, elevation }], { tilt: 0, azimuth: 0 });
      expect(Math.abs(cut - Math.sin((elevation * Math.PI) / 180) ** 2)).toBeLessThan(3.1e-4);
    }
  });

  it('hides more from a wall that faces the hill than from one that turns its back', () => {
    const hill = [
      { azimuth: 100, elevation: 0 },
      { azimuth: 180, elevation: 40 },
      { azimuth: 260, elevation: 0 },
    ];
    expect(skyViewCut(hill, { tilt: 90, azimuth: 180 })).toBeGreaterThan(0.3);
    expect(skyViewCut(hill, { tilt: 90, azimuth: 0 })).toBeLessThan(0.001);
  });
});
