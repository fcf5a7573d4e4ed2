import { expect, it } from 'vitest';
import { patience, useSession, views } from './harness.ts';

const session = useSession();

it('the number keys open the nine views, the arrows move over the sheet, and ? names the keys', async () => {
  const { page } = session;
  await session.sheet();
  for (const [index, { name, heading }] of [...views.entries()].reverse()) {
    await page.keyboard.press(String(index + 1));
    await page.getByRole('heading', { level: 1, name: heading, exact: true }).waitFor();
    expect(await page.locator('nav[aria-label="Views"] [aria-current="page"]').innerText()).toBe(name);
  }
  const week = page.getByRole('region', { name: 'The week at the cursor' });
  const dates = await week.locator('strong').first().innerText();
  await page.keyboard.press('ArrowRight');
  expect(await week.locator('strong').first().innerText()).not.toBe(dates);
  await page.keyboard.press('ArrowLeft');
  expect(await week.locator('strong').first().innerText()).toBe(dates);
  await page.keyboard.press('ArrowDown');
  await week.getByRole('heading', { name: 'Tunnel in the orchard' }).waitFor();
  for (let down = 0; down < 5; down += 1) await page.keyboard.press('ArrowDown');
  await week.getByRole('heading', { name: 'Outdoors' }).waitFor();
  // The levers stay those of the last place.
  const levers = page.getByRole('region', { name: 'Try a change' });
  expect(await levers.getByRole('combobox').first().inputValue()).toBe('window');
  await page.keyboard.press('?');
  const help = page.getByRole('dialog', { name: 'Keys' });
  await help.getByText('Drop the change being tried, or close a window').waitFor();
  await page.keyboard.press('Escape');
  await help.waitFor({ state: 'hidden' });
});

it('Tab reaches every button of the bar and the levers, and the focus can be seen on each stop', async () => {
  const { page } = session;
  await session.sheet();
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  const reached = new Set<string>();
  const unseen: string[] = [];
  for (let stop = 0; stop < 50; stop += 1) {
    await page.keyboard.press('Tab');
    const at = await page.evaluate(() => {
      const element = document.activeElement;
      if (!element || element === document.body) return null;
      const { outlineStyle, outlineWidth } = getComputedStyle(element);
      const labels = (element as HTMLInputElement).labels;
      const words =
        element.getAttribute('aria-label') ?? labels?.[0]?.textContent ?? element.textContent ?? '';
      return {
        words: words.trim().split('\n')[0],
        seen: outlineStyle !== 'none' && parseFloat(outlineWidth) >= 1.5,
      };
    });
    if (!at) continue;
    reached.add(at.words);
    if (!at.seen) unseen.push(at.words);
  }
  for (const { name } of views) expect(reached).toContain(name);
  for (const words of ['Settings', 'A week earlier', 'A week later', 'Heater set to, by night'])
    expect(reached).toContain(words);
  expect(unseen).toEqual([]);
});

it('a number key typed into a field stays in the field, and Ctrl Z there does not undo the plan', async () => {
  const { page } = session;
  await session.sheet();
  await page.getByRole('slider', { name: 'Heater set to, by night' }).focus();
  await page.keyboard.press('ArrowRight');
  await page.getByRole('button', { name: 'Keep', exact: true }).click();
  const undo = page.getByRole('button', { name: /^Undo: .*Fan heater/ });
  await undo.waitFor({ timeout: patience });
  await session.view('Site and weather');
  const field = page.getByLabel('Name of the site');
  await field.fill('Ridge');
  await field.press('3');
  expect(await field.inputValue()).toBe('Ridge3');
  await page.getByRole('heading', { level: 1, name: 'Tarnabeg, above the lough' }).waitFor();
  await field.press('Control+z');
  expect(await undo.count()).toBe(1);
});
