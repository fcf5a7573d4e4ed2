/** Light in the place form: how a lamp's light is known, its hours, cloths, shelves, reflectances, a skyline of one's own. */
import { flushSync } from 'svelte';
import { afterEach, describe, expect, test } from 'vitest';
import { lampOf, lampPhotons, parsePlan } from '../../../core/index.ts';
import type { Lamp } from '../../../core/index.ts';
import { firstLamp, newPlace } from '../../../renderer/place/new/defaults.ts';
import { openForm } from './page.ts';

let form: ReturnType<typeof openForm> | null = null;
const open = (...args: Parameters<typeof openForm>) => (form = openForm(...args));
afterEach(async () => {
  // Whatever was done, the plan stands as a plan.
  if (!form) return;
  const reading = parsePlan(form.plan());
  await form.close();
  form = null;
  expect(reading.ok ? [] : reading.problems).toEqual([]);
});

const house = newPlace('even-span', 54).place;
const bay = newPlace('window-bay', 54).place;
const inHouse = (part: Partial<Lamp> = {}) => ({
  ...house,
  id: 'lean-to',
  lamps: [lampOf({ ...firstLamp(house), ...part })],
});
const options = (page: ReturnType<typeof openForm>, label: string) =>
  [...(page.field(label) as unknown as HTMLSelectElement).options].map((option) => option.value);

const words = (page: ReturnType<typeof openForm>) => page.text().replaceAll(/\s+/g, ' ');

describe('how the light of a lamp is known', () => {
  const flux = (lamp: Lamp) => lampPhotons({ ...lamp, count: 1, dimming: 1 });

  test('by watts, by lumens or by a reading: each starts at the light there was', () => {
    const page = open('bright-tent');
    page.type('Burnt so far', '20000');
    const before = flux(page.place().lamps[0]);
    for (const kind of ['lumens', 'reading', 'efficacy']) {
      page.choose('Its light is known by', kind);
      expect(page.place().lamps[0].light.kind).toBe(kind);
      expect(flux(page.place().lamps[0]) / before).toBeCloseTo(1, 2);
    }
    expect(options(page, 'Its light is known by')).not.toContain('file');
  });

  test('lumens and lux for a micromole are refused out of their range, and empty is the usual of its kind', () => {
    const page = open('bright-tent');
    page.choose('Its light is known by', 'lumens');
    page.type('Lumens, each', '0');
    expect(page.alerts()[0]).toContain('Give from 1 to 1000000 lm.');
    page.type('Lumens, each', '9000');
    page.type('Lux for a micromole', '80');
    expect(page.place().lamps[0].light).toEqual({ kind: 'lumens', lumens: 9000, luxPerMicromole: 80 });
    page.type('Lux for a micromole', '');
    expect(page.place().lamps[0].light).toMatchObject({ luxPerMicromole: null });
  });

  test('the lux for a micromole comes out of a spectrum that is pasted, and a table that cannot be read is named by its line', () => {
    const page = open('bright-tent');
    page.choose('Its light is known by', 'lumens');
    const table = 'Wavelength in nm and its light, a line each';
    page.type(table, '440 1\n430 2');
    expect(words(page)).toContain('Line 2: expected rising wavelengths');
    // All its light near 555 nm: 683 lm W⁻¹ over 4.639 µmol J⁻¹ (CIE 1924 and λ ÷ 119.627) is 147 lux for a micromole.
    page.type(table, '554 0\n554.9 1\n555.1 1\n556 0');
    expect(words(page)).toMatch(/14[67][.]\d lux for a micromole; 4[.]64/);
    page.press(
      [...document.querySelectorAll('button')]
        .map((each) => each.textContent!.trim())
        .find((name) => /^Take 14/.test(name))!,
    );
    const { light } = page.place().lamps[0];
    expect(light.kind === 'lumens' ? light.luxPerMicromole : null).toBeCloseTo(147.2, 0);
  });

  test('a reading in the other unit is the same light', () => {
    const page = open('bright-tent');
    page.choose('Its light is known by', 'reading');
    page.type('It reads', '20000');
    page.type('Below its face', '50 cm');
    const before = flux(page.place().lamps[0]);
    page.choose('On a meter for', 'ppfd');
    expect(page.place().lamps[0].light).toMatchObject({ unit: 'ppfd', value: 294, distance: 0.5 });
    expect(flux(page.place().lamps[0]) / before).toBeCloseTo(1, 2);
  });

  test('more light for a watt than a lamp can give is said', () => {
    const page = open('bright-tent');
    page.choose('Its light is known by', 'lumens');
    page.type('Lumens, each', '60000');
    expect(page.text()).toContain('more than any lamp can');
  });

  test('a file’s beam may be turned, and leaving it leaves its light', () => {
    const photometry = { name: 'own.ies', vertical: [0, 90], planes: [0], candela: [300, 0] };
    const page = open(
      'lean-to',
      inHouse({
        beam: { kind: 'file', photometry, turned: 0 },
        light: { kind: 'file', luxPerMicromole: null },
      }),
    );
    expect(options(page, 'Its light is known by')).toContain('file');
    page.type('Turned', '200');
    expect(page.alerts()[0]).toContain('Give from −180 to 180 °.');
    page.type('Turned', '90');
    expect(page.place().lamps[0].beam).toMatchObject({ turned: 90 });
    page.choose('Throws its light', 'cosine-power');
    page.type('Narrower by the power', '10');
    expect(page.place().lamps[0]).toMatchObject({
      beam: { kind: 'cosine-power', power: 10 },
      light: { kind: 'efficacy' },
    });
    expect(page.text()).toContain('half as bright 21° off the middle');
  });
});

