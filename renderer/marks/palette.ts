/**
 * The colours of the seven states, for both themes. Chosen for this program by a search in OKLCH over a hue band a
 * state (leaf green, new leaf, cold blue, clay, dusk, straw, pale pink), widening the least distance between any two
 * as seen by full and by colour-blind eyes. `theme.css` carries the same figures; `palette.test.ts` compares them.
 */
export type StateId =
  'growing' | 'slow' | 'resting-cold' | 'resting-heat' | 'resting-dim' | 'resting-dry' | 'stretching';

export type Texture = 'plain' | 'rising' | 'level' | 'upright' | 'crossed' | 'dots' | 'falling';

export interface StateMark {
  readonly id: StateId;
  readonly texture: Texture;
  readonly light: string;
  readonly dark: string;
}

/** In the engine's order of states. */
export const stateMarks: readonly StateMark[] = [
  { id: 'growing', texture: 'plain', light: '#296434', dark: '#4d9b7c' },
  { id: 'slow', texture: 'rising', light: '#adc368', dark: '#a8ca63' },
  { id: 'resting-cold', texture: 'level', light: '#2c77bd', dark: '#4aabfc' },
  { id: 'resting-heat', texture: 'upright', light: '#d57021', dark: '#d3720b' },
  { id: 'resting-dim', texture: 'crossed', light: '#3d2b5c', dark: '#66618a' },
  { id: 'resting-dry', texture: 'dots', light: '#e2d4b4', dark: '#f2e7c9' },
  { id: 'stretching', texture: 'falling', light: '#e693c7', dark: '#f1b4d2' },
];

/** The two inks a letter on a state may have. */
export const letterInks = { dark: '#14161a', light: '#fdfcf7' } as const;

/** Relative luminance of a hex colour (WCAG 2.2, definition of relative luminance), 0–1. */
export function luminance(hex: string): number {
  const [red, green, blue] = linearRgb(hex);
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** Contrast ratio of two hex colours (WCAG 2.2), 1–21. */
export function contrast(first: string, second: string): number {
  const [a, b] = [luminance(first), luminance(second)];
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
}

/** The ink that stands out more on a state's colour. */
export function inkOn(hex: string): string {
  return contrast(hex, letterInks.dark) >= contrast(hex, letterInks.light)
    ? letterInks.dark
    : letterInks.light;
}

/** Linear-light sRGB channels of `#rrggbb`, 0–1 (IEC 61966-2-1). */
export function linearRgb(hex: string): [number, number, number] {
  if (!/^#[0-9a-f]{6}$/i.test(hex)) throw new Error(`expected a colour as #rrggbb, got ${hex}`);
  const channel = (at: number) => {
    const value = parseInt(hex.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return [channel(1), channel(3), channel(5)];
}
