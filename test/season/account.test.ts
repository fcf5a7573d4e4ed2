/** The account of heat: every day and every night of it adds up to nothing, in places with all kinds of equipment. */
import { describe, expect, it } from 'vitest';
import { createSeasonCache, demonstrationPlan, runSeason, weatherFromPlan } from '../../core/index.ts';
import type { PlaceSeason, WeatherYear } from '../../core/index.ts';
import { bareHouse, planOf, southWindow, tent } from '../support/plans.ts';

const heater = (kind: string, changes: object = {}) => ({
  id: kind,
  name: kind,
  kind,
  power: 1500,
  setPointDay: 7,
  setPointNight: 6,
  ...changes,
});

const fitted = {
  ...bareHouse,
  covering: 'polythene',
  secondSkin: { covering: 'polythene', gap: 0.05 },
  screen: { covering: 'woven-screen', closedWhen: 'hours', from: '17:00', to: '08:00' },
  fleece: { covering: 'fleece-30', layers: 1, laidWhen: 'cold-night', below: 2 },
  baseWall: { height: 0.4, covering: 'brick-102' },
  shadySide: 'insulated-panel',
  edgeInsulation: { thickness: 0.05, depth: 0.4 },
  door: { area: 1.6, height: 1.9, from: '10:00', to: '16:00', above: 10 },
  fan: { flow: 200, watts: 20, onAt: 20, band: 3, leastSpeed: 0.1 },
  circulation: { watts: 25, airSpeed: 0.5, runs: 'night' },
  floor: 'slab',
  ground: 'wet',
  snow: 'left',
  water: [
    { name: 'Drum', litres: 200, count: 1 },
    { name: 'Trough', litres: 100, count: 1, form: 'trough' },
  ],
  heaters: [
    heater('oil-filled'),
    heater('heat-mat', { power: 150, setPointDay: 12, setPointNight: 12 }),
    heater('paraffin', { setPointNight: 4, setPointDay: 4 }),
  ],
};

const leanTo = {
  ...bareHouse,
  shape: {
    kind: 'lean-to',
    length: 4,
    width: 2,
    eavesHeight: 1.7,
    ridgeHeight: 2.6,
    azimuth: 190,
    wall: { material: 'brick', thickness: 0.215, behind: 'outdoors' },
  },
  lining: 'bubble-lining',
  standing: 'ground',
  heaters: [heater('tubular'), heater('heat-pump', { setPointNight: 8, setPointDay: 8 })],
};

const windowBay = {
  ...southWindow,
  room: { kind: 'following', temperature: 15, factor: 0.3 },
  curtain: { covering: 'woven-screen', closedWhen: 'cold-night', below: 3 },
};

const attic = {
  ...bareHouse,
  room: { kind: 'constant', temperature: 16 },
  shape: {
    kind: 'listed',
    floorArea: 12,
    volume: 16,
    surfaces: [
      { name: 'Roof window', area: 2, tilt: 40, azimuth: 180, covering: 'glass-4', behind: 'outdoors' },
      {
        name: 'Rafters',
        area: 14,
        tilt: 40,
        azimuth: 0,
        build: {
          kind: 'layers',
          layers: [
            { thickness: 0.02, conductivity: 0.13, density: 500, specificHeat: 1600 },
            { thickness: 0.1, conductivity: 0.04, density: 20, specificHeat: 1000 },
          ],
        },
        behind: 'outdoors',
      },
      { name: 'Ceiling below', area: 12, tilt: 180, azimuth: 0, covering: 'timber-board', behind: 'room' },
      { name: 'Chimney', area: 3, tilt: 90, azimuth: 0, covering: 'brick-215', behind: 'nothing' },
    ],
  },
  heaters: [heater('propane', { flued: true })],
};

const site = { ...demonstrationPlan.site, snow: { depth: 0.1, from: '12-01', to: '03-01' } };
const weather = weatherFromPlan(demonstrationPlan) as WeatherYear;
const cache = createSeasonCache();
const run = (place: object): PlaceSeason => runSeason(planOf(place, [], { site }), weather, cache).places[0];

