import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { contrast, inkOn, linearRgb, stateMarks } from '../../renderer/marks/palette.ts';

type Triple = readonly [number, number, number];
type Matrix = readonly [Triple, Triple, Triple];

/**
 * Full colour-blindness in linear sRGB: Machado, Oliveira & Fernandes 2009, "A physiologically-based model for
 * simulation of color vision deficiency", IEEE TVCG 15(6), matrices for severity 1.0 (from memory; rows sum to 1).
 */
const sights: Record<string, Matrix> = {
  full: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

/** OKLab of linear sRGB (Ottosson 2020, bottosson.github.io/posts/oklab; from memory). */
function okLab([red, green, blue]: Triple): Triple {
  const l = Math.cbrt(0.4122214708 * red + 0.5363325363 * green + 0.0514459929 * blue);
  const m = Math.cbrt(0.2119034982 * red + 0.6806995451 * green + 0.1073969566 * blue);
  const s = Math.cbrt(0.0883024619 * red + 0.2817188376 * green + 0.6299787005 * blue);
  return [
    0.2104542553 * l + 0.793617785 * m - 0.0040720468 * s,
    1.9779984951 * l - 2.428592205 * m + 0.4505937099 * s,
    0.0259040371 * l + 0.7827717662 * m - 0.808675766 * s,
  ];
}

function seen(hex: string, sight: Matrix): Triple {
  const rgb = linearRgb(hex);
  const channel = (row: Triple) =>
    Math.min(1, Math.max(0, row[0] * rgb[0] + row[1] * rgb[1] + row[2] * rgb[2]));
  return okLab([channel(sight[0]), channel(sight[1]), channel(sight[2])]);
}

function distance(a: string, b: string, sight: Matrix): number {
  const [first, second] = [seen(a, sight), seen(b, sight)];
  return Math.hypot(first[0] - second[0], first[1] - second[1], first[2] - second[2]);
}

function closestPair(theme: 'light' | 'dark', sight: Matrix) {
  let closest = { distance: Infinity, pair: '' };
  for (const a of stateMarks)
    for (const b of stateMarks) {
      if (a.id >= b.id) continue;
      const apart = distance(a[theme], b[theme], sight);
      if (apart < closest.distance) closest = { distance: apart, pair: `${a.id} and ${b.id}` };
    }
  return closest;
}

/** Read from the project root, where every test runs. */
const css = readFileSync('renderer/styles/theme.css', 'utf8');
const [lightCss, darkCss] = css.split(":root[data-theme='dark']");
const custom = (text: string, name: string) =>
  new RegExp(`--${name}: (#[0-9a-f]{6});`).exec(text)?.[1] ?? 'missing';

describe.each([
  ['light', lightCss],
  ['dark', darkCss],
] as const)('palette, %s theme', (theme, text) => {
  it.each(Object.keys(sights))('keeps every two states apart for %s sight', (name) => {
    const closest = closestPair(theme, sights[name]);
    // Reached 0.1008 (light, tritanopia, slow and dry). Side by side about 0.02 is told apart; on a screen, five times that.
    expect(closest.distance, `${closest.pair} are too alike`).toBeGreaterThan(0.1);
  });

  it('lets the letter be read on every state', () => {
    for (const mark of stateMarks)
      expect(contrast(mark[theme], inkOn(mark[theme])), mark.id).toBeGreaterThan(4.5);
  });

  it('has the colours of theme.css', () => {
    for (const mark of stateMarks) {
      expect(custom(text, `state-${mark.id}`), mark.id).toBe(mark[theme]);
      expect(custom(text, `on-${mark.id}`), mark.id).toBe(inkOn(mark[theme]));
    }
  });

  it('lets text be read on paper and surface, and lines be seen', () => {
    for (const ground of ['paper', 'surface', 'sunk']) {
      for (const ink of ['ink', 'ink-soft', 'accent', 'harm', 'focus'])
        expect(contrast(custom(text, ink), custom(text, ground)), `${ink} on ${ground}`).toBeGreaterThan(4.5);
      for (const line of ['outdoor', 'inside', 'night', 'lamp-light', 'line-strong', 'day-light'])
        expect(contrast(custom(text, line), custom(text, ground)), `${line} on ${ground}`).toBeGreaterThan(3);
    }
    expect(contrast(custom(text, 'accent-ink'), custom(text, 'accent'))).toBeGreaterThan(4.5);
  });
});

describe('palette', () => {
  it('gives every state its own texture', () => {
    expect(new Set(stateMarks.map((mark) => mark.texture)).size).toBe(stateMarks.length);
  });

  it('would notice two states that only full sight tells apart', () => {
    expect(distance('#c0392b', '#7a7a1f', sights.full)).toBeGreaterThan(0.1);
    expect(distance('#c0392b', '#7a7a1f', sights.deuteranopia)).toBeLessThan(0.1);
  });

  it('keeps white white whatever the sight', () => {
    for (const sight of Object.values(sights))
      for (const row of sight) expect(row[0] + row[1] + row[2]).toBeCloseTo(1, 5);
  });
});
