/** Every measured or typical year at hand runs the demonstration plan from end to end. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { demonstrationPlan, readEpwBytes, runSeason } from '../../core/index.ts';
import { firstDifference, firstNotFinite } from '../season/difference.ts';
import { describeWithData } from '../support/shared-data.ts';

/** File, annual mean air [°C] and global radiation [kWh m⁻²], worked out from the files by an independent script. */
const files: [string, number, number][] = [
  ['sand-point-55N.epw', 4.4, 829],
  ['quillayute-48N.epw', 9.6, 1099],
  ['international-falls-49N.epw', 3.4, 1261],
  ['san-francisco-38N.epw', 13.8, 1716],
  ['las-vegas-36N.epw', 19.8, 2032],
  ['pvgis-45N-8E.epw', 13.6, 1436],
  ['denver-standard140.epw', NaN, 1666],
];

describe('weather files through the whole engine', () => {
  for (const [name, mean, global] of files) {
    describeWithData(`weather/${name}`, name, (file) => {
      const reading = readEpwBytes(readFileSync(file));
      if (!reading.ok) throw new Error(reading.problems.map((each) => each.message).join('\n'));
      const { weather } = reading;
      const season = runSeason(demonstrationPlan, weather);

      it('is read as the file says', () => {
        const sum = (values: Float64Array) => values.reduce((total, value) => total + value, 0);
        if (Number.isFinite(mean)) expect(sum(weather.dryBulb) / 8760).toBeCloseTo(mean, 1);
        expect(Math.abs(sum(weather.globalHorizontal) / 1000 / global - 1)).toBeLessThan(4e-3);
      });

      it('gives a whole season in which every number is finite', () => {
        expect(firstNotFinite(season)).toBeNull();
        expect(season.days).toBe(365);
        expect(season.places).toHaveLength(demonstrationPlan.places.length);
        const lots = season.places.flatMap((place) => place.lots);
        expect(lots).toHaveLength(demonstrationPlan.lots.length);
        for (const lot of lots) {
          expect(
            lot.stateDays.reduce((days, each) => days + each, 0),
            lot.lotId,
          ).toBe(365);
        }
      });

      it('closes its energy in every place', () => {
        for (const place of season.places) expect(place.energyResidual, place.placeId).toBeLessThan(1e-12);
      });

      it('keeps plausible bounds: inside no colder than outdoors less 6 K, no hotter than 75 °C', () => {
        for (const { placeId, daily } of season.places) {
          expect(Math.max(...daily.airMost), placeId).toBeLessThan(75);
          // A tent or window follows its room, which may be cooler than a desert's night.
          if (!['lean-to', 'tunnel'].includes(placeId)) continue;
          daily.airLeast.forEach((value, day) => {
            const coldest = Math.min(season.outdoor.least[day], season.outdoor.least[(day + 364) % 365]);
            expect(value, `${placeId}, day ${day}`).toBeGreaterThan(coldest - 6);
          });
        }
      });

      it('gives the same twice', () => {
        expect(firstDifference(runSeason(demonstrationPlan, weather), season)).toBeNull();
      });
    });
  }
});
