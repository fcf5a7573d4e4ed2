import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { calendarOf, demonstrationPlan, readEpw, runSeason } from '../../core/index.ts';
import { describeWithData } from '../support/shared-data.ts';

/** The demonstration's plants and places under measured weather: at the station, which is the site then. */
function calendarUnder(file: string) {
  const reading = readEpw(new TextDecoder().decode(readFileSync(file)));
  if (!reading.ok) throw new Error(`expected a weather file, got ${reading.problems[0]?.message}`);
  const { latitude, longitude } = reading.weather;
  const plan = { ...demonstrationPlan, site: { ...demonstrationPlan.site, latitude, longitude } };
  const season = runSeason(plan, reading.weather);
  return { season, tasks: calendarOf(season) };
}

const files = ['quillayute-48N', 'las-vegas-36N'];

for (const name of files) {
  describeWithData(`weather/${name}.epw`, `the calendar under measured weather, ${name}`, (file) => {
    it('does not flicker: no lot has more tasks than a grower can follow, and none twice in a fortnight', () => {
      const { season, tasks } = calendarUnder(file);
      for (const { lotId } of season.lots) {
        const own = tasks.filter((task) => task.lotId === lotId);
        // 21 at Quillayute, 25 at Las Vegas: both for the agave that is carried, three rests from heat in the latter.
        expect(own.length, lotId).toBeLessThanOrEqual(26);
        for (const kind of ['rest-begins', 'rest-ends', 'stop-water', 'water-again', 'feed', 'repot']) {
          const on = own.filter((task) => task.kind === kind).map(({ from }) => from);
          for (const [k, day] of on.entries())
            if (k > 0) expect(day - on[k - 1], `${lotId} ${kind}`).toBeGreaterThan(14);
        }
        const rests = own.filter(({ kind }) => kind === 'rest-begins' || kind === 'rest-ends');
        rests.forEach(({ kind }, k) => expect(kind).not.toBe(rests[k + 1]?.kind));
      }
    });
  });
}
