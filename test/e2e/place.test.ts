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

/** `3,131 in + 16 from store = 3,147 kWh out.` as figures: in, out, and into store (negative: from it). */
function sumOf(words: string): { into: number; out: number; stored: number } {
  const figure = (pattern: RegExp) => Number(pattern.exec(words)?.[1].replaceAll(',', ''));
  const from = / ([\d.,]+) from store/.exec(words);
  return {
    into: figure(/^([\d.,]+) in/),
    out: from ? figure(/= ([\d.,]+) kWh out/) : figure(/= ([\d.,]+) out/),
    stored: from ? -Number(from[1].replaceAll(',', '')) : figure(/\+ ([\d.,]+) kWh into store/),
  };
}

it('where the heat goes adds up over every span, and each bar and the sum open their working', async () => {
  const { page } = session;
  await session.sheet();
  await session.view('Places');
  const heat = page.getByRole('region', { name: 'Where the heat goes' });
  const spans = heat.getByLabel('Over', { exact: true });
  const total = heat.getByRole('button', { name: /In and out match/ });
  const seen = new Set<string>();
  for (const name of [
    /^Winter half-year/,
    /^Night at the cursor/,
    /^Coldest night/,
    /^Week at the cursor/,
    /^Whole season/,
  ]) {
    const label = await spans.locator('option').filter({ hasText: name }).innerText();
    await spans.selectOption({ label });
    const words = await total.innerText();
    const { into, out, stored } = sumOf(words);
    // Three figures, each rounded to its last digit.
    expect(Math.abs(into - out - stored), words).toBeLessThanOrEqual(
      words.includes('.0 ') || /\.\d /.test(words) ? 0.16 : 1.6,
    );
    seen.add(words);
    const rows = await heat.getByRole('list', { name: 'Goes' }).getByRole('button').allInnerTexts();
    const kwh = rows.map((row) => Number(/([\d.,]+)\s*kWh/.exec(row)?.[1].replaceAll(',', '')));
    const goes = out + Math.max(0, stored);
    expect(Math.abs(kwh.reduce((sum, value) => sum + value, 0) - goes), words).toBeLessThan(0.03 * goes);
  }
  expect(seen.size).toBe(5);

  await heat.getByRole('button', { name: /^South roof/ }).click();
  const working = page.getByRole('dialog', {
    name: /^South roof, Lean-to on the kitchen wall: whole season/,
  });
  await working.getByRole('row', { name: /^Area .* m² from the shape/ }).waitFor();
  expect(await working.getByRole('listitem').count()).toBe(12);
  await working.getByText(/^Method: Heat account/).waitFor();
  await working.getByRole('button', { name: 'Close' }).click();
  await total.click();
  await page
    .getByRole('dialog', { name: /^Heat in and out, Lean-to/ })
    .getByText('In less out less stored: 0.000 kWh')
    .waitFor();
  await page.keyboard.press('Escape');
  expect(await session.accessibility()).toEqual([]);
});

it('what would help against damp is worked out by the season, can be tried, and an old answer says so', async () => {
  const { page } = session;
  await session.sheet();
  await session.view('Places');
  await page
    .getByRole('navigation', { name: 'Places' })
    .getByRole('button', { name: 'Tunnel in the orchard' })
    .click();
  const damp = page.getByRole('region', { name: 'Damp', exact: true });
  await damp.getByText(/^Grey mould by the rule/).waitFor();
  await damp.getByRole('button', { name: 'Work out what would help' }).click();
  const stirred = damp.getByRole('row', { name: /stirs the air/ });
  await stirred.waitFor();
  const dew = async (row: typeof stirred) =>
    Number((await row.getByRole('cell').first().innerText()).replace(',', ''));
  expect(await dew(stirred)).toBeLessThan(await dew(damp.getByRole('row', { name: /^As it is/ })));
  await damp.getByRole('button', { name: 'Work out what would help' }).waitFor();
  expect(await session.accessibility()).toEqual([]);
  await stirred.getByRole('button', { name: /^Try it/ }).click();
  await damp.getByText('The plan has changed since; work it out again to be sure.').waitFor();
  await page.getByRole('button', { name: /^Keep/ }).first().click();
  await page.getByRole('button', { name: /^Undo: A fan of \d+ W that stirs the air/ }).waitFor();
});

