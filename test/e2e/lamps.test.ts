import { expect, it } from 'vitest';
import { patience, useSession } from './harness.ts';

const session = useSession();
const tent = 'Old tent under the stairs';

it('three lamps side by side, the third carried into the plan', async () => {
  const { page } = session;
  await session.sheet();
  const cost = await session.total();
  await session.view('Lamps');
  await page.getByLabel('over the growing area of').selectOption({ label: tent });
  await page.getByRole('button', { name: 'Add an option' }).click();
  const name = page.getByLabel('Name of option 4');
  await name.fill('Seventy-five of LED');
  await name.press('Enter');
  const kind = page.getByLabel('Kind of lamp, Seventy-five of LED');
  await kind.selectOption({ label: 'White LED, recent' });
  const called = await name.inputValue();
  const type = async (label: string, text: string) => {
    const field = page.getByLabel(new RegExp(`^${label}, ${called}`));
    await field.fill(text);
    await field.press('Enter');
  };
  await type('Watts at the plug, each', '75');
  await type('How many', '1');
  await type('Hours on a day', '14');
  await session.settled();

  const row = async (words: string | RegExp) =>
    (await page.getByRole('row', { name: words }).getByRole('cell').allInnerTexts()).map((text) =>
      text.replace(/\s+/g, ' ').trim(),
    );
  await expect.poll(async () => (await row(/^Watts, all lamps/)).at(-1), { timeout: patience }).toBe('75 W');
  const figures = (cells: string[]) => cells.map((cell) => Number(/\d+\.?\d*/.exec(cell)![0]));
  const light = figures(await row(/^Daily light from lamps/));
  const money = figures(await row(/^Cost a winter, all running/));
  expect(light).toHaveLength(4);
  // Seventy-five watts for fourteen hours against two tubes of a few watts.
  expect(light[3]).toBeGreaterThan(3 * light[0]);
  expect(money[3]).toBeGreaterThan(money[0]);
  expect((await row(/^What it does to the plants/)).every((cell) => cell.includes('Spare echeverias'))).toBe(
    true,
  );

  await page.getByRole('button', { name: 'Carry into the plan' }).last().click();
  await page.getByRole('status').filter({ hasText: 'now in the plan' }).waitFor();
  await page.getByRole('button', { name: new RegExp(`^Undo: ${called} in ${tent}`) }).waitFor();
  await session.view('Winter sheet');
  await session.sheet();
  expect(await session.total()).not.toBe(cost);
  await page.getByRole('combobox', { name: 'At', exact: true }).selectOption({ label: tent });
  await page.getByRole('group', { name: called }).waitFor();
  expect(await page.getByRole('slider', { name: 'Lamp power' }).inputValue()).toBe('75');
});
