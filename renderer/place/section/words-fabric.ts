import { coverings } from '../../../core/index.ts';
import type { Place, PlanSite, ShapeOf } from '../../../core/index.ts';
import { formatLength } from '../../state/units.ts';
import type { UnitPreferences } from '../../state/units.ts';

export function coveringName(id: string | null | undefined): string {
  return coverings.find((each) => each.id === id)?.name ?? 'none';
}

export const coverWords = (place: Place): string => coveringName(place.covering);

export const baseWords = (base: NonNullable<Place['baseWall']>, units: UnitPreferences): string =>
  `Base wall: ${coveringName(base.covering)}, ${formatLength(base.height, units)} high`;

export const shadyWords = (place: Place): string => `Shady side: ${coveringName(place.shadySide)}`;

export const edgeWords = (edge: NonNullable<Place['edgeInsulation']>, units: UnitPreferences): string =>
  `Edge insulation in the ground: ${formatLength(edge.thickness, units)} thick, ${formatLength(edge.depth, units)} deep`;

const floors: Record<Place['floor'], string> = {
  soil: 'soil',
  slab: 'concrete or paving',
  'insulated-slab': 'insulated slab',
  gravel: 'gravel',
  raised: 'off the ground',
};

export const floorWords = (place: Place): string => `Floor: ${floors[place.floor]}, ${place.ground} ground`;

export const wallWords = (wall: ShapeOf<'lean-to'>['wall'], units: UnitPreferences): string => {
  const material = wall.material === 'insulated' ? 'insulated panel' : wall.material;
  const behind = wall.behind === 'room' ? 'a room' : 'the open air';
  return `Wall at the back: ${material}, ${formatLength(wall.thickness, units)} thick, ${behind} behind it`;
};

export const snowWords = (snow: NonNullable<PlanSite['snow']>, units: UnitPreferences): string =>
  `Snow left on the roof: ${formatLength(snow.depth, units)} in a usual winter`;
