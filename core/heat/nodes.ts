/**
 * Temperature nodes of one place's thermal network.
 *
 * `star` is the mean radiant node that stands for the mutual long-wave exchange of the inner surfaces
 * (star network: Seem 1987; Davies 2004). `under` is the air under a fleece (the same as `air` where none
 * is laid). Cover faces are massless and are eliminated surface by surface before the solve.
 */
export const AIR = 0;
export const STAR = 1;
export const FLOOR = 2;
export const SUBSOIL = 3;
export const POTS = 4;
export const LEAF = 5;
export const WALL = 6;
export const WATER = 7;
export const UNDER = 8;
export const FLEECE = 9;

/**
 * Number of nodes at most; matrices are row-major, `nodeCount` × `nodeCount`, lower triangle used. A place
 * without fleece, water or back wall stops earlier (`Network.size`): what it lacks stands at the end.
 */
export const nodeCount = 10;

export { stefanBoltzmann } from '../weather/index.ts';

/** 0 °C in kelvin. */
export const kelvin = 273.15;
