import fc from 'fast-check';

/** A number from `least` to `most` in 200 even steps, rounded to three digits after the point; shrinks towards `least`. */
export const between = (least: number, most: number): fc.Arbitrary<number> =>
  fc
    .integer({ min: 0, max: 200 })
    .map((step) =>
      Math.min(most, Math.max(least, Math.round((least + ((most - least) * step) / 200) * 1000) / 1000)),
    );

export const azimuths = fc.constantFrom(180, 0, 90, 137, 270, 359);
export const clockTimes = fc.constantFrom('00:00', '06:30', '08:00', '12:00', '17:45', '21:00', '23:15');

/** Two clock times that differ. */
export const hours = fc
  .tuple(clockTimes, clockTimes)
  .map(([from, to]) => (from === to ? { from: '00:00', to: '24:00' } : { from, to }));

const glazings = ['glass-3', 'glass-4', 'double-glass', 'low-e-double-glass', 'twin-wall-4', 'multi-wall-16'];
const films = ['polythene', 'thermal-polythene', 'double-polythene'];
export const walls = fc.constantFrom(
  'timber-board',
  'brick-102',
  'brick-215',
  'stone-400',
  'insulated-panel',
);
export const clear = fc.constantFrom(...glazings, ...films);
export const skins = fc.constantFrom(...films, ...glazings);

/** A shape with a covering that fits it, and whether it stands in a room. */
export interface Covered {
  readonly shape: object;
  readonly covering: string;
  readonly indoors: 'always' | 'may' | 'never';
}

const covered = (
  shape: fc.Arbitrary<object>,
  covering: fc.Arbitrary<string>,
  indoors: Covered['indoors'],
): fc.Arbitrary<Covered> => fc.record({ shape, covering, indoors: fc.constant(indoors) });

/** Eaves and a rise over them, so that the ridge is always above. */
const roofed = (parts: object) =>
  fc
    .record({
      length: between(0.8, 20),
      width: between(0.6, 8),
      eavesHeight: between(0.4, 3.5),
      rise: between(0.1, 2.5),
      azimuth: azimuths,
      ...parts,
    })
    .map(({ rise, ...rest }) => ({ ...rest, ridgeHeight: rest.eavesHeight + rise }));

const evenSpan = covered(roofed({ kind: fc.constant('even-span') }), clear, 'never');

const leanToBefore = (behind: 'room' | 'outdoors') =>
  covered(
    roofed({
      kind: fc.constant('lean-to'),
      wall: fc.record({
        material: fc.constantFrom('brick', 'stone', 'insulated', 'timber'),
        thickness: between(0.02, 0.6),
        behind: fc.constant(behind),
      }),
    }),
    clear,
    behind === 'room' ? 'always' : 'never',
  );

const tunnel = covered(
  fc.record({
    kind: fc.constant('tunnel'),
    length: between(0.6, 30),
    width: between(0.5, 9),
    height: between(0.35, 4),
    azimuth: azimuths,
  }),
  fc.constantFrom(...films, ...glazings, 'fleece-60'),
  'never',
);

const frame = covered(
  fc
    .record({
      kind: fc.constant('cold-frame'),
      length: between(0.3, 5),
      width: between(0.3, 2),
      frontHeight: between(0.1, 0.8),
      rise: between(0, 0.5),
      azimuth: azimuths,
    })
    .map(({ rise, ...rest }) => ({ ...rest, backHeight: rest.frontHeight + rise })),
  clear,
  'never',
);

const box = { length: between(0.3, 5), width: between(0.3, 3), height: between(0.3, 2.6) };
const tent = covered(
  fc.record({ kind: fc.constant('tent'), ...box }),
  fc.constantFrom('tent-fabric', 'polythene'),
  'always',
);
const shelf = covered(fc.record({ kind: fc.constant('shelf'), ...box }), fc.constant('open'), 'always');
const windowBay = covered(
  fc.record({
    kind: fc.constant('window-bay'),
    width: between(0.3, 5),
    height: between(0.3, 3),
    depth: between(0.15, 2),
    azimuth: azimuths,
  }),
  clear,
  'always',
);

const layer = fc.record({
  thickness: between(0.005, 0.4),
  conductivity: fc.constantFrom(0.035, 0.13, 0.5, 1.4, 50),
  density: fc.constantFrom(0, 30, 500, 1800),
  specificHeat: fc.constantFrom(1000, 1600),
});

const builds = fc.oneof(
  fc.record({
    kind: fc.constant('layers'),
    layers: fc.array(layer, { minLength: 1, maxLength: 4 }),
    absorptance: between(0.1, 0.95),
  }),
  fc.record({
    kind: fc.constant('panes'),
    panes: fc.constantFrom(1, 2),
    thickness: between(0.003, 0.01),
    extinction: between(4, 60),
  }),
);

/** One side of a listed box: where it looks, what it is of and what lies behind it. */
const listedFace = (name: string, tilt: number, azimuth: number, behinds: readonly string[]) =>
  fc
    .record({
      behind: fc.constantFrom(...behinds),
      covering: fc.oneof(clear, walls),
      build: fc.option(builds, { freq: 2 }),
      opens: fc.boolean(),
    })
    .map(({ behind, covering, build, opens }) => {
      const opaque = behind === 'ground' || behind === 'nothing';
      const fitting = opaque && build?.kind === 'panes' ? null : build;
      const cover = opaque ? 'stone-400' : behind === 'room' && opens ? 'open' : covering;
      return { name, tilt, azimuth, behind, covering: fitting === null ? cover : null, build: fitting };
    });

const anywhere = ['outdoors', 'room', 'nothing', 'ground'];
const listed = fc
  .record({
    length: between(0.8, 10),
    width: between(0.8, 6),
    height: between(0.5, 4),
    faces: fc.tuple(
      listedFace('front', 90, 180, ['outdoors']),
      listedFace('back', 90, 0, anywhere),
      listedFace('left', 90, 90, anywhere),
      listedFace('right', 90, 270, anywhere),
      listedFace('top', 0, 0, ['outdoors', 'nothing', 'room']),
    ),
    floor: fc.option(listedFace('floor', 180, 0, ['ground', 'room', 'nothing']), { freq: 2 }),
  })
  .map(({ length, width, height, faces, floor }) => {
    const areas = [length, length, width, width].map((side) => side * height);
    const surfaces = [...faces, ...(floor === null ? [] : [floor])].map((face, index) => ({
      ...face,
      area: areas[index] ?? length * width,
    }));
    return { kind: 'listed', floorArea: length * width, volume: length * width * height, surfaces };
  });

/** All eight shapes, houses and frames as often as all that stands indoors. */
export const shapes: fc.Arbitrary<Covered> = fc.oneof(
  evenSpan,
  tunnel,
  frame,
  leanToBefore('room'),
  leanToBefore('outdoors'),
  tent,
  shelf,
  windowBay,
  covered(listed, fc.constant('glass-3'), 'may'),
);
