import { afterEach, describe, expect, test } from 'vitest';
import { heaterOf, leakagesFor } from '../../../core/index.ts';
import { newPlace } from '../../../renderer/place/new/defaults.ts';
import { openForm } from './page.ts';

let form: ReturnType<typeof openForm> | null = null;
const open = (...args: Parameters<typeof openForm>) => (form = openForm(...args));
afterEach(async () => {
  await form?.close();
  form = null;
});

const listed = () => {
  const { shape, room, lamps } = newPlace('listed', 54).place;
  return { shape, room, lamps };
};

describe('measured temperatures of a room', () => {
  const pasted = 'time;temperature\n1 Oct 00:00;12,5\n1 Oct 01:00;12\n1 Oct 02:00;-1.5\n';

  test('are taken when pasted and told back', () => {
    const page = open('bright-tent');
    const before = page.place().room;
    page.choose('The room around it is', 'series');
    expect(page.place().room).toBe(before);
    expect(page.text()).toContain('the room stays as it was');
    page.type('Measured temperatures in °C, one an hour', pasted);
    page.press('Use what is pasted');
    expect(page.place().room).toMatchObject({
      kind: 'series',
      from: '10-01',
      stepHours: 1,
      values: [12.5, 12, -1.5],
    });
    expect(page.text()).toMatch(/3 temperatures, 1 October to 1 October, from −1.5.°C to 12.5.°C/);
    page.type('First day', 'Dec 24');
    page.type('One every', '30 min');
    expect(page.place().room).toMatchObject({ from: '12-24', stepHours: 0.5 });
  });

  test('are refused as a whole, with the line', () => {
    const page = open('bright-tent');
    const before = page.place().room;
    page.choose('The room around it is', 'series');
    page.type('Measured temperatures in °C, one an hour', '12\n13\nbroken\n14');
    page.press('Use what is pasted');
    expect(page.alerts()).toEqual(['Line 3, “broken”, does not end with a number. Nothing was taken.']);
    expect(page.place().room).toBe(before);
  });
});

describe('vents', () => {
  test('are added, changed one by one and taken away, four at most', () => {
    const page = open('lean-to', { vents: [] });
    page.press('Add a vent that opens by itself');
    expect(page.place().vents.map((vent) => vent.position)).toEqual(['roof']);
    for (let more = 0; more < 3; more += 1) page.press('Add another kind of vent');
    expect(page.place().vents.map((vent) => vent.position)).toEqual(['roof', 'side', 'end', 'roof']);
    expect(() => page.press('Add another kind of vent')).toThrow();
    page.type('Opening, fully open', '0.3', page.thing('vent 2'));
    page.choose('Where', 'end', page.thing('vent 2'));
    expect(page.place().vents[1]).toMatchObject({ area: 0.3, position: 'end' });
    page.press('Take away vent 1');
    expect(page.place().vents.map((vent) => vent.area === 0.3)).toEqual([true, false, false]);
  });

  test('refuse a wrong size at the field and keep the old one', () => {
    const page = open('lean-to', { vents: [] });
    page.press('Add a vent that opens by itself');
    const { area } = page.place().vents[0];
    page.type('Opening, fully open', '200');
    expect(page.alerts()[0]).toContain('Give from 0.001 to 100 m².');
    expect(page.place().vents[0].area).toBe(area);
  });
});

describe('heaters', () => {
  const heater = (kind: 'propane' | 'paraffin' | 'fan' | 'heat-pump', name: string) =>
    heaterOf({ id: name.toLowerCase(), name, kind, power: 1000, setPointDay: 5, setPointNight: 5 });

  test('only burners have a bottle or tank and a flue, only heat pumps coefficients', () => {
    const page = open('lean-to', { heaters: [heater('fan', 'Warm')] });
    const seen = () =>
      [
        'A full bottle holds',
        'A full tank holds',
        'Burnt gases leave through a flue',
        'Heat for electricity at 7 °C outdoors',
      ].map((label) => page.has(label));
    const kinds = { fan: 0, propane: 0, paraffin: 0, 'heat-pump': 0, tubular: 0 };
    const shown = Object.keys(kinds).map((kind) => {
      page.choose('Kind', kind, page.thing('Warm'));
      return [kind, ...seen()];
    });
    expect(shown).toEqual([
      ['fan', false, false, false, false],
      ['propane', true, false, true, false],
      ['paraffin', false, true, true, false],
      ['heat-pump', false, false, false, true],
      ['tubular', false, false, false, false],
    ]);
  });

  test('lose their tank with their flame', () => {
    const page = open('lean-to', { heaters: [heater('paraffin', 'Warm')] });
    page.type('A full tank holds', '4');
    page.tick('Burnt gases leave through a flue');
    expect(page.place().heaters[0]).toMatchObject({ tank: 4, flued: true });
    page.choose('Kind', 'fan', page.thing('Warm'));
    expect(page.place().heaters[0]).toMatchObject({ kind: 'fan', tank: null, flued: false });
  });

  test('stand in an order that can be changed, and say what it means', () => {
    const page = open('lean-to', { heaters: [heater('fan', 'One'), heater('paraffin', 'Two')] });
    expect(page.text()).toContain('the first in the list');
    page.press('Move Two up');
    expect(page.place().heaters.map((each) => each.name)).toEqual(['Two', 'One']);
  });

  test('hold at certain hours with a frost watch outside them', () => {
    const page = open('lean-to', { heaters: [heater('fan', 'One')] });
    expect(page.has('Outside these hours it still keeps')).toBe(false);
    page.tick('Only at certain hours');
    page.type('Holds from', '18:30');
    page.type('Outside these hours it still keeps', '2');
    expect(page.place().heaters[0]).toMatchObject({
      hours: { from: '18:30', to: '08:00' },
      frostWatch: 2,
    });
    page.type('Outside these hours it still keeps', '');
    expect(page.place().heaters[0].frostWatch).toBeNull();
  });

  test('a heat pump gives no more heat for its electricity in colder air', () => {
    const page = open('lean-to', { heaters: [heater('heat-pump', 'Pump')] });
    page.type('Heat for electricity at −7 °C outdoors', '5');
    expect(page.alerts()[0]).toContain('colder air');
    expect(page.place().heaters[0].coefficientAtMinus7).toBe(2.4);
  });
});

