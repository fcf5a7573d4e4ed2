import { expect, it } from 'vitest';
import { patience, useSession } from './harness.ts';

const session = useSession();

it('a window in December: the hour is moved, the sun’s patch moves, and at night there is none', async () => {
  const { page } = session;
  await session.sheet();
  await session.view('Places');
  await page
    .getByRole('navigation', { name: 'Places' })
    .getByRole('button', { name: 'Landing window' })
    .click();
  const here = page.getByRole('region', { name: 'Daylight here' });
  const hour = here.getByRole('slider', { name: /^Hour/ });
  await here.getByText(/^At 12:\d0 the sun stands 1[23]° high in the south\./).waitFor();
  const plan = here.getByRole('img', { name: /^The plants’ level from above/ });
  const patch = async () => (await plan.locator('path.patch').getAttribute('d')) ?? '';
  const noon = await patch();
  expect(noon).not.toBe('');
  for (let step = 0; step < 15; step += 1) await hour.press('ArrowLeft');
  await here.getByText(/^At 10:00 the sun stands .* in the south-east\./).waitFor();
  expect(await patch()).not.toBe(noon);
  expect(await hour.getAttribute('aria-valuetext')).toMatch(/^At 10:00 the sun stands/);
  await here.getByText('This day as a table').click();
  expect(await here.getByRole('row', { name: /^10:00/ }).innerText()).toMatch(/south-east.*\d+\s%/s);
  await hour.press('Home');
  await here.getByText(/^At 00:00 the sun is down/).waitFor();
  expect(await plan.locator('path.patch').count()).toBe(0);

  // By the longest day the sun is up all of the early hours.
  await here.getByRole('slider', { name: /^Day/ }).fill('323');
  await hour.fill('360');
  await here.getByText(/^At 06:00 the sun stands/).waitFor();
  const year = here.getByRole('region', { name: 'Daily light by month' });
  expect(await year.getByRole('row').count()).toBe(4);
  await here.getByText(/^Least in December: [01]\.\d\smol a day at the plants\./).waitFor();
});

it('a meter’s 400 lux on a grey noon on the sill becomes the day’s light, beside what the model has there', async () => {
  const { page } = session;
  await session.sheet();
  await session.view('Light meter');
  await page.getByLabel('in the place').selectOption({ label: 'Landing window' });
  const shows = page.getByLabel('The meter shows');
  await shows.fill('400 lux');
  await shows.press('Enter');
  await page.getByLabel('with the sky').selectOption({ label: 'grey all over' });
  const answer = page.getByRole('region', { name: 'The day’s light' });
  const said = async () => Number((await answer.getByRole('strong').innerText()).replace(/\s*mol$/, ''));
  // 400 lux are 7.4 µmol; a grey day near midwinter at 54° N lasts some five such hours: 0.1 to 0.2 mol.
  expect(await said()).toBeGreaterThan(0.08);
  expect(await said()).toBeLessThan(0.25);
  expect(await answer.getByText(/^Too little even at best: Haworthias want/).count()).toBe(1);
  await page
    .getByText(/Landing window, the fortnight round [^:]*29[^:]*:\s\d\.\d+\smol\sof\s+daylight/)
    .waitFor();

  // Ten times the light is ten times the day; the unit typed with it is taken.
  const grey = await said();
  await shows.fill('4 klux');
  await shows.press('Enter');
  await expect.poll(said, { timeout: patience }).toBeCloseTo(10 * grey, 0);
  await page.getByLabel('at', { exact: true }).fill('7:00');
  await page.getByLabel('at', { exact: true }).press('Enter');
  await answer.getByText(/At 07:00 the sun is down: .* Read nearer to noon\./).waitFor();
  await shows.fill('bright');
  await shows.press('Enter');
  await page.getByText(/“bright” is not a reading/).waitFor();
  expect(await session.accessibility()).toEqual([]);
});
