/**
 * Time constant with which dirt comes back after washing [d]. Glass near towns and fields loses most of what it will
 * lose within two to four months (estimate, no source).
 */
export const dirtDays = 75;

/** Share of light lost to dirt so many days after washing: from 0 towards `most`, the share on a cover never washed, 0–1. */
export function dirtLoss(days: number, most: number): number {
  if (!(days >= 0)) throw new Error(`expected days since washing of 0 or more, got ${days}`);
  return most * (1 - Math.exp(-days / dirtDays));
}
