/** The site card in words and on its strip of days, and when it is asked for. */
import { describe, expect, it, vi } from 'vitest';
import { demonstrationPlan } from '../../core/index.ts';
import type { Plan, SiteCard } from '../../core/index.ts';
import { siteCardDesk } from '../../renderer/place/site/site-card.svelte.ts';
import {
  dayAt,
  frostMarks,
  frostStretches,
  monthAt,
  monthOrder,
} from '../../renderer/place/site/site-card-view.ts';
import { frostWords, hardinessWords, originWords } from '../../renderer/place/site/site-card-words.ts';
import type { Bench } from '../../renderer/state/bench.svelte.ts';

const card: SiteCard = {
  years: 30,
  origin: 'drawn from the climate',
  frostHollow: 0,
  meanMinimum: -6.2,
  tenthMinimum: -9.6,
  zone: '8b',
  rating: 'H4',
  firstFrost: { median: '11-09', oneInTen: '10-22' },
  lastFrost: { median: '04-16', oneInTen: '05-04' },
  frostFreeDays: 206.4,
  frostDays: 39,
  hotDays: 0,
  growingDegrees5: 1750,
  growingDegrees10: 610,
  chillHours: 2510,
  months: Array.from({ length: 12 }, () => ({ least: 2, most: 9, dayLength: 12, light: 10 })),
  winter: { from: '10-01', to: '03-31', words: 'October to March' },
};
const never = { median: null, oneInTen: null };
const south: SiteCard = {
  ...card,
  firstFrost: { median: '05-09', oneInTen: '04-22' },
  lastFrost: { median: '10-16', oneInTen: '11-04' },
  winter: { from: '04-01', to: '09-30', words: 'April to September' },
};

describe('the year of a card', () => {
  it('runs from three months before its winter, north and south', () => {
    expect(monthOrder(card)).toEqual([6, 7, 8, 9, 10, 11, 0, 1, 2, 3, 4, 5]);
    expect(monthOrder(south)).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11]);
    expect([dayAt(card, '07-01'), dayAt(card, '06-30'), dayAt(south, '01-01')]).toEqual([0, 364, 0]);
    const starts = Array.from({ length: 13 }, (_, index) => monthAt(card, index));
    expect(starts).toEqual([0, 31, 62, 92, 123, 153, 184, 215, 243, 274, 304, 335, 365]);
  });

  it('has frost between the middle years and, in some, before and after', () => {
    expect(frostStretches(card)).toEqual([
      { kind: 'some', from: 113, to: 131 },
      { kind: 'usual', from: 131, to: 289 },
      { kind: 'some', from: 289, to: 307 },
    ]);
    expect(frostMarks(card).map(({ id, day, rare }) => [id, day, rare])).toEqual([
      ['first-rare', 113, true],
      ['first', 131, false],
      ['last', 289, false],
      ['last-rare', 307, true],
    ]);
    for (const { from, to } of frostStretches(south)) expect(to).toBeGreaterThan(from);
  });

  it('where only one year in ten has frost there is no usual stretch, and none where there is none', () => {
    const rare = {
      ...card,
      firstFrost: { median: null, oneInTen: '12-20' },
      lastFrost: { median: null, oneInTen: '02-10' },
    };
    expect(frostStretches(rare)).toEqual([{ kind: 'some', from: 172, to: 224 }]);
    expect(frostMarks(rare).map(({ id }) => id)).toEqual(['first-rare', 'last-rare']);
    expect(frostStretches({ ...card, firstFrost: never, lastFrost: never })).toEqual([]);
  });

  it('a stretch over the end of the drawn year is drawn in two', () => {
    const polar = { ...card, lastFrost: { median: '06-20', oneInTen: '07-08' } };
    expect(frostStretches(polar).slice(2)).toEqual([
      { kind: 'some', from: 354, to: 365 },
      { kind: 'some', from: 0, to: 7 },
    ]);
  });
});

