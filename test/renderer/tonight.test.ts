import { describe, expect, it } from 'vitest';
import { demonstrationPlan } from '../../core/index.ts';
import type { CheapAct, FuelNight, NightResult, OutdoorNight, PlaceNight } from '../../core/index.ts';
import {
  carbonDioxideCaution,
  carbonDioxideLimit,
  dewWords,
  heightWords,
} from '../../renderer/tonight/air.ts';
import { fuelAmount, fuelNightWords, fuelSeasonWords } from '../../renderer/tonight/fuel.ts';
import { openTraces, placeTraces, standsTonight } from '../../renderer/tonight/traces.ts';
import {
  clockAt,
  cloudChoices,
  dateAt,
  firstNight,
  heaterCautions,
  heaterWords,
  powerCutWords,
  hourSteps,
  limitLines,
  lowHint,
  nightExtent,
  nightProblem,
  nightSummary,
  worthwhile,
} from '../../renderer/tonight/night.ts';

const flat = (value: number) => new Float64Array(57).fill(value);
const power = (watts: number) => `${watts} W`;

function place(change: Partial<PlaceNight> = {}): PlaceNight {
  return {
    placeId: 'tunnel',
    air: flat(2),
    leaf: flat(1),
    airUnheated: flat(2),
    heaterPower: flat(0),
    airColdForecast: flat(0.5),
    airWarmForecast: flat(3.5),
    least: 2,
    leastMs: 0,
    leastUnheated: 2,
    lots: [],
    margin: null,
    powerNeeded: 0,
    powerThere: 0,
    failsAtMs: null,
    heaterKwh: 0,
    cost: 0,
    hoursToHarm: null,
    heights: { floor: 1.4, bench: 2, ridge: 3, middle: 2, edge: 0.6 },
    fuels: [],
    heat: [],
    dewHours: 0,
    leafDewHours: 0,
    mostCarbonDioxide: 420,
    acts: [],
    verdict: 'safe',
    words: 'Safe.',
    ...change,
  };
}

function open(change: Partial<OutdoorNight> = {}): OutdoorNight {
  return {
    leaf: flat(-5),
    leafColdForecast: flat(-7),
    leafWarmForecast: flat(-3),
    least: -5,
    leastMs: 0,
    lots: [{ lotId: 'step-agave', groupId: 'agave', limit: -4, leastLeaf: -5, margin: -1 }],
    margin: -1,
    verdict: 'harm',
    words: 'Agave from the steps: 1.0 K below what it bears about 05:40; bring it in before dark.',
    ...change,
  };
}

function night(places: PlaceNight[], outdoors: OutdoorNight | null = null): NightResult {
  const input = firstNight(demonstrationPlan, '2026-01-12');
  return {
    startMs: Date.UTC(2026, 0, 12, 16),
    stepMinutes: 15,
    n: 57,
    outdoor: flat(-3),
    skyTemperature: flat(-20),
    input,
    places,
    outdoors,
  };
}

describe('the forecast', () => {
  it('has each okta in exactly one of the three plain choices', () => {
    for (let oktas = 0; oktas <= 8; oktas++) {
      expect(cloudChoices.filter((choice) => oktas >= choice.from && oktas <= choice.to)).toHaveLength(1);
    }
    for (const choice of cloudChoices)
      expect(choice.oktas >= choice.from && choice.oktas <= choice.to).toBe(true);
  });
  it('begins with the low of a usual winter at the site', () => {
    expect(firstNight(demonstrationPlan, '2026-01-12').low).toBe(-5.5);
  });
  it('refuses a low above the temperature at dusk, and takes one equal to it', () => {
    const input = firstNight(demonstrationPlan, '2026-01-12');
    expect(nightProblem({ ...input, low: 5, duskTemperature: 4 })).toContain('above');
    expect(nightProblem({ ...input, low: 4, duskTemperature: 4 })).toBeNull();
  });
  it('takes the date of the site, not of Greenwich', () => {
    const lateEvening = Date.UTC(2026, 0, 12, 23, 30);
    expect(dateAt(lateEvening, 'Europe/Berlin')).toBe('2026-01-13');
    expect(dateAt(lateEvening, 'America/Halifax')).toBe('2026-01-12');
  });
});

