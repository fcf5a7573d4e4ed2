import {
  lightResponse,
  limitingFactors,
  optimumOf,
  plantStates,
  temperatureResponse,
} from '../../core/index.ts';
import type { GroupNumbers, LotSeason } from '../../core/index.ts';
import { doseOf, harmKinds, harmNames } from '../marks/notches.ts';
import type { HarmKind } from '../marks/notches.ts';
import { fieldUnit, formatLight, formatNumber, formatTemperature } from '../state/units.ts';
import type { UnitPreferences } from '../state/units.ts';
import { marginWords, shareWords, spareWords } from './margin-words.ts';
import type { Run } from './paths.ts';
import { formatDays } from './time.ts';
import { growsSoft } from './why.ts';

const percent = (share: number) => `${Math.round(share * 100)}\u00a0%`;

/** Lacks beside the one that decides the state are named where they take more than a quarter of growth (judgement). */
const lacks = 0.75;

/** What else keeps it from growing, by what it remembers: `lack of light and dry mix`. */
function besides(lot: LotSeason, numbers: GroupNumbers, day: number): string {
  const { id } = limitingFactors[lot.limiting[day]];
  const warmth = lot.rememberedLeaf[day];
  const others = [
    ...(id === 'cold' || id === 'heat' || temperatureResponse(numbers, warmth) >= lacks
      ? []
      : [warmth < optimumOf(numbers) ? 'cold' : 'heat']),
    ...(id === 'dark' || lightResponse(numbers, lot.rememberedLight[day]) >= lacks ? [] : ['lack of light']),
    ...(id === 'dry' || lot.waterIndex[day] >= lacks ? [] : ['dry mix']),
  ];
  return others.join(' and ');
}

/** What holds it on a day: `Cold holds it: … too low (60 % of what holds it; besides it, lack of light).` */
export function heldWords(lot: LotSeason, numbers: GroupNumbers, day: number): string {
  const factor = limitingFactors[lot.limiting[day]];
  const share = factor.id === 'none' ? '' : shareWords(lot.limitingShare[day]);
  if (share === '') return factor.words;
  const others = besides(lot, numbers, day);
  return `${factor.words.replace(/\.$/, '')} (${share}${others === '' ? '' : `; besides it, ${others}`}).`;
}

/** What decides a rest or stretching, against what would end it, in one sentence; '' in the other states. */
export function leadWords(lot: LotSeason, day: number, units: UnitPreferences): string {
  const [warmth, light] = [lot.rememberedLeaf[day], lot.rememberedLight[day]];
  const [kelvin, mol] = [lot.marginKelvin[day], lot.marginLight[day]];
  const is = formatTemperature(warmth, units, 1);
  const ends = formatTemperature(warmth + kelvin, units, 1);
  const dim = `It has ${formatLight(light)} of light a day; at ${is} it needs ${formatLight(light + mol)}`;
  switch (plantStates[lot.state[day]].id) {
    case 'resting-cold':
      return kelvin > 0 ? `It is too cool: ${is} of late, and it wakes above ${ends}.` : '';
    case 'resting-heat':
      return kelvin < 0 ? `It is too hot: ${is} of late, and it wakes below ${ends}.` : '';
    case 'stretching':
      return mol > 0 ? `${dim} to stay compact.` : '';
    case 'resting-dim':
      return mol > 0 ? `${dim} to grow.` : '';
    default:
      return '';
  }
}

/** Growth on a day and the indices it is the product of; and whether it is soft. */
export function growthWords(lot: LotSeason, day: number): string {
  const parts = `warmth ${percent(lot.temperatureIndex[day])} × light ${percent(lot.lightIndex[day])} × water ${percent(lot.waterIndex[day])}`;
  return `${percent(lot.growthIndex[day])} of the best: ${parts}.`;
}

export function softWords(lot: LotSeason, day: number): string {
  if (!growsSoft(lot, day)) return '';
  return `It develops faster (${percent(lot.temperatureIndex[day])}) than it gains carbon by night (${percent(lot.carbonIndex[day])}): growth is soft.`;
}

/** What is needed for better, and what may be lost before worse, on a day. */
export function roomWords(lot: LotSeason, day: number, units: UnitPreferences): string[] {
  const better = marginWords(lot.marginKelvin[day], lot.marginLight[day], units);
  const worse = spareWords(lot.spareKelvin[day], lot.spareLight[day], units);
  return [better, worse].filter((words) => words !== '');
}

/** How hardened it is and what cold it bears on a day, beside the coldest the leaf was. */
export function coldWords(lot: LotSeason, day: number, units: UnitPreferences): string {
  const hardened = lot.hardening[day] > 0.005 ? `, hardened ${percent(lot.hardening[day])}` : '';
  const wet = lot.wet[day] === 1 ? 'mix wet' : 'mix dry';
  return `Harmed below ${formatTemperature(lot.coldLimit[day], units, 1)} at the leaf (${wet}${hardened}); its coldest that day was ${formatTemperature(lot.lived.leafLeast[day], units, 1)}.`;
}

/** Units of the doses; days for those that count days. */
const doseUnits: Record<HarmKind, string> = {
  frost: 'K h',
  chill: 'K h',
  heat: 'K h',
  scorch: 'mol/m²',
  wetCold: 'days',
  decline: 'days',
};

/** The harms of a run, one sentence each: `Harm from chill on 12 days, 140 °C h in all.` */
export function harmLines(lot: LotSeason, run: Run, units: UnitPreferences): string[] {
  return harmKinds.flatMap((kind) => {
    const doses = doseOf(lot, kind).subarray(run.fromDay, run.toDay);
    const days = doses.reduce((count, dose) => count + (dose > 0 ? 1 : 0), 0);
    if (days === 0) return [];
    const dose = doses.reduce((sum, each) => sum + each, 0);
    const factor = doseUnits[kind] === 'K h' && units.temperature === 'F' ? 1.8 : 1;
    const amount =
      doseUnits[kind] === 'days'
        ? ''
        : `, ${formatNumber(dose * factor, dose < 10 ? 1 : 0)}\u00a0${fieldUnit(doseUnits[kind], units)} beyond what it bears`;
    return [`Harm from ${harmNames[kind]} on ${formatDays(days)}${amount}.`];
  });
}
