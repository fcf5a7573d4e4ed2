import { expect, it } from 'vitest';
import { patience, useSession } from './harness.ts';

const session = useSession();
const soon = { timeout: patience };
const window = 'Landing window';

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
  await page
    .getByRole('navigation', { name: 'Plant groups' })
    .getByRole('button', { name: /^Haworthia/ })
    .click();
  await page.getByText(/Haworthias in Landing window: /).waitFor();
  const standing = page.getByRole('region', { name: 'Where yours stand' });
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
  await page
    .getByRole('navigation', { name: 'Plant groups' })
    .getByRole('button', { name: /^Haworthia.*your numbers/ })
    .click();
  await page.getByRole('button', { name: /^Back to .*Growth begins at/ }).click();
  await expect.poll(() => base.inputValue(), soon).toBe(value);
  await session.view('Winter sheet');
  await session.settled();
  await expect.poll(verdict, soon).toBe(before);
});
