import { expect, it } from 'vitest';
import { useSession, views } from './harness.ts';

const session = useSession();

for (const look of ['Day', 'Night'] as const) {
  it(`axe finds nothing in any view by ${look.toLowerCase()}`, async () => {
    const { page } = session;
    await session.sheet();
    await session.theme(look);
    const found: Record<string, string[]> = {};
    for (const { name, heading } of views) {
      await session.view(name);
      await page.getByRole('heading', { level: 1, name: heading, exact: true }).waitFor();
      await session.settled();
      const violations = await session.accessibility();
      if (violations.length > 0) found[name] = violations;
    }
    expect(found).toEqual({});
  });
}

it('axe finds nothing where a change is tried, a working or a table is open, a place is made, ways stand', async () => {
  const { page } = session;
  const found: Record<string, string[]> = {};
  const look = async (what: string) => {
    await session.settled();
    const violations = await session.accessibility();
    if (violations.length > 0) found[what] = violations;
  };
  await session.sheet();
  await page.getByRole('slider', { name: 'Heater set to, by night' }).focus();
  await page.keyboard.press('ArrowRight');
  await page.getByRole('region', { name: 'What the change does' }).waitFor();
  await look('trial');
  await page.getByRole('button', { name: 'Drop', exact: true }).click();
  await page.getByRole('button', { name: 'Show the working of the inside temperature' }).click();
  await look('working');
  await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click();
  await page.getByRole('button', { name: 'Lean-to on the kitchen wall: figures as a table' }).click();
  await look('table');
  await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click();
  await session.view('Places');
  await page.getByRole('button', { name: 'New place' }).click();
  await look('kinds of place');
  await page.getByRole('button', { name: 'Tent in a room' }).click();
  await look('new place');
  await page.getByRole('button', { name: 'Drop it' }).click();
  const groups = page.getByRole('form').locator('summary');
  for (const group of (await groups.all()).slice(1)) await group.click();
  await look('every group of the form');
  await session.view('What would it take');
  await page.getByLabel('Which plants').selectOption({ label: 'Spare echeverias' });
  await page.getByRole('button', { name: 'Find the ways' }).click();
  await page
    .getByRole('button', { name: /^Try on the sheet/ })
    .first()
    .waitFor();
  await page.getByRole('button', { name: 'Find the ways' }).waitFor();
  await look('ways');
  expect(found).toEqual({});
});
