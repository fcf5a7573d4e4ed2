import type { Locator } from 'playwright-core';
import { expect, it } from 'vitest';
import { patience, useSession } from './harness.ts';

const session = useSession();
const tent = 'Bright tent in the box room';
const soon = { timeout: patience };

/** Takes a slider by its thumb with the mouse and drags it to a share of its length; lets go only when `held` is done. */
async function drag(slider: Locator, share: number, held: () => Promise<void>): Promise<void> {
  const [least, most, now] = await slider.evaluate((input: HTMLInputElement) => [
    Number(input.min),
    Number(input.max),
    Number(input.value),
  ]);
  const box = (await slider.boundingBox())!;
  const thumb = 16;
  const at = (part: number) => box.x + thumb / 2 + part * (box.width - thumb);
  const { mouse } = slider.page();
  await mouse.move(at((now - least) / (most - least)), box.y + box.height / 2);
  await mouse.down();
  await mouse.move(at(share), box.y + box.height / 2, { steps: 6 });
  await held();
  await mouse.up();
}

async function tryHours(hours: 'Keep' | 'Drop'): Promise<{ before: string; cost: string }> {
  const { page } = session;
  await session.sheet();
  await page.getByRole('combobox', { name: 'At', exact: true }).selectOption({ label: tent });
  const before = await session.drawing(tent);
  const cost = await session.total();
  const slider = page.getByRole('slider', { name: 'Lamp hours' });
  const strip = page.getByRole('region', { name: 'What the change does' });
  await drag(slider, 0.15, async () => {
    // All of it follows while the mouse is still down.
    await strip.getByText(/^(?=.*Bright tent in the box room)(?=.*LED panel .* a day)/).waitFor();
    await expect.poll(() => session.total(), soon).not.toBe(cost);
    await expect.poll(() => session.drawing(tent), soon).not.toBe(before);
  });
  await session.settled();
  expect(await session.band(tent).locator('path.ghost').count()).toBeGreaterThan(0);
  expect(await strip.getByText(/^[−-]€\d/).count()).toBe(1);
  expect(await strip.getByText(/^Echeverias$/).count()).toBe(1);
  await strip.getByRole('button', { name: hours }).click();
  await strip.waitFor({ state: 'detached' });
  await session.settled();
  expect(await session.band(tent).locator('path.ghost').count()).toBe(0);
  return { before, cost };
}

it('lamp hours dragged: ribbons, ghost and cost follow, and Drop restores the sheet to the letter', async () => {
  const { before, cost } = await tryHours('Drop');
  expect(await session.total()).toBe(cost);
  expect(await session.drawing(tent)).toBe(before);
  const undo = session.page.getByRole('button', { name: 'Undo' });
  expect(await undo.isDisabled()).toBe(true);
});

it('Keep keeps the change, and undo and redo take it back and bring it again', async () => {
  const { before, cost } = await tryHours('Keep');
  const { page } = session;
  const kept = await session.total();
  expect(kept).not.toBe(cost);
  await page.getByRole('button', { name: /^Undo: .*LED panel .* a day/ }).click();
  await expect.poll(() => session.total(), soon).toBe(cost);
  await expect.poll(() => session.drawing(tent), soon).toBe(before);
  await page.keyboard.press('Control+Shift+Z');
  await expect.poll(() => session.total(), soon).toBe(kept);
});

it('the same by keyboard alone: arrows on the slider, Enter keeps, Escape drops', async () => {
  const { page } = session;
  await session.sheet();
  const cost = await session.total();
  const slider = page.getByRole('slider', { name: 'Heater set to, by night' });
  await slider.focus();
  for (let step = 0; step < 6; step += 1) await page.keyboard.press('ArrowRight');
  const strip = page.getByRole('region', { name: 'What the change does' });
  await strip.getByText(/Fan heater set to 8\.0\s°C/).waitFor();
  await expect.poll(() => session.total(), soon).not.toBe(cost);
  await strip.getByRole('button', { name: 'Drop' }).press('Enter');
  await expect.poll(() => session.total(), soon).toBe(cost);

  await slider.focus();
  await page.keyboard.press('ArrowRight');
  await strip.waitFor();
  await slider.blur();
  await page.keyboard.press('Escape');
  await strip.waitFor({ state: 'detached' });
  await slider.focus();
  await page.keyboard.press('ArrowRight');
  await strip.waitFor();
  await slider.blur();
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: /^Undo: .*Fan heater set to/ }).waitFor();
});
