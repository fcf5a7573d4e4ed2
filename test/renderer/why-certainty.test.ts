/** How sure the sheet is: words and marks of samples made up, and when the samples are drawn. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { plantStates } from '../../core/index.ts';
import type { Certainty, LotCertainty, Plan } from '../../core/index.ts';
import { fringe, fringeDepth } from '../../renderer/marks/fringe.ts';
import { certaintyWords, sampledWords } from '../../renderer/sheet/certainty-words.ts';
import { CertaintyDesk, quietBefore } from '../../renderer/sheet/certainty.svelte.ts';
import type { Bench } from '../../renderer/state/bench.svelte.ts';
import { openSheet } from './why/sheet-page.ts';

const weeks = 53;
const code = (id: string) => plantStates.findIndex((state) => state.id === id);
const flat = (value: number) => new Float64Array(weeks).fill(value);

/** Samples of one lot, alike in every week: states by id with their shares. */
function certainty(shares: Record<string, number>, shown: string, halfWidth = 0.04, lotId = 'a'): Certainty {
  const all = new Float64Array(weeks * plantStates.length);
  for (const [id, share] of Object.entries(shares))
    for (let week = 0; week < weeks; week += 1) all[week * plantStates.length + code(id)] = share;
  const lot: LotCertainty = {
    lotId,
    winters: 48,
    shares: all,
    agree: flat(shares[shown] ?? 0),
    halfWidth: flat(halfWidth),
    agreeByWinter: flat(0.93),
    agreeByThreshold: flat(0.89),
    harm: { frost: 0, chill: 0, heat: 0, scorch: 0, wetCold: 0, decline: 0 },
    restBegins: null,
    restsAtAll: 1,
  } as LotCertainty;
  return { winters: 48, draws: 8, halfWidth, enough: true, origin: 'drawn from the climate', lots: [lot] };
}
const usual = (shares: Record<string, number>, shown: string, halfWidth?: number) =>
  certaintyWords(certainty(shares, shown, halfWidth), 'a', 20, code(shown))?.usual ?? null;

describe('the words of certainty', () => {
  it('say how often, to what, and what it is otherwise', () => {
    expect(usual({ 'resting-cold': 0.87, slow: 0.08, growing: 0.05 }, 'resting-cold')).toBe(
      'So in 87 of 100 winters (±4); otherwise mostly slow.',
    );
    expect(usual({ growing: 0.9, slow: 0.1 }, 'growing')).toBe(
      'So in 90 of 100 winters (±4); otherwise slow.',
    );
    expect(usual({ growing: 1 }, 'growing', 0.002)).toBe('So in 100 of 100 winters (±1).');
  });

  it('say it where another state is the more usual', () => {
    expect(usual({ growing: 0.35, slow: 0.52, stretching: 0.13 }, 'growing', 0.05)).toBe(
      'So in 35 of 100 winters (±5); more often slow, in 52.',
    );
  });

  it('give winters and thresholds a part each', () => {
    expect(certaintyWords(certainty({ slow: 1 }, 'slow'), 'a', 0, code('slow'))?.parts).toBe(
      'If only the weather varied, in 93; if only the plant’s thresholds, in 89.',
    );
    expect(sampledWords(certainty({ slow: 1 }, 'slow'), false)).toBe(
      'the deeper, the more often (48 winters drawn from the climate, thresholds drawn 8 times in each, to ±4 in 100)',
    );
    expect(sampledWords({ ...certainty({ slow: 1 }, 'slow', 0.4), winters: 1 }, true)).toBe(
      'being worked out, 1 winter so far',
    );
  });

  it('say nothing of a lot without samples, nor where there are too few', () => {
    expect(certaintyWords(certainty({ slow: 1 }, 'slow'), 'b', 0, code('slow'))).toBe(null);
    expect(usual({ slow: 1 }, 'slow', 0.4)).toBe(null);
  });
});

describe('the fringe', () => {
  const sure = { agree: flat(1), halfWidth: flat(0.04) };
  const depths = (path: string) => [...path.matchAll(/V([\d.]+)/g)].map(([, depth]) => Number(depth));

  it('is as deep as samples disagree, and none where they agree, nearly agree or are few', () => {
    const agree = flat(1);
    [agree[3], agree[4], agree[5], agree[6]] = [0.5, 0, 0.97, 0.2];
    const halfWidth = flat(0.04);
    halfWidth[6] = 0.4;
    expect(depths(fringe({ agree, halfWidth }, 520, null))).toEqual([fringeDepth / 2, fringeDepth]);
    expect(fringe(sure, 520, null)).toBe('');
  });

  it('hangs only under weeks in which the lot stands there', () => {
    const agree = flat(0.5);
    expect(depths(fringe({ ...sure, agree }, 520, [{ from: 70, to: 90 }]))).toHaveLength(3);
  });
});

