import { describe, expect, it } from 'vitest';
import { normalOf } from '../../core/fabric/index.ts';
import { irradianceOnPlane } from '../../core/sun/index.ts';
import { planeSeries, skySeries } from '../../core/light/index.ts';
import { sampleYear } from './sample-year.ts';

const year = sampleYear();
const sky = skySeries(year);

describe('a plane through the year', () => {
  // The same Perez terms as sun/, regrouped. They part by more than rounding only where the horizon term is negative
  // enough to be cut at zero: here by the even part alone, there by the sum. No such step occurs in this year.
  it.each([
    [0, 0],
    [32, 180],
    [90, 180],
    [90, 15],
    [54, 260],
  ])('tilt %d°, azimuth %d°: beam and sky as irradianceOnPlane gives them step by step', (tilt, azimuth) => {
    const series = planeSeries(normalOf(tilt, azimuth), sky, 0.2);
    let worst = 0;
    for (let j = 0; j < sky.index.length; j += 7) {
      const k = sky.index[j];
      const expected = irradianceOnPlane(
        { tilt, azimuth },
        {
          apparentZenith: 90 - year.sunElevation[k],
          azimuth: year.sunAzimuth[k],
          extraterrestrialNormal: year.extraterrestrialNormal[k],
        },
        {
          beamNormal: year.beamNormal[k],
          diffuseHorizontal: year.diffuseHorizontal[k],
          globalHorizontal: year.globalHorizontal[k],
        },
        { albedo: 0.2 },
      );
      worst = Math.max(worst, Math.abs(series.beam[j] + series.diffuse[j] - expected.total));
    }
    expect(worst).toBeLessThan(1e-9);
  });

  it('takes the ground’s reflectance step by step where snow comes and goes', () => {
    const wall = normalOf(90, 180);
    const snow = new Float64Array(year.n).fill(0.2);
    const [even, stepped] = [planeSeries(wall, sky, 0.2), planeSeries(wall, sky, snow)];
    expect(stepped.diffuse).toEqual(even.diffuse);
    const at = Math.floor(sky.index.length / 2);
    snow[sky.index[at]] = 0.65;
    const white = planeSeries(wall, sky, snow);
    expect(white.diffuse[at] - even.diffuse[at]).toBeCloseTo(sky.global[at] * 0.5 * 0.45, 9);
    expect(white.diffuse[at + 1]).toBe(even.diffuse[at + 1]);
    // A level plane sees no ground.
    expect(planeSeries([0, 0, 1], sky, snow).diffuse[at]).toBe(planeSeries([0, 0, 1], sky, 0.2).diffuse[at]);
  });
});
