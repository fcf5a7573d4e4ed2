export {
  AIR,
  FLEECE,
  FLOOR,
  LEAF,
  POTS,
  STAR,
  SUBSOIL,
  UNDER,
  WALL,
  WATER,
  kelvin,
  nodeCount,
  stefanBoltzmann,
} from './nodes.ts';
export { airDensity, airHeat, latentHeat, leakageFactor, saturationRatio, ventFlow } from './air.ts';
export { outsideConvection, radiantCoefficient } from './covers.ts';
export { proportionalOpening } from './control.ts';
export type { HeaterNumbers, Network } from './network.ts';
export { emptyDrive, initialState } from './state.ts';
export type { Drive, HeatState } from './state.ts';
export { stepHeat } from './step.ts';
export { relativeHumidity } from './vapour.ts';
export { buildNetwork, coverSurfaces } from './build.ts';
export { leafConvection, leafCover } from './leaf.ts';
export { handbookLoss, steadyPower } from './handbook.ts';
