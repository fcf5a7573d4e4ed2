import { demonstrationPlan, weatherFromPlan } from '../../core/index.ts';
import type { Plan, WeatherYear } from '../../core/index.ts';

/** An invented site: mean daily least and most [°C] and global radiation [MJ m⁻² d⁻¹] by month, January first. */
export interface InventedSite {
  readonly latitude: number;
  readonly longitude: number;
  readonly timeZone: string;
  readonly least: readonly number[];
  readonly most: readonly number[];
  readonly radiation: readonly number[];
  readonly typicalLow: number;
  readonly rareLow: number;
}

/** Mild dry summers, wet winters with a little frost, south of the equator. */
export const southern: InventedSite = {
  latitude: -35.2,
  longitude: 149.1,
  timeZone: 'Australia/Sydney',
  least: [13.5, 13.3, 10.8, 6.8, 3.3, 1, 0, 1.1, 3.4, 6.3, 9, 11.5],
  most: [28.5, 27.6, 24.7, 20.2, 15.8, 12.4, 11.6, 13.4, 16.5, 19.7, 23, 26.4],
  radiation: [25.5, 22, 18.3, 13.5, 9.6, 7.8, 8.7, 11.8, 16, 20.3, 23.8, 26],
  typicalLow: -5.5,
  rareLow: -7.5,
};

/** A tropical plateau: coolest at the turn of the year, hottest before the rains of April to June. */
export const plateau: InventedSite = {
  latitude: 13,
  longitude: 77.6,
  timeZone: 'Asia/Kolkata',
  least: [15.6, 16.8, 19.8, 21.8, 21.6, 20.3, 19.7, 19.6, 19.6, 19.2, 17.6, 15.9],
  most: [27.3, 29.2, 32.6, 33.8, 33, 29.2, 28, 27.6, 28.3, 27.9, 26.9, 26.3],
  radiation: [18.8, 21.2, 22.9, 23, 22.2, 18.2, 16.6, 17, 18.2, 17.4, 16.8, 17.2],
  typicalLow: 12,
  rareLow: 10.2,
};

/** A monsoon coast north of the equator whose coolest months are those of the rains, June to November. */
export const monsoon: InventedSite = {
  latitude: 8.5,
  longitude: -13.2,
  timeZone: 'Africa/Freetown',
  least: [23.4, 23.9, 24.5, 24.8, 24.4, 23.4, 22.6, 22.3, 22.6, 22.9, 23.6, 23.7],
  most: [30.8, 31.3, 31.6, 31.6, 30.9, 29.4, 27.8, 27.2, 28.2, 29.3, 30.2, 30.4],
  radiation: [18.4, 20, 20.6, 19.6, 17.6, 15.2, 12.4, 11.6, 14.2, 16.6, 17, 16.8],
  typicalLow: 20,
  rareLow: 18.8,
};

/** On the equator without a season of warmth. */
export const equatorial: InventedSite = {
  latitude: 1.3,
  longitude: 103.8,
  timeZone: 'Asia/Singapore',
  least: [24, 24.2, 24.5, 24.8, 25, 24.9, 24.7, 24.6, 24.5, 24.4, 24.2, 24],
  most: [30.6, 31.2, 31.5, 31.6, 31.4, 31.2, 30.9, 30.8, 30.9, 31.1, 30.8, 30.4],
  radiation: [15.6, 17.8, 17.6, 17, 16.2, 16, 15.9, 16.1, 16.3, 16, 14.6, 14],
  typicalLow: 21.8,
  rareLow: 21,
};

/** A northern coast with a month without sunrise, and a frozen one with a night of four months. */
export const arctic: InventedSite = {
  latitude: 69.7,
  longitude: 19,
  timeZone: 'Europe/Oslo',
  least: [-5.4, -5.3, -4, -1.2, 2.8, 6.5, 9.2, 8.4, 5.2, 1.2, -2, -4],
  most: [-0.8, -0.9, 0.6, 3.6, 8.2, 12.6, 15.6, 14.4, 10.2, 5, 1.9, 0.2],
  radiation: [0.1, 1.1, 4.6, 10.6, 15.4, 17, 15.6, 11, 6, 2.1, 0.3, 0],
  typicalLow: -13.5,
  rareLow: -16.5,
};

export const highArctic: InventedSite = {
  latitude: 78.2,
  longitude: 15.6,
  timeZone: 'Arctic/Longyearbyen',
  least: [-13.5, -14.2, -14.4, -11, -4.4, 1, 4.8, 4.1, 0.1, -6.2, -9.4, -11.8],
  most: [-7.4, -7.7, -7.8, -4.5, 0.7, 5.6, 9.2, 7.8, 3.6, -1.6, -4.3, -6.2],
  radiation: [0, 0, 2.4, 10.2, 17.6, 19.4, 15.4, 9, 3.8, 0.5, 0, 0],
  typicalLow: -28,
  rareLow: -33,
};

/** A plan moved to an invented site. */
export function movedTo(plan: Plan, place: InventedSite): Plan {
  const { latitude, longitude, timeZone, typicalLow, rareLow } = place;
  return {
    ...plan,
    site: { ...plan.site, name: 'Elsewhere', latitude, longitude, timeZone, elevation: 30, snow: null },
    climate: {
      kind: 'normals',
      months: place.least.map((meanMinimum, month) => ({
        meanMinimum,
        meanMaximum: place.most[month],
        globalRadiation: place.radiation[month],
        sunshineHours: null,
        wind: 3,
      })),
      typicalLow,
      rareLow,
      seed: 3,
    },
  };
}

export function weatherOf(plan: Plan): WeatherYear {
  const weather = weatherFromPlan(plan);
  if (weather === null) throw new Error('expected typed normals');
  return weather;
}

/** The demonstration with a pan of living stones, kept dry in their winter months, in its warm lit tent. */
export const withStones: Plan = {
  ...demonstrationPlan,
  lots: [
    ...demonstrationPlan.lots,
    {
      ...demonstrationPlan.lots[0],
      id: 'stones',
      name: 'Stones',
      group: 'lithops',
      place: 'bright-tent',
      area: 0.01,
      moves: [],
    },
  ],
};
