import { afterEach, describe, expect, it } from 'vitest';
import {
  demonstrationPlan,
  groupNumberNames,
  plantGroups,
  planNumbers,
  runSeason,
  weatherFromPlan,
} from '../../core/index.ts';
import type { Plan } from '../../core/index.ts';
import { manners, numberSections } from '../../renderer/plants/number-sections.ts';
import { fit, openPlants, PlantsBench, settle } from './plants/page.svelte.ts';

const season = runSeason(demonstrationPlan, weatherFromPlan(demonstrationPlan)!);
let page: Awaited<ReturnType<typeof openPlants>> | null = null;
async function open(fake: PlantsBench) {
  page = await openPlants(fake);
  return page;
}
function benchWith(part: Partial<Pick<PlantsBench, 'plan' | 'season' | 'placeRanks' | 'groupRanks'>> = {}) {
  return Object.assign(new PlantsBench(), { season, ...part });
}
afterEach(async () => {
  await page?.close();
  page = null;
});
const rowWords = new Map(
  [...numberSections.flatMap((one) => one.rows), ...manners].map((r) => [r.name, r.words]),
);

describe('one plant', () => {
  it('has a field or a choice for every number that a group has', async () => {
    const at = await open(benchWith());
    for (const { id, name } of [plantGroups[0], plantGroups.find((group) => group.rest !== null)!]) {
      const button = at.buttons().find((words) => words === name || words.startsWith(`${name} `));
      await at.press(button!);
      const numbers = planNumbers(demonstrationPlan, id);
      const labels = [...document.querySelectorAll('input[aria-label], select[aria-label]')].map((each) =>
        each.getAttribute('aria-label'),
      );
      for (const number of groupNumberNames) {
        if (numbers[number] === null || (number === 'dayLengthKind' && numbers.criticalDayLength === null))
          continue;
        const label = `${rowWords.get(number)}, ${name}`;
        expect(
          labels.filter((each) => each?.startsWith(label)),
          label,
        ).toHaveLength(1);
      }
    }
  });
  it('keeps a number typed and a manner chosen, and gives them back', async () => {
    const fake = benchWith();
    const at = await open(fake);
    await at.press(/^Echeveria/);
    await at.type('Growth begins at', '4.5');
    await at.choose('Warm and too dim', '1');
    expect(fake.plan.groupEdits).toEqual({ echeveria: { baseTemperature: 4.5, canRestDim: 1 } });
    expect(fake.changes).toEqual([
      'Echeveria: growth begins at',
      'Echeveria: warm and too dim, it stands still',
    ]);
    await at.press(/^Back to .*Growth begins at$/);
    expect(fake.plan.groupEdits).toEqual({ echeveria: { canRestDim: 1 } });
    await at.press('Back to all of the catalogue’s numbers');
    expect(fake.plan.groupEdits).toEqual({});
  });
  it('takes a figure that the catalogue does not have, and gives it up again', async () => {
    const fake = benchWith();
    const at = await open(fake);
    await at.press(/^Echeveria/);
    expect(at.text()).toContain('No figure for this group: “chills below” and “chill that injures”.');
    await at.press('Give them: chills below and chill that injures');
    await at.type('Chills below', '6');
    expect(fake.plan.groupEdits).toEqual({ echeveria: { chillBelow: 6, chillDose: 500 } });
    await at.press('Take it away, Chill that injures');
    expect(fake.plan.groupEdits).toEqual({});
  });
  it('says where each lot of the group stands in mid-winter, and when it is carried', async () => {
    const at = await open(benchWith());
    await at.press(/^Agave/);
    expect(at.text()).toContain('Agaves in Tunnel in the orchard: ');
    expect(at.text()).toMatch(/Agave from the steps in Lean-to on the kitchen wall: /);
    expect(at.text()).toMatch(
      /Outdoors until .*, then in Lean-to on the kitchen wall until .*, then outdoors\./,
    );
  });
  it('says what to do where none of the group stands anywhere', async () => {
    const at = await open(benchWith());
    await at.press(/^Lithops/);
    expect(at.text()).toContain('No Lithops stands in your plan.');
  });
});

