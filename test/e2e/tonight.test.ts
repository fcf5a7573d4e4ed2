import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { demonstrationPlan } from '../../core/index.ts';
import { patience, useSession } from './harness.ts';

const session = useSession();
const soon = { timeout: patience };

const enter = async (page: Page, label: string, text: string) => {
  await page.getByLabel(label, { exact: true }).fill(text);
  await page.getByLabel(label, { exact: true }).press('Enter');
};

const summary = (page: Page) => page.getByRole('status').filter({ hasText: /tonight/ });

it('from opening to an answer: three figures of the forecast, a verdict a place, and it is remembered', async () => {
  const { page } = session;
  await session.view('Tonight');
  await page.getByText('A usual cold night here, to begin with.').waitFor();
  for (const place of demonstrationPlan.places) {
    const region = page.getByRole('region', { name: place.name });
    await region.getByText(/^Coldest inside$/).waitFor();
    expect(await region.getByRole('img').count()).toBe(1);
  }

  await enter(page, 'At dusk', '9');
  await enter(page, 'Forecast low', '7');
  await page.getByLabel('Overcast').check();
  await expect.poll(() => summary(page).innerText(), soon).toBe('Every place is safe tonight.');

  await enter(page, 'At dusk', '32F');
  await enter(page, 'Forecast low', '−18');
  await page.getByLabel('Clear', { exact: true }).check();
  await expect
    .poll(() => summary(page).innerText(), soon)
    .toMatch(/^In danger tonight: .*Tunnel in the orchard/);
  expect(await page.getByLabel('At dusk', { exact: true }).inputValue()).toBe('0');
  const tunnel = page.getByRole('region', { name: 'Tunnel in the orchard' });
  await tunnel.getByText('Harm:').waitFor({ state: 'attached' });

  // Long enough for the forecast to be kept; then the shell starts anew.
  await page.waitForResponse((response) => response.url().endsWith('/call/rememberNight'));
  await session.restart();
  await session.view('Tonight');
  expect(await session.page.getByLabel('Forecast low', { exact: true }).inputValue()).toBe('-18');
  await session.page.getByText('As you left it earlier today.').waitFor();
});

it('a low above the temperature at dusk is refused in words, and a figure that is none at its field', async () => {
  const { page } = session;
  await session.view('Tonight');
  await summary(page).waitFor();
  await enter(page, 'Forecast low', '20');
  await page
    .getByRole('alert')
    .filter({ hasText: 'The forecast low is above the temperature at dusk.' })
    .waitFor();
  await enter(page, 'Forecast low', 'frosty');
  await page
    .getByRole('alert')
    .filter({ hasText: /“frosty”|frosty/ })
    .waitFor();
});