describe('the words', () => {
  it('say until when the heater holds, by the clock of the site', () => {
    const failsAtMs = Date.UTC(2026, 0, 13, 3, 40);
    const words = heaterWords(
      place({ powerNeeded: 2400, powerThere: 2000, failsAtMs }),
      'Europe/Berlin',
      power,
    );
    expect(words).toBe('Needs 2400 W, has 2000 W: holds until 04:40');
  });
  it('tell a missing heater from one that is not needed', () => {
    expect(heaterWords(place({ powerNeeded: 300 }), 'UTC', power)).toBe('Needs 300 W; no heater here');
    expect(heaterWords(place({ powerThere: 500 }), 'UTC', power)).toBe('Not needed (500 W there)');
    expect(heaterWords(place(), 'UTC', power)).toBe('None needed');
    expect(heaterWords(place({ powerNeeded: 300, powerThere: 500, verdict: 'harm' }), 'UTC', power)).toBe(
      'Needs 300 W, has 500 W: strong enough, but its thermostat is set too low',
    );
  });
  it('name places in danger first and fall silent where all are safe', () => {
    const harm = place({ verdict: 'harm' });
    const close = place({ placeId: 'lean-to', verdict: 'close' });
    expect(nightSummary(night([harm, close]), demonstrationPlan)).toBe(
      'In danger tonight: Tunnel in the orchard. Close: Lean-to on the kitchen wall.',
    );
    expect(nightSummary(night([place()]), demonstrationPlan)).toBe('Every place is safe tonight.');
  });
  it('name what stands outdoors among the places, and alone where no place is', () => {
    const safe = place();
    const close = place({ verdict: 'close', margin: 0.4 });
    const said = (places: PlaceNight[], outdoors: OutdoorNight) =>
      nightSummary(night(places, outdoors), demonstrationPlan);
    expect(said([safe], open())).toBe(
      'In danger tonight: what stands outdoors. Tunnel in the orchard is safe.',
    );
    expect(said([close], open({ verdict: 'safe', margin: 3 }))).toBe(
      'Close: Tunnel in the orchard. What stands outdoors is safe.',
    );
    expect(said([safe], open({ verdict: 'safe', margin: 3 }))).toBe(
      'Every place is safe tonight, and so is what stands outdoors.',
    );
    expect(said([], open({ verdict: 'safe', margin: 3 }))).toBe('What stands outdoors is safe tonight.');
  });
  it('warn of fumes for a flame and of mains for an electric heater', () => {
    expect(heaterCautions(['paraffin'])[0]).toContain('carbon monoxide');
    expect(heaterCautions(['fan'])[0]).toContain('residual-current');
    expect(heaterCautions([])).toEqual([]);
    const act = (id: CheapAct['id']): CheapAct => ({ id, words: id, kelvin: 1, cost: 0 });
    expect(heaterCautions([], [act('small-heater')])[0]).toContain('residual-current');
    expect(heaterCautions(['tubular'], [act('lamp-at-night')])).toHaveLength(1);
    expect(heaterCautions([], [act('fleece'), act('warm-water')])[0]).toContain('scalds');
  });
});

describe('the acts', () => {
  it('are those that warm the leaf, best first', () => {
    const act = (id: CheapAct['id'], kelvin: number): CheapAct => ({ id, words: id, kelvin, cost: 0 });
    const acts = [act('fleece', -0.4), act('screen', 0.1), act('warm-water', 0.09), act('lining', 2)];
    expect(worthwhile(acts).map((one) => one.id)).toEqual(['lining', 'screen']);
  });
});

