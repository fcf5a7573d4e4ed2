import { weatherFromPlan, planSchemaVersion } from '../../core/index.ts';
import type { Plan, PlanSite, WeatherYear } from '../../core/index.ts';

/**
 * Twelve invented climates from the ice to the equator, in the manner of published normals (from memory, rounded):
 * annual mean and half the swing of the monthly means, half the daily range [°C], usual and rare least [°C], wind [m s⁻¹].
 */
interface Sketch {
  readonly name: string;
  readonly latitude: number;
  readonly longitude: number;
  readonly elevation: number;
  readonly timeZone: string;
  readonly mean: number;
  readonly swing: number;
  readonly range: number;
  readonly lows: readonly [usual: number, rare: number];
  readonly wind: number;
  readonly site?: Partial<PlanSite>;
}

const snow = { depth: 0.3, from: '11-15', to: '04-10' };

const sketches: readonly Sketch[] = [
  sketch('polar night', 78, 16, 20, 'Arctic/Longyearbyen', -6, 10, 2.5, [-28, -40], 5, { snow, albedo: 0.6 }),
  sketch('boreal, far from the sea', 62, 130, 100, 'Asia/Yakutsk', -9, 28, 5, [-50, -58], 1.5, {
    snow,
    windShare: 0.3,
  }),
  sketch('boreal coast', 65, 25, 10, 'Europe/Helsinki', 2.5, 13, 3.5, [-27, -34], 3, {
    snow,
    frostHollow: 3,
  }),
  sketch('mild and maritime', 54, -7.4, 62, 'Europe/Dublin', 9, 5, 3.3, [-5.5, -10], 4.2, { frostHollow: 1 }),
  sketch('warm summers', 48, 11, 500, 'Europe/Berlin', 9, 10, 5, [-14, -21], 2.5),
  sketch('high valley', 46.5, 9.8, 1700, 'Europe/Zurich', 2, 10.5, 6.5, [-22, -29], 2, {
    snow: { depth: 0.6, from: '11-20', to: '04-25' },
    horizon: [0, 90, 180, 270].map((azimuth) => ({ azimuth, elevation: 15, passes: 0 })),
  }),
  sketch('winter rain', 37, 22, 30, 'Europe/Athens', 18, 8.5, 4.5, [1, -3], 3),
  sketch('desert', 25, 45, 600, 'Asia/Riyadh', 26, 11, 7.5, [4, 0], 3.5, { albedo: 0.35, windShare: 1 }),
  sketch('monsoon', 19, 73, 10, 'Asia/Kolkata', 27, 3, 3.5, [16, 12], 3),
  sketch('rain forest', 2, 104, 20, 'Asia/Singapore', 27.5, 0.7, 3.8, [22, 20.5], 1.5, { windShare: 0.2 }),
  sketch('high on the equator', -0.2, -78.5, 2800, 'America/Guayaquil', 14, 0.5, 5, [6, 3], 2.5),
  sketch('southern winter', -43.5, 172.6, 10, 'Pacific/Auckland', 11.5, 5.8, 5, [-4, -7], 4, {
    frostHollow: 2,
  }),
];

function sketch(
  name: string,
  latitude: number,
  longitude: number,
  elevation: number,
  timeZone: string,
  mean: number,
  swing: number,
  range: number,
  lows: readonly [number, number],
  wind: number,
  site?: Partial<PlanSite>,
): Sketch {
  return { name, latitude, longitude, elevation, timeZone, mean, swing, range, lows, wind, site };
}

/** Coldest month: January in the north, July in the south. */
const monthly = ({ mean, swing, range, wind, latitude }: Sketch) =>
  Array.from({ length: 12 }, (_, month) => {
    const coldest = latitude >= 0 ? 0 : 6;
    const middle = mean - swing * Math.cos((2 * Math.PI * (month - coldest)) / 12);
    return {
      meanMinimum: middle - range,
      meanMaximum: middle + range,
      globalRadiation: null,
      sunshineHours: null,
      wind,
    };
  });

/** What a plan holds of a climate: all but its places and lots. */
export interface ClimateFrame {
  readonly name: string;
  readonly frame: object;
}

export const climates: readonly ClimateFrame[] = sketches.map((each, index) => ({
  name: each.name,
  frame: {
    schemaVersion: planSchemaVersion,
    name: each.name,
    site: {
      name: each.name,
      latitude: each.latitude,
      longitude: each.longitude,
      elevation: each.elevation,
      timeZone: each.timeZone,
      ...each.site,
    },
    climate: {
      kind: 'normals',
      months: monthly(each),
      typicalLow: each.lows[0],
      rareLow: each.lows[1],
      seed: index + 1,
    },
    tariff: { currency: 'EUR', dayPrice: 0.3, nightPrice: 0.15 },
  },
}));

const years = new Map<string, WeatherYear>();

/** The year of a plan drawn in one of the climates, made once for each. */
export function yearOf(plan: Plan): WeatherYear {
  const known = years.get(plan.name);
  if (known !== undefined) return known;
  const made = weatherFromPlan(plan);
  if (made === null) throw new Error('expected a climate of normals, got a file');
  years.set(plan.name, made);
  return made;
}
