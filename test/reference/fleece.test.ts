/**
 * Fleece over plants on the ground on a clear still night: 1 K (thin) to 5 K (thick) of protection (FAO frost
 * protection, Snyder & de Melo-Abreu 2005); extension ratings 2–4, 4–6, 6–8 °F for light, medium and heavy cloth (weak).
 */
import { describe, expect, it } from 'vitest';
import { covering } from '../../core/index.ts';
import { LEAF, buildNetwork, emptyDrive, initialState, stepHeat } from '../../core/heat/index.ts';
import { bareHouse, planOf } from '../support/plans.ts';

/** Leaf [°C] after 14 h at −2 °C under a clear sky; everything begins at 8 °C. */
function leafAtDawn(fleece: object | null, standing: 'ground' | 'bench', cover = 'polythene'): number {
  const plan = planOf({ ...bareHouse, covering: cover, vents: [], standing, fleece });
  const network = buildNetwork(plan.places[0], plan.site, 101325);
  const state = initialState(network, 8, 0.004);
  const drive = emptyDrive(network, 300);
  Object.assign(drive, {
    outdoor: -2,
    sky: -20,
    wind: 1,
    humidity: 0.003,
    deepGround: 7,
    wetness: 0.12,
    night: true,
  });
  drive.fleeceLaid = fleece !== null;
  for (let step = 0; step < 14 * 12; step++) stepHeat(network, state, drive);
  return state.temperature[LEAF];
}

const cloth = (id: string, layers = 1) => ({ covering: id, layers, laidWhen: 'night' });
const weights = ['fleece-17', 'fleece-30', 'fleece-60'];

describe('fleece through one clear night', () => {
  for (const cover of ['polythene', 'glass-3']) {
    it(`under ${cover}, on the ground: 1 to 5 K at the leaf, more with weight and with a second layer`, () => {
      const bare = leafAtDawn(null, 'ground', cover);
      const lifts = weights.map((id) => leafAtDawn(cloth(id), 'ground', cover) - bare);
      if (process.env.SHOW_ERRORS) console.info(cover, lifts);
      for (const lift of lifts) {
        expect(lift).toBeGreaterThan(1);
        expect(lift).toBeLessThan(5);
      }
      expect(lifts).toEqual([...lifts].sort((a, b) => a - b));
      expect(leafAtDawn(cloth('fleece-17', 2), 'ground', cover) - bare).toBeGreaterThan(lifts[0]);
    });
  }

  it('hanging to the bench only it gives less than down to the floor, which keeps giving warmth, but still something', () => {
    const lift = (hangs: 'floor' | 'bench') =>
      leafAtDawn({ ...cloth('fleece-30'), hangs }, 'bench') - leafAtDawn(null, 'bench');
    if (process.env.SHOW_ERRORS) console.info('bench', lift('bench'), lift('floor'));
    expect(lift('bench')).toBeLessThan(lift('floor'));
    expect(lift('bench')).toBeGreaterThan(0);
  });
});

describe('the cloths of the catalogue', () => {
  it('17 g passes 0.85 of the light (WSU FS089E), 31–68 g 0.30–0.50; heavier ones pass less heat and air too', () => {
    const [thin, middle, thick] = weights.map((id) => covering(id));
    const light = (each: typeof thin) =>
      each.optics.kind === 'measured' ? each.optics.parTransmittance.value : NaN;
    expect(light(thin)).toBe(0.85);
    expect(light(thick)).toBeGreaterThanOrEqual(0.3);
    expect(light(thick)).toBeLessThanOrEqual(0.5);
    for (const of of ['longWaveTransmittance', 'airShare'] as const) {
      expect(thin[of].value).toBeGreaterThan(middle[of].value);
      expect(middle[of].value).toBeGreaterThan(thick[of].value);
    }
    expect(thick.resistance.value).toBeGreaterThan(thin.resistance.value);
  });
});
