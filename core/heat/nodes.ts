/**
 * Temperature nodes of one place's thermal network that are solved together.
 *
 * `STAR` is the mean radiant node that stands for the mutual long-wave exchange of all inner faces (star
 * network: Carroll 1980; Davies 2004). `UNDER` is the air under a fleece. Everything that has a face towards
 * the inside (glass, walls, floor, water, a heater full of oil) is a surface with layers behind it and is
 * eliminated before the solve (`surfaces.ts`).
 */
export const AIR = 0;
export const STAR = 1;
export const POTS = 2;
export const LEAF = 3;
export const UNDER = 4;
export const FLEECE = 5;

/**
 * Number of nodes at most; matrices are row-major, `nodeCount` × `nodeCount`, lower triangle used. A place
 * without fleece stops at `UNDER` (`Network.size`).
 */
export const nodeCount = 6;

export { stefanBoltzmann } from '../weather/index.ts';

/** 0 °C in kelvin. */
export const kelvin = 273.15;
