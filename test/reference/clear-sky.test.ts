/** Cloudless sky and air mass: values of pvlib's and pyclearsky's tests. */
import { describe, expect, it } from 'vitest';
import {
  airMass,
  clearSky,
  haurwitz,
  ineichen,
  irradianceOnPlane,
  sunPosition,
} from '../../core/sun/index.ts';
import { expectClose } from '../sun/errors.ts';

describe('cloudless sky', () => {
  it('Haurwitz 1945 (1098, 0.059)', () => {
    const table: [number, number][] = [
      [5, 48.62987],
      [10, 135.74175],
      [30, 487.89413],
      [50, 778.76669],
      [90, 1035.09203],
    ];
    const pairs = table.map(([elevation, global]): [number, number] => [haurwitz(90 - elevation), global]);
    expectClose('global [W m⁻²]', pairs, { mean: 0.000002, max: 0.000004 });
  });

  it('Ineichen & Perez 2002 with the air mass given', () => {
    const rows: [number, number, number, number, number, number, number, number][] = [
      [10, 1, 3, 0, 1364, 1038.159, 942.208, 110.265],
      [10, 1, 3, 0, 1370, 1042.726, 946.353, 110.75],
      [10, 1, 3, 2000, 1364, 1134.243, 994.954, 154.405],
      [46.04676, 1.32355476, 3, 0, 1364, 704.697, 888.901, 87.736],
      [72.41687, 3.01614096, 3, 0, 1364, 251.994, 655.449, 53.99],
      [82.85457, 6.97935524, 3, 0, 1364, 65.494, 321.161, 25.546],
    ];
    const pairs = rows.flatMap(
      ([zenith, mass, turbidity, elevation, normal, global, beam, diffuse]): [number, number][] => {
        const sky = ineichen(zenith, mass, turbidity, elevation, normal);
        return [
          [sky.globalHorizontal, global],
          [sky.beamNormal, beam],
          [sky.diffuseHorizontal, diffuse],
        ];
      },
    );
    expectClose('global, beam, diffuse [W m⁻²]', pairs, { mean: 0.0004, max: 0.0006 });
  });

  it('the same over zenith and turbidity', () => {
    const grid: [number, number, number][] = [
      [0, 2, 1095.771],
      [0, 3, 1054.174],
      [0, 4, 1014.157],
      [40, 2, 839.409],
      [40, 3, 807.545],
      [40, 4, 776.89],
      [80, 2, 190.279],
      [80, 3, 183.055],
      [80, 4, 176.107],
    ];
    const pairs = grid.map(([zenith, turbidity, global]): [number, number] => [
      ineichen(zenith, 1, turbidity, 0, 1364).globalHorizontal,
      global,
    ]);
    expectClose('global [W m⁻²]', pairs, { mean: 0.0004, max: 0.0006 });
  });

  it('air mass by Kasten & Young 1989', () => {
    const table: [number, number][] = [
      [30, 1.9942928525],
      [45, 1.412595252],
      [60, 1.1539922334],
      [90, 0.9997119919],
      [10, 5.586],
    ];
    const pairs = table.map(([elevation, mass]): [number, number] => [airMass(90 - elevation), mass]);
    expectClose('air mass', pairs, { mean: 0.00001, max: 0.00005 });
  });

  it('brightens as the air clears and with height, and reaches planes', () => {
    const place = { latitude: 39.7, longitude: -105.2, elevation: 1830 };
    const sun = sunPosition(Date.UTC(2025, 5, 21, 19), place);
    const clean = clearSky(sun, place, 2);
    const hazy = clearSky(sun, place, 5);
    expect(clean.beamNormal).toBeGreaterThan(hazy.beamNormal);
    expect(clean.globalHorizontal).toBeGreaterThan(clearSky(sun, { elevation: 0 }, 2).globalHorizontal);
    expect(irradianceOnPlane({ tilt: 30, azimuth: 180 }, sun, clean).total).toBeGreaterThan(900);
  });
});
