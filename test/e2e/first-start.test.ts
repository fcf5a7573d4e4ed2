import { expect, it } from 'vitest';
import { demonstrationPlan, plantStates } from '../../core/index.ts';
import { useSession } from './harness.ts';

const session = useSession();

it('a first start shows five places with their ribbons, their verdicts and the cost', async () => {
  await session.sheet();
  const { page } = session;
  await page.getByRole('heading', { level: 1, name: demonstrationPlan.name }).waitFor();
  await page.getByText('These places are made up').waitFor();
  expect(demonstrationPlan.places).toHaveLength(5);
  for (const place of demonstrationPlan.places) {
    const band = session.band(place.name);
    const lots = demonstrationPlan.lots.filter((lot) => lot.place === place.id);
    for (const lot of lots) await band.getByText(lot.name, { exact: true }).waitFor();
    const picture = band.getByRole('img', { name: new RegExp(`^${place.name}: `) });
    const box = (await picture.boundingBox())!;
    expect(box.width).toBeGreaterThan(400);
    // Letters in the ribbons name the states; each place has at least one run long enough to carry one.
    const letters = new Set((await picture.locator('text').allTextContents()).map((text) => text.trim()));
    expect(plantStates.some((state) => letters.has(state.letter))).toBe(true);
  }
  expect(await session.total()).toMatch(/^€\d/);
});

it('every state that the legend names stands somewhere on the first sheet', async () => {
  await session.sheet();
  const seen = new Set<string>();
  for (const place of demonstrationPlan.places) {
    await session.band(place.name).getByRole('button', { name: 'figures as a table' }).click();
    const table = session.page.getByRole('dialog', { name: `${place.name}, week by week` });
    for (const cell of await table.getByRole('cell').allInnerTexts()) seen.add(cell);
    await table.getByRole('button', { name: 'Close' }).click();
  }
  expect(plantStates.map((state) => state.name).filter((name) => !seen.has(name))).toEqual([]);
});
