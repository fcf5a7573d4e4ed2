/**
 * Scrolls the sheet just as far as a band needs to be whole in sight under the axis, `axis` px high. Not by
 * `scrollIntoView`, which would also move the point that Tab starts from.
 */
export function bringIntoSight(band: HTMLElement, axis: number) {
  const sheet = band.closest<HTMLElement>('[data-scrolls]');
  if (!sheet) return;
  const [outer, inner] = [sheet.getBoundingClientRect(), band.getBoundingClientRect()];
  const above = outer.top + axis - inner.top;
  const below = inner.bottom - outer.bottom;
  if (above > 0) sheet.scrollTop -= above;
  else if (below > 0) sheet.scrollTop += Math.min(below, -above);
}
