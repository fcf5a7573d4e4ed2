import { flushSync, mount, unmount } from 'svelte';
import { afterEach, describe, expect, it } from 'vitest';
import { lampOf, sectionOf } from '../../core/index.ts';
import type { Heights, Lamp, Place, PlanSite, ShapeKind } from '../../core/index.ts';
import { coverHeight, isWithin, outlineOf } from '../../renderer/place/section/geometry.ts';
import { innerLayersOf } from '../../renderer/place/section/layers.ts';
import { beamEdges } from '../../renderer/place/section/lamp-beam.ts';
import { layoutOf } from '../../renderer/place/section/layout.ts';
import { overlaps } from '../../renderer/place/section/sizes.ts';
import { viewOf } from '../../renderer/place/section/view.ts';
import OnPaper from './section/OnPaper.svelte';
import { fittings, kinds, placeWith, snow } from './section/places.ts';
import type { Fitting } from './section/places.ts';
import { cornersOf } from './section/points.ts';

interface Asked {
  readonly small?: boolean;
  readonly snow?: PlanSite['snow'];
  readonly units?: { temperature: 'C' | 'F'; length: 'm' | 'ft' };
  readonly heights?: Heights;
}

let drawn: object | null = null;

function draw(place: Place, asked: Asked = {}) {
  const picked: string[] = [];
  const props = {
    place,
    units: asked.units ?? { temperature: 'C', length: 'm' },
    snow: asked.snow ?? null,
    small: asked.small ?? false,
    heights: asked.heights ?? null,
    onselect: (part: string) => picked.push(part),
  } as const;
  drawn = mount(OnPaper, { target: document.body, props });
  flushSync();
  const svg = document.body.querySelector('svg');
  if (svg === null) throw new Error('expected a drawing, got none');
  const names = () =>
    [...svg.querySelectorAll('[aria-label]')].map((each) => each.getAttribute('aria-label') ?? '');
  const named = (name: RegExp) =>
    [...svg.querySelectorAll('g[aria-label]')].filter((each) =>
      name.test(each.getAttribute('aria-label') ?? ''),
    );
  return { svg, names, named, picked };
}

afterEach(async () => {
  if (drawn) await unmount(drawn);
  drawn = null;
  document.body.innerHTML = '';
});

const shownOn = ({ on }: Fitting, kind: ShapeKind) => on === undefined || on.includes(kind);

/** Width of a stroke and of the cover as drawn, which a corner may reach over the outline [px]. */
const stroke = 3;

/** Where the corners of a part may lie, in px of the paper, for a part that is not in the air inside. */
function checkPlace(place: Place, element: Element, where: Fitting['where'], small: boolean, deep: number) {
  const section = sectionOf(place);
  const view = viewOf(place, section, small, { snow: deep, heights: false });
  const shapes = [...element.querySelectorAll('path, rect, circle, line')].filter(
    (each) => !/grab|hold/.test(each.getAttribute('class') ?? ''),
  );
  const outline = outlineOf(section);
  const inside = ([x, y]: [number, number]) => {
    const point = [(x - view.x(0)) / view.scale, (view.z(0) - y) / view.scale] as const;
    const clear = -stroke / view.scale;
    return isWithin(outline, [point[0], Math.max(0, point[1])], clear) && y <= view.z(0) + stroke;
  };
  const all = shapes.flatMap((shape) => cornersOf(shape));
  expect(all.length).toBeGreaterThan(1);
  for (const [x, y] of all) {
    expect(x >= 0 && x <= view.width, `${x} across the paper`).toBe(true);
    expect(y >= 0 && y <= view.height, `${y} down the paper`).toBe(true);
    if (where === undefined) expect(inside([x, y]), `(${x}, ${y}) inside the outline`).toBe(true);
    if (where === 'ground') expect(y).toBeGreaterThanOrEqual(view.z(0) - stroke);
    if (where === 'roof') {
      // On the cover, and no higher over it than the snow lies with its rounded top.
      const across = Math.min(section.width, Math.max(0, (x - view.x(0)) / view.scale));
      const over = view.z(coverHeight(section, across)) - y;
      expect(over).toBeGreaterThan(-stroke);
      expect(over).toBeLessThan(1.2 * deep * view.scale);
    }
  }
  if (where === 'hinged') {
    const hinge = element.querySelector('circle.knob');
    const at = [Number(hinge?.getAttribute('cx')), Number(hinge?.getAttribute('cy'))];
    const nearest = Math.min(...outline.slice(1).map((b, i) => toSegment(at, pixels(outline[i]), pixels(b))));
    expect(nearest).toBeLessThan(0.1);
  }
  function pixels([x, z]: readonly [number, number]) {
    return [view.x(x), view.z(z)];
  }
}