describe('a group of one’s own', () => {
  it('is made, named, used for a lot, and deleted with its lots going back', async () => {
    const fake = benchWith();
    const at = await open(fake);
    await at.press(/^Echeveria/);
    await at.press('Make a group of my own from this');
    const [own] = fake.plan.ownGroups;
    expect(own).toMatchObject({ from: 'echeveria', numbers: {} });
    expect(at.all('nav[aria-label="Plant groups"] h2')[0]).toBe('Your own');
    await at.type('Name', 'Hardy echeverias');
    await at.type('Growth begins at', '2');
    await at.tick('Spare echeverias');
    expect(fake.plan.ownGroups).toEqual([
      { ...own, name: 'Hardy echeverias', numbers: { baseTemperature: 2 } },
    ]);
    const group = () => fake.plan.lots.find((lot) => lot.id === 'spare-echeverias')?.group;
    expect(group()).toBe(own.id);
    expect(fake.plan.groupEdits).toEqual({});
    await at.press('Delete this group');
    expect(at.text()).toContain('Spare echeverias then belongs to Echeveria again');
    expect(fake.plan.ownGroups).toHaveLength(1);
    await at.press('Delete Hardy echeverias');
    expect(fake.plan).toEqual(demonstrationPlan);
    expect(at.all('h2#group-title')).toEqual(['Echeveria']);
  });
});

describe('where it should spend the winter', () => {
  const placeRanks = [
    { ...fit(), placeId: 'lean-to', freeArea: 1.2 },
    { ...fit({ verdict: 'poorly', words: 'It draws up.' }), placeId: 'dim-tent', freeArea: 0 },
    {
      ...fit({ verdict: 'unsafe', words: 'Too cold.', sparedKelvin: -3.2, harms: ['frost'] }),
      placeId: 'outdoors',
      freeArea: null,
    },
  ];
  it('lists the places as ranked, with verdict, days, figures and harms', async () => {
    const fake = benchWith({ placeRanks });
    const at = await open(fake);
    await at.press(/^Agave/);
    await at.press('Where should it spend the winter?');
    const rows = at.all('tbody tr');
    expect(rows).toHaveLength(3);
    expect(rows[0]).toMatch(/^1 Lean-to on the kitchen wall Well Rests safely\..*1\.20 m² of bench free/);
    expect(rows[0]).toContain('2.0 °C to spare');
    expect(rows[1]).toMatch(/^2 Old tent under the stairs Poorly It draws up\..*no bench free/);
    expect(rows[2]).toMatch(/^3 Outdoors Not safe Too cold\..*3\.2 °C too cold.*Cold damage/);
    const strip = document.querySelector('tbody svg[role="img"]');
    expect(strip?.getAttribute('aria-label')).toBe('Growing 30 days, resting from cold 152 days');
  });
  it('puts one there and moves a lot of the group there', async () => {
    const fake = benchWith({ placeRanks });
    const at = await open(fake);
    await at.press(/^Agave/);
    await at.press('Where should it spend the winter?');
    // The agave from the steps winters in the lean-to already.
    expect(at.buttons().filter((words) => words.startsWith('Move Agave from the steps here'))).toHaveLength(
      2,
    );
    await at.press(/^Move Agaves here, in Lean-to/);
    expect(fake.plan.lots.find((lot) => lot.id === 'agaves')?.place).toBe('lean-to');
    expect(at.text()).toContain('Done: Winter Agaves in Lean-to on the kitchen wall.');
    await at.press('Undo');
    expect(fake.undone).toBe(1);
    await at.press(/^Put one here: Agave.* outdoors/);
    expect(fake.plan.lots.at(-1)).toMatchObject({ group: 'agave', place: 'outdoors', plants: 1 });
  });
  it('is asked again when the plan changes', async () => {
    const fake = benchWith({ placeRanks });
    await open(fake);
    const before = fake.asked.length;
    fake.plan = { ...fake.plan };
    await settle();
    expect(fake.asked.length).toBe(before + 1);
  });
  it('says so where the engine fails', async () => {
    const fake = benchWith();
    fake.engine.rankPlaces = () => Promise.reject(new Error('no weather'));
    const at = await open(fake);
    expect(at.all('[role="alert"]')).toEqual(['This could not be worked out: no weather']);
  });
});

