/** What README.md and DEVELOPERS.md name has to be there: links, pictures, scripts, files. */
import { existsSync, globSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readJson, root } from './project.ts';

/** Targets of links and pictures within the repository, without their anchors. */
function relativeLinks(text: string): string[] {
  return [...text.matchAll(/\]\(([^)\s]+)[^)]*\)/g)]
    .map((match) => match[1].split('#')[0])
    .filter((target) => target !== '' && !/^[a-z]+:/i.test(target));
}

/** Scripts as npm is told to run them: `npm run -s x`, and those that need no `run`. */
function scriptsRun(text: string): string[] {
  return [...text.matchAll(/\bnpm (?:run (?:-\S+ )*([\w:-]+)|(start|test)\b)/g)].map(
    (match) => match[1] ?? match[2],
  );
}

const folders = ['core', 'electron', 'renderer', 'test', '.ci'];

/** Inline code outside of fenced blocks. */
function quoted(text: string): string[] {
  return [...text.replace(/^```.*?^```/gms, '').matchAll(/`([^`\n]+)`/g)].map((match) => match[1]);
}

/** Paths of files and folders of the repository, words of commands among them. */
function paths(text: string): string[] {
  const words = quoted(text).flatMap((code) => code.split(/\s+/));
  return words.filter((word) => folders.some((folder) => word.startsWith(`${folder}/`)));
}

/** Names of source files that say no folder from the root, such as `season/ledger.ts`; a bare `index.ts` is none. */
function partialPaths(text: string): string[] {
  return quoted(text).filter(
    (code) => /^[\w.-]+\/\S+\.(ts|svelte|css)$/.test(code) && !paths(`\`${code}\``).length,
  );
}

const isThere = (path: string) =>
  /[*?{]/.test(path) ? globSync(path, { cwd: root }).length > 0 : existsSync(root + path);

describe.each([
  { file: 'README.md', least: { links: 1, scripts: 5, paths: 0 } },
  { file: 'DEVELOPERS.md', least: { links: 0, scripts: 5, paths: 20 } },
])('$file', ({ file, least }) => {
  const text = readFileSync(root + file, 'utf8');

  test('links and shows only what is there', () => {
    expect(relativeLinks(text).length).toBeGreaterThanOrEqual(least.links);
    expect(relativeLinks(text).filter((target) => !existsSync(root + target))).toEqual([]);
  });

  test('runs only scripts of package.json', () => {
    const { scripts } = readJson('package.json');
    expect(scriptsRun(text).length).toBeGreaterThanOrEqual(least.scripts);
    expect(scriptsRun(text).filter((name) => !(name in scripts))).toEqual([]);
  });

  test('names only files and folders that are there, from the root on', () => {
    expect(paths(text).length).toBeGreaterThanOrEqual(least.paths);
    expect(paths(text).filter((path) => !isThere(path))).toEqual([]);
    expect(partialPaths(text)).toEqual([]);
  });
});

describe('what is read out of a document', () => {
  test('links, without anchors and the rest of the world', () => {
    const text = '![a](test/a.png) [b](B.md#c "title") [d](#e) [f](https://example.org/g)';
    expect(relativeLinks(text)).toEqual(['test/a.png', 'B.md']);
  });

  test('scripts, in text and in fenced blocks', () => {
    const text = '`npm run bench -- --x`\n```\nnpm ci && npm start\nnpm run -s winterbench -- sun\n```\n';
    expect(scriptsRun(text)).toEqual(['bench', 'start', 'winterbench']);
  });

  test('paths in inline code, globs and commands among them', () => {
    const text = '`core/plan/groups-*.ts`, `bash .ci/run`, core/none.ts, `sheet/`, `season/ledger.ts`';
    expect(paths(text)).toEqual(['core/plan/groups-*.ts', '.ci/run']);
    expect(partialPaths(text)).toEqual(['season/ledger.ts']);
    expect([isThere('core/plan/groups-*.ts'), isThere('core/plan/none-*.ts')]).toEqual([true, false]);
  });
});
