/** Why a run of a ribbon is as it is: the panel opens where it is asked for and shows what the core says. */
import { flushSync } from 'svelte';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  carbonNightResponse,
  lightResponse,
  plantStates,
  planNumbers,
  temperatureResponse,
} from '../../core/index.ts';
import type { LotSeason } from '../../core/index.ts';
import { lightCurve, lightDecides, warmthCurve } from '../../renderer/sheet/why-curves.ts';
import { leadWords } from '../../renderer/sheet/why-figures.ts';
import { growsSoft, whyRun } from '../../renderer/sheet/why.ts';
import { leanToPlan, openSheet, plotWidth, season } from './why/sheet-page.ts';

const lotOf = (id: string): LotSeason => {
  const lot = season.lots.find((each) => each.lotId === id);
  if (!lot) throw new Error(`expected a lot ${id}, got none`);
  return lot;
};
const pelargoniums = lotOf('pelargoniums');
const numbers = planNumbers(leanToPlan, pelargoniums.groupId);
const midWinter = 150;

/** First and last day of the run of like states around a day, counted by hand. */
function runAround(lot: LotSeason, day: number): [number, number] {
  let [from, to] = [day, day];
  while (from > 0 && lot.state[from - 1] === lot.state[day]) from -= 1;
  while (to < 364 && lot.state[to + 1] === lot.state[day]) to += 1;
  return [from, to];
}
const date = (day: number) =>
  new Intl.DateTimeFormat(undefined, { day: 'numeric', month: 'long', timeZone: 'UTC' }).format(
    Date.parse(`${season.startDate}T00:00Z`) + day * 86_400_000,
  );

describe('a run of a ribbon', () => {
  it('is the days of like state around a day, with the transitions at its ends', () => {
    for (const lot of season.lots) {
      for (const day of [0, 60, midWinter, 364]) {
        const { run, began, ended } = whyRun(lot, day);
        const [from, to] = runAround(lot, day);
        expect([run.fromDay, run.toDay - 1]).toEqual([from, to]);
        expect(began?.day ?? 0).toBe(from);
        expect(ended?.day ?? 365).toBe(to + 1);
        if (began) expect(began.to).toBe(lot.state[day]);
        if (ended) expect(ended.from).toBe(lot.state[day]);
      }
    }
  });

  it('is soft where development runs ahead of carbon gain in a plant that grows, and nowhere else', () => {
    const at = (state: number, development: number, carbon: number) =>
      growsSoft(
        {
          state: new Uint8Array([state]),
          temperatureIndex: new Float64Array([development]),
          carbonIndex: new Float64Array([carbon]),
        } as unknown as LotSeason,
        0,
      );
    const code = (id: string) => plantStates.findIndex((state) => state.id === id);
    expect(at(code('growing'), 0.8, 0.4)).toBe(true);
    expect(at(code('growing'), 0.8, 0.7)).toBe(false);
    expect(at(code('resting-cold'), 0.8, 0.4)).toBe(false);
  });
});

describe('the curves of a day', () => {
  it('stand where the core puts them, the day’s points at the indices it was judged by', () => {
    for (const lot of season.lots) {
      const its = planNumbers(leanToPlan, lot.groupId);
      const warmth = warmthCurve(its, lot, midWinter);
      const day = warmth.points.find((point) => point.id === 'day')!;
      expect(day.value).toBe(temperatureResponse(its, lot.lived.leafMean[midWinter]));
      expect(day.value).toBe(lot.temperatureIndex[midWinter]);
      const night = warmth.points.find((point) => point.id === 'night');
      const carbon = carbonNightResponse(its, lot.lived.leafNight[midWinter], lot.rememberedLeaf[midWinter]);
      expect(night?.value ?? null).toBe(carbon);
      expect(warmth.curves.length).toBe(carbon === null ? 1 : 2);
      if (night) expect(night.value).toBeCloseTo(lot.carbonIndex[midWinter], 12);
      const light = lightCurve(its, lot, midWinter);
      expect(light.points.find((point) => point.id === 'day')?.value).toBe(lot.lightIndex[midWinter]);
      for (const { points, domain } of [warmth, light])
        for (const point of points) {
          expect(point.at).toBeGreaterThanOrEqual(domain[0]);
          expect(point.at).toBeLessThanOrEqual(domain[1]);
        }
    }
  });

  it('mark in full the thresholds at which the run began and ended, and no others', () => {
    const strong = (curve: ReturnType<typeof warmthCurve>) =>
      curve.marks.filter((mark) => mark.strong).map((mark) => mark.at);
    const near = (a: number) => (b: number) => Math.abs(a - b) < 0.02;
    let checked = 0;
    for (const lot of season.lots) {
      const its = planNumbers(leanToPlan, lot.groupId);
      for (let day = 0; day < 365; day += 7) {
        const { began, ended } = whyRun(lot, day);
        for (const [unit, curve] of [
          ['°C', warmthCurve(its, lot, day)],
          ['mol/m²', lightCurve(its, lot, day)],
        ] as const) {
          const ends = [began, ended].filter((each) => each?.crossing.unit === unit);
          const crossed = ends.map((each) => each!.crossing.threshold);
          for (const at of strong(curve)) expect(crossed.some(near(at))).toBe(true);
          for (const at of crossed) expect(strong(curve).some(near(at))).toBe(true);
          checked += crossed.length;
        }
      }
    }
    expect(checked).toBeGreaterThan(100);
  });

  it('are met with a group that has a carbon curve and one that has none', () => {
    const curves = season.lots.map(
      (lot) => warmthCurve(planNumbers(leanToPlan, lot.groupId), lot, midWinter).curves.length,
    );
    expect(new Set(curves)).toEqual(new Set([1, 2]));
  });
});

