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
});
