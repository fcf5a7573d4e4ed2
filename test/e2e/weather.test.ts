import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { describeWithData } from '../support/shared-data.ts';
import { useSession } from './harness.ts';

const session = useSession();

async function importFile(file: string): Promise<void> {
  const { page } = session;
  await session.view('Site and weather');
  await page.getByLabel('a weather file').check();
  await page.getByLabel(/^Import an hourly weather file/).setInputFiles(file);
}

/** The EPW with `change` made to one of its lines, counted from 1. */
function broken(file: string, line: number, change: (fields: string[]) => void): string {
  const lines = readFileSync(file, 'latin1').split(/\r?\n/);
  const fields = lines[line - 1].split(',');
  change(fields);
  lines[line - 1] = fields.join(',');
  const copy = join(session.dataFolder, 'broken.epw');
  writeFileSync(copy, lines.join('\r\n'), 'latin1');
  return copy;
}

describeWithData('weather/sand-point-55N.epw', 'hourly weather', (file) => {
  it('an EPW is imported, described, and changes the winter', async () => {
    const { page } = session;
    await session.sheet();
    const cost = await session.total();
    await importFile(file);
    await page.getByText('Mean of the year').waitFor();
    // 4.4 °C is the mean of the file's dry bulb column, as the notes beside the data say.
    await page.getByRole('definition').filter({ hasText: '4.4 °C' }).waitFor();
    await page.getByRole('button', { name: /^Undo: Weather from / }).waitFor();
    await session.view('Winter sheet');
    await session.settled();
    await page.getByText(/Weather: SAND POINT/i).waitFor();
    await expect.poll(() => session.total()).not.toBe(cost);
  });

  it('a broken one is refused with its line, and the open plan stays as it was', async () => {
    const { page } = session;
    await session.sheet();
    const cost = await session.total();
    await importFile(broken(file, 1234, (fields) => (fields[6] = 'mild')));
    session.expectTrouble(/importWeather|status of 422/);
    const refusal = page.getByRole('alert');
    await refusal.getByText('line 1234').waitFor();
    await refusal.getByText(/expected a number for .*, got .?mild/).waitFor();
    await refusal.getByText('The plan keeps the weather it had.').waitFor();
    expect(await page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true);
    await session.restart();
    await session.sheet();
    expect(await session.total()).toBe(cost);
    await session.view('Site and weather');
    await session.page.getByLabel('a weather file').check();
    await session.page.getByLabel(/^Import an hourly/).waitFor();
    expect(await session.page.getByLabel('Weather file', { exact: true }).count()).toBe(0);
  });
});