describe('the chart', () => {
  it('has a row for each full hour by the clock of the site, whatever minute the night begins', () => {
    const late = { ...night([]), startMs: Date.UTC(2026, 0, 12, 16, 16), stepMinutes: 2, n: 421 };
    const steps = hourSteps(late, 'Europe/Dublin');
    expect(steps.map(({ ms }) => clockAt(ms, 'Europe/Dublin')).slice(0, 2)).toEqual(['17:00', '18:00']);
    expect(steps[0].step).toBe(22);
    expect(steps).toHaveLength(14);
    expect(clockAt(hourSteps(late, 'Asia/Kolkata')[0].ms, 'Asia/Kolkata')).toBe('22:00');
  });
  it('begins with the first step where that is a full hour', () => {
    expect(hourSteps(night([]), 'UTC')[0]).toEqual({ step: 0, ms: Date.UTC(2026, 0, 12, 16) });
  });
  it('reaches from the lowest line to at least 8 K above it and leaves far-off limits out', () => {
    const lots = [
      { lotId: 'agaves', groupId: 'agave', limit: -3.5, leastLeaf: 1, margin: 4.5 },
      { lotId: 'houseleeks', groupId: 'sempervivum', limit: -25, leastLeaf: 1, margin: 26 },
    ];
    expect(nightExtent(night([]), placeTraces(place({ lots })))).toEqual([-3.5, 4.5]);
  });
  it('reaches over leaf and band outdoors, where there is no inside', () => {
    expect(nightExtent(night([], open()), openTraces(open()))).toEqual([-7, 1]);
  });
  it('the open air stands among the places where its margin puts it', () => {
    const places = [
      place({ placeId: 'a', margin: -2 }),
      place({ placeId: 'b', margin: 3 }),
      place({ placeId: 'c' }),
    ];
    const order = (margin: number) =>
      standsTonight(night(places, open({ margin }))).map((each) => each?.placeId ?? 'open');
    expect(order(-3)).toEqual(['open', 'a', 'b', 'c']);
    expect(order(1)).toEqual(['a', 'open', 'b', 'c']);
    expect(order(9)).toEqual(['a', 'b', 'open', 'c']);
    expect(standsTonight(night(places))).toEqual(places);
  });
  it('draws one line for lots that share a limit', () => {
    const lot = (lotId: string, limit: number) => ({
      lotId,
      groupId: 'echeveria',
      limit,
      leastLeaf: 1,
      margin: 1,
    });
    const lines = limitLines(
      [lot('echeverias', -1), lot('spare-echeverias', -1.02), lot('lemons', 1)],
      demonstrationPlan,
    );
    expect(lines).toEqual([
      { limit: 1, names: 'Two lemons in tubs' },
      { limit: -1, names: 'Echeverias, Spare echeverias' },
    ]);
  });
});

describe('the hint at the forecast low', () => {
  const metric = { temperature: 'C', length: 'm' } as const;
  const plain = (kelvin: number, temperature: 'C' | 'F') =>
    lowHint(kelvin, { ...metric, temperature }).replaceAll('\u00a0', ' ');
  it('says whose low it is, and nothing of a hollow where there is none', () => {
    expect(plain(0, 'C')).toBe('As the station or the forecast has it.');
  });
  it('says what the frost hollow takes off, in the units of the reader', () => {
    expect(plain(1.5, 'C')).toContain('frost hollow, up to 1.5 °C on a clear, still night, comes off it.');
    expect(plain(1.5, 'F')).toContain('frost hollow, up to 2.7 °F on a clear, still night, comes off it.');
  });
  it('says what a slope adds', () => {
    expect(plain(-2, 'C')).toContain('slope above the cold air, up to 2.0 °C');
  });
});

