/** A real Chromium for the end-to-end tests. */
import chromium from '@sparticuz/chromium';
import { chromium as playwright } from 'playwright-core';
import type { Browser } from 'playwright-core';

/**
 * `--no-sandbox` lets it run as root; the others keep it from talking to anyone but the page under test. The
 * package's own `args` are not used: they switch web security off, under which a security test proves nothing.
 */
const quiet = [
  '--no-sandbox',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-default-apps',
  '--disable-domain-reliability',
  '--disable-sync',
  '--no-first-run',
  '--no-pings',
];

/** One language for every run: under `LANG=C` the browser would report `en-US@posix`, which is no language tag. */
const env = { ...process.env, LC_ALL: 'en_GB.UTF-8' };

/** Linux on x64 takes the browser that an npm package carries; elsewhere an installed Chrome is used. */
export async function launchBrowser(): Promise<Browser> {
  if (process.platform === 'linux' && process.arch === 'x64') {
    return playwright.launch({ executablePath: await chromium.executablePath(), args: quiet, env });
  }
  return playwright.launch({ channel: 'chrome', args: quiet, env });
}
