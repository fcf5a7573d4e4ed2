import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lampOf, lampTechnologies, lampTechnology } from '../../core/index.ts';
import { leafLoad, leafOverAir } from '../../core/light/burn-leaf.ts';
import { burnRisk, nearestDistance } from '../../core/light/burn.ts';
import type { BurnInput } from '../../core/light/burn.ts';

const lampAs = (technology: string, part: object = {}) =>
  lampOf({
    id: technology,
    name: 'The lamp',
    technology,
    watts: 100,
    efficacy: lampTechnology(technology).efficacy.typical,
    count: 1,
    height: 1,
    length: 0.5,
    width: 0.5,
    on: '07:00',
    off: '19:00',
    ...part,
  });

const calm: BurnInput = {
  lamps: [lampAs('led-white')],
  ppfd: 200,
  hours: 12,
  daylight: 0,
  air: 22,
  plants: [{ name: 'Haworthia', most: 12, hot: 42 }],
};

describe('leaf over air', () => {
  // Nelson & Bugbee 2015, PLoS ONE 10(10):e0138930, abstract: with closed stomata and little wind a free leaf stands
  // about 8 K over air under LED and 12 K under sodium lamps (from memory, 1,000 µmol m⁻² s⁻¹). Here the air is quite
  // still and the leaf quite dry, so theirs are lower bounds, and half as much again an upper one.
  it.each([
    ['led-white', 8],
    ['hps-electronic', 12],
    ['hps-magnetic', 12],
  ])('%s at 1,000 µmol: above %d K, by less than half', (id, measured) => {
    const over = leafOverAir(leafLoad([lampAs(id)], 1000), 25, 1);
    expect(over).toBeGreaterThan(measured);
    expect(over).toBeLessThan(1.5 * measured);
  });

  // At 20 K over air of 25 °C, both sides free; worked by hand with g = 9.81 m s⁻², 0.05 m, 0.026 W m⁻¹ K⁻¹,
  // ν 1.56e-5 and α 2.2e-5 m² s⁻¹: Ra = 239,700, Ra^¼ = 22.13, convection 0.81 × 22.13 × 0.52 × 20 = 186.4 W m⁻²;
  // radiation 2 × 0.95 × 5.670e-8 × (318.15⁴ − 298.15⁴) = 252.5 W m⁻²; together 438.9 (derived).
  it('438.9 W/m² hold a free leaf 20 K over air of 25 °C', () => {
    expect(Math.abs(leafOverAir(438.9, 25, 1) - 20)).toBeLessThan(0.02);
  });

  it('no load, no difference; more load, or less of the under side free, a hotter leaf', () => {
    expect(leafOverAir(0, 20)).toBe(0);
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 3000, noNaN: true }),
        fc.double({ min: -10, max: 45, noNaN: true }),
        (load, air) => {
          const over = leafOverAir(load, air);
          expect(over).toBeGreaterThan(0);
          expect(leafOverAir(load * 1.1, air)).toBeGreaterThan(over);
          expect(leafOverAir(load, air, 0)).toBeGreaterThan(over);
          expect(leafOverAir(load, air, 1)).toBeLessThan(over);
        },
      ),
    );
  });

  it('two lamps share the spot by their photons: the load lies between theirs', () => {
    const [cool, hot] = [lampAs('led-white'), lampAs('hps-magnetic')];
    const both = leafLoad([cool, hot], 500);
    expect(both).toBeGreaterThan(leafLoad([cool], 500));
    expect(both).toBeLessThan(leafLoad([hot], 500));
    expect(leafLoad([cool, cool], 500)).toBeCloseTo(leafLoad([cool], 500), 9);
  });

  it('the load follows the light: twice the light, twice the heat, whatever the lamp', () => {
    for (const { id } of lampTechnologies) {
      expect(leafLoad([lampAs(id)], 400)).toBeCloseTo(2 * leafLoad([lampAs(id)], 200), 9);
    }
  });

  it('refuses what is no load or no temperature', () => {
    expect(() => leafOverAir(NaN, 20)).toThrow('expected a heat load');
    expect(() => leafOverAir(-1, 20)).toThrow('expected a heat load');
    expect(() => leafOverAir(100, NaN)).toThrow('expected an air temperature');
  });
});

