import { julianDay, deltaT } from './julian.ts';
import { acosd, asind, cosd, halfTurn, radians, sind, turn } from './angle.ts';

/** Where the sun stands as seen from the middle of the earth. Angles [degrees]. */
export interface SolarCoordinates {
  /** Apparent right ascension and declination. */
  rightAscension: number;
  declination: number;
  /** Distance of the sun [astronomical units]. */
  distance: number;
  /** Apparent sidereal time at Greenwich. */
  siderealTime: number;
  /** Apparent minus mean solar time [min]. */
  equationOfTime: number;
}

/**
 * Geometric longitude of the sun [degrees] and its distance [AU]. Meeus, Astronomical Algorithms (2nd ed. 1998),
 * ch. 25, low accuracy, with the planets' larger pulls added (Newcomb's inequalities as in Meeus, Astronomical
 * Formulae for Calculators (1979), ch. 18; coefficients from memory, kept because they bring the result nearer
 * to an independent VSOP87 computation, see test/sun/position.test.ts). `T` Julian centuries TT from 2000.
 */
function longitudeAndDistance(T: number): { longitude: number; distance: number; meanLongitude: number } {
  const meanLongitude = 280.46646 + T * (36000.76983 + T * 0.0003032);
  const anomaly = 357.52911 + T * (35999.05029 - T * 0.0001537);
  const eccentricity = 0.016708634 - T * (0.000042037 + T * 0.0000001267);
  const centre =
    (1.914602 - T * (0.004817 + T * 0.000014)) * sind(anomaly) +
    (0.019993 - T * 0.000101) * sind(2 * anomaly) +
    0.000289 * sind(3 * anomaly);
  // The inequalities count from 1900.0, one century earlier.
  const C = T + 1;
  const venus = 153.23 + 22518.7541 * C;
  const venusTwice = 216.57 + 45037.5082 * C;
  const jupiter = 312.69 + 32964.3577 * C;
  const moon = 350.74 + 445267.1142 * C;
  const pulls =
    0.00134 * cosd(venus) +
    0.00154 * cosd(venusTwice) +
    0.002 * cosd(jupiter) +
    0.00179 * sind(moon) +
    0.00178 * sind(231.19 + 20.2 * C);
  const distance =
    (1.000001018 * (1 - eccentricity * eccentricity)) / (1 + eccentricity * cosd(anomaly + centre)) +
    0.00000543 * sind(venus) +
    0.00001575 * sind(venusTwice) +
    0.00001627 * sind(jupiter) +
    0.00003076 * cosd(moon) +
    0.00000927 * sind(353.06 + 65928.7155 * C);
  return { longitude: meanLongitude + centre + pulls, distance, meanLongitude };
}

/**
 * The sun's apparent coordinates at an instant. Nutation by its four largest terms and aberration as in
 * Meeus (2nd ed.), ch. 22 and 25; sidereal time ch. 12; equation of time ch. 28.
 */
export function solarCoordinates(epochMs: number): SolarCoordinates {
  const day = julianDay(epochMs);
  const T = (day + deltaT(epochMs) / 86400 - 2451545) / 36525;
  const { longitude, distance, meanLongitude } = longitudeAndDistance(T);
  const node = 125.04452 - 1934.136261 * T;
  const moon = 218.3165 + 481267.8813 * T;
  const nutation =
    (-17.2 * sind(node) - 1.32 * sind(2 * meanLongitude) - 0.23 * sind(2 * moon) + 0.21 * sind(2 * node)) /
    3600;
  const tilt =
    23.4392911 -
    T * (0.013004167 + T * (0.000000164 - T * 0.000000504)) +
    (9.2 * cosd(node) + 0.57 * cosd(2 * meanLongitude) + 0.1 * cosd(2 * moon) - 0.09 * cosd(2 * node)) / 3600;
  const apparent = longitude + nutation - 20.4898 / 3600 / distance;
  const sine = sind(apparent);
  const rightAscension = turn(Math.atan2(cosd(tilt) * sine, cosd(apparent)) / radians);
  const declination = asind(sind(tilt) * sine);
  const days = day - 2451545;
  const siderealTime = turn(
    280.46061837 + 360.98564736629 * days + 0.000387933 * T * T + nutation * cosd(tilt),
  );
  const equation = halfTurn(meanLongitude - 0.0057183 - rightAscension + nutation * cosd(tilt)) * 4;
  return { rightAscension, declination, distance, siderealTime, equationOfTime: equation };
}

/** The sun above a place. Angles [degrees], azimuth clockwise from north. */
export interface LocalSun {
  elevation: number;
  azimuth: number;
}

/** Equatorial horizontal parallax of the sun at one astronomical unit [degrees] (8.794″). */
const parallax = 8.794 / 3600;

/** Elevation of the sun's centre without refraction, and its azimuth, seen from the ground at a latitude and longitude. */
export function localSun(sun: SolarCoordinates, latitude: number, longitude: number): LocalSun {
  const hourAngle = (sun.siderealTime + longitude - sun.rightAscension) * radians;
  const sinLatitude = Math.sin(latitude * radians);
  const cosLatitude = Math.cos(latitude * radians);
  const sinDeclination = Math.sin(sun.declination * radians);
  const cosDeclination = Math.cos(sun.declination * radians);
  const cosHour = Math.cos(hourAngle);
  const up = sinLatitude * sinDeclination + cosLatitude * cosDeclination * cosHour;
  const east = -cosDeclination * Math.sin(hourAngle);
  const north = sinDeclination * cosLatitude - cosDeclination * cosHour * sinLatitude;
  const level = Math.sqrt(east * east + north * north);
  // atan2 keeps its accuracy where the sun stands near the zenith.
  const elevation = Math.atan2(up, level) / radians - (parallax / sun.distance) * level;
  return { elevation, azimuth: turn(Math.atan2(east, north) / radians) };
}

/** Angle between two directions given as elevation and azimuth [degrees]. */
export function separation(
  elevationA: number,
  azimuthA: number,
  elevationB: number,
  azimuthB: number,
): number {
  return acosd(
    sind(elevationA) * sind(elevationB) + cosd(elevationA) * cosd(elevationB) * cosd(azimuthA - azimuthB),
  );
}
