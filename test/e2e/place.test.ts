import { expect, it } from 'vitest';
import { patience, useSession } from './harness.ts';

const session = useSession();

it('a new place from nothing to a verdict: a tent with a lamp and echeverias, kept and found on the sheet', async () => {
  const { page } = session;
  await session.sheet();
  await page.getByRole('button', { name: 'Plans', exact: true }).click();
  await page.getByLabel('Name of the new plan').fill('First winter');
  await page.getByRole('button', { name: 'Begin a plan' }).click();
  await page.getByRole('heading', { level: 1, name: 'First winter', exact: true }).waitFor();
  expect(await page.getByText('These places are made up').count()).toBe(0);
  await page.getByRole('button', { name: 'Add a place' }).click();
  await page
    .getByRole('button', { name: /^(New place|Make the first place)$/ })
    .last()
    .click();
  await page.getByRole('button', { name: 'Tent in a room' }).click();
  await page.getByRole('heading', { name: 'How big is it?' }).waitFor();
  const name = page.getByLabel('Name', { exact: true });
  await name.fill('Spare-room tent');
  await name.press('Enter');
  await page.getByLabel('Judge it by').selectOption({ label: 'Echeveria' });
  const making = page.getByRole('region', { name: 'New place' });
  await making.getByText(/Echeveria.* (keep growing|grow slowly|rest|stretch)/).waitFor();

  // Twice the floor takes twice the lamp: the cost follows the tape measure, before anything is kept.
  const cost = () => making.getByRole('definition').filter({ hasText: '€' }).first().innerText();
  const small = await cost();
  const length = page.getByLabel('Length', { exact: true });
  await length.fill('160 cm');
  await length.press('Enter');
  await expect.poll(cost, { timeout: patience }).not.toBe(small);
  await page.getByRole('button', { name: 'Keep this place' }).click();

  await page.getByRole('heading', { level: 1, name: 'Spare-room tent' }).waitFor();
  await page.getByRole('button', { name: /^Undo: Add Spare-room tent/ }).waitFor();
  await session.view('Winter sheet');
  const band = session.band('Spare-room tent');
  await band
    .getByText(/Echeveria/)
    .first()
    .waitFor();
  expect(await band.getByRole('img', { name: /^Spare-room tent: Echeveria/ }).count()).toBe(1);
});

it('a plan without a place says so in every view, and nothing is called safe', async () => {
  const { page } = session;
  await session.sheet();
  await page.getByRole('button', { name: 'Plans', exact: true }).click();
  await page.getByRole('button', { name: 'Begin a plan' }).click();
  await page.getByRole('heading', { level: 1, name: 'A new winter', exact: true }).waitFor();
  for (const name of ['Tonight', 'Places', 'Lamps', 'What would it take'] as const) {
    await session.show(name);
    await page.getByText(/no place (in this plan )?yet/i).waitFor();
    expect(await page.getByText(/safe tonight/).count()).toBe(0);
  }
});

it('a wrong size is refused at its field with the range, and the place stays as it was', async () => {
  const { page } = session;
  await session.sheet();
  await session.view('Places');
  const form = page.getByRole('form', { name: 'Numbers of Lean-to on the kitchen wall' });
  const width = form.getByLabel(/^Width/).first();
  const before = await width.inputValue();
  for (const wrong of ['-2', '900', 'wide']) {
    await width.fill(wrong);
    await width.press('Enter');
    await form
      .getByRole('alert')
      .filter({ hasText: /from [\d.]+ to [\d.]+ m/ })
      .waitFor();
    expect(await width.getAttribute('aria-invalid')).toBe('true');
    await width.press('Escape');
    expect(await width.inputValue()).toBe(before);
  }
  expect(await page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true);
});

it('a place deleted says what goes with it and comes back by undo', async () => {
  const { page } = session;
  await session.sheet();
  await session.view('Places');
  await page
    .getByRole('navigation', { name: 'Places' })
    .getByRole('button', { name: 'Tunnel in the orchard' })
    .click();
  await page.getByRole('button', { name: 'Delete this place' }).click();
  await page.getByText(/Delete Tunnel in the orchard\? With it go Houseleek pans, Agaves\./).waitFor();
  await page.getByRole('button', { name: 'Delete Tunnel in the orchard' }).click();
  const tab = page
    .getByRole('navigation', { name: 'Places' })
    .getByRole('button', { name: 'Tunnel in the orchard' });
  await tab.waitFor({ state: 'detached' });
  await page.getByText('Tunnel in the orchard is deleted.').waitFor();
  // The next one can be deleted at once as well.
  await page.getByRole('button', { name: 'Delete this place' }).click();
  await page.getByRole('button', { name: 'Leave it' }).click();
  await page.getByRole('button', { name: /^Undo: Delete Tunnel/ }).click();
  await tab.waitFor();
  await session.view('Winter sheet');
  await session.band('Tunnel in the orchard').getByText('Agaves', { exact: true }).waitFor();
});