describe('listed surfaces', () => {
  test('are of the catalogue or of layers of the grower’s own', () => {
    const page = open('lean-to', listed());
    const build = () => {
      const { shape } = page.place();
      if (shape.kind !== 'listed') throw new Error(`expected listed surfaces, got ${shape.kind}`);
      return shape.surfaces[1];
    };
    page.choose('Made of', 'own layers', page.thing('House wall'));
    expect(build()).toMatchObject({ covering: null, build: { kind: 'layers' } });
    page.press('Add a layer outside');
    page.type('Thickness', '50', page.thing('layer 2'));
    page.type('Conducts heat', '0.04', page.thing('layer 2'));
    page.type('Density', '0', page.thing('layer 2'));
    expect(build().build).toMatchObject({
      layers: [{ thickness: 0.215 }, { thickness: 0.05, conductivity: 0.04, density: 0 }],
    });
    page.type('Conducts heat', '0', page.thing('layer 1'));
    expect(page.alerts()[0]).toContain('too little');
    page.choose('Made of', 'own panes', page.thing('House wall'));
    page.choose('Panes', '2', page.thing('House wall'));
    page.type('Thickness of a pane', '6', page.thing('House wall'));
    expect(build()).toMatchObject({ build: { kind: 'panes', panes: 2, thickness: 0.006 }, behind: 'room' });
    page.choose('Made of', 'brick-215', page.thing('House wall'));
    expect(build()).toMatchObject({ covering: 'brick-215', build: null });
  });
});

test('the way a place is built fills its leakage, and a number of one’s own stands beside it', () => {
  const page = open('lean-to', { leakage: 1.1 });
  expect(page.field('Built as').value).toBe('');
  const poor = leakagesFor('lean-to').find((each) => each.id === 'glass-old-poor');
  page.choose('Built as', 'glass-old-poor');
  expect(page.place().leakage).toBe(poor?.usual);
  expect(page.text()).toContain('2 to 4 so built');
  page.type('Air changed through gaps', '1.3');
  expect([page.place().leakage, page.field('Built as').value]).toEqual([1.3, '']);
});

test('a window bay has a curtain before its room', () => {
  const page = open('lean-to', { ...newPlace('window-bay', 54).place, id: 'lean-to' });
  page.choose('A curtain or blind between window and room', 'woven-screen');
  expect(page.place().curtain).toMatchObject({ covering: 'woven-screen', closedWhen: 'night' });
  page.choose('A curtain or blind between window and room', '');
  expect(page.place().curtain).toBeNull();
});

test('screens run by the clock; a house has no curtain', () => {
  const page = open('lean-to');
  expect(page.has('A curtain or blind between window and room')).toBe(false);
  page.choose('Night screen', 'woven-screen');
  page.choose('Drawn', 'hours');
  page.type('Drawn from', '4 pm');
  expect(page.place().screen).toMatchObject({ closedWhen: 'hours', from: '16:00', to: '08:00' });
  page.choose('Drawn', 'cold-night');
  expect([page.has('Drawn from'), page.has('When colder outdoors than')]).toEqual([false, true]);
});

test('of burners and mains each is warned about once', () => {
  const page = open('lean-to', {
    heaters: [
      heaterOf({ id: 'a', name: 'A', kind: 'propane', power: 2000, setPointDay: 5, setPointNight: 5 }),
      heaterOf({ id: 'b', name: 'B', kind: 'fan', power: 2000, setPointDay: 5, setPointNight: 5 }),
    ],
    lamps: newPlace('tent', 54).place.lamps,
  });
  for (const words of ['carbon monoxide alarm', 'residual-current device', 'spread the load'])
    expect([words, page.text().split(words).length - 1]).toEqual([words, 1]);
});

describe('the site', () => {
  test('has snow of its own and says which threshold of mould counts', () => {
    const page = open('lean-to', {}, true);
    page.tick('Snow lies in a usual winter');
    page.type('How deep', '25 cm');
    page.type('To', '10 March');
    expect(page.plan().site.snow).toEqual({ depth: 0.25, from: '12-20', to: '03-10' });
    page.type('To', '30 Feb');
    expect(page.alerts()[0]).toContain('is not a day');
    page.choose('Which published threshold counts as mould risk', 'wet-night');
    expect(page.plan().mouldRule).toBe('wet-night');
    expect(page.text()).toContain('Yunis');
  });
});
