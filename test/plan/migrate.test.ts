/** Plans that older versions wrote open with all they said; what came later takes its usual value. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { demonstrationPlan, parsePlan, planSchemaVersion } from '../../core/index.ts';
import type { Plan } from '../../core/index.ts';

type Tree = Record<string, unknown>;
const written = (version: 1 | 2 | 3): Tree =>
  JSON.parse(readFileSync(new URL(`plan-version-${version}.json`, import.meta.url), 'utf8')) as Tree;

function opened(input: unknown): Plan {
  const reading = parsePlan(input);
  if (reading.ok) return reading.plan;
  throw new Error(reading.problems.map((each) => `${each.path}: ${each.message}`).join('\n'));
}

/** Every value a file holds, as `path = value`. */
function values(tree: unknown, path = ''): string[] {
  if (typeof tree !== 'object' || tree === null) return [`${path} = ${JSON.stringify(tree)}`];
  const entries = Object.entries(tree);
  if (entries.length === 0) return [`${path} = ${JSON.stringify(tree)}`];
  return entries.flatMap(([key, value]) => values(value, path === '' ? key : `${path}.${key}`));
}

/** How the first version wrote what the present one writes otherwise. */
const asNow = (path: string) =>
  path.replace(/^(places\.\d+\.vents)\.(?!\d)/, '$1.0.').replace(/^(places\.\d+\.vents) = null$/, '$1 = []');

describe.each([1, 2, 3] as const)('a plan of version %i', (version) => {
  it('keeps every value it was written with', () => {
    const file = written(version);
    expect(file.schemaVersion).toBe(version);
    const kept = new Set(values(opened(file)));
    const lost = values(file)
      .filter((value) => !value.startsWith('schemaVersion ='))
      .map(version === 1 ? asNow : (value) => value)
      .filter((value) => !kept.has(value));
    expect(lost).toEqual([]);
    expect(values(file).length).toBeGreaterThan(200);
  });

  it('is of the present version and may be written and opened again', () => {
    const plan = opened(written(version));
    expect(plan.schemaVersion).toBe(planSchemaVersion);
    expect(opened(JSON.parse(JSON.stringify(plan)))).toEqual(plan);
  });

  it('has lots that stay where they are, everywhere on the bench, and no groups of its own', () => {
    const plan = opened(written(version));
    expect(plan.ownGroups).toEqual([]);
    for (const lot of plan.lots) {
      const spot = { across: 'all', along: 'all', level: 'all' };
      expect(lot).toMatchObject({ plants: null, spot, moves: [] });
    }
  });
});

describe.each([1, 2] as const)('a plan of version %i', (version) => {
  it('has lamps that burn as they did, and none of the later equipment', () => {
    const { places } = opened(written(version));
    const lamps = places.flatMap((place) => place.lamps);
    expect(lamps.length).toBeGreaterThan(0);
    for (const lamp of lamps) {
      expect(lamp).toMatchObject({
        light: { kind: 'efficacy' },
        beam: { kind: 'even' },
        arrangement: 'panel',
        shelf: 'lower',
        along: 0,
        across: 0,
        second: null,
        control: { kind: 'clock' },
        mostDay: null,
        wattsAtHalf: null,
        burnt: 0,
        life: null,
      });
    }
    for (const place of places) {
      expect(place).toMatchObject({
        shadeCloth: null,
        sheer: null,
        cleanedOn: null,
        horizon: null,
        ceilingReflectance: null,
        benchReflectance: null,
        upperShelf: null,
      });
      if (place.shape.kind === 'window-bay') expect(place.shape).toMatchObject({ distance: 0, reveal: 0 });
    }
  });
});

it('a skyline of version 2 lets no light through', () => {
  const file = written(2);
  const site = { ...(file.site as Tree), horizon: [{ azimuth: 180, elevation: 12 }] };
  expect(opened({ ...file, site }).site.horizon).toEqual([{ azimuth: 180, elevation: 12, passes: 0 }]);
});

it('fields of version 3 in a file that says 2 are read as what they are', () => {
  const file = written(2);
  const places = (file.places as Tree[]).map((place) => ({ ...place, cleanedOn: '09-15' }));
  expect(opened({ ...file, places }).places.map((place) => place.cleanedOn)).toEqual(
    places.map(() => '09-15'),
  );
});

it('the demonstration plan stands as it is', () => {
  expect(opened(demonstrationPlan)).toEqual(demonstrationPlan);
});