describe('when a lamp burns', () => {
  test('its hours are refused where they mean always or never', () => {
    const page = open('bright-tent');
    page.type('Off at', '7');
    expect(page.alerts()[0]).toContain('always or never');
    expect(page.place().lamps[0].off).toBe('19:00');
  });

  test('a second block keeps clear of the first, both ways', () => {
    const page = open('bright-tent');
    page.tick('A second block of hours');
    expect(page.place().lamps[0].second).toEqual({ on: '00:00', off: '02:00' });
    page.type('Off again at', '8:00');
    expect(page.alerts()[0]).toContain('run into the other block, 07:00 to 19:00');
    page.type('Off again at', '7:00');
    page.type('On at', '6:00');
    expect(page.alerts()[0]).toContain('run into the other block, 00:00 to 07:00');
    page.tick('A second block of hours');
    expect(page.place().lamps[0].second).toBeNull();
  });

  test('one that burns all day has no room for a second block', () => {
    const page = open('lean-to', inHouse({ on: '00:00', off: '24:00' }));
    expect(page.has('A second block of hours')).toBe(false);
    expect(page.text()).toContain('no room for a second block');
  });

  test('only the clock switches it where no daylight comes', () => {
    const page = open('bright-tent');
    expect(options(page, 'Switched by')).toEqual(['clock']);
    expect(page.text()).toContain('no daylight reaches these plants');
  });

  test('it lengthens the day up to the longest allowed, and the clock is not asked for', () => {
    const page = open('lean-to', inHouse());
    page.type('Longest day it may make', '12');
    page.choose('Switched by', 'extend');
    expect([page.has('On at'), page.has('A second block of hours')]).toEqual([false, false]);
    page.type('Makes the day', '14');
    expect(page.alerts()[0]).toContain('past the longest day allowed, 12\u00a0h');
    page.type('Longest day it may make', '11');
    expect(page.alerts()[1]).toContain('set to make the day 12\u00a0h long');
    page.choose('It burns', 'dusk');
    expect(page.place().lamps[0]).toMatchObject({ control: { hours: 12, end: 'dusk' }, mostDay: 12 });
  });

  test('on dark days only: daylight may be typed as lux, and the dead time has its range', () => {
    const page = open('lean-to', inHouse());
    page.choose('Switched by', 'daylight');
    page.type('Burns while daylight is under', '5400 lux');
    page.type('Then stays so for at least', '300');
    expect(page.alerts()[0]).toContain('Give from 0 to 240 min.');
    expect(page.place().lamps[0].control).toEqual({ kind: 'daylight', below: 100, deadTime: 30 });
  });
});

