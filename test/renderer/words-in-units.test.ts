import { describe, expect, it } from 'vitest';
import { inUnits } from '../../renderer/state/words-in-units.ts';

const metric = { temperature: 'C', length: 'm' } as const;
const american = { temperature: 'F', length: 'ft' } as const;

describe('sentences of the engine in the user’s units', () => {
  it('turns temperatures and differences to °F', () => {
    expect(inUnits('Agaves: 2.0 K below what they bear, set to -5 °C.', american)).toBe(
      'Agaves: 3.6\u00a0°F below what they bear, set to 23\u00a0°F.',
    );
  });

  it('says degrees for differences in °C and keeps temperatures', () => {
    expect(inUnits('6.0 K to spare at 5.5 °C', metric)).toBe('6.0\u00a0°C to spare at 5.5\u00a0°C');
  });

  it('turns both ends of a span, and leaves other figures and compound units alone', () => {
    expect(inUnits('5.0 to 12.5 °C, 14 h, 137 W/K, 8 K h', american)).toBe(
      '41.0 to 54.5\u00a0°F, 14 h, 137 W/K, 14\u00a0°F h',
    );
  });
});