describe('the card in words', () => {
  const day = (monthDay: string) => `<${monthDay}>`;
  const celsius = (value: number) => `${value.toFixed(0)} °C`;

  it('says first and last frost with one year in ten, or that there is none', () => {
    expect(frostWords(card, day)).toBe(
      'First frost about <11-09>, in one year of ten by <10-22>. Last frost about <04-16>, in one year of ten as late as <05-04>. 206 days between them are free of frost.',
    );
    expect(frostWords({ ...card, firstFrost: never, lastFrost: never }, day)).toBe(
      'No frost in the years looked at.',
    );
    expect(
      frostWords(
        {
          ...card,
          firstFrost: { median: null, oneInTen: '12-20' },
          lastFrost: { median: null, oneInTen: '02-10' },
        },
        day,
      ),
    ).toBe('Most years have no frost. In one of ten it comes from <12-20> on and may last until <02-10>.');
    expect(frostWords({ ...card, frostFreeDays: 3 }, day)).toBe('Frost may come in any month.');
  });

  it('says what the rating is for, in the units asked for', () => {
    expect(hardinessWords(card, celsius)).toBe(
      'One winter in ten is colder than about -10 °C. To stand the other nine outdoors takes plants hardy in an average winter: rating H4 or hardier.',
    );
    expect(hardinessWords({ ...card, tenthMinimum: 17, rating: 'H1a' }, celsius)).toBe(
      'One winter in ten is colder than about 17 °C. Even plants of a warm house stand the other nine outdoors.',
    );
    expect(hardinessWords(card, (value) => `${(value * 1.8 + 32).toFixed(0)} °F`)).toContain('15 °F');
  });

  it('says where it comes from, with the hollow where there is one', () => {
    expect(originWords(card, celsius)).toBe('From 30 years drawn from the climate.');
    expect(originWords({ ...card, frostHollow: 2 }, celsius)).toBe(
      'From 30 years drawn from the climate, with clear still nights up to 2 °C below the weather station’s.',
    );
    expect(originWords({ ...card, frostHollow: -1 }, celsius)).toContain('1 °C above');
  });
});

/** A bench whose engine answers when told to. */
function benchOf() {
  const asked: {
    plan: Plan;
    signal?: AbortSignal;
    settle: (card: SiteCard) => void;
    refuse: (error: unknown) => void;
  }[] = [];
  const siteCard = vi.fn(
    (plan: Plan, signal?: AbortSignal) =>
      new Promise<SiteCard>((settle, refuse) => {
        signal?.addEventListener('abort', () => refuse(signal.reason));
        asked.push({ plan, signal, settle, refuse });
      }),
  );
  return { bench: { engine: { siteCard } } as unknown as Bench, asked };
}

describe('the desk of the card', () => {
  const elsewhere = { ...demonstrationPlan, site: { ...demonstrationPlan.site, latitude: 10 } };

  it('asks once for a site and climate, whatever else of the plan changes', async () => {
    const { bench, asked } = benchOf();
    const desk = siteCardDesk(bench);
    expect(siteCardDesk(bench)).toBe(desk);
    const first = desk.want(demonstrationPlan);
    void desk.want({ ...demonstrationPlan, name: 'Renamed', lots: [] });
    expect(asked).toHaveLength(1);
    expect(desk.running).toBe(true);
    asked[0].settle(card);
    await first;
    expect([desk.running, desk.card]).toEqual([false, card]);
    void desk.want({ ...demonstrationPlan, site: { ...demonstrationPlan.site, name: 'Same ground' } });
    expect(asked).toHaveLength(1);
  });

  it('drops an older question when the site changes, and keeps the old card until the new one is there', async () => {
    const { bench, asked } = benchOf();
    const desk = siteCardDesk(bench);
    const first = desk.want(demonstrationPlan);
    asked[0].settle(card);
    await first;
    const second = desk.want(elsewhere);
    const third = desk.want({ ...elsewhere, site: { ...elsewhere.site, frostHollow: 3 } });
    expect(asked[1].signal?.aborted).toBe(true);
    await second;
    expect([desk.card, desk.running, desk.error]).toEqual([card, true, null]);
    asked[2].settle(south);
    await third;
    expect([desk.card, desk.running]).toEqual([south, false]);
  });

  it('says what went wrong and asks again at the next look', async () => {
    const { bench, asked } = benchOf();
    const desk = siteCardDesk(bench);
    const first = desk.want(demonstrationPlan);
    asked[0].refuse(new Error('no weather'));
    await first;
    expect([desk.error, desk.running]).toEqual(['no weather', false]);
    void desk.want(demonstrationPlan);
    expect(asked).toHaveLength(2);
    expect(desk.error).toBeNull();
  });
});
