import { describe, expect, it } from 'vitest';
import { covering, coverings, coveringsFor, isCovering } from '../../core/plan/coverings.ts';
import type { Covering, Figure } from '../../core/plan/coverings.ts';
import { lampTechnologies, lampTechnology } from '../../core/plan/lamps.ts';

function figuresOf(value: object): Figure[] {
  if ('value' in value && 'source' in value) return [value as Figure];
  return Object.values(value).flatMap((part: unknown) =>
    typeof part === 'object' && part !== null ? figuresOf(part) : [],
  );
}

describe('coverings', () => {
  it('has every kind of cover a grower asks for', () => {
    const wanted = [
      'glass-3',
      'glass-4',
      'double-glass',
      'low-e-double-glass',
      'twin-wall-4',
      'twin-wall-6',
      'twin-wall-10',
      'multi-wall-16',
      'acrylic-twin-wall',
      'polythene',
      'thermal-polythene',
      'double-polythene',
      'bubble-lining',
      'aluminised-screen',
      'woven-screen',
      'fleece-17',
      'fleece-30',
      'fleece-60',
      'tent-fabric',
      'brick-102',
      'brick-215',
      'timber-board',
      'insulated-panel',
      'stone-400',
      'open',
    ];
    expect(wanted.filter((id) => !isCovering(id))).toEqual([]);
    expect(new Set(coverings.map((each) => each.id)).size).toBe(coverings.length);
  });

  it.each(coverings.map((each) => [each.id, each] as const))(
    '%s: each number finite, not negative, with a source',
    (_id, each) => {
      const figures = figuresOf(each);
      expect(figures.length).toBeGreaterThanOrEqual(9);
      for (const { value, source } of figures) {
        expect(Number.isFinite(value) && value >= 0).toBe(true);
        expect(source.length).toBeGreaterThan(3);
      }
    },
  );

  it.each(coverings.map((each) => [each.id, each] as const))(
    '%s: no face passes and takes up more long-wave than comes',
    (_id, each: Covering) => {
      for (const emissivity of [each.emissivityInside.value, each.emissivityOutside.value]) {
        expect(emissivity + each.longWaveTransmittance.value).toBeLessThanOrEqual(1 + 1e-12);
      }
      if (each.optics.kind === 'measured') {
        const { normalTransmittance, reflectance } = each.optics;
        expect(normalTransmittance.value + reflectance.value).toBeLessThanOrEqual(1 + 1e-12);
      }
    },
  );

  it('polythene is not glass: half transparent to the sky, thermal film less, glass not at all', () => {
    const longWave = (id: string) => covering(id).longWaveTransmittance.value;
    expect(longWave('polythene')).toBeGreaterThanOrEqual(0.5);
    expect(longWave('thermal-polythene')).toBeLessThan(longWave('polythene'));
    expect(longWave('glass-3')).toBe(0);
  });

  it('refuses an id it does not know', () => {
    expect(() => covering('cling-film')).toThrow('expected a covering of the catalogue, got cling-film');
    expect(
      coveringsFor('lining', 'screen').every((each) => each.use === 'lining' || each.use === 'screen'),
    ).toBe(true);
  });
});

describe('lamp technologies', () => {
  it.each(lampTechnologies.map((each) => [each.id, each] as const))(
    '%s: typical efficacy between low and high',
    (_id, each) => {
      expect(each.efficacy.low).toBeLessThanOrEqual(each.efficacy.typical);
      expect(each.efficacy.typical).toBeLessThanOrEqual(each.efficacy.high);
      // Beyond 4.2 µmol/J no lamp can be (Kusuma, Pattison & Bugbee 2020: blue and red 4.1).
      expect(each.efficacy.high).toBeLessThan(4.2);
      expect(figuresOf(each).length).toBeGreaterThanOrEqual(5);
    },
  );

  // Common practice, no source: 75 W of good LED gives about the light of 300 W of T5.
  it('75 W of good LED replace 300 W of T5: a factor between 2.5 and 4.5 in watts, at the ends of both ranges too', () => {
    const led = lampTechnology('led-white').efficacy;
    const t5 = lampTechnology('t5-fluorescent').efficacy;
    expect(led.typical / t5.typical).toBeGreaterThan(2.5);
    expect(led.typical / t5.typical).toBeLessThan(4.5);
    expect(led.low / t5.high).toBeGreaterThan(2.5);
    expect(led.high / t5.low).toBeLessThan(4.5);
  });

  it('stands in the order Nelson & Bugbee 2014 measured: HPS electronic, ceramic metal halide, HPS magnetic', () => {
    const typical = (id: string) => lampTechnology(id).efficacy.typical;
    expect(typical('hps-electronic')).toBeGreaterThan(typical('ceramic-metal-halide'));
    expect(typical('ceramic-metal-halide')).toBeGreaterThan(typical('hps-magnetic'));
  });

  it('refuses an id it does not know', () => {
    expect(() => lampTechnology('candle')).toThrow('expected a lamp technology of the catalogue, got candle');
  });
});
