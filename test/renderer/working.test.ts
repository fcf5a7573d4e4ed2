import { expect, it } from 'vitest';
import { workingText } from '../../renderer/shared/working.ts';

it('writes a working out with every input, its origin, the steps and the method', () => {
  const text = workingText({
    title: 'Heat loss of the tunnel',
    formula: 'Q = Σ U A ΔT',
    inputs: [{ name: 'Area', value: '24', unit: 'm²', origin: 'the plan' }],
    steps: ['24 m² × 6 W m⁻² K⁻¹ = 144 W K⁻¹'],
    result: '1,440 W',
    source: 'handbook sum',
  });
  expect(text.split('\n')).toEqual([
    'Heat loss of the tunnel',
    '',
    'Q = Σ U A ΔT',
    '',
    'From',
    '  Area: 24 m² (the plan)',
    '',
    'On the way',
    '  24 m² × 6 W m⁻² K⁻¹ = 144 W K⁻¹',
    '',
    '1,440 W',
    '',
    'Method: handbook sum',
  ]);
});
