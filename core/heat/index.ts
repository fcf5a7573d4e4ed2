export { AIR, FLEECE, LEAF, POTS, STAR, UNDER, kelvin, nodeCount, stefanBoltzmann } from './nodes.ts';
export {
  airDensity,
  airHeat,
  latentHeat,
  leakageFactor,
  outdoorCarbonDioxide,
  saturationRatio,
  singleSidedFlow,
  ventFlow,
} from './air.ts';
export { outerConvection, outsideConvection, radiantCoefficient, windConvection } from './surfaces.ts';
export { proportionalOpening } from './control.ts';
export { GROUND, NOTHING, OUTDOORS, ROOM } from './network.ts';
export type { HeaterNumbers, Network } from './network.ts';
export { emptyDrive, initialState } from './state.ts';
export type { Drive, HeatState } from './state.ts';
export { stepHeat } from './step.ts';
export { relativeHumidity } from './vapour.ts';
export { buildNetwork, coverSurfaces } from './build.ts';
export { leafConvection, leafCover, outdoorLeaf } from './leaf.ts';
export { heatPerEnergy, plainHeater } from './heaters.ts';
export { interiorSun } from './interior-sun.ts';
export { airHeights } from './heights.ts';
export type { AirHeights } from './heights.ts';
export { handbookLoss, steadyPower } from './handbook.ts';
