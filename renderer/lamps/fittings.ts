import type { FieldLevel, Lamp } from '../../core/index.ts';

/** Where one fitting hangs: its middle off the middle of its level, and its face [m]. */
export interface Fitting {
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly width: number;
}

/** The fittings of a lamp over a level: spread evenly in rows along its length, their long side along the long side. */
export function fittingsOf(lamp: Lamp, level: Pick<FieldLevel, 'length' | 'width'>): Fitting[] {
  const { count } = lamp;
  const long = Math.max(lamp.length, lamp.width);
  const short = Math.min(lamp.length, lamp.width);
  const [length, width] = level.length >= level.width ? [long, short] : [short, long];
  const rows = Math.max(1, Math.min(count, Math.round(Math.sqrt((count * level.width) / level.length))));
  return Array.from({ length: rows }, (_, row) => {
    const inRow = Math.floor(count / rows) + (row < count % rows ? 1 : 0);
    const y = level.width * ((row + 0.5) / rows - 0.5) + lamp.across;
    return Array.from({ length: inRow }, (__, i) => ({
      x: level.length * ((i + 0.5) / inRow - 0.5) + lamp.along,
      y,
      length,
      width,
    }));
  }).flat();
}
