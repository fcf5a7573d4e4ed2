import { readFileSync, renameSync, writeFileSync } from 'node:fs';
import * as v from 'valibot';

const pixels = v.pipe(v.number(), v.integer(), v.minValue(-100000), v.maxValue(100000));
const stateSchema = v.strictObject({
  x: pixels,
  y: pixels,
  width: pixels,
  height: pixels,
  maximized: v.boolean(),
});

/** Where the window stood [screen pixels]. */
export type WindowState = v.InferOutput<typeof stateSchema>;

interface Area {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The remembered state, or null where there is none, it is unreadable, or its title bar is on no screen any more. */
export function readWindowState(file: string, screens: readonly Area[]): WindowState | null {
  let input: unknown;
  try {
    input = JSON.parse(readFileSync(file, 'utf8'));
  } catch (error) {
    if (error instanceof SyntaxError || (error as NodeJS.ErrnoException).code === 'ENOENT') return null;
    throw error;
  }
  const reading = v.safeParse(stateSchema, input);
  if (!reading.success) return null;
  const { x, y, width } = reading.output;
  const reachable = screens.some(
    (area) =>
      x + width > area.x + 80 && x < area.x + area.width - 80 && y >= area.y && y < area.y + area.height - 40,
  );
  return reachable ? reading.output : null;
}

/** Written beside and renamed over, so that a crash leaves the old one. */
export function writeWindowState(file: string, state: WindowState): void {
  writeFileSync(`${file}.new`, JSON.stringify(state));
  renameSync(`${file}.new`, file);
}
