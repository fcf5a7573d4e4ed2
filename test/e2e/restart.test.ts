import { expect, it } from 'vitest';
import { patience, useSession } from './harness.ts';

const session = useSession();
const soon = { timeout: patience };

it('after a restart on the same data all is there: the plan, the look, and what undo takes back', async () => {
  await session.sheet();
  const first = await session.total();
  const heat = async (steps: number) => {
    const slider = session.page.getByRole('slider', { name: 'Heater set to, by night' });
    await slider.focus();
    for (let step = 0; step < steps; step += 1) await session.page.keyboard.press('ArrowRight');
    await session.page.getByRole('button', { name: 'Keep', exact: true }).click();
    await session.settled();
    return session.total();
  };
  const second = await heat(4);
  const third = await heat(4);
  expect(new Set([first, second, third]).size).toBe(3);
  await session.theme('Night');
  await session.page.getByRole('button', { name: /^Undo: .*9\.0 °C/ }).waitFor();

  await session.restart();
  await session.sheet();
  expect(await session.total()).toBe(third);
  expect(await session.page.getByText('These places are made up').count()).toBe(0);
  expect(await session.page.locator('html').getAttribute('data-theme')).toBe('dark');
  await session.page.getByRole('button', { name: /^Undo: .*9\.0 °C/ }).click();
  await expect.poll(() => session.total(), soon).toBe(second);

  await session.restart();
  await session.sheet();
  expect(await session.total()).toBe(second);
  await session.page.getByRole('button', { name: /^Undo: .*7\.0 °C/ }).click();
  await expect.poll(() => session.total(), soon).toBe(first);
  await session.page.getByRole('button', { name: /^Redo: .*7\.0 °C/ }).click();
  await expect.poll(() => session.total(), soon).toBe(second);
  await session.page.getByRole('button', { name: /^Redo: .*9\.0 °C/ }).click();
  await expect.poll(() => session.total(), soon).toBe(third);
});
