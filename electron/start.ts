/**
 * `npm start`: builds what is stale, then opens the Electron window, or says why it cannot and serves the same
 * interface to a browser on this machine.
 *
 *   npm start                  the window where there can be one, else the browser
 *   npm start -- --browser     the browser in any case
 *   npm start -- --electron    try the window even where it does not seem possible
 *   npm start -- --no-open     print the address, open no browser
 */
import { parseArgs } from 'node:util';
import { openBrowser } from './launch/browser.ts';
import { buildIfStale } from './launch/build.ts';
import { runDesktop } from './launch/desktop.ts';
import { hasDisplay, thisMachine } from './launch/obstacle.ts';
import { startLocal } from './local/main.ts';

function readOptions() {
  try {
    return parseArgs({
      allowNegative: true,
      options: {
        browser: { type: 'boolean', default: false },
        electron: { type: 'boolean', default: false },
        open: { type: 'boolean', default: true },
      },
    }).values;
  } catch (error) {
    console.error(`npm start: ${(error as Error).message}`);
    return process.exit(2);
  }
}

async function serveBrowser(open: boolean): Promise<void> {
  const { url, close } = await startLocal();
  for (const signal of ['SIGINT', 'SIGTERM'] as const) {
    process.once(signal, () => void close().then(() => process.exit(0)));
  }
  const opened = open && hasDisplay(thisMachine()) && (await openBrowser(url));
  console.log(
    opened ? `Winterbench is open in your browser: ${url}` : `Open this address in a browser: ${url}`,
  );
  console.log('Ctrl+C ends it.');
}

const options = readOptions();
await buildIfStale();
const obstacle = options.browser ? 'as asked' : await runDesktop(options.electron);
if (obstacle !== null) {
  console.log(options.browser ? 'No window, as asked.' : `No Electron window: ${obstacle}.`);
  await serveBrowser(options.open).catch((error: Error) => {
    console.error(error.message);
    process.exit(1);
  });
}