test('a lamp’s layout, place, age and half light are kept, and refused where they cannot be', () => {
  const page = open('bright-tent');
  page.choose('Laid out as', 'bulbs');
  expect([page.has('Across its face'), page.has('Width of its face')]).toEqual([true, false]);
  page.type('Off the middle, along', '0.5');
  expect(page.alerts()[0]).toContain('ends 0.40 m off its middle');
  page.type('Off the middle, along', '-20 cm');
  page.type('At half its light it takes', '80');
  expect(page.alerts()[0]).toContain('cannot take more watts');
  page.type('At half its light it takes', '40');
  page.type('At the plug, each', '30');
  expect(page.alerts()[0]).toContain('cannot take more watts');
  page.type('Burnt so far', '4000');
  page.type('Replaced after', '20000');
  expect(page.place().lamps[0]).toMatchObject({
    arrangement: 'bulbs',
    along: -0.2,
    watts: 75,
    wattsAtHalf: 40,
    burnt: 4000,
    life: 20000,
  });
});

describe('an upper shelf', () => {
  const label = 'An upper shelf over part of the plants';

  test('fits the place when it is put in, in every kind of place', () => {
    for (const kind of [
      'even-span',
      'lean-to',
      'tunnel',
      'cold-frame',
      'tent',
      'shelf',
      'window-bay',
      'listed',
    ] as const) {
      const page = openForm('lean-to', { ...newPlace(kind, 54).place, id: 'lean-to' });
      page.tick(label);
      expect([kind, page.alerts(), page.place().upperShelf === null]).toEqual([kind, [], false]);
      void page.close();
    }
  });

  test('is refused where it does not fit, and its lamps come down with it', () => {
    const page = open('bright-tent');
    expect(page.has('Hangs over')).toBe(false);
    page.tick(label);
    page.choose('Hangs over', 'upper');
    page.type('Length of the boards', '90 cm');
    page.type('Boards over the plants below', '1.6');
    page.type('Width of the boards', '0.75');
    // As they stand in the form.
    expect(page.alerts().map((alert) => alert.replace(/ Still .*/, ''))).toEqual([
      'The place is only 1.60 m high.',
      'The place is only 0.80 m long.',
      'The upper shelf would take all 0.56 m² that plants stand on; both levels count in it.',
    ]);
    page.tick(label);
    expect(page.place()).toMatchObject({ upperShelf: null, lamps: [{ shelf: 'lower' }] });
  });
});

describe('a window', () => {
  test('has its plants behind the panes, its panes in the wall and a sheer curtain', () => {
    const page = open('lean-to', { ...bay, id: 'lean-to' });
    page.type('Plants begin, behind the panes', '0.3');
    expect(page.alerts()[0]).toContain('before the back of the sill');
    page.type('Plants begin, behind the panes', '5 cm');
    page.type('Panes sit back in the wall by', '1.2');
    expect(page.alerts()[0]).toContain('Give from 0 to 1 m.');
    page.type('Panes sit back in the wall by', '0.2');
    page.type('Depth of the sill', '0.05 m');
    expect(page.place().shape).toMatchObject({ distance: 0.05, reveal: 0.2, depth: 0.3 });
  });

  test('has a sheer curtain with its hours; a house has none', () => {
    const page = open('lean-to', { ...bay, id: 'lean-to' });
    const [, first] = options(page, 'Sheer curtain before the panes');
    page.choose('Sheer curtain before the panes', first);
    expect(page.place().sheer).toEqual({ covering: first, from: '00:00', to: '24:00' });
    page.type('Drawn to', '0:00');
    expect(page.alerts()[0]).toContain('drawn at no time');
    page.type('Drawn to', '9:30');
    expect(page.place().sheer).toMatchObject({ to: '09:30' });
    void page.close();
    expect(open('lean-to').has('Sheer curtain before the panes')).toBe(false);
  });
});

