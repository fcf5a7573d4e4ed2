import { expect, test } from 'vitest';
import { desktopObstacle, hasDisplay } from '../../../electron/launch/obstacle.ts';

const display = { DISPLAY: ':0' };

test.each([
  ['linux', {}, 1000, 'there is no display here'],
  ['linux', { DISPLAY: '' }, 1000, 'there is no display here'],
  ['linux', display, 0, 'Electron does not run as root with its sandbox on'],
  ['linux', display, 1000, null],
  ['linux', { WAYLAND_DISPLAY: 'wayland-0' }, 1000, null],
  ['darwin', {}, 501, null],
  ['win32', {}, null, null],
])('on %s with %o as user %s: %s', (platform, environment, userId, words) => {
  expect(desktopObstacle({ platform, environment, userId })).toBe(words);
});

test('a terminal session on Linux has no display', () => {
  expect(hasDisplay({ platform: 'linux', environment: {}, userId: 1000 })).toBe(false);
});
