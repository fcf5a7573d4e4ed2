import { growing, restingCold, restingDim, restingDry, slow, stretching } from '../plants/words.ts';
import { comfort, enoughSpared, gravities, growsInWinter, restWanted } from './rank-score.ts';
import type { HarmId, WinterFacts, WinterWant } from './rank-score.ts';

/** A number as it is read: a true minus. */
const figure = (value: number, decimals = 1) => {
  const text = Math.abs(value).toFixed(decimals);
  return value < 0 && Number(text) !== 0 ? `−${text}` : text;
};
/** A threshold as it is written: no nought after the point. */
const limit = (value: number | null) => figure(value ?? 0).replace(/\.0$/, '');

const days = (count: number) => (count === 1 ? 'one day' : `${count} days`);
const weeks = (count: number) => {
  const whole = Math.round(count / 7);
  return whole === 1 ? 'one week' : `${whole} weeks`;
};

/** Extremes of the winter half-year that the sentence may name: leaf [°C] and light [mol m⁻² d⁻¹]. */
export interface WinterExtremes {
  readonly leastLeaf: number;
  readonly mostLeaf: number;
  readonly light: number;
}

/** Harms that count, worst first. */
export function harmsOf(facts: WinterFacts, want: WinterWant): HarmId[] {
  const grave = Object.entries(gravities(facts, want)) as [HarmId, number][];
  return grave
    .filter(([, value]) => value > 0)
    .sort(([, a], [, b]) => b - a)
    .map(([id]) => id);
}

function harmWords(id: HarmId, facts: WinterFacts, want: WinterWant, extremes: WinterExtremes): string {
  const { numbers } = want;
  const { harm } = facts;
  switch (id) {
    case 'frost':
      return `too cold: leaves fall to ${figure(extremes.leastLeaf)} °C, ${figure(Math.max(0, -facts.sparedKelvin))} K below what it bears`;
    case 'chill':
      return `too cool for too long: up to ${Math.round(harm.chill)} degree-hours below ${limit(numbers.chillBelow)} °C not yet got over, and ${limit(numbers.chillDose)} injure it`;
    case 'heat':
      return `too hot: leaves reach ${figure(extremes.mostLeaf)} °C, and ${limit(numbers.damageHot)} °C is what they bear`;
    case 'wetCold':
      return `roots may rot: wet and colder than ${limit(numbers.wetColdBelow)} °C for ${days(harm.wetCold)} after the fifth running`;
    case 'decline':
      return `too hot for too long: it goes back on ${days(harm.decline)}`;
    case 'scorch':
      return `sun marks the leaves on ${days(harm.scorch)}: shade it at first`;
  }
}

/** What is lost of the comfort for each want that is not met, and how a grower would say it. */
function lacks(facts: WinterFacts, want: WinterWant, extremes: WinterExtremes): [number, string][] {
  const whole = comfort(facts, want);
  const wanted = restWanted(want);
  const moved = (state: number) =>
    facts.stateDays.map((count, at) =>
      at === state ? 0 : at === growing ? count + facts.stateDays[state] : count,
    );
  const lost = (better: Partial<WinterFacts>) => comfort({ ...facts, ...better }, want) - whole;
  const light = `${figure(extremes.light)} mol/m² a day`;
  const list: [number, string][] = [
    [
      lost({ stateDays: moved(stretching), drawn: 0 }),
      `it draws up on ${days(facts.stateDays[stretching])}: too little light (${light}) for the warmth`,
    ],
    [
      lost({ stateDays: moved(restingDim), heldDim: 0 }),
      `it stands still in the dark on ${days(facts.stateDays[restingDim])}, with ${light}`,
    ],
    [
      lost({ heldCold: facts.stateDays[restingCold] }),
      `it rests too warm for so little light (${light}): make it cooler or brighter`,
    ],
    [
      lost({ stateDays: moved(restingDry), dryInSeason: 0 }),
      `it waits dry in the warm on ${days(facts.stateDays[restingDry])}`,
    ],
    [lost({ sparedKelvin: enoughSpared }), `only ${figure(facts.sparedKelvin)} K above what it bears`],
  ];
  if (growsInWinter(want)) {
    list.push([
      lost({ stateDays: moved(restingCold), heldCold: 0 }),
      `it wants to grow now and is too cold on ${days(facts.stateDays[restingCold])}`,
    ]);
  }
  if (wanted > 0 && facts.coolDays < wanted) {
    const below = `below ${limit(want.numbers.restBelow)} °C`;
    const cool =
      facts.coolDays < 7
        ? `${facts.coolDays === 0 ? 'never' : 'hardly ever'} ${below}`
        : `only ${weeks(facts.coolDays)} ${below}`;
    list.push([
      lost({ coolDays: wanted }),
      `${cool}, and it wants ${weeks(wanted)} of such rest${want.flowersAfterRest ? ' to flower' : ''}`,
    ]);
  }
  return list;
}

function praise(facts: WinterFacts): string {
  const { stateDays } = facts;
  const grown = stateDays[growing] + stateDays[slow];
  const rested = stateDays[restingCold] + stateDays[restingDry] + stateDays[restingDim];
  const dry = stateDays[restingDry] > stateDays[restingCold] ? ' dry' : '';
  if (rested > grown) return `rests${dry} for ${weeks(rested)}`;
  if (stateDays[growing] >= stateDays[slow]) return `grows compact on ${days(stateDays[growing])}`;
  return `stays compact, with little growth on ${days(stateDays[slow])}`;
}

/** Losses of the score's 0–1 under which a lack is not worth a word, and over which it is all there is to say. */
const trifle = 0.04;
const decisive = 0.25;

/** Why a winter goes as it does, in one sentence with the deciding figure. */
export function winterWords(facts: WinterFacts, want: WinterWant, extremes: WinterExtremes): string {
  const grave = gravities(facts, want);
  const [worst] = harmsOf(facts, want);
  if (worst !== undefined && grave[worst] >= 1) return sentence(harmWords(worst, facts, want, extremes));
  const whole = comfort(facts, want);
  const harms = harmsOf(facts, want).map((id): [number, string] => [
    grave[id] * whole,
    harmWords(id, facts, want, extremes),
  ]);
  const [most] = [...harms, ...lacks(facts, want, extremes)].sort(([a], [b]) => b - a);
  if (most !== undefined && most[0] > decisive) return sentence(most[1]);
  if (most !== undefined && most[0] > trifle) return sentence(`${praise(facts)}, but ${most[1]}`);
  return sentence(
    `${praise(facts)}; the coldest leaf stays ${figure(facts.sparedKelvin)} K above what it bears`,
  );
}

function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}
