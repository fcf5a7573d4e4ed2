import type { CoveringUse } from './covering.ts';
import { covering, isCovering } from './coverings.ts';
import type { Problem } from './problem.ts';
import type { Place } from './schema.ts';
import type { ShapeKind } from './shapes.ts';

const cover: readonly CoveringUse[] = ['glazing', 'film', 'fabric', 'wall'];

/** What each shape may be covered with; a list of surfaces says so itself, surface by surface. */
const coverUses: Record<Exclude<ShapeKind, 'listed'>, readonly CoveringUse[]> = {
  'even-span': cover,
  'lean-to': cover,
  tunnel: [...cover, 'fleece'],
  'cold-frame': cover,
  tent: cover,
  shelf: ['open'],
  'window-bay': ['glazing', 'film'],
};

/** Where a covering is named, and what it must be there; null where anything goes. */
type Named = readonly [field: string, id: string | null | undefined, uses: readonly CoveringUse[] | null];

function namedIn(place: Place): readonly Named[] {
  const { shape } = place;
  const listed: Named[] =
    shape.kind === 'listed'
      ? shape.surfaces.map(({ covering: id, behind }, index) => [
          `shape.surfaces.${index}.covering`,
          id,
          behind === 'room' ? [...cover, 'open'] : cover,
        ])
      : [];
  return [
    ['covering', place.covering, shape.kind === 'listed' ? null : coverUses[shape.kind]],
    ['lining', place.lining, ['lining']],
    ['secondSkin.covering', place.secondSkin?.covering, ['film', 'glazing']],
    ['screen.covering', place.screen?.covering, ['screen']],
    ['curtain.covering', place.curtain?.covering, ['screen']],
    ['fleece.covering', place.fleece?.covering, ['fleece']],
    ['shadeCloth.covering', place.shadeCloth?.covering, ['shade']],
    ['sheer.covering', place.sheer?.covering, ['sheer']],
    ['baseWall.covering', place.baseWall?.covering, ['wall']],
    ['shadySide', place.shadySide, ['wall']],
    ...listed,
  ];
}

const words: Record<CoveringUse, string> = {
  glazing: 'glass or clear sheet',
  film: 'a film',
  lining: 'a lining',
  screen: 'a screen',
  fleece: 'a fleece',
  fabric: 'a fabric',
  wall: 'a wall',
  open: 'an open side',
  shade: 'a shade cloth',
  sheer: 'a sheer curtain',
};

/** Coverings the catalogue does not know, and such as are put where they cannot be. */
export function coveringProblems(place: Place, path: string): Problem[] {
  return namedIn(place).flatMap(([field, id, uses]) => {
    if (id === null || id === undefined) return [];
    if (!isCovering(id))
      return [{ path: `${path}.${field}`, message: `expected a known covering, got ${id}` }];
    const { use } = covering(id);
    if (uses === null || uses.includes(use)) return [];
    const expected = uses.map((each) => words[each]).join(' or ');
    return [{ path: `${path}.${field}`, message: `expected ${expected}, got ${id}, which is ${words[use]}` }];
  });
}