describe('the why panel', () => {
  let page: Awaited<ReturnType<typeof openSheet>>;
  beforeEach(async () => (page = await openSheet()));
  afterEach(() => page.close());

  /** A drawn point [px], and the curve it should lie on. */
  function point(id: string, curve: number) {
    const figure = document.querySelectorAll('.why figure')[curve];
    const [, x, y] = /translate\(([-\d.]+) ([-\d.]+)\)/.exec(
      figure.querySelector(`[data-point="${id}"]`)?.getAttribute('transform') ?? '',
    )!;
    const path = figure.querySelector('path.curve')!.getAttribute('d')!;
    const spots = path
      .slice(1)
      .split('L')
      .map((pair) => pair.split(',').map(Number));
    return { x: Number(x), y: Number(y), spots };
  }

  it('opens at a click on a ribbon, on the very day, with the run in its title and what began and ended it', () => {
    expect(page.panel()).toBe(null);
    page.clickDay(page.ribbon('lean-to', 'pelargoniums'), midWinter);
    expect(page.bench.cursorDay).toBe(midWinter);
    const [from, to] = runAround(pelargoniums, midWinter);
    const name = plantStates[pelargoniums.state[midWinter]].name.toLowerCase();
    expect(page.heading()).toContain(`Pelargoniums from cuttings: ${name}, ${date(from)} to ${date(to)}`);
    const frame = page.found('rect.asked', 'a frame around the run', page.ribbon('lean-to', 'pelargoniums'));
    expect(Number(frame.getAttribute('x'))).toBeCloseTo((from / 365) * plotWidth, 9);
    expect(Number(frame.getAttribute('width'))).toBeCloseTo(((to + 1 - from) / 365) * plotWidth, 9);
    const text = page.panel()!.textContent!.replaceAll('\u00a0', ' ');
    for (const day of [from, to + 1]) {
      const because = pelargoniums.transitions.find((each) => each.day === day)!.because;
      expect(text.toLowerCase()).toContain(because.toLowerCase());
    }
  });

  it('does not open where the cursor is only dragged over a ribbon', () => {
    const reach = page.found('.reach', 'a reach', page.ribbon('lean-to', 'pelargoniums'));
    reach.dispatchEvent(new PointerEvent('pointerdown', { bubbles: true, button: 0, clientX: 200 }));
    reach.dispatchEvent(new MouseEvent('click', { bubbles: true, clientX: 260 }));
    flushSync();
    expect(page.panel()).toBe(null);
  });

  it('opens from the lot’s row, which Tab reaches, takes the focus, and gives it back at Esc', async () => {
    const row = page.named('Pelargoniums from cuttings: why in Lean-to on the kitchen wall');
    expect(row.tabIndex).toBe(0);
    row.focus();
    row.click();
    flushSync();
    await new Promise((done) => setTimeout(done));
    expect(document.activeElement?.id).toBe('why-heading');
    document.activeElement!.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape', bubbles: true }));
    flushSync();
    expect(page.panel()).toBe(null);
    expect(document.activeElement).toBe(row);
  });

  it('has the day’s point on the curve where the core has it, and moves it with the day', () => {
    page.clickDay(page.ribbon('lean-to', 'pelargoniums'), midWinter);
    // Drawn 84 px high over a foot at 92, and on a panel of no measured width 60 px wide from 26.
    const expected = (day: number) => {
      const [low, high] = warmthCurve(numbers, pelargoniums, day).domain;
      const leaf = pelargoniums.lived.leafMean[day];
      return { x: 26 + (60 * (leaf - low)) / (high - low), y: 92 - 84 * temperatureResponse(numbers, leaf) };
    };
    const drawn = point('day', 0);
    expect(drawn.x).toBeCloseTo(expected(midWinter).x, 6);
    expect(drawn.y).toBeCloseTo(expected(midWinter).y, 6);
    const right = drawn.spots.findIndex(([x]) => x >= drawn.x);
    const [[x0, y0], [x1, y1]] = [drawn.spots[right - 1], drawn.spots[right]];
    expect(y0 + ((y1 - y0) * (drawn.x - x0)) / (x1 - x0)).toBeCloseTo(drawn.y, 0);
    const light = 92 - 84 * lightResponse(numbers, pelargoniums.lived.dailyLight[midWinter]);
    expect(point('day', 1).y).toBeCloseTo(light, 6);

    const slider = page.found<HTMLInputElement>('input[aria-label="Day on the curves"]', 'the day’s slider');
    slider.value = '20';
    slider.dispatchEvent(new Event('input', { bubbles: true }));
    flushSync();
    expect(page.bench.cursorDay).toBe(20);
    expect(point('day', 0).y).toBeCloseTo(expected(20).y, 6);
    page.press('A day later');
    expect(page.bench.cursorDay).toBe(21);
    expect(point('day', 0).y).toBeCloseTo(expected(21).y, 6);
  });

  it('tints where the rest lasts on the curve that decides it, up to where it would wake, and shows that one first', () => {
    page.clickDay(page.ribbon('lean-to', 'pelargoniums'), midWinter);
    const [low, high] = warmthCurve(numbers, pelargoniums, midWinter).domain;
    const zone = page.found('.why figure:first-of-type [data-zone="resting-cold"] rect', 'a zone of rest');
    const wakes = pelargoniums.rememberedLeaf[midWinter] + pelargoniums.marginKelvin[midWinter];
    expect(Number(zone.getAttribute('x'))).toBeCloseTo(26, 6);
    expect(Number(zone.getAttribute('width'))).toBeCloseTo((60 * (wakes - low)) / (high - low), 6);
    expect(document.querySelectorAll('.why [data-zone]')).toHaveLength(1);
    expect(page.found('.why .lead', 'the reason').textContent).toContain('wakes above');
  });

  it('of the states, tells of those that rest or stretch what would end it', () => {
    let told = 0;
    for (const lot of season.lots)
      for (let day = 0; day < 365; day += 9) {
        const { id } = plantStates[lot.state[day]];
        const words = leadWords(lot, day, { temperature: 'C', length: 'm' });
        const decides = lightCurve(planNumbers(leanToPlan, lot.groupId), lot, day).zone;
        if (id === 'growing' || id === 'slow' || id === 'resting-dry')
          expect([words, decides]).toEqual(['', null]);
        else told += words === '' ? 0 : 1;
        if (decides) expect([lightDecides(lot, day), words.includes('mol')]).toEqual([true, true]);
      }
    expect(told).toBeGreaterThan(20);
  });

  it('goes from run to run of the ribbon', () => {
    page.clickDay(page.ribbon('lean-to', 'pelargoniums'), midWinter);
    const { after } = whyRun(pelargoniums, midWinter);
    page.press(`${plantStates[after!.state].name} ›`);
    expect(page.bench.cursorDay).toBe(after!.fromDay);
    expect(page.heading()).toContain(plantStates[after!.state].name.toLowerCase());
  });

  it('says what holds it with its share, and the room on both sides, as the core judged the day', () => {
    page.clickDay(page.ribbon('lean-to', 'pelargoniums'), midWinter);
    const text = page.panel()!.textContent!.replaceAll('\u00a0', ' ');
    const share = Math.round(pelargoniums.limitingShare[midWinter] * 100);
    expect(share).toBeGreaterThan(0);
    expect(text).toContain(`(${share} % of what holds it`);
    expect(text).toContain(
      `To do better it needs ${pelargoniums.marginKelvin[midWinter].toFixed(1)} °C warmer`,
    );
    expect(text).toContain(
      `Harmed below ${pelargoniums.coldLimit[midWinter].toFixed(1).replace('-', '−')} °C at the leaf`,
    );
  });
});
