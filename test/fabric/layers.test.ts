import { describe, expect, it } from 'vitest';
import { standardFilms, uValue, withInnerLayer } from '../../core/fabric/index.ts';

const glass = {
  resistance: 0.004,
  emissivityInside: 0.837,
  emissivityOutside: 0.837,
  longWaveTransmittance: 0,
};

describe('layers', () => {
  it('EN 673 films of glass are 8.0 and 23, and its U is 5.80', () => {
    expect(standardFilms(glass).inside).toBeCloseTo(8, 9);
    expect(standardFilms(glass).outside).toBeCloseTo(23, 9);
    expect(Math.abs(uValue(glass) - 5.8)).toBeLessThan(0.005);
  });

  it('an opaque inner layer adds its resistance and shows its own face', () => {
    const inner = {
      resistance: 0.1,
      emissivityInside: 0.4,
      emissivityOutside: 0.9,
      longWaveTransmittance: 0,
    };
    const both = withInnerLayer(glass, inner);
    expect(both.resistance).toBeCloseTo(0.104, 12);
    expect(both).toMatchObject({
      emissivityInside: 0.4,
      emissivityOutside: 0.837,
      longWaveTransmittance: 0,
    });
  });

  // By hand: reflected by glass 0.163, by the layer 0.1, between them 1/(1 − 0.0163) = 1.01657; passed to the glass
  // 0.3 × 0.837 × 1.01657 = 0.25526; in parallel with 0.1: 1/(10 + 5.1 × 0.25526) = 0.088481.
  it('a layer that lets long-wave by loses part of its resistance', () => {
    const inner = {
      resistance: 0.1,
      emissivityInside: 0.6,
      emissivityOutside: 0.6,
      longWaveTransmittance: 0.3,
    };
    const both = withInnerLayer(glass, inner);
    expect(both.resistance).toBeCloseTo(0.004 + 0.088481, 6);
    expect(both.emissivityInside).toBeCloseTo(0.6 + 0.25526, 5);
    expect(both.longWaveTransmittance).toBe(0);
  });

  it('two films let by a little more than the product of their shares', () => {
    const film = {
      resistance: 0.0006,
      emissivityInside: 0.35,
      emissivityOutside: 0.35,
      longWaveTransmittance: 0.55,
    };
    expect(withInnerLayer(film, film).longWaveTransmittance).toBeCloseTo(0.3025 / 0.99, 9);
  });
});
