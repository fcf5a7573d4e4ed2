import { describe, expect, it } from 'vitest';
import { surfacesOf, toPlace } from '../../core/fabric/index.ts';
import type { Place } from '../../core/plan/schema.ts';
import { onCurve } from '../../core/light/curve.ts';
import { directionalGain, locate, readGain } from '../../core/light/gain.ts';
import { openingsOf } from '../../core/light/openings.ts';
import { benchOf } from '../../core/light/place-gains.ts';
import { litArea, receiverOf } from '../../core/light/shadow.ts';
import { coldFrame, house, leanTo, tunnel, windowBay } from '../fabric/sample-places.ts';

/** Errors of the table against the ray sum at its own direction, over directions between the table's. */
function tableErrors(place: Place): { mean: number; bias: number; most: number } {
  const enclosure = surfacesOf(place);
  const openings = openingsOf(place, enclosure);
  const receiver = receiverOf(benchOf(place, enclosure));
  const gain = directionalGain(receiver, openings, enclosure.azimuth, []);
  const at = { index: 0, next: 0, share: 0, rise: 0 };
  let sum = 0;
  let signed = 0;
  let most = 0;
  let count = 0;
  for (let azimuth = 1.3; azimuth < 360; azimuth += 6.7) {
    for (let elevation = 1.1; elevation < 66; elevation += 2.3) {
      const [az, el] = [(azimuth * Math.PI) / 180, (elevation * Math.PI) / 180];
      const world = [Math.cos(el) * Math.sin(az), Math.cos(el) * Math.cos(az), Math.sin(el)] as const;
      const toSun = toPlace(world, enclosure.azimuth);
      let exact = 0;
      for (const { polygon, normal, solar } of openings) {
        const cosine = normal[0] * toSun[0] + normal[1] * toSun[1] + normal[2] * toSun[2];
        if (polygon !== null && cosine > 0)
          exact += (litArea(receiver, polygon, toSun) / receiver.area) * onCurve(solar, cosine);
      }
      locate(at, azimuth, elevation);
      const error = readGain(gain.solar, at) - exact;
      sum += Math.abs(error);
      signed += error;
      most = Math.max(most, Math.abs(error));
      count++;
    }
  }
  return { mean: sum / count, bias: Math.abs(signed / count), most };
}

describe('the table of directions', () => {
  // Straight lines between 6° × 3° steps. The largest errors are where an opening's edge passes over the bench, or the
  // sun grazes a face; over a day they come and go, so mean and bias count.
  it.each([
    ['even-span', house, 0.0009, 0.0005, 0.0148],
    ['lean-to', leanTo, 0.0009, 0.0005, 0.0148],
    ['tunnel', tunnel, 0.0009, 0.0005, 0.0148],
    ['cold-frame', coldFrame, 0.0009, 0.0005, 0.0148],
    ['window-bay', windowBay, 0.0009, 0.0005, 0.0148],
  ] as const)('%s keeps to the rays', (_kind, place, mean, bias, most) => {
    const errors = tableErrors(place);
    expect(errors.mean).toBeLessThan(mean);
    expect(errors.bias).toBeLessThan(bias);
    expect(errors.most).toBeLessThan(most);
  });
});
