/** Three petals on a short stalk, `size` px high, around `x`; the top at `y` [px]. */
export function flower(x: number, y: number, size: number): string {
  const unit = size / 12;
  const foot = y + 9 * unit;
  const petal = (dx: number, dy: number) => {
    const [tipX, tipY] = [x + dx * unit, foot - dy * unit];
    const [sideX, sideY] = [dy * unit * 0.3, dx * unit * 0.3];
    const [midX, midY] = [x + dx * unit * 0.5, foot - dy * unit * 0.5];
    const at = (...values: number[]) => values.map((value) => value.toFixed(1)).join(' ');
    return `M${at(x, foot)}Q${at(midX - sideX, midY - sideY, tipX, tipY)}Q${at(midX + sideX, midY + sideY, x, foot)}z`;
  };
  return `${petal(-6.4, 6)}${petal(0, 9)}${petal(6.4, 6)}M${x.toFixed(1)} ${foot.toFixed(1)}V${(y + size).toFixed(1)}`;
}

/** Where the mark stands [px]: in the middle of the window, or beside it where letters stand; null where there is no room. */
export function flowerX(
  from: number,
  to: number,
  width: number,
  taken: readonly number[],
  room = 14,
): number | null {
  const within = (x: number) => Math.min(width - room / 2, Math.max(room / 2, x));
  const middle = within((from + to) / 2);
  const free = (x: number) => taken.every((other) => Math.abs(other - x) >= room);
  const steps = [0, room, -room, 1.5 * room, -1.5 * room, 2 * room, -2 * room];
  return steps.map((step) => within(middle + step)).find(free) ?? null;
}
