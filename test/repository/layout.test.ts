import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { skipBecause } from '../support/shared-data.ts';
import { readJson, root, trackedFiles } from './project.ts';

const noCheckout = 'this copy is no git checkout';
const tracked = trackedFiles();

const allowedAtRoot = [
  /^(electron|renderer|core|test|\.ci)\//,
  /^(package|package-lock|tsconfig)\.json$/,
  /^(electron\.vite|vitest|eslint)\.config\.(ts|js)$/,
  /^(README|DEVELOPERS)\.md$/,
  /^LICENSE$/,
  /^\.(gitignore|gitattributes|npmrc|prettierrc|prettierignore|dependency-cruiser\.cjs)$/,
];

/** Folders whose names begin an absolute path on somebody's machine, and a user's home on Windows. */
const machinePath = /(^|[\s"'`(=])(\/(work|tmp|home|root|Users|farm)\/[A-Za-z]|[A-Z]:\\Users\\)/m;
const privateHost = /https?:\/\/(10\.|192\.168\.|[\w.-]*(registry|verdaccio|artifactory|nexus)[\w.-]*)/i;

describe('tracked files', () => {
  test('the root holds what is fixed and tool configuration only', (context) => {
    if (tracked === null) return skipBecause(context, noCheckout);
    expect(tracked.filter((file) => !allowedAtRoot.some((pattern) => pattern.test(file)))).toEqual([]);
  });

  test('none names a path of one machine or a registry host', (context) => {
    if (tracked === null) return skipBecause(context, noCheckout);
    const texts = tracked.filter((file) => !/\.(png|ico|woff2?|jpg)$/.test(file) && existsSync(root + file));
    const own = 'test/repository/layout.test.ts';
    const offending = texts.filter((file) => {
      if (file === own) return false;
      const text = readFileSync(root + file, 'utf8').replaceAll('https://registry.npmjs.org/', '');
      return machinePath.test(text) || privateHost.test(text);
    });
    expect(offending).toEqual([]);
  });

  test('no source file is longer than 400 lines', (context) => {
    if (tracked === null) return skipBecause(context, noCheckout);
    const sources = tracked.filter((file) => /^(core|electron|renderer|test)\/.*\.(ts|svelte)$/.test(file));
    const lines = (file: string) => readFileSync(root + file, 'utf8').split('\n').length - 1;
    expect(sources.filter((file) => existsSync(root + file) && lines(file) > 400)).toEqual([]);
  });
});

describe('the patterns above', () => {
  const inFolder = (name: string) => ['', name, 'ann', 'plan.json'].join('/');
  test.each([`"${inFolder('home')}"`, `cd ${inFolder('tmp')}`, String.raw`C:\Users\ann`])(
    'find %s',
    (text) => {
      expect(machinePath.test(text)).toBe(true);
    },
  );

  test.each(['../shared/data', 'https://doi.org/home/x', 'test/home/x'])('let %s pass', (text) => {
    expect(machinePath.test(text) || privateHost.test(text)).toBe(false);
  });
});

describe('scripts', () => {
  const { scripts } = readJson('package.json');

  test('every promised one is there', () => {
    const promised = [
      'start',
      'dev',
      'build',
      'test',
      'check',
      'fix',
      'bench',
      'winterbench',
      'lint',
      'types',
    ];
    expect(promised.filter((name) => !scripts[name])).toEqual([]);
  });

  test('every file they run is there', () => {
    const files = Object.values<string>(scripts).flatMap((line) => line.match(/\bnode (\S+\.ts)/g) ?? []);
    expect(files.length).toBeGreaterThan(4);
    expect(files.map((match) => match.slice(5)).filter((file) => !existsSync(root + file))).toEqual([]);
  });

  test('they run on Node 24', () => {
    expect(process.versions.node.split('.')[0]).toBe('24');
  });
});
