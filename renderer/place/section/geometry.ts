import type { Section, SectionEdge, SectionPoint } from '../../../core/index.ts';

/** Measures of a cross-section that the drawing needs; the section itself is the engine's `sectionOf`. */
export { sectionOf as sectionThrough } from '../../../core/index.ts';

/** Inner space at a height: least and most x between the edges; the whole width where nothing is cut. */
export function innerRange(section: Section, z: number): { from: number; to: number } {
  const cuts: number[] = [];
  for (const { from, to } of section.edges) {
    if ((from[1] - z) * (to[1] - z) > 0 || from[1] === to[1]) continue;
    cuts.push(from[0] + ((z - from[1]) / (to[1] - from[1])) * (to[0] - from[0]));
  }
  if (cuts.length < 2) return { from: 0, to: section.width };
  return { from: Math.min(...cuts), to: Math.max(...cuts) };
}

/** Height of the cover over the floor at x; the ridge where x lies outside. */
export function coverHeight(section: Section, x: number): number {
  let top = 0;
  for (const { from, to } of section.edges) {
    const [low, high] = from[0] < to[0] ? [from, to] : [to, from];
    if (x < low[0] || x > high[0] || low[0] === high[0]) continue;
    top = Math.max(top, low[1] + ((x - low[0]) / (high[0] - low[0])) * (high[1] - low[1]));
  }
  return top === 0 ? section.height : top;
}

/** Edges joined end to end into lines. */
export function chained(edges: readonly SectionEdge[]): SectionPoint[][] {
  const left = edges.map((edge) => [edge.from, edge.to]);
  const lines: SectionPoint[][] = [];
  while (left.length > 0) {
    const line = [...(left.shift() as SectionPoint[])];
    for (let found = true; found;) {
      found = false;
      for (let i = 0; i < left.length; i += 1) {
        if (!join(line, left[i])) continue;
        left.splice(i, 1);
        found = true;
        break;
      }
    }
    lines.push(line);
  }
  return lines;
}

const same = (a: SectionPoint, b: SectionPoint) => Math.hypot(a[0] - b[0], a[1] - b[1]) < 1e-6;

function join(line: SectionPoint[], [a, b]: readonly SectionPoint[]): boolean {
  const first = line[0];
  const last = line[line.length - 1];
  if (same(last, a)) line.push(b);
  else if (same(last, b)) line.push(a);
  else if (same(first, a)) line.unshift(b);
  else if (same(first, b)) line.unshift(a);
  else return false;
  return true;
}

/** A line moved by `distance` towards `inside`, its corners mitred. */
export function inset(line: readonly SectionPoint[], distance: number, inside: SectionPoint): SectionPoint[] {
  const normals = line.slice(1).map((point, i) => inwardNormal(line[i], point, inside));
  return line.map((point, i): SectionPoint => {
    const a = normals[Math.max(0, i - 1)];
    const b = normals[Math.min(normals.length - 1, i)];
    const sum: SectionPoint = [a[0] + b[0], a[1] + b[1]];
    const size = (sum[0] * sum[0] + sum[1] * sum[1]) / 2;
    const reach = size < 0.2 ? distance : distance / size;
    return [point[0] + sum[0] * reach, point[1] + sum[1] * reach];
  });
}

function inwardNormal(a: SectionPoint, b: SectionPoint, inside: SectionPoint): SectionPoint {
  const size = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const normal: SectionPoint = [(a[1] - b[1]) / size, (b[0] - a[0]) / size];
  const towards = normal[0] * (inside[0] - a[0]) + normal[1] * (inside[1] - a[1]);
  return towards >= 0 ? normal : [-normal[0], -normal[1]];
}

/** The outline of the place from the front foot over the top to the back foot. */
export function outlineOf(section: Section): SectionPoint[] {
  const [line] = chained(section.edges);
  return line[0][0] <= line[line.length - 1][0] ? line : line.reverse();
}

/** True where a point lies within a convex outline closed by the floor, `clear` from its edges [m]. */
export function isWithin(outline: readonly SectionPoint[], [x, z]: SectionPoint, clear = 0): boolean {
  if (z < -1e-9) return false;
  for (let i = 1; i < outline.length; i += 1) {
    const [a, b] = [outline[i - 1], outline[i]];
    const size = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const right = ((b[0] - a[0]) * (z - a[1]) - (b[1] - a[1]) * (x - a[0])) / size;
    if (right > -clear + 1e-9) return false;
  }
  return true;
}
