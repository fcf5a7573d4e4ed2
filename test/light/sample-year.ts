import { emptySteps, fillSun } from '../../core/weather/index.ts';
import type { OutdoorSteps } from '../../core/weather/index.ts';

/**
 * A made-up year of sun at 54° N, 6.5° W: clear and cloudy days by turns, in 15-min steps. Clear beam
 * 900·exp(−0.12/sin h) W m⁻² with a thin blue sky, else an even grey sky; only the geometry is true to anything.
 */
export function sampleYear(days = 365): OutdoorSteps {
  const steps = emptySteps(Date.UTC(2023, 0, 1), 15, days * 96);
  steps.pressure.fill(101325);
  fillSun(steps, 54, -6.5);
  for (let k = 0; k < steps.n; k++) {
    const sine = Math.sin((steps.sunElevation[k] * Math.PI) / 180);
    if (!(sine > 0)) continue;
    const cloudy = Math.floor(k / 96) % 5 < 3;
    const beam = cloudy ? 0 : 900 * Math.exp(-0.12 / sine);
    steps.beamNormal[k] = beam;
    steps.diffuseHorizontal[k] = cloudy ? 220 * sine : 90 * Math.sqrt(sine);
    steps.globalHorizontal[k] = beam * sine + steps.diffuseHorizontal[k];
  }
  return steps;
}

export const sum = (values: Float64Array): number => values.reduce((a, b) => a + b, 0);
