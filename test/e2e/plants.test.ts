import { expect, it } from 'vitest';
import { patience, useSession } from './harness.ts';

const session = useSession();
const soon = { timeout: patience };
const window = 'Landing window';

const group = (name: RegExp) =>
  session.page.getByRole('navigation', { name: 'Plant groups' }).getByRole('button', { name });
const ask = (name: string) =>
  session.page.getByRole('navigation', { name: 'What to ask' }).getByRole('button', { name, exact: true });

it('a number of a group edited changes the verdict of its plants, and the catalogue’s comes back', async () => {
  const { page } = session;
  await session.sheet();
  const verdict = () =>
    session
      .band(window)
      .getByRole('img', { name: /^Landing window: / })
      .getAttribute('aria-label');
  const before = await verdict();
  await session.view('Plants');
  await page.getByLabel('Search the groups').fill('haworth');
  await group(/^Haworthia/).click();
  const standing = page.getByRole('region', { name: 'Where yours stand' });
  await standing.getByText(/Haworthias in Landing window: /).waitFor();
  const was = await standing.innerText();

  // Haworthias that would need the warmth of a hothouse rest from cold on a landing.
  const base = page.getByRole('textbox', { name: /^Growth begins at, Haworthia/ });
  const value = await base.inputValue();
  await base.fill('17');
  await base.press('Enter');
  await page.getByText('Yours.').waitFor();
  await expect.poll(() => standing.innerText(), soon).not.toBe(was);
  await session.view('Winter sheet');
  await session.settled();
  await expect.poll(verdict, soon).not.toBe(before);

  await session.view('Plants');
  await group(/^Haworthia.*your numbers/).click();
  await page.getByRole('button', { name: /^Back to .*Growth begins at/ }).click();
  await expect.poll(() => base.inputValue(), soon).toBe(value);
  await session.view('Winter sheet');
  await session.settled();
  await expect.poll(verdict, soon).toBe(before);
});

it('a group of one’s own, where it should winter, what can live in a place, and groups side by side', async () => {
  const { page } = session;
  const violations: Record<string, string[]> = {};
  const look = async (what: string) => {
    await session.settled();
    const found = await session.accessibility();
    if (found.length > 0) violations[what] = found;
  };
  await session.sheet();
  await session.view('Plants');

  // Spare echeverias stretch under the stairs; a kind that can do with next to no light does not.
  await group(/^Echeveria/).click();
  await page.getByText(/Spare echeverias in Old tent under the stairs: stretching in mid-winter/).waitFor();
  await page.getByRole('button', { name: 'See all places' }).press('Enter');
  await expect
    .poll(() => page.evaluate(() => document.activeElement?.textContent), soon)
    .toBe('Where should Echeveria spend the winter?');
  const places = page.getByRole('table').getByRole('row');
  const tent = places.filter({ hasText: 'Old tent under the stairs' });
  await tent.getByText('Poorly').waitFor();
  await ask('One plant').click();
  await page.getByRole('button', { name: 'Make a group of my own from this' }).click();
  await page.getByRole('heading', { level: 2, name: 'Echeveria, my own' }).waitFor();
  const name = page.getByRole('textbox', { name: 'Name', exact: true });
  await name.fill('Shade echeverias');
  await name.press('Enter');
  for (const [label, mol] of [
    ['Holds when cool with', '0.2'],
    ['Stays compact when warm with', '0.5'],
    ['Grows well from', '1'],
  ]) {
    const field = page.getByRole('textbox', { name: `${label}, Shade echeverias` });
    await field.fill(mol);
    await field.press('Enter');
  }
  await page.getByRole('checkbox', { name: 'Spare echeverias' }).check();
  await page.getByText(/Spare echeverias in Old tent under the stairs: growing in mid-winter/).waitFor();
  await page.getByRole('button', { name: /^Give them ?: chills below/ }).click();
  await look('own group');

  // The verdict on the tent moves with its numbers; one more is put there, one moved and moved back.
  await ask('Where should it spend the winter?').click();
  await expect.poll(() => places.count(), soon).toBe(7);
  await expect.poll(() => tent.innerText(), soon).toContain('Here: Spare echeverias');
  expect(await tent.innerText()).toMatch(/Well|With care/);
  await look('where it should winter');
  await tent.getByRole('button', { name: /^Put one here/ }).click();
  await page.getByText('Done: Put one Shade echeverias in Old tent under the stairs.').waitFor();
  await expect.poll(() => tent.innerText(), soon).toContain('Here: Spare echeverias and Shade echeverias');
  await places
    .filter({ hasText: 'Landing window' })
    .getByRole('button', { name: /^Move Spare echeverias here/ })
    .click();
  await expect
    .poll(() => places.filter({ hasText: 'Landing window' }).innerText(), soon)
    .toContain('Here: Spare echeverias');
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect.poll(() => tent.innerText(), soon).toContain('Here: Spare echeverias and Shade echeverias');

  // All groups for a place, by verdict, each a way to its sheet.
  await ask('What can live here?').click();
  await page
    .getByRole('navigation', { name: 'Places to ask about' })
    .getByRole('button', { name: /^Old tent/ })
    .click();
  const groups = page.getByRole('table').getByRole('row');
  await expect.poll(() => groups.count(), soon).toBeGreaterThan(31);
  const all = await groups.count();
  await look('what can live here');
  await page.getByRole('button', { name: /^Poorly / }).click();
  await expect.poll(() => groups.count(), soon).toBeLessThan(all);
  await groups.getByRole('button', { name: 'Shade echeverias', exact: true }).click();

  await ask('Side by side').click();
  await page.getByRole('checkbox', { name: /^Echeveria/ }).check();
  await page.getByText('Table of new growth by daily light').click();
  await look('side by side');
  await ask('One plant').click();

  // Deleted, its plants are echeverias again.
  await page.getByRole('button', { name: 'Delete this group' }).click();
  await page.getByText('Spare echeverias and Shade echeverias then belong to Echeveria again').waitFor();
  await page.getByRole('button', { name: 'Delete Shade echeverias' }).click();
  await page.getByRole('heading', { level: 2, name: 'Echeveria', exact: true }).waitFor();
  await page.getByText(/Spare echeverias in Old tent under the stairs: stretching in mid-winter/).waitFor();
  expect(violations).toEqual({});
});
