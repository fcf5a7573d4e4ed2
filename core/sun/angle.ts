/** Radians in one degree. */
export const radians = Math.PI / 180;

/** Sine, cosine and tangent of an angle in degrees. */
export const sind = (degrees: number): number => Math.sin(degrees * radians);
export const cosd = (degrees: number): number => Math.cos(degrees * radians);
export const tand = (degrees: number): number => Math.tan(degrees * radians);

/** Inverse functions in degrees; the argument is held within −1…1 against rounding. */
export const asind = (value: number): number => Math.asin(Math.max(-1, Math.min(1, value))) / radians;
export const acosd = (value: number): number => Math.acos(Math.max(-1, Math.min(1, value))) / radians;

/** Angle brought to 0…360 [degrees]. */
export function turn(degrees: number): number {
  const rest = degrees % 360;
  return rest < 0 ? rest + 360 : rest;
}

/** Angle brought to −180…180 [degrees]. */
export function halfTurn(degrees: number): number {
  const rest = turn(degrees);
  return rest > 180 ? rest - 360 : rest;
}
