import { emptySteps } from '../../core/weather/index.ts';
import type { OutdoorSteps } from '../../core/weather/index.ts';

/** One step with the sun at an azimuth and elevation [degrees], beam on a plane facing it and sky light [W m⁻²]. */
export function moment(azimuth: number, elevation: number, beam: number, diffuse: number): OutdoorSteps {
  const steps = emptySteps(0, 15, 1);
  steps.sunAzimuth[0] = azimuth;
  steps.sunElevation[0] = elevation;
  steps.beamNormal[0] = beam;
  steps.diffuseHorizontal[0] = diffuse;
  steps.globalHorizontal[0] = beam * Math.sin((elevation * Math.PI) / 180) + diffuse;
  steps.extraterrestrialNormal[0] = 1361;
  return steps;
}

/** An even grey sky: the sun stands within 3° of the horizon, where no brightening is put on. */
export const evenSky = (diffuse: number): OutdoorSteps => moment(180, 1, 0, diffuse);

/** A cover that takes nothing, so that geometry alone is left. */
export const nothing = { covering: 'open', frameShare: 0, dirtShare: 0 };
