/**
 * A leaf on one clear still night: 1 to 3 K below the air in the open, large leaves 0.5 to 1.5 K colder than small ones
 * (Leuning & Cremer 1988, Agric. For. Meteorol. 42, 121); under a cover less, by what the cover passes of long-wave.
 */
import { describe, expect, it } from 'vitest';
import { clearSkyEmissivity, covering, skyLongWave, skyTemperature } from '../../core/index.ts';
import {
  AIR,
  LEAF,
  buildNetwork,
  emptyDrive,
  initialState,
  outdoorLeaf,
  stepHeat,
} from '../../core/heat/index.ts';
import { bareHouse, planOf } from '../support/plans.ts';

/** Sky over air of a temperature and dew point without a cloud [°C]. */
const clearSky = (air: number, dew: number) => skyTemperature(skyLongWave(air, clearSkyEmissivity(dew)));

describe('a leaf in the open', () => {
  it.each([
    // Air and dew point of radiation-frost nights [°C].
    [4, 0],
    [0, -3],
    [-4, -7],
  ])('at %d °C under a clear sky and 0.5 to 2 m/s at 10 m: 1 to 3.5 K below the air', (air, dew) => {
    for (const wind of [0.5, 1, 2]) {
      const below = air - outdoorLeaf(air, clearSky(air, dew), wind);
      expect(below, `${wind} m/s`).toBeGreaterThan(1);
      expect(below, `${wind} m/s`).toBeLessThan(3.5);
    }
  });

  it('a large leaf is 0.5 to 1.5 K colder than a small one', () => {
    const sky = clearSky(0, -3);
    const difference = outdoorLeaf(0, sky, 1, 0.01) - outdoorLeaf(0, sky, 1, 0.06);
    expect(difference).toBeGreaterThan(0.5);
    expect(difference).toBeLessThan(1.5);
  });

  it('keeps its balance: what it loses to the sky the air and the ground give back', () => {
    const [air, sky, wind] = [1, -20, 1];
    const leaf = outdoorLeaf(air, sky, wind);
    const sigma = 5.670374419e-8;
    const emitted = (t: number) => sigma * (t + 273.15) ** 4;
    const lost = 0.95 * (2 * emitted(leaf) - emitted(sky) - emitted(air));
    const perKelvin = lost / (air - leaf);
    // Two sides of a 5 cm leaf in 0.2 to 0.5 m/s: 1.4 · 0.135 · √(u/d) · 29.3 J mol⁻¹ K⁻¹ each (Campbell & Norman 1998).
    const side = (speed: number) => 2 * 1.4 * 0.135 * Math.sqrt(speed / 0.05) * 29.3;
    expect(perKelvin).toBeGreaterThan(side(0.2));
    expect(perKelvin).toBeLessThan(side(0.5));
  });

  it('cloud and wind bring it nearer to the air; a sky as warm as the air leaves it there', () => {
    expect(outdoorLeaf(0, -10, 1)).toBeGreaterThan(outdoorLeaf(0, -20, 1));
    expect(outdoorLeaf(0, -20, 3)).toBeGreaterThan(outdoorLeaf(0, -20, 1));
    expect(outdoorLeaf(3, 3, 1)).toBeCloseTo(3, 9);
  });
});

/** Leaf less air [K] on a bench after a night of 14 h at 0 °C under a clear sky. */
function underCover(cover: string): number {
  const plan = planOf({ ...bareHouse, covering: cover, vents: [], standing: 'bench' });
  const network = buildNetwork(plan.places[0], plan.site, 101325);
  const state = initialState(network, 8, 0.004);
  const drive = emptyDrive(network, 300);
  Object.assign(drive, {
    outdoor: 0,
    sky: clearSky(0, -3),
    wind: 1,
    humidity: 0.003,
    deepGround: 8,
    wetness: 0.12,
  });
  drive.night = true;
  for (let step = 0; step < 14 * 12; step++) stepHeat(network, state, drive);
  return state.temperature[LEAF] - state.temperature[AIR];
}

describe('a leaf under a cover', () => {
  it('is less far below its air than in the open, in the order of what the covers pass of long-wave', () => {
    const covers = ['polythene', 'thermal-polythene', 'glass-3'];
    const passes = covers.map((id) => covering(id).longWaveTransmittance.value);
    expect(passes).toEqual([...passes].sort((a, b) => b - a));
    const open = outdoorLeaf(0, clearSky(0, -3), 1);
    const leaves = covers.map(underCover);
    if (process.env.SHOW_ERRORS) console.info(open, leaves);
    expect([open, ...leaves]).toEqual([open, ...leaves].sort((a, b) => a - b));
    expect(Math.abs(leaves[2])).toBeLessThan(0.5);
  });
});
