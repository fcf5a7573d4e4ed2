import { describe, expect, it } from 'vitest';
import { covering, coverings } from '../../core/plan/coverings.ts';
import {
  assemblyTransmittance,
  coverAbsorptance,
  coverTransmittance,
  diffuseTransmittance,
  solarAbsorptance,
} from '../../core/light/index.ts';
import { onCurve, transmittanceCurve } from '../../core/light/curve.ts';

describe('covers', () => {
  it.each(coverings.map((each) => [each.id, each] as const))(
    '%s: shares within 0–1 at every angle, falling with it',
    (_id, each) => {
      let last = Infinity;
      for (let angle = 0; angle <= 90; angle++) {
        const passed = coverTransmittance(angle, each);
        expect(passed).toBeGreaterThanOrEqual(0);
        expect(passed).toBeLessThanOrEqual(1);
        // Uncoated plates pass a hair more at small angles than straight on (refraction): 1e-4 at most.
        expect(passed).toBeLessThanOrEqual(last + 1e-4);
        expect(coverAbsorptance(angle, each)).toBeGreaterThanOrEqual(0);
        last = passed;
      }
      expect(diffuseTransmittance(each)).toBeLessThanOrEqual(coverTransmittance(0, each) + 1e-12);
    },
  );

  it('a lining inside takes its share, and two layers reflect between them', () => {
    const layers = [covering('glass-3'), covering('bubble-lining')];
    const product = coverTransmittance(20, layers[0]) * coverTransmittance(20, layers[1]);
    const together = assemblyTransmittance(20, layers);
    expect(together).toBeGreaterThan(product);
    expect(together).toBeLessThan(product * 1.03);
  });

  it('glass absorbs some tenths of nothing much: 3 mm 0.09–0.11 of even sunlight', () => {
    expect(solarAbsorptance([covering('glass-3')])).toBeGreaterThan(0.09);
    expect(solarAbsorptance([covering('glass-3')])).toBeLessThan(0.11);
    expect(solarAbsorptance([covering('brick-215')])).toBeCloseTo(0.7, 12);
  });

  it('the year’s table keeps within 0.002 of the curve', () => {
    for (const id of ['glass-3', 'double-glass', 'twin-wall-10', 'polythene']) {
      const curve = transmittanceCurve([covering(id)], 'solar');
      for (let angle = 0.3; angle < 90; angle += 0.7) {
        const exact = coverTransmittance(angle, covering(id));
        expect(Math.abs(onCurve(curve, Math.cos((angle * Math.PI) / 180)) - exact)).toBeLessThan(0.002);
      }
    }
  });

  it('refuses an angle that is none', () => {
    expect(() => coverTransmittance(NaN, covering('glass-3'))).toThrow(
      'expected an incidence of 0 to 90 degrees, got NaN',
    );
    expect(() => coverTransmittance(91, covering('glass-3'))).toThrow(
      'expected an incidence of 0 to 90 degrees, got 91',
    );
  });
});