describe('burn risk', () => {
  it('is none in words and level for a moderate lamp', () => {
    expect(burnRisk(calm)).toMatchObject({ ppfd: 200, level: 'none', words: '' });
    expect(burnRisk(calm).leafOver).toBeGreaterThan(2);
  });

  it('says what the light does: watch over the most a lot bears, burn at half as much again', () => {
    // 300 µmol for 12 h are 13 mol, 500 are 22.
    expect(burnRisk({ ...calm, ppfd: 300 })).toMatchObject({
      level: 'watch',
      words: 'The brightest spot gets 13 mol a day, over the 12 at which Haworthia may bleach.',
    });
    expect(burnRisk({ ...calm, ppfd: 500 }).level).toBe('burn');
    expect(burnRisk({ ...calm, daylight: 10 }).level).toBe('burn');
  });

  it('says what the heat does, by the tenderest lot', () => {
    const warm = { ...calm, air: 35, plants: [...calm.plants, { name: 'Agave', most: 40, hot: 50 }] };
    const risk = burnRisk({ ...warm, ppfd: 250 });
    expect(risk.level).toBe('watch');
    expect(risk.words).toMatch(
      /^In still air of 35 °C the leaves under the brightest spot stand \d K over it, at 39 °C: near the 42 °C limit of Haworthia\.$/,
    );
    const worse = burnRisk({ ...warm, air: 39, ppfd: 250 });
    expect(worse.level).toBe('burn');
    expect(worse.words).toContain('over the 42 °C limit of Haworthia.');
  });

  it('does not blame the lamp for air that is hot by itself', () => {
    expect(burnRisk({ ...calm, air: 44, ppfd: 20 }).level).toBe('none');
  });

  it('knows heat without plants, but no bleaching', () => {
    expect(burnRisk({ ...calm, plants: [], ppfd: 900 }).level).toBe('none');
    expect(burnRisk({ ...calm, plants: [], ppfd: 900, air: 36 }).level).toBe('burn');
  });

  it('watches a hot lamp that hangs near, and puts the worst reason first', () => {
    const near = lampAs('hps-magnetic', { watts: 400, height: 0.3 });
    const risk = burnRisk({ ...calm, lamps: [near], ppfd: 150 });
    expect(risk).toMatchObject({
      level: 'watch',
      words: 'The lamp hangs 0.30 m over the tops; growers keep one of 400 W at 0.60 m or more.',
    });
    const both = burnRisk({ ...calm, lamps: [near], ppfd: 600 });
    expect(both.level).toBe('burn');
    expect(both.words.indexOf('brightest spot')).toBeLessThan(both.words.indexOf('hangs'));
  });

  it('lets a dimmed lamp hang nearer', () => {
    const full = lampAs('led-white');
    expect(nearestDistance({ ...full, dimming: 0.5 })).toBeLessThan(nearestDistance(full));
    expect(nearestDistance({ ...full, count: 4 })).toBeCloseTo(nearestDistance(full), 9);
  });

  it('is none where there is no lamp', () => {
    expect(burnRisk({ ...calm, lamps: [], ppfd: 0, daylight: 30, air: 45 })).toEqual({
      ppfd: 0,
      leafOver: 0,
      level: 'none',
      words: '',
    });
  });

  it('never falls as the light, the air or the hours rise', () => {
    const rank = { none: 0, watch: 1, burn: 2 };
    fc.assert(
      fc.property(
        fc.constantFrom(...lampTechnologies.map((one) => one.id)),
        fc.double({ min: 0, max: 1500, noNaN: true }),
        fc.double({ min: -5, max: 45, noNaN: true }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        (id, ppfd, air, hours) => {
          const input = { ...calm, lamps: [lampAs(id)], ppfd, air, hours };
          const level = rank[burnRisk(input).level];
          expect(rank[burnRisk({ ...input, ppfd: ppfd * 1.2 + 10 }).level]).toBeGreaterThanOrEqual(level);
          expect(rank[burnRisk({ ...input, air: air + 3 }).level]).toBeGreaterThanOrEqual(level);
          expect(rank[burnRisk({ ...input, hours: hours + 4 }).level]).toBeGreaterThanOrEqual(level);
        },
      ),
    );
  });

  it('refuses what is no number', () => {
    expect(() => burnRisk({ ...calm, ppfd: NaN })).toThrow('expected ppfd of 0 or more, got NaN');
    expect(() => burnRisk({ ...calm, hours: -1 })).toThrow('expected hours of 0 or more, got -1');
    expect(() => burnRisk({ ...calm, air: NaN })).toThrow('expected an air temperature');
  });
});
