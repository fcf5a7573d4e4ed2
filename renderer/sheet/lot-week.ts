import type { LotSeason } from '../../core/index.ts';
import { doseOf, harmKinds, harmNames } from '../marks/notches.ts';
import type { UnitPreferences } from '../state/units.ts';
import { marginWords, shareWords } from './margin-words.ts';
import { endDayOf, firstDayOf } from './time.ts';
import { mainCode, weekFigures } from './weekly.ts';

export interface LotWeek {
  readonly state: number;
  readonly limiting: number;
  /** The limiting factor's share of what holds it, in words; '' where nothing does, or other lacks are greater. */
  readonly share: string;
  /** True where what holds it is not said by the state's name already. */
  readonly held: boolean;
  /** What it would take for the next better state; '' where nothing. */
  readonly margin: string;
  readonly watering: string;
  readonly harm: string;
}

/** The limiting factor that a state's name tells: resting from cold, heat, dark, and held dry; 0 where none. */
const statesThatSayWhy = [0, 0, 1, 2, 3, 4, 0];
const wateringByCode = ['Water when dry.', 'Water sparingly.', 'No water.'];

export function harmsIn(lot: LotSeason, week: number): string {
  const kinds = harmKinds.filter((kind) => weekFigures(doseOf(lot, kind), week).most > 0);
  return kinds.map((kind) => harmNames[kind]).join(' and ');
}

/** A lot in one week: the state most of its days have, the margin on the days that have it, and what to do. */
export function lotWeek(lot: LotSeason, week: number, units: UnitPreferences): LotWeek {
  const [from, to] = [firstDayOf(week), endDayOf(week)];
  const state = mainCode(lot.state, from, to);
  const limiting = mainCode(lot.limiting, from, to);
  let [kelvin, mol, count] = [0, 0, 0];
  let [share, held] = [0, 0];
  for (let day = from; day < to; day += 1) {
    if (lot.limiting[day] === limiting) {
      share += lot.limitingShare[day];
      held += 1;
    }
    if (lot.state[day] !== state) continue;
    kelvin += lot.marginKelvin[day];
    mol += lot.marginLight[day];
    count += 1;
  }
  const harm = harmsIn(lot, week);
  return {
    state,
    limiting,
    share: share / held >= 0.5 ? shareWords(share / held) : '',
    held: limiting > 0 && statesThatSayWhy[state] !== limiting,
    margin: marginWords(kelvin / count, mol / count, units),
    watering: wateringByCode[mainCode(lot.watering, from, to)],
    harm: harm === '' ? '' : `Harm from ${harm}.`,
  };
}
