import type { Place } from '../plan/schema.ts';
import type { HeatPart, PlaceSeason, SeasonResult } from '../season/index.ts';
import { input, round } from './format.ts';
import { heatBalance, heatOf, piecesOf, spanSum, spanWords } from './heat-span.ts';
import type { HeatSpan } from './heat-span.ts';
import { partInputs } from './heat-part-inputs.ts';
import type { ExplainInput, Explanation, HeatPartSubject } from './subject.ts';

/** How the heat of each kind of part is reckoned, step by step of the season run. */
const formulas: Record<HeatPart['kind'], string> = {
  surface:
    'Q = Σ over the steps of A · (air to inner face + long-wave from what stands inside + water forming on it) · Δt, with the outer face in balance with wind, sky and sun',
  air: 'Q = Σ over the steps of air drawn in · (its heat inside − its heat where it came from) · Δt, water vapour with its heat of evaporation',
  ground: 'Q = Σ over the steps of floor and edge conductance · (floor − ground or outdoors) · Δt',
  room: 'Q = Σ over the steps of conductance to the room · (inside − room) · Δt',
  sun: 'Q = Σ over the steps of sun and sky light through the cover, taken up by leaves, pots, floor and walls · Δt',
  lamps: 'Q = Σ over the steps of watts at the plug that stay inside · Δt',
  heaters: 'Q = Σ over the steps of heat given by the heaters · Δt',
  fans: 'Q = Σ over the steps of watts of fans that stay inside · Δt',
  storage:
    'Q = Σ over air, plants, pots, water, floor and walls of heat capacity · (temperature at the end − at the beginning)',
};

/** Which way heat goes that is positive, and which way where it is negative. */
const directions: Record<HeatPart['kind'], readonly [string, string]> = {
  surface: ['lost through it', 'gained through it'],
  air: ['lost', 'gained'],
  ground: ['lost into the ground', 'given by the ground'],
  room: ['lost to the room', 'given by the room'],
  sun: ['lost', 'given by the sun'],
  lamps: ['lost', 'given'],
  heaters: ['lost', 'given'],
  fans: ['lost', 'given'],
  storage: ['taken up', 'given back'],
};

export function directionWords(kind: HeatPart['kind'], kwh: number): string {
  const [positive, negative] = directions[kind];
  return `${round(Math.abs(kwh))} kWh ${kwh >= 0 ? positive : negative}`;
}

const capital = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);

const source =
  'Heat account of the season run: every flow of every step of the thermal network added up, apart from the solve.';

/** The working of one part of the heat account over a span, or of the whole balance. */
export function explainHeatPart(
  place: Place,
  result: PlaceSeason,
  season: SeasonResult,
  subject: HeatPartSubject,
): Explanation {
  const span = { from: subject.from, to: subject.to, dark: subject.dark };
  const when = spanWords(season.startDate, season.days, span);
  if (subject.part === null) return explainBalance(place, result, when, span);
  const part = result.heat.find((each) => each.name === subject.part);
  if (part === undefined) throw new RangeError(`expected a part of the heat account, got ${subject.part}`);
  const kwh = heatOf(part, span);
  return {
    title: `${capital(part.name)}, ${place.name}: ${when}`,
    formula: formulas[part.kind],
    inputs: [...partInputs(place, result, part, season, span), ...spanInputs(result, season, span)],
    steps: partSteps(part, season, span),
    result: directionWords(part.kind, kwh),
    source,
  };
}

/** The span piece by piece; a single day or night as its mean power. */
function partSteps(part: HeatPart, season: SeasonResult, span: HeatSpan): string[] {
  const pieces = piecesOf(season.startDate, span);
  if (pieces.length > 1)
    return pieces.map((piece) => `${piece.words}: ${directionWords(part.kind, heatOf(part, piece.span))}`);
  const kwh = heatOf(part, span);
  const hours = spanHours(season, span);
  const watts = hours > 0 ? (Math.abs(kwh) * 1000) / hours : 0;
  return [`${directionWords(part.kind, kwh)} over ${round(hours)} h: ${round(watts)} W on average`];
}

/** Hours of a span, by night the dark ones [h]. */
function spanHours(season: SeasonResult, span: HeatSpan): number {
  const all = 24 * (span.to - span.from);
  return span.dark ? all - spanSum(season.outdoor.dayLength, span) : all;
}

/** Hours and temperatures of the span. */
function spanInputs(result: PlaceSeason, season: SeasonResult, span: HeatSpan): ExplainInput[] {
  const { daily } = result;
  const days = span.to - span.from;
  const mean = (values: Float64Array) => spanSum(values, span) / days;
  if (!span.dark)
    return [
      input('Inside air, mean', mean(daily.airMean), '°C', 'heat balance'),
      input('Outdoors, mean', mean(season.outdoor.mean), '°C', season.weatherName),
      input('Days', days, '', 'the span chosen'),
    ];
  // A night ends on the civil day after the one it begins on; its coldest air usually comes before that dawn.
  const morning = (values: Float64Array) => values[Math.min(values.length - 1, span.to)];
  return [
    input('Inside air, coldest of the day it ends on', morning(daily.airLeast), '°C', 'heat balance'),
    input('Outdoors, coldest of the day it ends on', morning(season.outdoor.least), '°C', season.weatherName),
    input('Dark hours', spanHours(season, span), 'h', 'sun and site'),
  ];
}

function explainBalance(place: Place, result: PlaceSeason, when: string, span: HeatSpan): Explanation {
  const balance = heatBalance(result.heat, span);
  const { into, out, stored, left } = balance;
  return {
    title: `Heat in and out, ${place.name}: ${when}`,
    formula: 'heat in = heat out + heat stored',
    inputs: [...balance.amounts]
      .sort((a, b) => Math.abs(b.kwh) - Math.abs(a.kwh))
      .map(({ name, kind, kwh }) =>
        input(capital(name), Math.abs(kwh), 'kWh', directionWords(kind, kwh).replace(/^\S+ kWh /, '')),
      ),
    steps: [
      `In: ${round(into)} kWh`,
      `Out: ${round(out)} kWh`,
      `Stored in air, plants, pots, water, floor and walls: ${round(stored)} kWh`,
      `In less out less stored: ${Math.abs(left) < 0.0005 ? '0.000' : left.toFixed(3)} kWh`,
      `Largest imbalance of the season run: ${(100 * result.energyResidual).toFixed(4)} % of the heat exchanged`,
    ],
    result: `${round(into)} kWh in = ${round(out)} kWh out ${stored < 0 ? '−' : '+'} ${round(Math.abs(stored))} kWh stored`,
    source,
  };
}
