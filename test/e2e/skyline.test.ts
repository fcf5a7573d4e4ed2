import { expect, it } from 'vitest';
import { patience, useSession } from './harness.ts';

const session = useSession();

/** Minutes of December sun left and in all, as the skyline tells them. */
async function sunLeft(): Promise<{ left: number; all: number }> {
  const text = await session.page
    .getByText(/of sun (are left|on 21 December)/)
    .first()
    .innerText();
  const minutes = [...text.matchAll(/(\d+)\sh(?:\s(\d\d))?/g)].map(
    ([, hours, rest]) => 60 * Number(hours) + Number(rest ?? 0),
  );
  return { left: minutes[0], all: minutes[1] ?? minutes[0] };
}

const points = () => session.page.getByRole('slider', { name: /^Point \d+ of the skyline/ });

it('a skyline is clicked, dragged, moved by keys and taken away, and says what sun is left', async () => {
  const { page } = session;
  await session.sheet();
  await session.view('Site and weather');
  const sky = page.getByRole('group', { name: /^Skyline/ });
  await sky.scrollIntoViewIfNeeded();
  const open = await sunLeft();
  expect(open.left).toBe(open.all);

  const box = (await sky.boundingBox())!;
  const at = (across: number, up: number) => ({ x: box.width * across, y: box.height * up });
  await sky.click({ position: at(0.51, 0.5) });
  await expect.poll(() => points().count(), { timeout: patience }).toBe(3);
  const once = await sunLeft();
  expect(once.left).toBeLessThan(open.left);

  // Dragged down, more of the sun is left; the change is one, kept when the point is let go.
  const peak = page.getByRole('slider', { name: 'Point 2 of the skyline' });
  const grip = (await peak.boundingBox())!;
  await page.mouse.move(grip.x + grip.width / 2, grip.y + grip.height / 2);
  await page.mouse.down();
  await page.mouse.move(grip.x + grip.width / 2, grip.y + box.height * 0.2, { steps: 5 });
  await page.mouse.move(grip.x + grip.width / 2, grip.y + box.height * 0.28, { steps: 5 });
  await page.mouse.up();
  await expect.poll(async () => (await sunLeft()).left, { timeout: patience }).toBeGreaterThan(once.left);
  expect(await points().count()).toBe(3);

  // By keys up over the sun again, and away.
  await peak.focus();
  for (let press = 0; press < 4; press += 1) await page.keyboard.press('Shift+ArrowUp');
  const before = await sunLeft();
  expect(before.left).toBeLessThan(once.left + 1);
  expect(await peak.getAttribute('aria-valuetext')).toMatch(/^south, 18\d.*: up to \d+/);
  expect(await session.accessibility()).toEqual([]);
  await page.keyboard.press('Delete');
  await expect.poll(() => points().count(), { timeout: patience }).toBe(2);
  expect((await sunLeft()).left).toBe(open.left);
  await page.getByRole('button', { name: /^Undo: Site: without a point of the skyline/ }).click();
  await expect.poll(() => points().count(), { timeout: patience }).toBe(3);
  expect((await sunLeft()).left).toBe(before.left);
});

it('a place with a skyline of its own loses the sun alone', async () => {
  const { page } = session;
  await session.sheet();
  const before = await session.drawing('Landing window');
  const other = await session.drawing('Lean-to on the kitchen wall');
  await session.view('Places');
  await page
    .getByRole('navigation', { name: 'Places' })
    .getByRole('button', { name: 'Landing window' })
    .click();
  const form = page.getByRole('form', { name: 'Numbers of Landing window' });
  await form.getByText('Air and surroundings').click();
  await form.getByLabel('A skyline of its own, not that of the site').check();
  await form.getByRole('button', { name: 'Put in a house' }).click();
  await form.getByRole('slider', { name: 'Point 2 of the skyline' }).focus();
  for (let press = 0; press < 4; press += 1) await page.keyboard.press('Shift+ArrowUp');
  expect(await session.accessibility()).toEqual([]);
  await session.view('Winter sheet');
  await session.settled();
  await expect.poll(() => session.drawing('Landing window'), { timeout: patience }).not.toBe(before);
  expect(await session.drawing('Lean-to on the kitchen wall')).toBe(other);
});

it('every group of a place’s form can be open at once, by day and by night, without a fault of access', async () => {
  const { page } = session;
  await session.sheet();
  await session.view('Places');
  for (const name of ['Bright tent in the box room', 'Landing window', 'Lean-to on the kitchen wall']) {
    await page.getByRole('navigation', { name: 'Places' }).getByRole('button', { name }).click();
    const form = page.getByRole('form', { name: `Numbers of ${name}` });
    await form.waitFor();
    await form.evaluate((element) =>
      element.querySelectorAll('details').forEach((details) => (details.open = true)),
    );
    for (const look of ['Day', 'Night'] as const) {
      await session.theme(look);
      expect([name, look, await session.accessibility()]).toEqual([name, look, []]);
    }
  }
});

it('a lamp known by a reading is refused at the field, kept when it is right, and undone', async () => {
  const { page } = session;
  await session.sheet();
  await session.view('Places');
  await page
    .getByRole('navigation', { name: 'Places' })
    .getByRole('button', { name: 'Bright tent in the box room' })
    .click();
  const form = page.getByRole('form', { name: 'Numbers of Bright tent in the box room' });
  await form.getByText('Lamps', { exact: true }).click();
  await form.getByLabel('Its light is known by').selectOption({ label: 'a reading under it' });
  const reading = form.getByLabel('It reads');
  const before = await reading.inputValue();
  await reading.fill('bright');
  await reading.press('Enter');
  await form
    .getByRole('alert')
    .filter({ hasText: /is not a number\. Give from 0\.1 to 1000000 lux\./ })
    .waitFor();
  await reading.press('Escape');
  expect(await reading.inputValue()).toBe(before);
  await reading.fill('12000');
  await reading.press('Enter');
  await form.getByText(/so each now gives .* µmol\/s/).waitFor();
  await page.getByRole('button', { name: /^Undo: LED panel, reading/ }).click();
  await expect.poll(() => reading.inputValue(), { timeout: patience }).toBe(before);
});