describe('a power cut in words', () => {
  it('says never, after how long, or already', () => {
    expect(powerCutWords(null)).toBe('No harm by morning');
    expect(powerCutWords(3.25)).toMatch(/^Harm after 3/);
    expect(powerCutWords(0)).toBe('Harm is there already by then');
  });
});

const plainSpaces = (text: string | null) => text?.replaceAll('\u00a0', ' ') ?? null;

describe('fuel in words', () => {
  const propane: FuelNight = {
    heaterId: 'p',
    name: 'Propane heater',
    unit: 'kg',
    amount: 1.36,
    tank: 11,
    emptyAtMs: null,
  };
  it('says whether the bottle lasts till morning, or when it is empty by the clock of the site', () => {
    expect(plainSpaces(fuelNightWords(propane, 'Europe/Berlin'))).toBe(
      '1.4 kg tonight; a full bottle of 11.0 kg lasts till morning',
    );
    const paraffin: FuelNight = {
      ...propane,
      unit: 'litres',
      amount: 2.2,
      tank: 1.8,
      emptyAtMs: Date.UTC(2026, 0, 13, 3, 10),
    };
    expect(plainSpaces(fuelNightWords(paraffin, 'Europe/Berlin'))).toBe(
      '2.2 litres tonight; a full tank of 1.8 litres is empty at 04:10',
    );
  });
  it('says the amount alone where no bottle is given', () => {
    expect(plainSpaces(fuelNightWords({ ...propane, amount: 0.345, tank: null }, 'UTC'))).toBe(
      '0.34 kg tonight',
    );
    expect(plainSpaces(fuelAmount(123.4, 'litres'))).toBe('123 litres');
  });
  it('counts the bottles of a season, begun ones too', () => {
    const season = {
      heaterId: 'p',
      name: 'Propane heater',
      unit: 'kg',
      amount: 25,
      mostInADay: 1.2,
    } as const;
    expect(plainSpaces(fuelSeasonWords({ ...season, tank: 11, fillings: 2.3 }))).toBe(
      '3 full bottles, most in a day 1.2 kg',
    );
    expect(plainSpaces(fuelSeasonWords({ ...season, tank: 11, fillings: 0.4 }))).toBe(
      'one full bottle, most in a day 1.2 kg',
    );
    expect(plainSpaces(fuelSeasonWords({ ...season, tank: null, fillings: null }))).toBe(
      'most in a day 1.2 kg',
    );
  });
});

describe('the air in words', () => {
  it('warns of carbon dioxide above the workplace limit only, and leaves the word to local codes', () => {
    expect(carbonDioxideCaution(carbonDioxideLimit)).toBeNull();
    const caution = carbonDioxideCaution(6240);
    expect(caution).toContain('about 6,200 ppm');
    expect(caution).toContain('fresh air');
    expect(caution).toContain('local codes, which come first');
    expect(caution).toContain('from memory');
  });
  it('tells dew on leaves from dew on the cover, and is silent where there is none', () => {
    expect(dewWords(place())).toBeNull();
    expect(plainSpaces(dewWords(place({ dewHours: 6, leafDewHours: 0.1 })))).toBe(
      'On the cover for 6 h, the leaves stay dry',
    );
    expect(plainSpaces(dewWords(place({ dewHours: 9, leafDewHours: 2.4 })))).toBe('On the leaves for 2 h 30');
  });
  it('has the heights where they differ, in the units of the reader', () => {
    const units = (temperature: 'C' | 'F') => ({ temperature, length: 'm' }) as const;
    expect(plainSpaces(heightWords(place().heights, units('C')))).toBe(
      'bench 2.0 °C, floor 1.4 °C, edge 0.6 °C',
    );
    expect(plainSpaces(heightWords(place().heights, units('F')))).toContain('bench 35.6 °F');
    const even = { floor: 1.9, bench: 2, ridge: 4, middle: 2, edge: 1.95 };
    expect(heightWords(even, units('C'))).toBeNull();
  });
});
