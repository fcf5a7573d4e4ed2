import type { ShapeKind } from './shapes.ts';

/**
 * Air changed through gaps by how a place is built [air changes h⁻¹], at the plan's reference of 20 K and 3 m/s.
 * `usual` is the middle of the range, rounded: a place to start from, not a measurement.
 */
export interface Leakage {
  readonly id: string;
  readonly name: string;
  readonly from: number;
  readonly to: number;
  readonly usual: number;
  /** The shapes that are built so. */
  readonly shapes: readonly ShapeKind[];
  readonly source: string;
}

const houses: readonly ShapeKind[] = ['even-span', 'lean-to', 'listed'];
const practice = 'common practice, no source';

export const leakages: readonly Leakage[] = [
  {
    id: 'glass-new',
    name: 'New glass or rigid sheet, well sealed',
    from: 0.75,
    to: 1.5,
    usual: 1,
    shapes: houses,
    source: 'NRAES-33 tables for greenhouses, 0.75–1.5; some ASHRAE editions 0.5–1.0 (from memory)',
  },
  {
    id: 'glass-old-good',
    name: 'Old glass, in good order',
    from: 1,
    to: 2,
    usual: 1.5,
    shapes: houses,
    source: 'NRAES-33 tables for greenhouses (from memory)',
  },
  {
    id: 'glass-old-poor',
    name: 'Old glass, slipped and cracked panes',
    from: 2,
    to: 4,
    usual: 3,
    shapes: houses,
    source: 'NRAES-33 tables for greenhouses (from memory)',
  },
  {
    id: 'film-double',
    name: 'New double film',
    from: 0.5,
    to: 1,
    usual: 0.75,
    shapes: ['even-span', 'lean-to', 'tunnel'],
    source: 'NRAES-33 tables for greenhouses, 0.5–1.0; ASHRAE 0.75–1.0 (from memory)',
  },
  {
    id: 'film-single',
    name: 'Single film, edges dug in, doors closed',
    from: 1,
    to: 2,
    usual: 1.5,
    shapes: ['tunnel'],
    source: practice,
  },
  {
    id: 'film-loose',
    name: 'Single film, loose or torn, doors that gape',
    from: 2,
    to: 6,
    usual: 4,
    shapes: ['tunnel'],
    source: practice,
  },
  {
    id: 'frame-tight',
    name: 'Frame, lights that close well',
    from: 1,
    to: 3,
    usual: 2,
    shapes: ['cold-frame'],
    source: practice,
  },
  {
    id: 'frame-loose',
    name: 'Frame, lights that leave gaps',
    from: 3,
    to: 8,
    usual: 5,
    shapes: ['cold-frame'],
    source: practice,
  },
  {
    id: 'tent-closed',
    name: 'Tent zipped up, flaps closed',
    from: 1,
    to: 3,
    usual: 2,
    shapes: ['tent'],
    source: practice,
  },
  {
    id: 'tent-flaps',
    name: 'Tent zipped up, flaps open',
    from: 4,
    to: 12,
    usual: 8,
    shapes: ['tent'],
    source: practice,
  },
  {
    id: 'shelf-open',
    name: 'Shelf open in front',
    from: 10,
    to: 40,
    usual: 20,
    shapes: ['shelf'],
    source: practice,
  },
  {
    id: 'shelf-curtained',
    name: 'Shelf with a film in front',
    from: 2,
    to: 6,
    usual: 4,
    shapes: ['shelf'],
    source: practice,
  },
  {
    id: 'window-tight',
    name: 'Window with sound seals',
    from: 0.3,
    to: 0.7,
    usual: 0.5,
    shapes: ['window-bay'],
    source: 'ISO 13789:2007 table C.3, tight single-family house, 0.5; the range is common practice',
  },
  {
    id: 'window-draughty',
    name: 'Old window that lets a draught in',
    from: 1,
    to: 2,
    usual: 1.5,
    shapes: ['window-bay'],
    source:
      'ISO 13789:2007 table C.3, leaky unshielded single-family house, 1.5; the range is common practice',
  },
];

/** The ways a shape is built, tightest first within a material. */
export function leakagesFor(shape: ShapeKind): readonly Leakage[] {
  return leakages.filter((leakage) => leakage.shapes.includes(shape));
}
