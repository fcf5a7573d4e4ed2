import type { SectionEdge } from '../../../core/index.ts';

/** Ids of the hatchings in one drawing. */
export type Hatches = Readonly<Record<HatchName, string>>;

export const hatchNames = [
  'masonry',
  'timber',
  'insulation',
  'concrete',
  'soil',
  'wet',
  'gravel',
  'water',
  'snow',
] as const;
export type HatchName = (typeof hatchNames)[number];

export function hatchesOf(id: string): Hatches {
  const entries = hatchNames.map((name) => [name, `${id}-${name}`]);
  return Object.fromEntries(entries) as Hatches;
}

/** The hatching of a wall by what it is made of. */
export function wallHatch(material: SectionEdge['material']): HatchName {
  if (material === 'insulated') return 'insulation';
  return material === 'timber' ? 'timber' : 'masonry';
}
