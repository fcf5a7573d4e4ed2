import { expect, it } from 'vitest';
import { useSession } from './harness.ts';

const session = useSession();

it('a wish gets ranked ways; the first of them tried on the sheet grants it, and Drop takes it back', async () => {
  const { page } = session;
  await session.sheet();
  const cost = await session.total();
  await session.view('What would it take');
  await page.getByLabel('What you want').selectOption({ label: 'keep growing' });
  await page.getByLabel('Which plants').selectOption({ label: 'Spare echeverias' });
  await page.getByRole('button', { name: 'Find the ways' }).click();
  await page.getByRole('heading', { name: /ways to it, cheapest first|One way to it/ }).waitFor();
  await page.getByRole('button', { name: 'Find the ways' }).waitFor();

  const ways = page
    .getByRole('listitem')
    .filter({ has: page.getByRole('button', { name: /^Try on the sheet/ }) });
  expect(await ways.count()).toBeGreaterThan(1);
  const reaching = ways.filter({ hasNotText: 'Does not reach it.' });
  const costs = await reaching.evaluateAll((rows) =>
    rows.map((row) => {
      const [first] = row.querySelectorAll('dl dt');
      const amount = Number(row.querySelector('dl dd')!.textContent!.replace(/[^\d.]/g, ''));
      return first.textContent!.startsWith('Saved') ? -amount : amount;
    }),
  );
  expect(costs.length).toBeGreaterThan(0);
  expect(costs).toEqual([...costs].sort((a, b) => a - b));
  const words = await reaching.first().getByRole('heading').innerText();

  await reaching
    .first()
    .getByRole('button', { name: /^Try on the sheet/ })
    .click();
  const strip = page.getByRole('region', { name: 'What the change does' });
  await strip.getByText(words).waitFor();
  await session.sheet();
  await strip.getByText('Spare echeverias').waitFor();
  expect(await session.total()).not.toBe(cost);
  await strip.getByRole('button', { name: 'Drop' }).click();
  await session.settled();
  await expect.poll(() => session.total()).toBe(cost);
});
