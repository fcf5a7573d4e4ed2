import { describe, expect, it } from 'vitest';
import { parsePlan } from '../../../core/index.ts';
import { describeWithData } from '../../support/shared-data.ts';
import { terminal } from './terminal.ts';

const demo = terminal(['demo']).out;
const files = { 'plan.json': demo, 'at.txt': '2026-12-21T12:00:00Z\n1782043200000\n' };

/** The result of a verb that must succeed. */
function result(words: readonly string[]) {
  const ran = terminal(words, files);
  expect(ran.notes).toBe('');
  expect(ran.code).toBe(0);
  return JSON.parse(ran.out);
}

let whole: ReturnType<typeof terminal> | null = null;
/** The demonstration's season, run once for all tests that only look at it. */
const wholeSeason = () => (whole ??= terminal(['season', 'plan.json'], files));

describe('verbs', () => {
  it('demo prints a plan that can be given back', () => {
    expect(parsePlan(JSON.parse(demo)).ok).toBe(true);
  });

  it('schema prints a JSON Schema of the plan', () => {
    const schema = result(['schema']);
    expect(JSON.stringify(schema)).toContain('growingArea');
    expect(schema.$schema).toMatch(/^http.*json-schema/);
  });

  it('season gives every place for 365 days, and the same bytes for the same plan', () => {
    const once = wholeSeason();
    const season = JSON.parse(once.out);
    expect(season.places.map((place: { placeId: string }) => place.placeId)).toEqual(
      JSON.parse(demo).places.map((place: { id: string }) => place.id),
    );
    for (const place of season.places) expect(place.daily.airLeast).toHaveLength(365);
    expect(terminal(['season', 'plan.json'], files).out).toBe(once.out);
  });

  it('season cuts the series to the days asked for and leaves the totals', () => {
    const whole = JSON.parse(wholeSeason().out);
    const part = result(['season', 'plan.json', '--from', '12-01', '--to', '12-10']);
    expect(part.from.slice(5)).toBe('12-01');
    expect(part.places[0].daily.airLeast).toEqual(whole.places[0].daily.airLeast.slice(122, 132));
    expect(part.places[0].lots[0].state).toEqual(whole.places[0].lots[0].state.slice(122, 132));
    expect(part.outdoor.least).toHaveLength(10);
    expect(part.totals).toEqual(whole.totals);
  });

  it('season gives a row a day and place as CSV', () => {
    const { code, out } = terminal(
      ['season', 'plan.json', '--csv', '--from', '12-01', '--to', '12-02'],
      files,
    );
    const rows = out.trimEnd().split('\n');
    expect(code).toBe(0);
    expect(rows).toHaveLength(1 + 2 * JSON.parse(demo).places.length);
    expect(rows[0]).toMatch(/^date,place,airLeast,.*,states$/);
    expect(new Set(rows.map((row) => row.split(',').length)).size).toBe(1);
  });

  it('tonight answers for every place, with the date of the evening where none is given', () => {
    const night = result([
      'tonight',
      'plan.json',
      '--dusk',
      '4',
      '--low',
      '-6',
      '--cloud',
      '2',
      '--wind',
      '1',
    ]);
    expect(night.input).toEqual({
      dateISO: '2026-01-15',
      duskTemperature: 4,
      low: -6,
      cloudOktas: 2,
      wind: 1,
      band: 2,
    });
    expect(night.places).toHaveLength(JSON.parse(demo).places.length);
    expect(night.outdoors).toBeNull();
  });

  it('tonight looks at what stands outdoors on the date', () => {
    const night = result(['tonight', 'plan.json', '--dusk', '6', '--low', '-3', '--date', '2026-05-02']);
    const { lots, leaf, words } = night.outdoors;
    expect(lots.map(({ lotId }: { lotId: string }) => lotId)).toEqual(['step-agave']);
    expect(leaf).toHaveLength(night.n);
    expect(words).toMatch(/^Agave from the steps: .* bring it in before dark\.$/);
  });

  it('lamps compares the lamps of the lit places over one of them', () => {
    const { placeId, options } = result(['lamps', 'plan.json']);
    const lit = JSON.parse(demo).places.filter((place: { lamps: unknown[] }) => place.lamps.length > 0);
    expect(placeId).toBe(lit[0].id);
    expect(options.map((option: { name: string }) => option.name)).toEqual(
      lit.map((place: { name: string }) => place.name),
    );
  });

  it('ways answers a wish given with options as one given as JSON', () => {
    const { id } = JSON.parse(demo).places[0];
    const wish = { kind: 'hold-temperature', placeId: id, temperature: 5 };
    const one = result(['ways', 'plan.json', '--wish', JSON.stringify(wish)]);
    expect(one.wish).toEqual(wish);
    expect(result(['ways', 'plan.json', '--wish', wish.kind, '--place', id, '--temperature', '5'])).toEqual(
      one,
    );
  });

  it('sun gives a row an instant, by date or by milliseconds', () => {
    const rows = result([
      'sun',
      '--latitude',
      '54',
      '--longitude',
      '-7',
      '--elevation',
      '60',
      '--at',
      'at.txt',
    ]);
    expect(rows).toHaveLength(2);
    // Solstice noon near 7° W: the sun stands 90 − 54 − 23.4 = 12.6° high; half an hour from its highest it lacks under 0.5°.
    expect(90 - rows[0].zenith).toBeGreaterThan(12.1);
    expect(90 - rows[0].zenith).toBeLessThan(12.6);
  });
});

/** Mean [°C] and global radiation [kWh m⁻²] of ../shared/data/README.md to the digits given there; Denver has none. */
const weatherFiles: [string, number | null, number | null][] = [
  ['sand-point-55N.epw', 4.4, 829],
  ['sand-point-55N.tmy3.csv', 4.4, 829],
  ['quillayute-48N.epw', 9.6, 1099],
  ['international-falls-49N.epw', 3.4, 1261],
  ['san-francisco-38N.epw', 13.8, 1716],
  ['las-vegas-36N.epw', 19.8, 2032],
  ['pvgis-45N-8E.epw', 13.6, 1436],
  ['denver-standard140.epw', null, null],
];
for (const [name, mean, global] of weatherFiles) {
  describeWithData(`weather/${name}`, `season on ${name}`, (file) => {
    it('is whole, and its weather has the mean and the radiation that are known', () => {
      const ran = terminal(['season', 'plan.json', '--weather', file], files);
      expect(ran.code).toBe(0);
      const { weather, weatherName, places, days } = JSON.parse(ran.out);
      expect(weather.name).toBe(weatherName);
      // Half of the last digit given.
      if (mean !== null) expect(Math.abs(weather.meanTemperature - mean)).toBeLessThanOrEqual(0.051);
      if (global !== null) expect(Math.abs(weather.globalRadiation - global)).toBeLessThanOrEqual(0.51);
      for (const place of places) {
        for (const series of Object.values<number[]>(place.daily)) expect(series).toHaveLength(days);
      }
    });
  });
}