function toSegment([x, y]: number[], [ax, ay]: number[], [bx, by]: number[]): number {
  const long = (bx - ax) ** 2 + (by - ay) ** 2;
  const t = Math.max(0, Math.min(1, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / long));
  return Math.hypot(x - ax - t * (bx - ax), y - ay - t * (by - ay));
}

describe.each(kinds)('the section of a %s', (kind) => {
  it.each(fittings)('shows its %s where it is, with its figures', (_name, fitting) => {
    const place = placeWith(kind, fitting.parts);
    const { named, picked } = draw(place, { snow });
    const found = named(fitting.name);
    if (!shownOn(fitting, kind)) {
      expect(found).toEqual([]);
      return;
    }
    expect(found.length).toBe(1);
    checkPlace(place, found[0], fitting.where, false, place.snow === 'left' ? 0.15 : 0);
    expect(found[0].getAttribute('role')).toBe('button');
    found[0].dispatchEvent(new MouseEvent('click', { bubbles: true }));
    found[0].dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }));
    expect(picked).toEqual([fitting.part, fitting.part]);
  });

  it.each(fittings)('shows its %s at the small size too, as a picture', (_name, fitting) => {
    if (!shownOn(fitting, kind)) return;
    const place = placeWith(kind, fitting.parts);
    const { svg, named } = draw(place, { small: true, snow });
    const found = named(fitting.name);
    expect(found.length).toBe(1);
    checkPlace(place, found[0], fitting.where, true, place.snow === 'left' ? 0.15 : 0);
    expect([svg.getAttribute('role'), svg.querySelectorAll('[role="button"]').length]).toEqual(['img', 0]);
    expect(svg.querySelectorAll('text').length).toBe(0);
  });

  it('has room for everything at once', () => {
    const everything = fittings
      .filter(([, fitting]) => shownOn(fitting, kind) && fitting.parts.vents === undefined)
      .reduce<Partial<Place>>((all, [, { parts }]) => ({ ...all, ...parts }), {});
    const place = placeWith(kind, {
      ...everything,
      vents: fittings.flatMap(([, { parts }]) => parts.vents ?? []),
    });
    for (const small of [false, true]) {
      const section = sectionOf(place);
      const view = viewOf(place, section, small, { snow: 0.15, heights: false });
      const layers = innerLayersOf(place, section, view);
      const sight = { thing: (small ? 9 : 22) / view.scale, clear: layers.clear, lamp: 0.05 };
      const layout = layoutOf(place, section, sight);
      const things = [...layout.water.flatMap((placed) => placed.boxes), ...layout.heaters];
      const hung = [layout.fan, layout.circulation].filter((box) => box !== null);
      const boxes = [...things, ...hung];
      for (let i = 0; i < boxes.length; i += 1)
        for (let j = 0; j < i; j += 1) expect(overlaps(boxes[i], boxes[j])).toBe(false);
    }
  });
});

