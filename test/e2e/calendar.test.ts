import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { useSession } from './harness.ts';

const session = useSession();
const leanTo = 'Lean-to on the kitchen wall';
const lot = 'Pelargoniums from cuttings';

it('a lot is carried on a day, the strip, the sheet and the calendar say so, and the calendar is taken along', async () => {
  const { page } = session;
  await session.sheet();
  const before = await session.drawing(leanTo);
  await session.view('Places');
  await page.locator('#part-plants > summary').click();
  await page.locator('#part-plants details > summary').filter({ hasText: lot }).click();
  const card = page.getByRole('group', { name: lot, exact: true });
  await card.getByRole('img', { name: `${lot}: ${leanTo} all year` }).waitFor();
  await card.getByRole('button', { name: 'Carry it elsewhere on a day' }).click();
  const day = card.getByLabel('Carried on');
  await day.fill('10 November');
  await day.press('Enter');
  await card.getByLabel('to', { exact: true }).selectOption({ label: 'Landing window' });
  await card.getByRole('img', { name: /then Landing window from 10 November to 31 July/ }).waitFor();
  await card.getByText(/Landing window is over-full/).waitFor();
  await card.getByText('Nothing carries it back', { exact: false }).waitFor();
  await session.settled();
  expect(await session.accessibility()).toEqual([]);

  await session.view('Winter sheet');
  await session.sheet();
  expect(await session.drawing(leanTo)).not.toBe(before);
  await session.band('Landing window').getByText(lot, { exact: false }).first().waitFor();

  await session.view('Calendar');
  // Where today is after the day of the move, it stands among what is past.
  const past = page.getByRole('button', { name: /^Show what is past/ });
  if (await past.isVisible()) await past.click();
  const line = page.locator('details').filter({ hasText: `Carry to Landing window: ${lot}` });
  await line.locator('summary').click();
  await line.getByText('A date of the plan.').waitFor();
  expect(await session.accessibility()).toEqual([]);
  await page.getByText('Take the calendar along').click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Write the calendar file' }).click(),
  ]);
  await page.getByText(/entries written to .*\.ics/).waitFor();
  const text = readFileSync(await download.path(), 'utf8');
  expect(text.startsWith('BEGIN:VCALENDAR')).toBe(true);
  expect(text.replaceAll(/\r\n[ \t]/g, '')).toContain(`SUMMARY:Carry to Landing window: ${lot}`);

  await line.getByRole('button', { name: /on the sheet/ }).click();
  const week = page.getByRole('region', { name: 'The week at the cursor' });
  await week.getByText(/Nov/).first().waitFor();
});

it('the calendar is read by plant, filtered, and says so where nothing is left', async () => {
  const { page } = session;
  await session.sheet();
  await session.view('Calendar');
  await page.getByRole('button', { name: 'By plant' }).click();
  await page.getByRole('img', { name: /^Haworthias: / }).waitFor();
  expect(await session.accessibility()).toEqual([]);
  const filter = page.getByRole('group', { name: 'What is shown' });
  await filter.getByLabel('Place').selectOption({ label: 'Tunnel in the orchard' });
  await page.getByRole('img', { name: /^Haworthias: / }).waitFor({ state: 'detached' });
  await page.getByRole('img', { name: /^Agaves: / }).waitFor();
  await filter.getByLabel('Group').selectOption({ label: 'Citrus in pots' });
  await page.getByText('Nothing of this kind here.').waitFor();
  expect(await page.getByText(/^No date all season/).count()).toBe(0);
  await page.getByRole('button', { name: 'Show everything' }).click();
  await page.getByRole('img', { name: /^Haworthias: / }).waitFor();
});

it('two lots are asked to flower together, and the answer says how or why not', async () => {
  const { page } = session;
  await session.sheet();
  await session.view('Calendar');
  await page.getByRole('button', { name: 'Flower together' }).click();
  const panel = page.getByRole('region', { name: 'Flower together' });
  await panel.getByLabel('Flowers of').selectOption({ label: 'Spare echeverias' });
  await panel.getByLabel('together with those of').selectOption({ label: 'Two lemons in tubs' });
  await panel.getByRole('button', { name: 'Bring them together' }).click();
  await panel.getByText('As it stands.').waitFor({ timeout: 60_000 });
  const answer = panel.getByText('No way was found.').or(panel.getByRole('button', { name: /^Try it/ }));
  await answer.first().waitFor();
  expect(await panel.getByRole('alert').count()).toBe(0);
  expect(await session.accessibility()).toEqual([]);
});
