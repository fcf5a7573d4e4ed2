/** A user at Winterbench: the loopback shell on a data folder of its own, and its page in a real Chromium. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type axeCore from 'axe-core';
import type { RunOptions } from 'axe-core';
import type { Browser, BrowserContext, Locator, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect } from 'vitest';
import { buildIfStale } from '../../electron/launch/build.ts';
import { startLocal } from '../../electron/local/main.ts';
import type { LocalShell } from '../../electron/local/main.ts';
import { launchBrowser } from '../support/chromium.ts';

/** The bar's views with the heading each shows on the demonstration plan. */
export const views = [
  { name: 'Winter sheet', heading: 'Winter at Tarnabeg' },
  { name: 'Calendar', heading: 'Calendar' },
  { name: 'Tonight', heading: 'Tonight' },
  { name: 'Places', heading: 'Lean-to on the kitchen wall' },
  { name: 'Lamps', heading: 'Lamps' },
  { name: 'What would it take', heading: 'What would it take?' },
  { name: 'Plants', heading: 'Plants' },
  { name: 'Site and weather', heading: 'Tarnabeg, above the lough' },
  { name: 'Light meter', heading: 'Light meter' },
] as const;

/** Longest wait for a season, a comparison or a search on a busy machine [ms]. */
export const patience = 20_000;

const readAxe = () => readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

export class Session {
  dataFolder = '';
  page!: Page;
  /** What went wrong in the page without anybody asking: errors, refused or failed requests, foreign origins. */
  readonly troubles: string[] = [];
  /** Troubles that the running test brings about on purpose. */
  #expected: RegExp | null = null;
  #browser: Browser | null = null;
  #context: BrowserContext | null = null;
  #shell: LocalShell | null = null;

  async launch(): Promise<void> {
    await buildIfStale();
    this.#browser = await launchBrowser();
  }

  /** What the page may report in the running test, which must then happen. */
  expectTrouble(pattern: RegExp): void {
    this.#expected = pattern;
  }

  /** Throws what nobody expected, and where what was expected did not come. */
  checkTroubles(): void {
    const expected = this.#expected;
    expect(this.troubles.filter((trouble) => !expected?.test(trouble))).toEqual([]);
    if (expected) expect(this.troubles).not.toEqual([]);
  }

  async open(): Promise<void> {
    this.#expected = null;
    this.dataFolder = mkdtempSync(join(tmpdir(), 'winterbench-e2e-'));
    this.troubles.length = 0;
    await this.#start();
  }

  /** Ends the shell and its page, and starts both again on the same data. */
  async restart(): Promise<void> {
    await this.#stop();
    await this.#start();
  }

  async close(): Promise<void> {
    await this.#stop();
    rmSync(this.dataFolder, { recursive: true, force: true });
  }

  async end(): Promise<void> {
    await this.#browser?.close();
  }

  async #start(): Promise<void> {
    this.#shell = await startLocal({ dataFolder: this.dataFolder });
    this.#context = await this.#browser!.newContext({
      viewport: { width: 1440, height: 900 },
      colorScheme: 'light',
    });
    this.page = await this.#context.newPage();
    this.page.setDefaultTimeout(patience);
    this.#watch(new URL(this.#shell.url).origin);
    await this.page.addInitScript(() => {
      document.addEventListener('securitypolicyviolation', (event) =>
        console.error(`content security policy: ${event.violatedDirective} ${event.blockedURI}`),
      );
    });
    await this.page.goto(this.#shell.url);
  }

  async #stop(): Promise<void> {
    await this.#context?.close();
    await this.#shell?.close();
    this.#context = this.#shell = null;
  }

  #watch(origin: string): void {
    const { page, troubles } = this;
    page.on('console', (message) => {
      if (['error', 'warning'].includes(message.type())) troubles.push(`console: ${message.text()}`);
    });
    page.on('pageerror', (error) => troubles.push(`page: ${error.message}`));
    page.on('requestfailed', (request) =>
      troubles.push(`failed: ${request.url()} (${request.failure()?.errorText})`),
    );
    page.on('request', (request) => {
      const { protocol, origin: asked } = new URL(request.url());
      if (asked !== origin && protocol !== 'data:' && protocol !== 'blob:')
        troubles.push(`another origin: ${request.url()}`);
    });
    page.on('response', (response) => {
      if (response.status() >= 400) troubles.push(`answered ${response.status()}: ${response.url()}`);
    });
  }

  /** Presses a view in the bar. */
  async show(name: (typeof views)[number]['name']): Promise<void> {
    const bar = this.page.getByRole('navigation', { name: 'Views' });
    await bar.getByRole('button', { name, exact: true }).click();
  }

  /** Presses a view in the bar and waits for its heading. */
  async view(name: (typeof views)[number]['name']): Promise<void> {
    await this.show(name);
    await this.page.getByRole('heading', { level: 1 }).first().waitFor();
  }

  /** The band of a place on the winter sheet. */
  band(place: string): Locator {
    return this.page.getByRole('region', { name: place, exact: true });
  }

  /** The picture of a place's winter: temperatures, light and ribbons. */
  async drawing(place: string): Promise<string> {
    return this.band(place)
      .getByRole('img', { name: new RegExp(`^${place}: `) })
      .innerHTML();
  }

  /** Waits until the season stands on the sheet. */
  async sheet(): Promise<void> {
    await this.page.getByRole('region', { name: 'What the marks mean' }).waitFor();
    await this.settled();
  }

  /** Waits until nothing is being worked out. */
  async settled(): Promise<void> {
    await this.page.getByText('Working it out…').waitFor({ state: 'detached' });
    await this.page.locator('[aria-busy="true"]').waitFor({ state: 'detached' });
  }

  /** What a season costs on the sheet, as it is written there. */
  async total(): Promise<string> {
    const line = await this.page
      .getByText(/a season, .* of electricity$/)
      .locator('..')
      .innerText();
    return line.split('\n')[0].trim();
  }

  async theme(look: 'Day' | 'Night'): Promise<void> {
    await this.page.getByRole('button', { name: 'Settings' }).click();
    await this.page.getByLabel('Look').selectOption({ label: look });
    await this.page.keyboard.press('Escape');
    await this.page.waitForFunction(
      (theme) => document.documentElement.dataset.theme === theme,
      look === 'Day' ? 'light' : 'dark',
    );
  }

  /** Every violation axe finds on the page, one line an element. */
  async accessibility(options: RunOptions = {}): Promise<string[]> {
    await this.page.evaluate(readAxe());
    const found = await this.page.evaluate(async (given) => {
      const { axe } = window as unknown as { axe: typeof axeCore };
      // `preload` would fetch style sheets again; all of them are on the page already.
      return (await axe.run(document, { preload: false, ...given })).violations;
    }, options);
    return found.flatMap(({ id, help, nodes }) =>
      nodes.map(({ target, failureSummary }) => `${id}: ${help}: ${target} ${failureSummary ?? ''}`),
    );
  }
}

/** A session for a file: one browser, and for each test a first start on an empty folder. Any trouble fails the test. */
export function useSession(): Session {
  const session = new Session();
  beforeAll(() => session.launch());
  afterAll(() => session.end());
  beforeEach(() => session.open());
  afterEach(async () => {
    await session.close();
    session.checkTroubles();
  });
  return session;
}
