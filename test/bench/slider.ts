/**
 * How long it takes from moving a slider to the sheet painted with the new season: the lamp-hours slider of the
 * bright tent in "Try a change", in Chromium against the loopback shell with a store of its own. The sheet tells
 * of each painted season by the window event `winterbench:painted`.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { buildIfStale } from '../../electron/launch/build.ts';
import { startLocal } from '../../electron/local/main.ts';
import { launchBrowser } from '../support/chromium.ts';
import { percentile } from './figures.ts';
import type { Figure } from './figures.ts';

const warmUps = 6;
const sweeps = 3;

/** Lamp hours of a sweep: 1 h to 18.5 h by half hours, each once, eleven places further each time. */
const movesASweep = 36;

/** Rest between two moves, so that nothing of the last one is still under way [ms]. */
const pause = 120;

/** A move that is not painted after this is a fault, not a slow one [ms]. */
const givenUpAfter = 10_000;

/** Most that 19 of 20 moves may take, the p95 [ms]: a drag still feels followed (a tenth of a second is felt as at once: Card, Moran & Newell 1983, from memory). */
const target = 100;

/** The figures, or why they could not be measured. */
export async function sliderFigures(): Promise<Figure[] | string> {
  await buildIfStale();
  const browser = await launchBrowser().catch((error: Error) => error);
  if (browser instanceof Error) return `no Chromium: ${browser.message.split('\n')[0]}`;
  const dataFolder = mkdtempSync(join(tmpdir(), 'winterbench-bench-'));
  try {
    const times = await timesInShell(browser, dataFolder);
    return [
      { name: 'Slider to painted sheet, p50', value: percentile(times, 0.5), unit: 'ms', target: null },
      { name: 'Slider to painted sheet, p95', value: percentile(times, 0.95), unit: 'ms', target },
    ];
  } finally {
    await browser.close();
    rmSync(dataFolder, { recursive: true, force: true });
  }
}

async function timesInShell(browser: Browser, dataFolder: string): Promise<number[]> {
  const shell = await startLocal({ dataFolder });
  try {
    const window = await browser.newPage({ viewport: { width: 1280, height: 900 } });
    await window.goto(shell.url);
    return await timesOf(window);
  } finally {
    await shell.close();
  }
}

async function timesOf(window: Page): Promise<number[]> {
  await settled(window);
  const levers = window.getByRole('region', { name: 'Try a change' });
  await levers.getByRole('combobox').first().selectOption('bright-tent');
  const hours = levers.getByRole('slider', { name: /lamp hours/i }).first();
  const power = levers.getByRole('slider', { name: /lamp power/i }).first();
  await hours.waitFor();
  const times: number[] = [];
  for (let sweep = 0; sweep < sweeps; sweep++) {
    // Another lamp power, not timed, so that none of the seasons of this sweep is there already.
    await power.evaluate(moveAndWait, { value: String(60 + sweep), givenUpAfter });
    for (let move = 0; move < movesASweep; move++) {
      await window.waitForTimeout(pause);
      const value = String(1 + ((move * 11) % movesASweep) * 0.5);
      const time = await hours.evaluate(moveAndWait, { value, givenUpAfter });
      if (sweep > 0 || move >= warmUps) times.push(time);
    }
  }
  return times;
}

/** Waits until the first season stands and the engine has nothing to do for a while. */
async function settled(window: Page): Promise<void> {
  await window.waitForFunction(() => performance.getEntriesByName('sheet-painted').length > 0);
  await window.waitForTimeout(1500);
}

/** In the page: moves the slider and gives the time until the season it asked for is painted [ms]. */
function moveAndWait(
  input: Element,
  { value, givenUpAfter }: { value: string; givenUpAfter: number },
): Promise<number> {
  return new Promise((resolve, reject) => {
    const start = performance.now();
    const late = setTimeout(
      () =>
        reject(
          new Error(`expected a painted sheet within ${givenUpAfter} ms of lamp hours ${value}, got none`),
        ),
      givenUpAfter,
    );
    const painted = (event: Event) => {
      if (!(event as CustomEvent<{ settled: boolean }>).detail.settled) return;
      clearTimeout(late);
      removeEventListener('winterbench:painted', painted);
      resolve(performance.now() - start);
    };
    addEventListener('winterbench:painted', painted);
    (input as HTMLInputElement).value = value;
    input.dispatchEvent(new Event('input', { bubbles: true }));
  });
}