it('damp is marked on the sheet where it matters, in the margin and the table too; a dry place is silent', async () => {
  const { page } = session;
  await session.sheet();
  const [dry, damp] = ['Lean-to on the kitchen wall', 'Tunnel in the orchard'];
  /** Drops in a place's band: each is one closed path. */
  const drops = async (place: string) => {
    const paths = await session.band(place).locator('g.damp path').all();
    const drawn = await Promise.all(paths.map((path) => path.getAttribute('d')));
    return drawn.join('').match(/z/g)?.length ?? 0;
  };
  expect(await drops(dry)).toBe(0);
  expect(await drops(damp)).toBeGreaterThan(0);
  await page
    .getByRole('region', { name: 'What the marks mean' })
    .getByText(/^(Dew on leaves|Grey mould)/)
    .first()
    .waitFor();

  // The margin card has its line in exactly the weeks that have a drop.
  const card = page.getByRole('region', { name: 'The week at the cursor' });
  const [back, on] = ['A week earlier', 'A week later'].map((name) => card.getByRole('button', { name }));
  const linesOf = async (place: string) => {
    await session.band(place).getByRole('button', { name: place, exact: true }).click();
    while (await back.isEnabled()) await back.click();
    let lines = await card.getByText(/^Dew on the leaves for \d+ h this week/).count();
    while (await on.isEnabled()) {
      await on.click();
      lines += await card.getByText(/^Dew on the leaves for \d+ h this week/).count();
    }
    return lines;
  };
  expect(await linesOf(damp)).toBe(await drops(damp));
  expect(await linesOf(dry)).toBe(0);

  const column = page.getByRole('columnheader', { name: 'Dew on leaves, h' });
  await session
    .band(damp)
    .getByRole('button', { name: /figures as a table/ })
    .click();
  await column.waitFor();
  await page.keyboard.press('Escape');
  await session
    .band(dry)
    .getByRole('button', { name: /figures as a table/ })
    .click();
  await page.getByRole('columnheader', { name: 'Mean' }).waitFor();
  expect(await column.count()).toBe(0);
});

/** A flat bright face of 1000 lm from 10 W: I = 318.31 cos θ. */
const lambertian = [
  'IESNA:LM-63-2002',
  '[TEST] EXAMPLE-1',
  '[TESTLAB] NONE',
  '[ISSUEDATE] 2025-01-01',
  '[MANUFAC] NONE',
  'TILT=NONE',
  '1 1000 1 10 1 1 2 0.1 0.1 0',
  '1 1 10',
  '0 10 20 30 40 50 60 70 80 90',
  '0',
  '318.31 313.47 299.11 275.66 243.84 204.61 159.15 108.87 55.27 0',
].join('\r\n');

it('a lamp of a place takes its light from a photometric file; a broken one is refused with its line', async () => {
  const { page } = session;
  await session.sheet();
  await session.view('Places');
  await page
    .getByRole('navigation', { name: 'Places' })
    .getByRole('button', { name: 'Bright tent in the box room' })
    .click();
  const form = page.getByRole('form', { name: 'Numbers of Bright tent in the box room' });
  await form.getByText('Lamps', { exact: true }).click();
  await form.getByText('More: layout, beam, photometric file').click();
  const file = (text: string) => ({ name: 'own.ies', mimeType: 'text/plain', buffer: Buffer.from(text) });
  const chooser = form.getByLabel('Choose a file…');
  await chooser.setInputFiles(file(lambertian.replace('159.15', '-159.15')));
  await form
    .getByRole('alert')
    .filter({ hasText: /Line 11: / })
    .waitFor();
  const known = form.getByLabel('Its light is known by');
  expect(await known.locator('option:checked').innerText()).toBe('its watts and light for a watt');

  await chooser.setInputFiles(file(lambertian));
  await expect
    .poll(() => known.locator('option:checked').innerText(), { timeout: patience })
    .toBe('its photometric file');
  // 1000 lm of white light at 68 lux per µmol are 14.7 µmol/s, from the file's 10 W.
  await form.getByText('so each now gives 15 µmol/s, 1.47 µmol/J').waitFor();
  expect(await session.accessibility()).toEqual([]);
  await form.getByLabel('Throws its light').selectOption({ label: 'in a narrower beam' });
  await expect
    .poll(() => known.locator('option').allInnerTexts(), { timeout: patience })
    .not.toContain('its photometric file');
});
