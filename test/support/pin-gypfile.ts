/**
 * Puts `"gypfile": false` back into the lock entry of better-sqlite3.
 *
 * npm drops the field when it rewrites the lock file and then runs `node-gyp rebuild` at `npm ci`, although the
 * package carries its binaries. Part of `npm run fix`; test/repository/lock.test.ts guards the result.
 */
import { readFileSync, writeFileSync } from 'node:fs';

const lockFile = new URL('../../package-lock.json', import.meta.url);
const lock = JSON.parse(readFileSync(lockFile, 'utf8'));
const entry = lock.packages['node_modules/better-sqlite3'];
if (entry.gypfile !== false) {
  entry.gypfile = false;
  writeFileSync(lockFile, `${JSON.stringify(lock, null, 2)}\n`);
  console.log('package-lock.json: "gypfile": false set for better-sqlite3');
}
