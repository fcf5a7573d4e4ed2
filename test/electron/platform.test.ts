import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { dataFolder, programVersion } from '../../electron/platform.ts';

const home = join('/', 'home', 'grower');

describe('the data folder', () => {
  it('is where WINTERBENCH_DATA says, on every platform', () => {
    for (const platform of ['linux', 'darwin', 'win32'] as const) {
      const env = { WINTERBENCH_DATA: 'plans', XDG_DATA_HOME: '/x', APPDATA: 'C:\\x' };
      expect(dataFolder({ platform, env, home })).toBe(resolve('plans'));
    }
  });

  it('is the platform’s own otherwise', () => {
    expect(dataFolder({ platform: 'linux', env: {}, home })).toBe(
      join(home, '.local', 'share', 'winterbench'),
    );
    expect(dataFolder({ platform: 'linux', env: { XDG_DATA_HOME: '' }, home })).toBe(
      dataFolder({ platform: 'linux', env: {}, home }),
    );
    expect(dataFolder({ platform: 'linux', env: { XDG_DATA_HOME: '/data' }, home })).toBe(
      join('/data', 'winterbench'),
    );
    expect(dataFolder({ platform: 'darwin', env: {}, home })).toBe(
      join(home, 'Library', 'Application Support', 'Winterbench'),
    );
    expect(dataFolder({ platform: 'win32', env: { APPDATA: '/roaming' }, home })).toBe(
      join('/roaming', 'Winterbench'),
    );
    expect(dataFolder({ platform: 'win32', env: {}, home })).toBe(
      join(home, 'AppData', 'Roaming', 'Winterbench'),
    );
  });
});

describe('the version', () => {
  it('is that of the package', () => {
    expect(programVersion(new URL('../../package.json', import.meta.url))).toMatch(/^\d+\.\d+\.\d+$/);
  });
});
