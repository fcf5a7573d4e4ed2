/**
 * Share of a day's global radiation that falls in the hour round an hour angle: Collares-Pereira & Rabl 1979 (Solar
 * Energy 22, 155–164). Angles [degrees]: `hourAngle` of the hour's middle, `sunset` hour angle. Zero outside the day.
 */
export function hourlyShare(hourAngle: number, sunset: number): number {
  const rad = Math.PI / 180;
  if (!(Math.abs(hourAngle) < sunset)) return 0;
  const a = 0.409 + 0.5016 * Math.sin((sunset - 60) * rad);
  const b = 0.6609 - 0.4767 * Math.sin((sunset - 60) * rad);
  const cosine = Math.cos(hourAngle * rad);
  const top = cosine - Math.cos(sunset * rad);
  const bottom = Math.sin(sunset * rad) - sunset * rad * Math.cos(sunset * rad);
  return Math.max(0, ((Math.PI / 24) * (a + b * cosine) * top) / bottom);
}
