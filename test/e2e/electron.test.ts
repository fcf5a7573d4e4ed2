import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { _electron } from 'playwright-core';
import { expect, it } from 'vitest';
import { demonstrationPlan } from '../../core/index.ts';
import { buildIfStale } from '../../electron/launch/build.ts';
import { findElectron } from '../../electron/launch/electron-binary.ts';
import { desktopObstacle, thisMachine } from '../../electron/launch/obstacle.ts';
import { projectRoot } from '../../electron/launch/paths.ts';
import { skipBecause } from '../support/shared-data.ts';

it('a first start in the Electron window shows the five places of the demonstration plan', async (context) => {
  const executablePath = findElectron();
  if (executablePath === null) return skipBecause(context, 'the Electron program has not been downloaded');
  const obstacle = desktopObstacle(thisMachine());
  if (obstacle !== null) return skipBecause(context, obstacle);
  await buildIfStale();
  const dataFolder = mkdtempSync(join(tmpdir(), 'winterbench-e2e-'));
  const { ELECTRON_RUN_AS_NODE: _, ...environment } = process.env;
  const application = await _electron.launch({
    executablePath,
    args: [projectRoot],
    env: { ...(environment as Record<string, string>), WINTERBENCH_DATA: dataFolder },
  });
  try {
    const page = await application.firstWindow();
    await page.getByRole('heading', { level: 1, name: demonstrationPlan.name }).waitFor();
    for (const place of demonstrationPlan.places)
      await page.getByRole('region', { name: place.name, exact: true }).waitFor();
    const inPage = await page.evaluate(() => ({
      require: 'require' in window,
      process: 'process' in window,
    }));
    expect(inPage).toEqual({ require: false, process: false });
  } finally {
    await application.close();
    rmSync(dataFolder, { recursive: true, force: true });
  }
});
