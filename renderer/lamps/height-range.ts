import type { Section } from '../../core/index.ts';

/** Room that pots and plants take over what they stand on [m] (common practice, no source). */
const plants = 0.2;

/** Heights over the plants that a lamp can be given by hand: up to the top of the place, and to where it hangs now [m]. */
export function heightRange(section: Section, now: number): { least: number; most: number } {
  const under = section.height - section.plantLevel - Math.min(plants, 0.3 * section.height);
  const most = Math.min(5, Math.max(0.3, under, now));
  return { least: 0.05, most: Math.ceil(most * 20) / 20 };
}

const ladder = [0.15, 0.2, 0.3, 0.4, 0.5, 0.6, 0.8, 1, 1.2, 1.5, 2, 2.5, 3, 4, 5];

/** Heights that the chart has a line for: round ones spread over what the place allows [m]. */
export function chartHeights(section: Section, now: number, lines = 5): number[] {
  const { most } = heightRange(section, now);
  const fit = ladder.filter((height) => height <= most + 1e-9);
  const least = Math.min(lines, fit.length);
  const picked = Array.from(
    { length: least },
    (_, i) => fit[Math.round((i * (fit.length - 1)) / Math.max(1, least - 1))],
  );
  return [...new Set(picked)];
}