const places = (
  [
    ['a house with everything', fitted],
    ['a lined lean-to on an outside wall', leanTo],
    ['a window bay with a curtain', windowBay],
    ['a lit tent with a fan', tent([{ watts: 75 }], { fan: { flow: 60, watts: 4, onAt: 24, band: 3 } })],
    ['a listed attic with a flued burner', attic],
  ] as const
).map(([name, place]) => [name, run(place)] as const);

describe.each(places)('the account of %s', (_, { heat, energyResidual, daily, totals }) => {
  it.each(['days', 'nights'] as const)(
    'adds up to nothing in every one of the %s, within 1e-9 of what moves',
    (span) => {
      let most = 0;
      for (let day = 0; day < 365; day++) {
        const net = heat.reduce((sum, part) => sum + part[span][day], 0);
        const moved = heat.reduce((sum, part) => sum + Math.abs(part[span][day]), 0);
        most = Math.max(most, Math.abs(net) / Math.max(moved, 1e-9));
      }
      expect(most).toBeLessThan(1e-9);
      expect(energyResidual).toBeLessThan(1e-12);
    },
  );

  it('a night is no more than the two days it lies in, and dark hours are not the whole', () => {
    const heaters = heat.filter((part) => part.kind === 'heaters');
    for (const { days, nights } of heaters) {
      for (let day = 0; day < 364; day++) {
        expect(-nights[day]).toBeLessThanOrEqual(-days[day] - days[day + 1] + 1e-9);
      }
    }
    const sun = heat.filter((part) => part.kind === 'sun');
    for (const { days, nights } of sun) {
      const [all, dark] = [days, nights].map((values) => values.reduce((sum, value) => sum - value, 0));
      // Twilight alone: the sun's disc below the horizon, the sky still bright.
      expect(dark).toBeLessThan(0.02 * all);
    }
  });

  it('has the season as the sum of its days, and the heaters as the daily series has them', () => {
    for (const { season, days } of heat) {
      expect(days.reduce((sum, value) => sum + value, 0)).toBeCloseTo(season, 9);
    }
    const given = heat.find((part) => part.kind === 'heaters');
    for (let day = 1; day < 365; day++) {
      expect(-(given?.days[day] ?? 0)).toBeCloseTo(daily.heaterHeat[day], 9);
    }
    expect(totals.heaterHeat).toBeCloseTo(
      daily.heaterHeat.reduce((sum, value) => sum + value, 0),
      9,
    );
  });
});

describe('what heaters take', () => {
  const of = (heaters: object[]) => run({ ...bareHouse, heaters }).totals;
  const fan = of([heater('fan')]);

  it('a heat pump gives the same heat for between a half and a quarter of the electricity', () => {
    const pump = of([heater('heat-pump', { coefficientAt7: 4, coefficientAtMinus7: 2.6 })]);
    expect(pump.heaterHeat).toBeCloseTo(fan.heaterHeat, 9);
    expect(fan.heaterElectricity).toBeCloseTo(fan.heaterHeat, 9);
    const coefficient = pump.heaterHeat / pump.heaterElectricity;
    // It heats on cold nights: between the outdoor temperatures of −10 and 7 °C on its line.
    expect(coefficient).toBeGreaterThan(2.3);
    expect(coefficient).toBeLessThan(4);
  });

  it('a burner takes fuel and no electricity, with a flue more of it for the same heat', () => {
    const fuel = (flued: boolean) => {
      const place = run({ ...bareHouse, heaters: [heater('propane', { flued, tank: 11 })] });
      expect(place.totals.heaterElectricity).toBe(0);
      const [use] = place.fuels;
      expect(use.amount * 12.88 * (flued ? 0.85 : 1)).toBeCloseTo(place.totals.heaterHeat, 6);
      expect(use.fillings).toBeCloseTo(use.amount / 11, 9);
      return use.amount;
    };
    expect(fuel(true)).toBeGreaterThan(1.1 * fuel(false));
  });
});
