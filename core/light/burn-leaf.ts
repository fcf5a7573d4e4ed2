import type { Lamp } from '../plan/equipment.ts';
import { lampTechnology, wattShares } from '../plan/lamps.ts';
import { lampPhotons, lampWatts } from './lamps.ts';

/** Share of 400–700 nm light a thick green leaf takes up (0.80–0.90, Campbell & Norman 1998, ch. 11; from memory). */
export const lightAbsorptance = 0.85;

/** Long-wave emissivity of leaves (Campbell & Norman 1998: 0.94–0.99), and the Stefan–Boltzmann constant [W m⁻² K⁻⁴]. */
const emissivity = 0.95;
const stefanBoltzmann = 5.670374e-8;

/** Size of a leaf along the rising air [m] (rosette leaf; common practice, no source). */
const leafSize = 0.05;

/** Share of a leaf's under side that is free in a rosette; the rest lies on its neighbours (estimate, no source). */
export const freeUnderside = 0.5;

/** Air near 25 °C: conductivity [W m⁻¹ K⁻¹], kinematic viscosity and thermal diffusivity [m² s⁻¹] (handbook tables). */
const air = { conductivity: 0.026, viscosity: 1.56e-5, diffusivity: 2.2e-5 };
const gravity = 9.81;

/**
 * Heat taken up by a leaf facing the lamps [W m⁻²] under a photon flux density of theirs [µmol m⁻² s⁻¹]: light, and
 * the radiation beyond 700 nm that is taken to spread as the light does. Lamps share the spot as they share the photons.
 */
export function leafLoad(lamps: readonly Lamp[], ppfd: number): number {
  let [photons, heat] = [0, 0];
  for (const lamp of lamps) {
    const technology = lampTechnology(lamp.technology);
    const [flux, watts] = [lampPhotons(lamp), lampWatts(lamp)];
    const infrared = watts > 0 ? wattShares(technology, flux / watts).infrared : 0;
    photons += flux;
    heat += (flux / technology.photonsPerJoule.value) * lightAbsorptance;
    heat += watts * infrared * technology.infraredAbsorptance.value;
  }
  return photons > 0 ? (ppfd * heat) / photons : 0;
}

/**
 * Heat a dry leaf loses to still air and to surroundings at the air's temperature [W m⁻²] where it stands `over` the
 * air [K]: free convection above (Nu = 0.54 Ra^¼) and below (0.27 Ra^¼; McAdams 1954) and long-wave radiation.
 */
function leafLoss(over: number, airTemperature: number, underside: number): number {
  const kelvin = airTemperature + 273.15;
  const rayleigh = (gravity * over * leafSize ** 3) / (kelvin * air.viscosity * air.diffusivity);
  const side = (air.conductivity / leafSize) * rayleigh ** 0.25 * over;
  const radiation = emissivity * stefanBoltzmann * ((kelvin + over) ** 4 - kelvin ** 4);
  return side * (0.54 + 0.27 * underside) + radiation * (1 + underside);
}

/**
 * How far a leaf that transpires next to nothing, as succulents do by day, stands over still air [K] at a heat load
 * [W m⁻²]. @param airTemperature [°C] @param underside share of its under side that is free, 0–1
 */
export function leafOverAir(load: number, airTemperature: number, underside = freeUnderside): number {
  if (!(load >= 0 && load < 1e5)) throw new Error(`expected a heat load of 0 to 100,000 W m⁻², got ${load}`);
  if (!(airTemperature > -273)) throw new Error(`expected an air temperature in °C, got ${airTemperature}`);
  // The loss rises with every kelvin: halving the span settles it to a millikelvin.
  let [low, high] = [0, 1000];
  while (high - low > 1e-3) {
    const middle = (low + high) / 2;
    if (leafLoss(middle, airTemperature, underside) < load) low = middle;
    else high = middle;
  }
  return load === 0 ? 0 : (low + high) / 2;
}
