import { line, scaleLinear } from 'd3';
import type { SunWay } from './skyline-sun.ts';
import type { Skyline, Stretch } from './skyline.ts';

/** Room round the panorama for its scales [px]. */
export const margin = { left: 30, right: 10, top: 8, bottom: 34 } as const;

const degree = 10;
const [lowestTop, highestTop] = [40, 90];

/** Where azimuths and heights stand in a panorama `width` × `height` [px]; the noon sun is in the middle. */
export interface SkylineView {
  readonly start: number;
  readonly top: number;
  readonly x: (azimuth: number) => number;
  readonly y: (elevation: number) => number;
  readonly azimuthAt: (x: number) => number;
  readonly elevationAt: (y: number) => number;
}

/** Highest degree drawn: above every sun path and every point, in whole tens. */
export function topOf(points: Skyline, ways: readonly SunWay[]): number {
  const suns = ways.flatMap(({ moments }) => moments.map(({ elevation }) => elevation));
  const most = Math.max(...suns.map((sun) => sun + 4), ...points.map(({ elevation }) => elevation + 4), 0);
  return Math.min(highestTop, Math.max(lowestTop, Math.ceil(most / degree) * degree));
}

export function skylineView(width: number, height: number, latitude: number, top: number): SkylineView {
  const start = latitude >= 0 ? 0 : 180;
  const across = scaleLinear([0, 360], [margin.left, width - margin.right]);
  const up = scaleLinear([0, top], [height - margin.bottom, margin.top]);
  const round = (azimuth: number) => (((azimuth - start) % 360) + 360) % 360;
  return {
    start,
    top,
    x: (azimuth) => across(azimuth - start === 360 ? 360 : round(azimuth)),
    y: (elevation) => up(elevation),
    azimuthAt: (x) => (start + Math.min(359.5, Math.max(0, across.invert(x)))) % 360,
    elevationAt: (y) => Math.min(top, Math.max(0, up.invert(y))),
  };
}

/** A stretch of the skyline down to the ground. */
export function stretchPath(view: SkylineView, { corners }: Stretch): string {
  const [[from], [to]] = [corners[0], corners[corners.length - 1]];
  const outline = corners.map(([azimuth, elevation]) => [view.x(azimuth), view.y(elevation)] as const);
  const points = [[view.x(from), view.y(0)] as const, ...outline, [view.x(to), view.y(0)] as const];
  return `${line()(points.map(([x, y]) => [x, y]))}Z`;
}

/** The sun's way or a part of it; it starts anew where it runs off one end of the drawing and in at the other. */
export function wayPath(view: SkylineView, moments: SunWay['moments']): string {
  let before: number | null = null;
  const draw = line<SunWay['moments'][number]>()
    .x(({ azimuth }) => view.x(azimuth))
    .y(({ elevation }) => view.y(elevation));
  const runs: SunWay['moments'][number][][] = [];
  for (const moment of moments) {
    const at = view.x(moment.azimuth);
    if (before === null || Math.abs(at - before) > (view.x(view.start + 180) - view.x(view.start)) / 2)
      runs.push([]);
    runs[runs.length - 1].push(moment);
    before = at;
  }
  return runs.map((run) => draw(run) ?? '').join('');
}

/** Directions of the compass along the foot, the finer ones only where there is room. */
export function compass(
  view: SkylineView,
  width: number,
): { readonly azimuth: number; readonly name: string }[] {
  const names = ['N', 'NE', 'E', 'SE', 'S', 'SW', 'W', 'NW'];
  const all = names.map((name, index) => ({ azimuth: 45 * index, name }));
  const ends = { azimuth: view.start + 360, name: names[view.start / 45] };
  const kept = width < 420 ? all.filter(({ azimuth }) => azimuth % 90 === 0) : all;
  return [...kept, ends];
}

const directions = ['north', 'north-east', 'east', 'south-east', 'south', 'south-west', 'west', 'north-west'];

/** A direction in words: `south-east, 140°`. */
export const directionWords = (azimuth: number): string =>
  `${directions[Math.round((azimuth % 360) / 45) % 8]}, ${Number(azimuth.toFixed(1))}°`;
