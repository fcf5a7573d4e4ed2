import { describe, expect, it } from 'vitest';
import type { Beam, Lamp } from '../../core/index.ts';
import { lampOf, lampPhotons } from '../../core/index.ts';

const narrow: Beam = {
  kind: 'file',
  photometry: {
    name: 'Narrow',
    vertical: [0, 2, 4, 6, 8, 10, 90],
    planes: [0],
    candela: [1000, 900, 500, 100, 10, 0, 0],
  },
  turned: 0,
};
const power = (value: number): Beam => ({ kind: 'cosine-power', power: value });

function read(length: number, width: number, beam: Beam, distance: number): Lamp {
  return lampOf({
    ...{ id: 'lamp', name: 'Lamp', technology: 'led-white', watts: 50, efficacy: 2.5, count: 1 },
    ...{ height: 0.4, length, width, on: '07:00', off: '19:00', beam },
    light: { kind: 'reading', value: 100, unit: 'ppfd', distance },
  });
}

describe('photons from a reading under a lamp', () => {
  // Under a face that fills what the beam comes from, every square metre gets what a square metre of it gives.
  it.each([
    ['a narrow file', 3, 3, narrow, 0.05],
    ['a narrow file', 1.2, 0.05, narrow, 0.05],
    ['the 80th power of the cosine', 3, 3, power(80), 0.05],
    ['the 80th power of the cosine', 3, 0.3, power(80), 0.1],
    ['the 40th power of the cosine', 3, 3, power(40), 0.05],
    ['the 10th power of the cosine', 3, 3, power(10), 0.1],
  ])(
    'close under %s, %d m by %d m: the reading times the face, within 1 %',
    (_, length, width, beam, far) => {
      expect(Math.abs(lampPhotons(read(length, width, beam, far)) / (100 * length * width) - 1)).toBeLessThan(
        0.01,
      );
    },
  );

  it.each([0.5, 1, 4, 20, 80])(
    'far under a small face of power %d: reading × distance² × 2π / (n + 1)',
    (n) => {
      const photons = lampPhotons(read(0.02, 0.02, power(n), 2));
      expect(photons / ((100 * 4 * 2 * Math.PI) / (n + 1))).toBeCloseTo(1, 2);
    },
  );
});