describe('the drawing of winters', () => {
  const [one, other] = [{ name: 'one' } as Plan, { name: 'other' } as Plan];
  let asked: {
    plan: Plan;
    grow: (c: Certainty) => void;
    signal: AbortSignal;
    answer: (c: Certainty) => void;
  }[];
  let desk: CertaintyDesk;
  beforeEach(() => {
    vi.useFakeTimers();
    asked = [];
    desk = new CertaintyDesk(
      ((plan: Plan, grow: (c: Certainty) => void, signal: AbortSignal) =>
        new Promise<Certainty>((answer, refuse) => {
          signal.addEventListener('abort', () => refuse(signal.reason));
          asked.push({ plan, grow, signal, answer });
        })) as Bench['engine']['certainty'],
    );
  });
  afterEach(() => vi.useRealTimers());

  it('begins when the bench has been quiet for long enough, and not while something is tried', async () => {
    desk.watch(one, false);
    await vi.advanceTimersByTimeAsync(10 * quietBefore);
    expect(asked).toHaveLength(0);
    desk.watch(one, true);
    await vi.advanceTimersByTimeAsync(quietBefore - 1);
    desk.watch(other, true);
    await vi.advanceTimersByTimeAsync(quietBefore - 1);
    expect(asked).toHaveLength(0);
    await vi.advanceTimersByTimeAsync(1);
    expect(asked.map(({ plan }) => plan)).toEqual([other]);
  });

  it('shows each piece, stops at any change, and is grey until what it says is of the plan shown', async () => {
    const [first, second] = [certainty({ slow: 1 }, 'slow'), certainty({ slow: 0.9 }, 'slow')];
    desk.watch(one, true);
    await vi.advanceTimersByTimeAsync(quietBefore);
    asked[0].grow(first);
    expect([desk.result, desk.stale, desk.growing]).toEqual([first, false, true]);
    desk.watch(other, false);
    expect([asked[0].signal.aborted, desk.stale, desk.growing]).toEqual([true, true, false]);
    asked[0].grow(second);
    expect(desk.result).toBe(first);
    desk.watch(other, true);
    await vi.advanceTimersByTimeAsync(quietBefore);
    desk.watch(other, true);
    expect([desk.stale, asked.length]).toEqual([true, 2]);
    asked[1].answer(second);
    await vi.advanceTimersByTimeAsync(0);
    expect([desk.result, desk.stale, desk.growing, desk.failure]).toEqual([second, false, false, '']);
  });

  it('holds again what it knew when a change is dropped, without drawing anew', async () => {
    desk.watch(one, true);
    await vi.advanceTimersByTimeAsync(quietBefore);
    asked[0].answer(certainty({ slow: 1 }, 'slow'));
    await vi.advanceTimersByTimeAsync(0);
    desk.watch(other, false);
    expect(desk.stale).toBe(true);
    desk.watch(one, true);
    expect(desk.stale).toBe(false);
    await vi.advanceTimersByTimeAsync(10 * quietBefore);
    expect(asked).toHaveLength(1);
  });

  it('says why where it fails, and does not ask again by itself', async () => {
    const failing = new CertaintyDesk((() =>
      Promise.reject(new Error('No winter to be had.'))) as Bench['engine']['certainty']);
    failing.watch(one, true);
    await vi.advanceTimersByTimeAsync(quietBefore);
    expect([failing.failure, failing.growing]).toEqual(['No winter to be had.', false]);
  });
});

describe('the sheet', () => {
  it('asks for winters by itself, says on the card how sure it is, greys it while a change is tried', async () => {
    const page = await openSheet();
    await new Promise((done) => setTimeout(done, quietBefore + 100));
    expect(page.asked.map(({ plan }) => plan)).toEqual([page.bench.shown]);
    page.asked[0].grow(certainty({ 'resting-cold': 0.87, slow: 0.13 }, 'resting-cold', 0.04, 'pelargoniums'));
    await new Promise((done) => setTimeout(done));
    const line = () => page.found('.sure', 'a line of certainty');
    expect(line().textContent).toContain('So in 87 of 100 winters (±4); otherwise slow.');
    expect(page.ribbon('lean-to', 'pelargoniums').querySelector('.fringe')).not.toBe(null);
    page.bench.tryPlan('Warmer', { ...page.bench.plan, name: 'Warmer' });
    await new Promise((done) => setTimeout(done));
    expect(page.asked[0].signal.aborted).toBe(true);
    expect([line().classList.contains('stale'), line().textContent?.includes('before the change')]).toEqual([
      true,
      true,
    ]);
    await page.close();
  });
});
