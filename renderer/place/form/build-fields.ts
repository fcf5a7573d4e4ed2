import { coverings } from '../../../core/index.ts';
import type { ShapeOf } from '../../../core/index.ts';
import { choice, named, number, share, thickness } from '../../forms/fields.ts';
import type { Field } from '../../forms/fields.ts';
import type { Option } from '../../forms/option.ts';
import { optionsFrom } from './choices.ts';

export type Surface = ShapeOf<'listed'>['surfaces'][number];
export type Build = NonNullable<Surface['build']>;
export type Layers = Extract<Build, { kind: 'layers' }>;
export type Panes = Extract<Build, { kind: 'panes' }>;
export type Layer = Layers['layers'][number];

/** A brick wall of 215 mm (ISO 10456 for brickwork, from memory): a build-up to start from. */
export const firstLayer: Layer = { thickness: 0.215, conductivity: 0.77, density: 1800, specificHeat: 1000 };
export const firstLayers: Layers = {
  kind: 'layers',
  layers: [firstLayer],
  absorptance: 0.6,
  absorptanceInside: 0.6,
  emissivity: 0.9,
  emissivityInside: 0.9,
};

/** One pane of float glass of 4 mm: index 1.526, extinction 20 m⁻¹ (Duffie & Beckman for ordinary glass, from memory). */
export const firstPanes: Panes = {
  kind: 'panes',
  panes: 1,
  thickness: 0.004,
  conductivity: 1,
  refractiveIndex: 1.526,
  extinction: 20,
  gapResistance: 0.17,
  emissivity: 0.84,
};

export const layerFields: readonly Field<Layer>[] = [
  thickness('thickness', [0.1, 5000]),
  number('conductivity', 'Conducts heat', 'W/mK', [0.001, 400], { digits: 4 }),
  number('density', 'Density', 'kg/m³', [0, 12000], { hint: '0 for a layer that stores nothing' }),
  number('specificHeat', 'Specific heat', 'J/kgK', [0, 5000]),
];

export const layersFaceFields: readonly Field<Layers>[] = [
  share('absorptance', 'Outer face takes up of the sun', [0, 100]),
  share('absorptanceInside', 'Inner face takes up of the sun', [0, 100]),
  share('emissivity', 'Outer face gives off as heat rays', [0, 100], {
    hint: 'most things 90, bare metal 5 to 20',
  }),
  share('emissivityInside', 'Inner face gives off as heat rays', [0, 100]),
];

export const paneFields: readonly Field<Panes>[] = [
  thickness('thickness', [0.1, 50], 'Thickness of a pane'),
  number('extinction', 'Dims the sun', 'per m', [0, 300], { hint: 'clear glass 4 to 30' }),
  number('gapResistance', 'Resistance of the gap', 'm²K/W', [0, 2], { shown: (build) => build.panes === 2 }),
];

export const paneMoreFields: readonly Field<Panes>[] = [
  number('conductivity', 'Conducts heat', 'W/mK', [0.01, 5]),
  number('refractiveIndex', 'Refractive index', '', [1, 2.5]),
  share('emissivity', 'Gives off as heat rays', [0, 100]),
];

/** Values of the first list that stand for a build-up of the user’s own; no covering is called so. */
export const ownLayers = 'own layers';
export const ownPanes = 'own panes';
export const madeOfOptions: readonly Option[] = [
  ...coverings.map((each) => ({ value: each.id, name: each.name })),
  { value: ownLayers, name: 'Layers of my own' },
  { value: ownPanes, name: 'Panes of my own' },
];

/** What a surface is made of now, as a value of `madeOfOptions`. */
export function madeOf(surface: Surface): string {
  if (surface.build === null) return surface.covering ?? '';
  return surface.build.kind === 'layers' ? ownLayers : ownPanes;
}

/** Light passes panes only to the open air or a room. */
const behindPanes = (surface: Surface) =>
  surface.behind === 'room' || surface.behind === 'outdoors' ? surface.behind : 'outdoors';

export function madeInstead(surface: Surface, chosen: string): Partial<Surface> {
  if (chosen === ownLayers) return { covering: null, build: firstLayers };
  if (chosen === ownPanes) return { covering: null, build: firstPanes, behind: behindPanes(surface) };
  return { covering: chosen, build: null };
}

const sizeFields: readonly Field<Surface>[] = [
  named('name', 'Surface', '9rem'),
  number('area', 'Area', 'm²', [0.001, 10000]),
  number('tilt', 'Tilt (0 flat, 90 upright)', '°', [0, 180]),
  number('azimuth', 'Faces (180 south)', '°', [0, 360]),
];
const behinds = {
  outdoors: 'The open air',
  room: 'A room',
  ground: 'The ground',
  nothing: 'Nothing, no heat passes',
};

export function surfaceFields(surface: Surface): readonly Field<Surface>[] {
  const options = optionsFrom(behinds).filter(
    ({ value }) => surface.build?.kind !== 'panes' || value === 'outdoors' || value === 'room',
  );
  return [...sizeFields, choice('behind', 'Behind it', options)];
}
