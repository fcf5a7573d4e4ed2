import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { proportionalOpening } from '../../core/heat/index.ts';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Air [°C] without exchange, answer to a watt [K W⁻¹], most exchange [W K⁻¹], air outside, opening temperature and band. */
const cases = fc.record({
  free: number(-20, 60),
  response: number(1e-4, 2),
  most: number(0, 5000),
  outside: number(-30, 45),
  openAt: number(0, 40),
  band: number(0.5, 15),
});

/** Air after the exchange: the root of T = free + response·most·opening·(outside − T). */
const after = (c: { free: number; response: number; most: number; outside: number }, opening: number) =>
  (c.free + c.response * c.most * opening * c.outside) / (1 + c.response * c.most * opening);

describe('a proportional vent or fan', () => {
  it('opens between 0 and 1, and not at all where the air is below its opening temperature', () => {
    fc.assert(
      fc.property(cases, (c) => {
        const opening = proportionalOpening(c.free, c.response, c.most, c.outside, c.openAt, c.band);
        expect(opening).toBeGreaterThanOrEqual(0);
        expect(opening).toBeLessThanOrEqual(1);
        if (c.free <= c.openAt) expect(opening).toBe(0);
      }),
    );
  });

  it('never cools the air below its opening temperature by opening', () => {
    fc.assert(
      fc.property(cases, (c) => {
        const opening = proportionalOpening(c.free, c.response, c.most, c.outside, c.openAt, c.band);
        expect(after(c, opening)).toBeGreaterThanOrEqual(Math.min(c.free, c.openAt) - 1e-9);
      }),
    );
  });

  it('stands where its band says for the air that results: part open within the band, wide open above it', () => {
    fc.assert(
      fc.property(cases, (c) => {
        fc.pre(c.free > c.openAt && c.most > 1e-3 && c.outside < c.openAt);
        const opening = proportionalOpening(c.free, c.response, c.most, c.outside, c.openAt, c.band);
        const share = (after(c, opening) - c.openAt) / c.band;
        if (opening < 1) expect(Math.abs(share - opening)).toBeLessThan(1e-6);
        else expect(share).toBeGreaterThan(1 - 1e-6);
      }),
    );
  });

  it('opens no less where the air would be warmer', () => {
    fc.assert(
      fc.property(cases, number(0, 10), (c, more) => {
        fc.pre(c.outside < c.openAt);
        const opening = (free: number) =>
          proportionalOpening(free, c.response, c.most, c.outside, c.openAt, c.band);
        expect(opening(c.free + more)).toBeGreaterThanOrEqual(opening(c.free) - 1e-9);
      }),
    );
  });
});
