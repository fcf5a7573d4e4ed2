import { expect, it } from 'vitest';
import { patience, useSession } from './harness.ts';

const session = useSession();
const soon = { timeout: patience };
const leanTo = 'Lean-to on the kitchen wall';

it('a click on a ribbon says why, with nothing that axe finds, and the day moves on its curves', async () => {
  const { page } = session;
  await session.sheet();
  const ribbon = session.band(leanTo).locator('[data-lot="pelargoniums"] .reach');
  const box = (await ribbon.boundingBox())!;
  await page.mouse.click(box.x + box.width * 0.45, box.y + box.height / 2);
  const why = page.getByRole('region', { name: /^Resting from cold Pelargoniums from cuttings: / });
  await why.waitFor(soon);
  const words = await why.innerText();
  expect(words).toMatch(/resting from cold, \d+ \w+ to \d+ \w+/);
  expect(words).toMatch(/Began\s+Mean of day and night [−\d.]+\s°C, below [\d.]+\s°C/);
  expect(words).toMatch(/To do better it needs [\d.]+\s°C warmer/);
  const curve = why.getByRole('img', { name: /^Growth by warmth/ });
  const at = () => curve.locator('[data-point="day"]').getAttribute('transform');
  const before = await at();
  await why.getByRole('slider', { name: 'Day on the curves' }).press('ArrowRight');
  await expect.poll(at, soon).not.toBe(before);
  expect(await session.accessibility()).toEqual([]);
  await session.theme('Night');
  expect(await session.accessibility()).toEqual([]);
});

it('by the keys alone: Tab to a lot’s row, Enter, from run to run, Esc back to the row', async () => {
  const { page } = session;
  await session.sheet();
  const row = session
    .band(leanTo)
    .getByRole('button', { name: `Pelargoniums from cuttings: why in ${leanTo}` });
  await page.getByRole('button', { name: leanTo, exact: true }).focus();
  for (let stop = 0; stop < 8; stop += 1) {
    await page.keyboard.press('Tab');
    if (await row.evaluate((element) => element === document.activeElement)) break;
  }
  await page.keyboard.press('Enter');
  const heading = page.getByRole('heading', { name: /Pelargoniums from cuttings: / });
  await heading.waitFor(soon);
  const first = await heading.innerText();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect.poll(() => heading.innerText(), soon).not.toBe(first);
  await page.keyboard.press('Escape');
  await heading.waitFor({ state: 'detached', ...soon });
  expect(await row.evaluate((element) => element === document.activeElement)).toBe(true);
});

it('plants that are carried stand in the band of the open air, with their own table', async () => {
  const { page } = session;
  await session.sheet();
  const open = session.band('Outdoors');
  await open.getByRole('button', { name: 'Outdoors: figures as a table' }).click();
  const table = page.getByRole('dialog', { name: 'Outdoors, week by week' });
  await table
    .getByText(/^in Lean-to on the kitchen wall$/)
    .first()
    .waitFor(soon);
  expect(await session.accessibility()).toEqual([]);
});