describe('the section', () => {
  it('speaks the reader’s units', () => {
    const place = placeWith('even-span', {
      edgeInsulation: { thickness: 0.05, depth: 0.6 },
      vents: [{ position: 'roof', area: 0.5, height: 1, openAt: 18, band: 5 }],
    });
    const { names } = draw(place, { units: { temperature: 'F', length: 'ft' } });
    expect(names().join('\n')).toMatch(/Edge insulation in the ground: 0\.2\sft thick, 2\.0\sft deep/);
    expect(names().join('\n')).toMatch(/Roof vent: .*ft² when open, opens from 64\s°F over 9\s°F/);
  });

  it('says all of it in one sentence', () => {
    const place = placeWith('tunnel', {
      circulation: { watts: 30, airSpeed: 0.4, runs: 'day' },
      snow: 'left',
    });
    const words = draw(place, { snow, small: true }).svg.getAttribute('aria-label') ?? '';
    for (const part of [
      'Section of Place',
      'Polythene',
      'Circulation fan: 30',
      'Snow left on the roof: 0.15',
    ])
      expect(words).toContain(part);
  });

  it('has snow only where it lies and is left', () => {
    const left = placeWith('lean-to', { snow: 'left' });
    const white = /^Snow/;
    expect(draw(left).named(white).length).toBe(0);
    document.body.innerHTML = '';
    expect(draw(placeWith('lean-to'), { snow }).named(white).length).toBe(0);
  });

  it('throws a lamp’s beam as wide as the lamp does', () => {
    const lamp = (beam: Lamp['beam']) =>
      lampOf({
        id: 'l',
        name: 'L',
        technology: 'led-white',
        watts: 20,
        efficacy: 2.5,
        count: 1,
        ...hung,
        beam,
      });
    const hung = { height: 0.5, length: 0.1, width: 0.1, on: '08:00', off: '18:00' } as const;
    // Lambert's cosine falls to a half at 60°; its tenth power at acos(0.5^0.1) = 21.06°.
    const degrees = (beam: Lamp['beam']) => (beamEdges(lamp(beam)).front * 180) / Math.PI;
    expect(degrees({ kind: 'even' })).toBeCloseTo(60, 0);
    expect(Math.abs(degrees({ kind: 'cosine-power', power: 10 }) - 21.06)).toBeLessThan(0.5);
    // One lobe to the back only: plane 90 lies across, towards the back.
    const photometry = {
      name: 'lobe',
      vertical: [0, 30, 60, 90],
      planes: [0, 90, 180, 270, 360],
      candela: [5, 5, 0, 0, 5, 10, 0, 0, 5, 5, 0, 0, 5, 0, 0, 0, 5, 5, 0, 0],
    };
    const { front, back } = beamEdges(lamp({ kind: 'file', photometry, turned: 0 }));
    expect(back).toBeGreaterThan((40 * Math.PI) / 180);
    expect(front).toBeLessThan((20 * Math.PI) / 180);
    const even = draw(placeWith('tent', { lamps: [lamp({ kind: 'even' })] })).named(/^L:/)[0];
    const spread = (drawn: Element) => {
      const xs = cornersOf(drawn.querySelector('path.beam') as Element).map(([x]) => x);
      return Math.max(...xs) - Math.min(...xs);
    };
    const wide = spread(even);
    document.body.innerHTML = '';
    const narrow = draw(placeWith('tent', { lamps: [lamp({ kind: 'cosine-power', power: 10 })] })).named(
      /^L:/,
    )[0];
    expect(spread(narrow)).toBeLessThan(0.9 * wide);
  });

  it('hangs a lamp of the upper shelf over that shelf’s plants', () => {
    const upperShelf = { height: 0.6, plants: 0.1, length: 0.7, width: 0.3, side: 'back' } as const;
    const lamp = lampOf({
      ...{ id: 'l', name: 'L', technology: 'led-white', watts: 20, efficacy: 2.5, count: 1, shelf: 'upper' },
      ...{ height: 0.3, length: 0.3, width: 0.1, on: '08:00', off: '18:00' },
    });
    const place = placeWith('tent', { upperShelf, lamps: [lamp] });
    const { shelf, lamps } = layoutOf(place, sectionOf(place));
    if (shelf === null) throw new Error('expected a shelf, got none');
    expect(shelf.to).toBeCloseTo(0.8, 9);
    expect(lamps[0].z).toBeCloseTo(shelf.top + 0.3, 9);
    expect(lamps[0].onto).toBe(shelf.z);
    expect(lamps[0].middles.every((x) => x > shelf.from && x < shelf.to)).toBe(true);
  });

  it('counts containers, and draws as many as there is room for', () => {
    const water = [{ name: 'Cans', litres: 20, count: 12, form: 'canister' as const }];
    const { svg, named } = draw(placeWith('even-span', { water }));
    expect(named(/^Cans: 12 canisters/)[0].querySelectorAll('.rim').length).toBeLessThanOrEqual(3);
    expect([...svg.querySelectorAll('text')].map((text) => text.textContent)).toContain('×12');
  });

  it('hangs the fleece to the floor or to the bench', () => {
    const feet = (hangs: 'floor' | 'bench') => {
      document.body.innerHTML = '';
      const fleece = { covering: 'fleece-17', layers: 1, laidWhen: 'night', below: 2, hangs } as const;
      const place = placeWith('even-span', { fleece });
      const section = sectionOf(place);
      const view = viewOf(place, section, false);
      const [found] = draw(place).named(/^Fleece/);
      const ends = [...found.querySelectorAll('path.fleece')].map((path) => cornersOf(path)[0][1]);
      return ends.map((y) => (view.z(0) - y) / view.scale);
    };
    for (const z of feet('floor')) expect(z).toBeCloseTo(0, 3);
    for (const z of feet('bench')) expect(z).toBeCloseTo(0.7, 1);
  });

  it('says of a vent that stands open always that it does', () => {
    const always = { position: 'side', area: 0.2, height: 0.3, openAt: -60, band: 1 } as const;
    expect(
      draw(placeWith('tunnel', { vents: [always] })).named(/^Side vent: 0\.20\sm², always open/).length,
    ).toBe(1);
  });

  it('stands plants behind a window as far from its panes as the plan says', () => {
    const bay = {
      kind: 'window-bay',
      width: 1.3,
      height: 1.2,
      depth: 0.5,
      reveal: 0.1,
      azimuth: 180,
    } as const;
    const begin = (distance: number) => {
      const place = placeWith('window-bay', { shape: { ...bay, distance } });
      return layoutOf(place, sectionOf(place)).benches[0];
    };
    expect(begin(0.3).from).toBeCloseTo(0.3, 9);
    expect(begin(0.3).to).toBeLessThanOrEqual(0.5 + 1e-9);
    expect(begin(0.05).from).toBeLessThan(begin(0.3).from);
  });

  it('stands plants on the ground where the plan says so', () => {
    expect(draw(placeWith('even-span', { standing: 'ground' })).named(/^Plants on the ground/).length).toBe(
      1,
    );
    document.body.innerHTML = '';
    expect(draw(placeWith('even-span')).named(/^Plants on a bench 0\.70\sm high/).length).toBe(1);
  });

  it('writes the air by height beside the heights, clear of one another', () => {
    const heights = { floor: 1.2, bench: 2.4, ridge: 4.1, middle: 2.4, edge: 1.9 };
    for (const kind of kinds) {
      const place = placeWith(kind);
      const { svg, named } = draw(place, { heights });
      // Only a roof has a ridge, and a window has a sill for a floor.
      const top = ['even-span', 'lean-to', 'tunnel'].includes(kind) ? 'ridge' : 'top';
      const foot = kind === 'window-bay' ? 'sill' : 'floor';
      const words = new RegExp(`: ${top} 4\\.1\\s°C, .* edge 1\\.9\\s°C, ${foot} 1\\.2\\s°C`);
      expect(named(words).length).toBe(1);
      const rows = [...svg.querySelectorAll('.heights text')];
      const ys = rows.map((row) => Number(row.getAttribute('y')));
      const written = [...svg.querySelectorAll('.heights .name')].map((each) => each.textContent);
      expect(written).toEqual([top, expect.stringMatching(/^(bench|plants)$/), 'edge', foot]);
      for (let i = 1; i < ys.length; i += 1) expect(ys[i] - ys[i - 1]).toBeGreaterThanOrEqual(15);
      document.body.innerHTML = '';
    }
  });
});
