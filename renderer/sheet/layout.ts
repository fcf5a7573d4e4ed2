/** Heights of the parts of a band and the room beside the plots [px]. */
export const temperatureHeight = 62;
export const lightHeight = 34;
export const ribbonHeight = 17;
export const ribbonStep = 29;
/** Room left of the plots for scale figures. */
export const scaleRoom = 34;
export const partGap = 7;
/** Height of the axis with the cursor's grip, which stays on top. */
export const axisHeight = 40;

export function bandHeight(lots: number): number {
  return temperatureHeight + partGap + lightHeight + partGap + lots * ribbonStep;
}