describe('the cover', () => {
  test('has shade cloth from one day to another', () => {
    const page = open('lean-to');
    const [, first] = options(page, 'Shade cloth over the cover');
    page.choose('Shade cloth over the cover', first);
    page.type('Taken off on', '1 May');
    expect(page.alerts()[0]).toContain('It would shade on no day.');
    page.type('Taken off on', '15 Sep');
    expect(page.place().shadeCloth).toEqual({ covering: first, from: '05-01', to: '09-15' });
  });

  test('is washed on a day or never', () => {
    const page = open('lean-to');
    page.type('Washed each year on', 'someday');
    expect(page.alerts()[0]).toContain('is not a day');
    expect(page.alerts()[0]).toContain('Still not given.');
    page.type('Washed each year on', '1 Oct');
    expect(page.place().cleanedOn).toBe('10-01');
    page.type('Washed each year on', '');
    expect(page.place().cleanedOn).toBeNull();
  });
});

test('what walls and ceiling throw back is chosen from a few with their source, or a number of one’s own', () => {
  const page = open('bright-tent');
  expect(page.field('Inner walls').value).toBe('own');
  page.choose('Inner walls', 'silver');
  expect(page.text()).toContain('metallised polyester film');
  expect(page.place().wallReflectance).toBe(0.9);
  page.choose('Over the lamps', 'black');
  page.choose('Plants and bench', 'own');
  page.type('Thrown back from below', '99');
  expect(page.alerts()[0]).toContain('Give from 0 to 98 %.');
  page.type('Thrown back from below', '20');
  expect(page.place()).toMatchObject({ ceilingReflectance: 0.05, benchReflectance: 0.2 });
  page.choose('Over the lamps', '');
  expect(page.place().ceilingReflectance).toBeNull();
});

describe('a skyline', () => {
  const handles = () => [...document.querySelectorAll<SVGElement>('[role="slider"]')];
  const key = (name: string, index: number) => {
    handles()[index].dispatchEvent(new KeyboardEvent('keydown', { key: name, bubbles: true }));
    flushSync();
  };

  test('of the site is put in, moved by keys, told in numbers and cleared; the hours of sun follow', () => {
    const page = open('lean-to', {}, true);
    expect(words(page)).toMatch(/Nothing stands in the way: all 7 h 16 of sun on 21 December/);
    page.press('Put in a house');
    expect(page.plan().site.horizon.length).toBe(4);
    expect(words(page)).toMatch(/On 21 December \d h( \d\d)? of 7 h 16 of sun are left/);
    const { azimuth, elevation } = page.plan().site.horizon[1];
    key('ArrowUp', 1);
    key('ArrowLeft', 1);
    expect(page.plan().site.horizon[1]).toMatchObject({ azimuth: azimuth - 0.5, elevation: elevation + 1 });
    page.type('Point 1 up to, °', '95');
    expect(page.alerts()[0]).toContain('Give from 0 to 89 °.');
    key('Delete', 1);
    expect(page.plan().site.horizon.length).toBe(3);
    page.press('Clear it all');
    expect(page.plan().site.horizon).toEqual([]);
  });

  test('trees let light through, and are told so', () => {
    const page = open('lean-to', {}, true);
    page.press('Put in trees');
    expect(words(page)).toMatch(/and \d+ h( \d\d)? more through trees/);
    expect(page.plan().site.horizon.map(({ passes }) => passes)).toEqual([0.5, 0.5, 0.5, 0]);
  });

  test('of a place’s own starts as the site’s, and goes back to it; a tent has none', () => {
    const page = open('lean-to');
    page.tick('A skyline of its own, not that of the site');
    expect(page.place().horizon).toEqual(page.plan().site.horizon);
    page.press('Add a point');
    expect(page.place().horizon?.length).toBe(3);
    expect(page.plan().site.horizon).toEqual([]);
    page.tick('A skyline of its own, not that of the site');
    expect(page.place().horizon).toBeNull();
    void page.close();
    expect(open('bright-tent').has('A skyline of its own, not that of the site')).toBe(false);
  });
});
