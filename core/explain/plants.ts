import { groupFigure } from '../plan/groups.ts';
import type { GroupNumberName, GroupNumbers, PlantGroup } from '../plan/groups.ts';
import type { Lot, Plan } from '../plan/schema.ts';
import { planEdits, planGroup, planNumbers } from '../plan/plan-groups.ts';
import {
  carbonNightResponse,
  lightNeeded,
  limitingWords,
  plantStates,
  thresholdsOf,
} from '../plants/index.ts';
import type { LotSeason } from '../season/index.ts';
import { input, round } from './format.ts';
import type { ExplainInput, Explanation } from './subject.ts';

/** The numbers of a group that a state is read from, with what they are called and their unit. */
const shown: readonly (readonly [GroupNumberName, string, string])[] = [
  ['baseTemperature', 'No growth below', '°C'],
  ['optimumLow', 'Best from', '°C'],
  ['optimumHigh', 'Best up to', '°C'],
  ['slowAbove', 'Heat slows it above', '°C'],
  ['ceiling', 'No growth above', '°C'],
  ['lightHold', 'Light that holds it', 'mol/m²'],
  ['lightStretch', 'Least light for a compact plant when warm', 'mol/m²'],
  ['lightGood', 'Light for good growth', 'mol/m²'],
  ['inertiaDays', 'Days over which it remembers', 'days'],
  ['damageColdDry', 'Cold it bears dry and hardened', '°C'],
  ['damageColdWet', 'Cold it bears moist or soft', '°C'],
];

/** The group's numbers as inputs: the catalogue's with their sources, the user's own said to be so. */
function numberInputs(plan: Plan, group: PlantGroup, numbers: GroupNumbers): ExplainInput[] {
  const edits = planEdits(plan, group.id);
  return shown.flatMap(([name, words, unit]) => {
    const value = numbers[name];
    if (value === null) return [];
    const source = groupFigure[name](group)?.source ?? '';
    return [input(words, value, unit, Object.hasOwn(edits, name) ? 'your own number (plan)' : source)];
  });
}

/** What it lived through on the day, and what it remembers of the days before. */
function livedInputs(judged: LotSeason, day: number): ExplainInput[] {
  const { lived } = judged;
  const where = 'heat balance where it stands';
  return [
    input('Mean leaf temperature of the day', lived.leafMean[day], '°C', where),
    input('Mean leaf temperature of the night', lived.leafNight[day], '°C', where),
    input('Least leaf temperature of the day', lived.leafLeast[day], '°C', where),
    input('Daily light at the plants', lived.dailyLight[day], 'mol/m²', 'daylight and lamps where it stands'),
    input(
      'Mean temperature as remembered',
      judged.rememberedLeaf[day],
      '°C',
      'running mean of the days before',
    ),
    input(
      'Daily light as remembered',
      judged.rememberedLight[day],
      'mol/m²',
      'running mean of the days before',
    ),
  ];
}

/** Kelvin and moles as a sentence after `start`; none where neither would change anything. */
function roomStep(start: string, kelvin: number, mol: number): string[] {
  const parts: string[] = [];
  if (kelvin !== 0) parts.push(`${round(Math.abs(kelvin))} K ${kelvin > 0 ? 'warmer' : 'cooler'}`);
  if (mol !== 0) parts.push(`${round(Math.abs(mol))} mol/m² ${mol > 0 ? 'more' : 'less'} light`);
  return parts.length === 0 ? [] : [`${start}: ${parts.join(mol < 0 ? ' or ' : ' and ')}`];
}

function limitStep(judged: LotSeason, day: number): string {
  const share = judged.limitingShare[day];
  const words = limitingWords(judged.limiting[day]);
  return share > 0 ? `${words} Its share of the lack of growth: ${round(share)}` : words;
}

/** The indices of the day by both curves, and the light that its warmth asks for. */
function indexSteps(judged: LotSeason, numbers: GroupNumbers, day: number): string[] {
  const at = thresholdsOf(numbers);
  const remembered = judged.rememberedLeaf[day];
  const carbon = carbonNightResponse(numbers, judged.lived.leafNight[day], remembered);
  return [
    `Temperature index, development by the mean of day and night: ${round(judged.temperatureIndex[day])} (rest from cold begins below a remembered ${round(at.coldBegins)} °C and ends above ${round(at.coldEnds)} °C)`,
    carbon === null
      ? 'Carbon gain by night: no curve of its own is known for this group, and none is made up'
      : `Carbon gain by the temperature of the night: ${round(judged.carbonIndex[day])}`,
    `Light index: ${round(judged.lightIndex[day])} (${round(lightNeeded(numbers, at, remembered))} mol/m² keep it compact at this warmth)`,
    `Water index: ${round(judged.waterIndex[day])}`,
    `Growth index: ${round(judged.temperatureIndex[day])} × ${round(judged.lightIndex[day])} × ${round(judged.waterIndex[day])} = ${round(judged.growthIndex[day])}`,
    `Light for each degree of warmth above the base: ${round(judged.photothermal[day])} mol/m²`,
  ];
}

/** Why a lot is in its state on a day. */
export function explainState(plan: Plan, lot: Lot, judged: LotSeason, day: number): Explanation {
  const group = planGroup(plan, lot.group);
  if (group === null) throw new RangeError(`expected a plant group of the plan, got ${lot.group}`);
  const numbers = planNumbers(plan, lot.group);
  const state = plantStates[judged.state[day]];
  const last = judged.transitions.filter((each) => each.day <= day).at(-1);
  return {
    title: `${lot.name}: ${state.name.toLowerCase()}`,
    formula:
      'growth index = temperature index × light index × water index, each 0–1; the state follows remembered temperature and light',
    inputs: [...livedInputs(judged, day), ...numberInputs(plan, group, numbers)],
    steps: [
      ...indexSteps(judged, numbers, day),
      limitStep(judged, day),
      ...roomStep('For the next better state', judged.marginKelvin[day], judged.marginLight[day]),
      ...roomStep('The next worse state is reached with', judged.spareKelvin[day], judged.spareLight[day]),
      `Cold harms it below ${round(judged.coldLimit[day])} °C that day, hardened ${round(judged.hardening[day])} of 1`,
      ...(last === undefined ? [] : [`In this state since: ${last.because}`]),
    ],
    result: state.words,
    source:
      'Temperature response Yan & Hunt 1999; carbon gain by night after Nobel 1986; light by saturation after Nobel & Hartsock 1983; product of indices after Nobel 1984, 1988; memory and thresholds as the plants view lists them.',
  };
}