describe('what can live here', () => {
  const groupRanks = [
    { ...fit(), groupId: 'aeonium' },
    { ...fit({ verdict: 'with-care' }), groupId: 'agave' },
    { ...fit({ verdict: 'unsafe' }), groupId: 'adenium' },
  ];
  async function openHere(fake: PlantsBench) {
    const at = await open(fake);
    await at.press('What can live here?');
    return at;
  }
  const names = (at: Awaited<ReturnType<typeof open>>) => at.all('tbody .name');

  it('ranks the groups for the place chosen and shows the verdicts asked for', async () => {
    const fake = benchWith({ groupRanks });
    const at = await openHere(fake);
    await at.press(/^Landing window/);
    expect(fake.asked.at(-1)).toBe('groups in window');
    expect(names(at)).toEqual(['Aeonium', 'Agave, tender to half-hardy', 'Adenium']);
    await at.press('Not safe 1');
    await at.press('Well 1');
    expect(names(at)).toEqual(['Agave, tender to half-hardy']);
    await at.press('Well 1');
    expect(names(at)).toHaveLength(2);
  });
  it('adds one to the place, and leads to the sheet of the group', async () => {
    const fake = benchWith({ groupRanks });
    const at = await openHere(fake);
    await at.press(/^Landing window/);
    await at.press(/^Add here: Adenium/);
    expect(fake.plan.lots.at(-1)).toMatchObject({ group: 'adenium', place: 'window' });
    expect(fake.changes).toEqual(['Add Adenium to Landing window']);
    await at.press('Adenium');
    expect(at.all('h2#group-title')).toEqual(['Adenium']);
  });
  it('asks about the open air where there is no place yet', async () => {
    const plan: Plan = { ...demonstrationPlan, places: [], lots: [] };
    const fake = benchWith({ plan, season: null, groupRanks });
    const at = await openHere(fake);
    expect(fake.asked.at(-1)).toBe('groups in outdoors');
    expect(at.text()).toContain('There is no place in this plan yet.');
    await at.press('Make a place');
    expect(fake.shownViews).toEqual([['place', undefined]]);
  });
});

describe('side by side', () => {
  it('teaches until two are ticked, then shows winters, curves and numbers with what differs', async () => {
    const placeRanks = [{ ...fit(), placeId: 'lean-to', freeArea: 1 }];
    const plan: Plan = { ...demonstrationPlan, lots: [] };
    const at = await open(benchWith({ plan, placeRanks }));
    await at.press(/^Echeveria/);
    await at.press('Side by side');
    expect(at.text()).toContain('Tick two to four groups in the list');
    await at.tick('Aeonium');
    const [echeveria, aeonium] = ['echeveria', 'aeonium'].map((id) => planNumbers(plan, id));
    const row = (words: string) =>
      [...document.querySelectorAll('tr')].find((tr) => tr.querySelector('th')?.textContent === words)!;
    const base = row('Growth begins at');
    expect(base.textContent).toContain(`${echeveria.baseTemperature.toFixed(1)}`);
    expect(base.querySelectorAll('.other').length).toBe(
      Number(echeveria.baseTemperature !== aeonium.baseTemperature),
    );
    expect(document.querySelectorAll('path.curve.line-0').length).toBeGreaterThanOrEqual(3);
    expect(document.querySelectorAll('path.curve.line-1').length).toBeGreaterThanOrEqual(3);
    expect(at.all('#compare-winters ~ * tbody tr')).toHaveLength(demonstrationPlan.places.length + 1);
    const alike = at.all('tr.soft').length;
    expect(alike).toBeGreaterThan(0);
    await at.tick('Only what differs');
    expect(at.all('tr.soft')).toHaveLength(0);
  });
});
