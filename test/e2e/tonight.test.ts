import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { demonstrationPlan, heaterOf } from '../../core/index.ts';
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
  // In summer the words go on with what stands outdoors.
  await expect.poll(() => summary(page).innerText(), soon).toMatch(/^Every place is safe tonight[.,]/);

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

it('a paraffin stove says what it burns, whether its tank lasts, and what it does to the air', async () => {
  const { page } = session;
  await session.sheet();
  const stove = heaterOf({
    id: 'stove',
    name: 'Paraffin stove',
    kind: 'paraffin',
    power: 3000,
    setPointDay: 8,
    setPointNight: 8,
    tank: 2,
  });
  const places = demonstrationPlan.places.map((place) =>
    place.id === 'tunnel' ? { ...place, leakage: 0.3, heaters: [stove] } : place,
  );
  const saved = await page.evaluate(
    async (plan) => {
      const call = async (name: string, ask: unknown) =>
        (
          await fetch(`/call/${name}`, {
            method: 'POST',
            headers: { 'content-type': 'application/json' },
            body: JSON.stringify(ask),
          })
        ).json();
      const { openPlanId } = (await call('start', {})).value;
      return (await call('savePlan', { id: openPlanId, plan, words: 'Put in a stove' })).ok;
    },
    { ...demonstrationPlan, places },
  );
  expect(saved).toBe(true);
  await page.reload();
  await session.view('Tonight');
  const tunnel = page.getByRole('region', { name: 'Tunnel in the orchard' });
  await tunnel
    .getByText(/^[\d.]+\slitres tonight; a full tank of 2\.0\slitres is empty at \d\d:\d\d$/)
    .waitFor();
  await tunnel.getByText(/^The burner brings carbon dioxide to about [\d,]+ ppm tonight/).waitFor();
  const account = tunnel.getByText('Where the heat goes tonight');
  await account.click();
  await tunnel.getByText(/In and out match\.$/).waitFor();
  await tunnel.getByText(/^bench .*, floor .*, edge /).waitFor();
  expect(await session.accessibility()).toEqual([]);

  const leanTo = page.getByRole('region', { name: 'Lean-to on the kitchen wall' });
  expect(await leanTo.getByText(/carbon dioxide|litres tonight/).count()).toBe(0);
});

it('plants outdoors on a spring night have a verdict of their own, and the way to where they stand', async () => {
  const { page } = session;
  await page.clock.setFixedTime(new Date('2026-05-02T15:00Z'));
  await session.view('Tonight');
  await enter(page, 'Forecast low', '-3');
  await expect.poll(() => summary(page).innerText(), soon).toMatch(/what stands outdoors/);
  const open = page.getByRole('region', { name: 'Outdoors' });
  await open.getByText(/Harm:\s+Agave from the steps: .* bring it in before dark\./).waitFor();
  expect(await open.getByText('Heater').count()).toBe(0);
  expect(await session.accessibility()).toEqual([]);

  await open.getByRole('button', { name: 'Outdoors', exact: true }).click();
  await page.getByRole('heading', { level: 1, name: 'Outdoors' }).waitFor();
  const standing = page.getByRole('region', { name: 'Plants outdoors' });
  await standing.getByText('Agave from the steps').first().waitFor();
  await page.getByRole('columnheader', { name: 'Under cover from' }).waitFor();
  expect(await session.accessibility()).toEqual([]);
});
