/** Bars and gutters in the place form: put in, kept, refused where they cannot be, and what they do to the light. */
import { afterEach, describe, expect, test } from 'vitest';
import { parsePlan } from '../../../core/index.ts';
import { newPlace } from '../../../renderer/place/new/defaults.ts';
import { openForm } from './page.ts';

let form: ReturnType<typeof openForm> | null = null;
const open = (kind: Parameters<typeof newPlace>[0]) =>
  (form = openForm('lean-to', { ...newPlace(kind, 54).place, id: 'lean-to' }));
afterEach(async () => {
  if (!form) return;
  const reading = parsePlan(form.plan());
  await form.close();
  form = null;
  expect(reading.ok ? [] : reading.problems).toEqual([]);
});

const bars = 'Bars that stand out from the panes';
const gutter = 'Width of the gutter at the eaves';

describe('bars', () => {
  test.each(['even-span', 'lean-to', 'tunnel', 'cold-frame', 'window-bay', 'listed'] as const)(
    'can be put on a %s, and taken away',
    (kind) => {
      const page = open(kind);
      expect(page.place().bars).toBe(null);
      page.tick(bars);
      page.type('They stand out', '25');
      page.type('Bars stand apart', '75 cm');
      expect(page.place().bars).toEqual({ spacing: 0.75, depth: 0.025 });
      page.tick(bars);
      expect(page.place().bars).toBe(null);
    },
  );

  test('are not asked for where no daylight comes', () => {
    expect(open('tent').has(bars)).toBe(false);
  });
});

describe('a gutter', () => {
  test('has a width on a house, and none where it is left empty', () => {
    const page = open('even-span');
    page.type(gutter, '12 cm');
    expect(page.place().gutter).toBe(0.12);
    page.type(gutter, '');
    expect(page.place().gutter).toBe(null);
  });

  test('is refused where half of it would cover the side or the roof', () => {
    const page = open('lean-to');
    page.type('Height at the front', '0.4');
    page.type(gutter, '0.9');
    expect(page.alerts()[0]).toContain(
      'Half of it would cover the whole side or roof; give less than 0.80 m.',
    );
    expect(page.place().gutter).toBe(null);
  });

  test.each(['tunnel', 'cold-frame', 'window-bay', 'tent', 'listed'] as const)(
    'is not asked for on a %s',
    (kind) => {
      expect(open(kind).has(gutter)).toBe(false);
    },
  );
});
