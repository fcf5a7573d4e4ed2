import type { Covering, Figure } from '../plan/coverings.ts';
import type { ShapeOf } from '../plan/shapes.ts';

/** One layer of a wall [m, W m⁻¹ K⁻¹, J m⁻³ K⁻¹]. */
export interface WallLayer {
  readonly thickness: number;
  readonly conductivity: number;
  readonly capacity: number;
}

type Build = NonNullable<ShapeOf<'listed'>['surfaces'][number]['build']>;

/** Walls lighter than this hold too little to matter: they are massless surfaces [J m⁻² K⁻¹] (a brick wall holds 150 000 and more). */
const heavy = 20000;

/** Layers of a covering of the catalogue that is a wall: one layer of its material; null where it is light. */
export function layersOfCovering(cover: Covering): WallLayer[] | null {
  const { resistance, heatCapacity } = cover;
  return cover.use === 'wall' ? oneLayer(resistance.value, heatCapacity.value) : null;
}

/**
 * A wall of one material given by its resistance [m² K W⁻¹] and capacity [J m⁻² K⁻¹]; null where it is light.
 * Only the two sums count for conduction, so the layer is written a metre thick.
 */
export function oneLayer(resistance: number, capacity: number): WallLayer[] | null {
  if (!(capacity >= heavy)) return null;
  return [{ thickness: 1, conductivity: 1 / resistance, capacity }];
}

/** Layers of a listed surface's own build-up; null for panes and for walls that hold next to nothing. */
export function layersOfBuild(build: Build): WallLayer[] | null {
  if (build.kind === 'panes') return null;
  const layers = build.layers.map(({ thickness, conductivity, density, specificHeat }) => ({
    thickness,
    conductivity,
    capacity: density * specificHeat,
  }));
  const capacity = layers.reduce((sum, layer) => sum + layer.capacity * layer.thickness, 0);
  return capacity >= heavy / 10 ? layers : null;
}

const users = (value: number): Figure => ({ value, source: 'the plan', confidence: 'high' });

/** A covering made from a listed surface's own build-up; its numbers come from the plan. */
export function coveringOfBuild(name: string, build: Build): Covering {
  const common = {
    id: `own ${name} ${JSON.stringify(build)}`,
    name,
    longWaveTransmittance: users(0),
    airShare: users(1),
    price: users(0),
    life: users(40),
  };
  if (build.kind === 'panes') {
    const gaps = build.panes - 1;
    const glass = (build.panes * build.thickness) / build.conductivity;
    return {
      ...common,
      use: 'glazing',
      resistance: users(glass + gaps * build.gapResistance),
      emissivityInside: users(build.emissivity),
      emissivityOutside: users(build.emissivity),
      optics: {
        kind: 'slab',
        layers: build.panes,
        refractiveIndex: users(build.refractiveIndex),
        extinction: users(build.extinction),
        parExtinction: users(build.extinction),
        thickness: users(build.thickness),
      },
      heatCapacity: users(0),
    };
  }
  const { layers } = build;
  const sum = (of: (layer: (typeof layers)[number]) => number) =>
    layers.reduce((total, layer) => total + of(layer), 0);
  return {
    ...common,
    use: 'wall',
    resistance: users(sum((layer) => layer.thickness / layer.conductivity)),
    emissivityInside: users(build.emissivityInside),
    emissivityOutside: users(build.emissivity),
    optics: { kind: 'opaque', absorptance: users(build.absorptance) },
    heatCapacity: users(sum((layer) => layer.thickness * layer.density * layer.specificHeat)),
  };
}

/** Short-wave absorptance of the inner face of walls of the catalogue, 0–1 (building surfaces of middling colour, common practice, no source). */
export const usualInsideAbsorptance = 0.6;
