import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { longestWeatherBytes } from '../../../electron/contract.ts';
import type { WeatherFile, WeatherRecord } from '../../../electron/contract.ts';
import { createHost } from '../../../electron/host/host.ts';
import { createStore } from '../../../electron/host/store/store.ts';
import type { Store } from '../../../electron/host/store/store.ts';
import { describeWithData } from '../../support/shared-data.ts';
import { useFolder } from '../store/folder.ts';

const newFolder = useFolder();
const now = () => Date.UTC(2026, 0, 15);
let store: Store;
let answer: ReturnType<typeof createHost>;

beforeEach(() => {
  store = createStore({ folder: newFolder(), now });
  answer = createHost({ store, shell: 'local', version: '0', now });
});
afterEach(() => store.close());

const bring = (name: string, bytes: Uint8Array) =>
  answer('importWeather', { name, base64: Buffer.from(bytes).toString('base64') });

/** Mean [°C] and global radiation [kWh m⁻²] of ../shared/data/README.md, given there to these digits. */
const files: [string, 'epw' | 'tmy3', number, number][] = [
  ['weather/sand-point-55N.epw', 'epw', 4.4, 829],
  ['weather/sand-point-55N.tmy3.csv', 'tmy3', 4.4, 829],
  ['weather/quillayute-48N.epw', 'epw', 9.6, 1099],
  ['weather/international-falls-49N.epw', 'epw', 3.4, 1261],
  ['weather/san-francisco-38N.epw', 'epw', 13.8, 1716],
  ['weather/las-vegas-36N.epw', 'epw', 19.8, 2032],
  ['weather/pvgis-45N-8E.epw', 'epw', 13.6, 1436],
];

describe('importing weather', () => {
  for (const [path, format, mean, global] of files) {
    describeWithData(path, path, (file) => {
      it('keeps it byte for byte, with the year’s mean and radiation as known', () => {
        const bytes = readFileSync(file);
        const given = bring(basename(file), bytes);
        expect(given.ok && given.value).toMatchObject({ format, fileName: basename(file) });
        const record = (given as { value: WeatherRecord }).value;
        // Half of the last digit given.
        expect(Math.abs(record.meanTemperature - mean)).toBeLessThanOrEqual(0.051);
        expect(Math.abs(record.globalRadiation - global)).toBeLessThanOrEqual(0.51);
        const read = answer('readWeather', { id: record.id }) as { value: WeatherFile };
        expect(read.value.record).toEqual(record);
        expect(Buffer.from(read.value.base64, 'base64').equals(bytes)).toBe(true);
      });
    });
  }

  describeWithData('weather/pvgis-45N-8E.epw', 'of one file', (file) => {
    const text = readFileSync(file, 'latin1');
    const latin = (words: string) => Buffer.from(words, 'latin1');

    it('twice keeps it once', () => {
      bring('first.epw', latin(text));
      bring('second.epw', latin(text));
      expect(answer('listWeather', null)).toMatchObject({
        ok: true,
        value: [{ fileName: 'first.epw' }],
      });
    });

    it('reads it with the line ends of another system', () => {
      const lineFeeds = text.replaceAll('\r\n', '\n');
      expect(bring('a.epw', latin(lineFeeds)).ok).toBe(true);
      expect(bring('b.epw', latin(lineFeeds.replaceAll('\n', '\r\n'))).ok).toBe(true);
    });

    it('refuses it cut in half, with letters, with an hour missing or doubled; nothing is stored', () => {
      const lines = text.split(/\r?\n/);
      const wrong = {
        half: text.slice(0, text.length / 2),
        letters: text.replace(lines[3000], lines[3000].replace(/^(([^,]*,){6})[^,]*/, '$1warm')),
        missing: lines.toSpliced(4000, 1).join('\n'),
        doubled: lines.toSpliced(4000, 0, lines[3999]).join('\n'),
        rubbish: 'rubbish\n'.repeat(10_000),
      };
      for (const [name, content] of Object.entries(wrong)) {
        const given = bring(`${name}.epw`, latin(content));
        if (given.ok) throw new Error(`expected ${name} to be refused`);
        expect(given.error.code).toBe('refused');
        expect(given.error.message).toContain(`${name}.epw`);
        expect(given.error.problems![0].path, name).toMatch(/^line \d+$/);
      }
      expect(answer('listWeather', null)).toEqual({ ok: true, value: [] });
    });
  });

  it('refuses a file that is too large and one that is not base64', () => {
    const large = bring('large.epw', new Uint8Array(longestWeatherBytes + 1));
    expect(large).toMatchObject({ ok: false, error: { code: 'too-large' } });
    for (const base64 of ['no base64!', 'AAA', 'A=AA', 'AA==AA==', '====']) {
      const given = answer('importWeather', { name: 'a', base64 });
      expect(given, base64).toMatchObject({ ok: false, error: { problems: [{ path: 'base64' }] } });
    }
    expect(answer('readWeather', { id: 'absent' })).toMatchObject({
      ok: false,
      error: { code: 'not-found' },
    });
  });
});
