import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { demonstrationPlan } from '../../core/index.ts';
import { useSession, views } from './harness.ts';

const session = useSession();
const hostile = '<img src=x onerror="window.harmed=1"><script>window.harmed=1</script>';
const outside = '"><svg onload="window.harmed=1"><a href="http://example.org/">{{7*7}}';

const harmed = () => session.page.evaluate(() => 'harmed' in window);

// Requests to another origin and breaches of the content security policy fail each test by themselves (harness.ts).
it('names that hold HTML are shown as text in every view, typed in by hand', async () => {
  const { page } = session;
  await session.sheet();
  await session.view('Places');
  const name = page.getByLabel('Name of the place');
  await name.fill(hostile);
  await name.press('Enter');
  await page.getByRole('heading', { level: 1, name: hostile, exact: true }).waitFor();
  await session.view('Site and weather');
  await page.getByLabel('Name of the site').fill(outside);
  await page.getByLabel('Name of the site').press('Enter');
  await page.getByRole('heading', { level: 1, name: outside, exact: true }).waitFor();
  for (const view of views) {
    await session.view(view.name);
    await session.settled();
    expect(await page.locator('main img, main script, main a[href^="http"]').count()).toBe(0);
  }
  await session.view('Winter sheet');
  await session.band(hostile).waitFor();
  await page.getByRole('slider', { name: 'Heater set to, by night' }).press('ArrowRight');
  await page.getByRole('region', { name: 'What the change does' }).getByText(hostile).waitFor();
  await page.getByRole('button', { name: 'Keep', exact: true }).click();
  await page.getByRole('button', { name: /^Undo: .*Fan heater/ }).waitFor();
  expect(await harmed()).toBe(false);
});

it('a plan from a file with hostile names is imported as text; rubbish is refused and the open plan stays', async () => {
  const { page } = session;
  await session.sheet();
  const file = join(session.dataFolder, 'plan.json');
  const take = async (text: string) => {
    writeFileSync(file, text);
    await page.getByRole('button', { name: 'Plans', exact: true }).click();
    await page.locator('input[type="file"]').setInputFiles(file);
  };
  session.expectTrouble(/importPlan|status of 4\d\d/);
  const wrong: [string, RegExp][] = [
    ['{"name":', /JSON|line|read/i],
    [
      JSON.stringify({ ...demonstrationPlan, places: [{ ...demonstrationPlan.places[0], growingArea: -4 }] }),
      /growingArea|growing area/i,
    ],
    [
      JSON.stringify({
        ...demonstrationPlan,
        places: [{ ...demonstrationPlan.places[0], covering: 'gold' }],
      }),
      /covering/i,
    ],
  ];
  for (const [text, words] of wrong) {
    await take(text);
    await page.getByRole('alert').filter({ hasText: words }).first().waitFor();
    await page.keyboard.press('Escape');
    await page.getByRole('heading', { level: 1, name: demonstrationPlan.name }).waitFor();
  }
  await take(JSON.stringify({ ...demonstrationPlan, name: hostile }));
  await page.getByRole('heading', { level: 1, name: hostile, exact: true }).waitFor();
  await session.sheet();
  expect(await harmed()).toBe(false);
});

it('the page is locked to itself: no eval, no inline script, no frame, no other server', async () => {
  const { page } = session;
  await session.sheet();
  session.expectTrouble(
    /content security policy|Content Security Policy|failed: http:\/\/127\.0\.0\.1:9\/|another origin/,
  );
  const outcome = await page.evaluate(async () => {
    const script = document.createElement('script');
    script.textContent = 'window.harmed = 1';
    document.body.append(script);
    const elsewhere = await fetch('http://127.0.0.1:9/', { mode: 'no-cors' }).then(
      () => 'reached',
      () => 'blocked',
    );
    return { inline: 'harmed' in window, elsewhere };
  });
  expect(outcome).toEqual({ inline: false, elsewhere: 'blocked' });
});
