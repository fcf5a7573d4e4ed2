import { expect, it } from 'vitest';
import { useSession } from './harness.ts';

const session = useSession();

it('degrees Fahrenheit and feet are shown and read everywhere on the sheet and at a place, and are remembered', async () => {
  await session.sheet();
  await session.page.getByRole('button', { name: 'Settings' }).click();
  await session.page.getByLabel('Temperature').selectOption({ label: '°F' });
  await session.page.getByLabel('Length').selectOption({ label: 'feet' });
  await session.page.keyboard.press('Escape');
  await session.restart();
  await session.sheet();
  const { page } = session;
  const words = async () => (await page.locator('main').innerText()).match(/.*(°C|\d\sm\b).*/g) ?? [];
  expect(await words()).toEqual([]);
  const slider = page.getByRole('slider', { name: 'Heater set to, by night' });
  expect(await slider.getAttribute('aria-valuetext')).toBe('41.0\u00a0°F');

  await session.view('Places');
  expect(await words()).toEqual([]);
  const width = page.locator('#part-shape').getByLabel(/^Width/);
  expect(await width.inputValue()).toBe('6.89');
  await width.fill('7');
  await width.press('Enter');
  await page.getByRole('button', { name: /^Undo: / }).waitFor();
  await width.fill('2 m');
  await width.press('Enter');
  await expect.poll(() => width.inputValue()).toBe('6.56');
});
