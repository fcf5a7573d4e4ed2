/** Corners of what an element of the drawing shows [px]: the ends of its path's strokes, or of its box or circle. */
export function cornersOf(element: Element): [number, number][] {
  const number = (name: string) => Number(element.getAttribute(name));
  switch (element.tagName.toLowerCase()) {
    case 'path':
      return pathCorners(element.getAttribute('d') ?? '');
    case 'rect': {
      const [x, y, w, h] = [number('x'), number('y'), number('width'), number('height')];
      return [
        [x, y],
        [x + w, y + h],
      ];
    }
    case 'circle': {
      const [x, y, r] = [number('cx'), number('cy'), number('r')];
      return [
        [x - r, y - r],
        [x + r, y + r],
      ];
    }
    case 'line':
      return [
        [number('x1'), number('y1')],
        [number('x2'), number('y2')],
      ];
    default:
      return [];
  }
}

/** Numbers a command takes; its last two (or one, for H and V) say where it ends. */
const taken: Readonly<Record<string, number>> = { M: 2, L: 2, H: 1, V: 1, Q: 4, T: 2, A: 7, Z: 0 };

function pathCorners(d: string): [number, number][] {
  const corners: [number, number][] = [];
  let [x, y, startX, startY] = [0, 0, 0, 0];
  for (const [, command, rest] of d.matchAll(/([MLHVQTAZ])([^MLHVQTAZ]*)/gi)) {
    const numbers = (rest.match(/-?\d*\.?\d+(?:e-?\d+)?/gi) ?? []).map(Number);
    const upper = command.toUpperCase();
    const relative = command !== upper;
    const count = taken[upper];
    if (upper === 'Z') [x, y] = [startX, startY];
    if (count === 0) continue;
    if (numbers.length === 0 || numbers.length % count !== 0 || numbers.some(Number.isNaN))
      throw new Error(`expected ${count} numbers a ${command}, got ${rest}`);
    for (let i = 0; i < numbers.length; i += count) {
      const end = numbers.slice(i, i + count).slice(-2);
      if (upper === 'H') x = end[0] + (relative ? x : 0);
      else if (upper === 'V') y = end[0] + (relative ? y : 0);
      else [x, y] = [end[0] + (relative ? x : 0), end[1] + (relative ? y : 0)];
      if (upper === 'M' && i === 0) [startX, startY] = [x, y];
      corners.push([x, y]);
    }
  }
  return corners;
}
