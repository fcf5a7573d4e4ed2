/** Heights of the parts of a band and the room beside the plots [px]. */
export const temperatureHeight = 84;
export const lightHeight = 46;
export const ribbonHeight = 18;
export const ribbonStep = 29;
/** Room left of the plots for scale figures. */
export const scaleRoom = 34;
export const partGap = 9;

export function bandHeight(lots: number): number {
  return temperatureHeight + partGap + lightHeight + partGap + lots * ribbonStep;
}
