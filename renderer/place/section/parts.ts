/** Parts of the drawing that can be picked; each leads to the part of the form that holds its numbers. */
export const sectionParts = ['shape', 'cover', 'extras', 'air', 'heat', 'lamps', 'water', 'plants'] as const;
export type SectionPart = (typeof sectionParts)[number];

export const partNames: Record<SectionPart, string> = {
  shape: 'Shape and size',
  cover: 'Cover and base',
  extras: 'Lining, screen and fleece',
  air: 'Air and surroundings',
  heat: 'Heaters',
  lamps: 'Lamps',
  water: 'Water',
  plants: 'Plants and bench',
};

export { airWords, circulationWords, doorWords, fanWords, ventWords } from './words-air.ts';
export {
  baseWords,
  coveringName,
  coverWords,
  edgeWords,
  floorWords,
  shadyWords,
  snowWords,
  wallWords,
} from './words-fabric.ts';
export {
  curtainWords,
  fleeceWords,
  liningWords,
  screenWords,
  shadeWords,
  sheerWords,
  shelfWords,
  skinWords,
} from './words-extras.ts';
export { heaterWords, lampWords, plantsWords, waterWords } from './words-things.ts';
export { drawingWords, roomWords } from './words.ts';
