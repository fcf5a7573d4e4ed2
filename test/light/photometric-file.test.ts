import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import * as v from 'valibot';
import { mostCandela, photometrySchema } from '../../core/plan/lamp.ts';
import { readPhotometricFile } from '../../core/light/index.ts';
import type { PhotometricFile } from '../../core/light/index.ts';

const bytes = (name: string) => new Uint8Array(readFileSync(new URL(`photometric/${name}`, import.meta.url)));

function good(name: string): PhotometricFile {
  const reading = readPhotometricFile(bytes(name));
  if (!reading.ok) throw new Error(`${name}: ${JSON.stringify(reading.problems)}`);
  return reading.file;
}

/** Line and message a file is refused with. */
function refusal(text: string | Uint8Array): { line: number; message: string } {
  const reading = readPhotometricFile(text);
  if (reading.ok) throw new Error('expected a refusal, the file was read');
  return reading.problems[0];
}

const lambertian = readFileSync(new URL('photometric/lambertian-2002.ies', import.meta.url), 'latin1');
const changed = (from: string, to: string) => {
  expect(lambertian).toContain(from);
  return lambertian.replace(from, to);
};

describe('good photometric files (invented fittings)', () => {
  it.each([
    // Light each was made to have, by the mean of a zone's ends times its solid angle.
    ['lambertian-2002.ies', 999.99, 1000, 10, 'C'],
    ['invented-bar-1995.ies', 4000, null, 36.5, 'C'],
    ['invented-globe-1991.ies', 16000, 20000, 295, 'C'],
    ['invented-wall-lamp-1986.ies', 2500, 3200, 40, 'C'],
  ])('%s: zonal sum %d lm, rated %s, %d W, type %s', (name, lumens, rated, watts, type) => {
    const file = good(name);
    expect(Math.abs(file.lumens / lumens - 1)).toBeLessThan(2e-5);
    expect(file.ratedLumens).toBe(rated);
    expect(file.watts).toBe(watts);
    expect(file.type).toBe(type);
    expect(v.safeParse(photometrySchema, file.photometry).success).toBe(true);
  });

  it('reads feet as metres, keywords with their continuation, and bytes as Latin-1', () => {
    const bar = good('invented-bar-1995.ies');
    expect(bar.lengthMetres).toBeCloseTo(1.2192, 6);
    expect(bar.widthMetres).toBeCloseTo(0.16 * 0.3048, 6);
    expect(bar.photometry.name).toBe('Invented bar, 4 ft, opal cover for this test only');
    expect(good('invented-globe-1991.ies').keywords.MANUFAC).toBe('none, café');
    expect(good('invented-wall-lamp-1986.ies').photometry.name).toBe(
      'Invented wall lamp, lit more to one side',
    );
  });

  it('applies multiplier, ballast and, of the older layout, the ballast-lamp factor and the tilt factor at 0°', () => {
    const globe = good('invented-globe-1991.ies');
    expect(globe.notes.join('; ')).toMatch(/multiplied by 1.676.*ballast-lamp.*factor at 0°, 0.98/);
    // The same number in a layout of 2002 is only kept for later use.
    const later = readPhotometricFile(changed('1 1 10', '0.9 0.5 10'));
    expect(later.ok && Math.abs(later.file.lumens / 899.99 - 1) < 1e-4).toBe(true);
  });

  it('type B about its level axis, brought to type C: as much light, and the same in each direction', () => {
    const flood = good('invented-flood-type-b-2019.ies');
    expect(flood.type).toBe('B');
    const { vertical, planes, candela } = flood.photometry;
    const at = (down: number, round: number) =>
      candela[planes.indexOf(round) * vertical.length + vertical.indexOf(down)];
    // The file was made from 1000 · (cos V cos H)² · (1 + sin V / 2): cos² of the angle from straight down,
    // half as much again towards the axis. Straight lines over its 10° planes fall short of a cos² by up to
    // 10°² / 8 · 2 = 0.76 % of the peak, and a little more of the lopsided part.
    for (const down of [0, 20, 40, 60, 80]) {
      for (const round of [0, 45, 90, 180, 270]) {
        const [g, c] = [(down * Math.PI) / 180, (round * Math.PI) / 180];
        const made = 1000 * Math.cos(g) ** 2 * (1 + 0.5 * Math.sin(g) * Math.cos(c));
        expect(Math.abs(at(down, round) - made)).toBeLessThan(9);
      }
    }
    // ∫ 1000 cos² dω over the half-space is 2π/3 · 1000; the lopsided part adds nothing.
    expect(Math.abs(flood.lumens / ((2000 * Math.PI) / 3) - 1)).toBeLessThan(0.005);
  });

  it('type B with a side of its own: positive horizontal angles lie clockwise seen from the end of the axis', () => {
    const text = changed('10 1 1 2 0.1', '3 2 2 2 0.1')
      .replace('0 10 20 30 40 50 60 70 80 90\n0\n', '-90 0 90\n-90 90\n')
      .replace(/318[\s\S]*$/, '0 0 0\n0 100 0\n');
    const reading = readPhotometricFile(text);
    if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
    const { vertical, planes, candela } = reading.file.photometry;
    const at = (round: number) => candela[planes.indexOf(round) * vertical.length + vertical.length - 2];
    expect(at(270)).toBeGreaterThan(90);
    expect(at(90)).toBeLessThan(10);
  });

  it('a half from 90 to 270 is mirrored across that plane', () => {
    const text = changed('10 1 1 2 0.1', '2 3 1 2 0.1')
      .replace('0 10 20 30 40 50 60 70 80 90\n0\n', '0 90\n90 180 270\n')
      .replace(/318[\s\S]*$/, '100 10 100 20 100 30\n');
    const reading = readPhotometricFile(text);
    if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
    expect(reading.file.photometry.planes).toEqual([0, 90, 180, 270, 360]);
    expect(reading.file.photometry.candela).toEqual([100, 20, 100, 10, 100, 20, 100, 30, 100, 20]);
  });

  it('thins what a plan cannot keep, and says so', () => {
    const planes = Array.from({ length: 145 }, (_, k) => k * 2.5);
    const vertical = Array.from({ length: 181 }, (_, k) => k);
    const candela = planes.map(() =>
      vertical.map((angle) => Math.max(0, Math.cos((angle * Math.PI) / 180)).toFixed(4)).join(' '),
    );
    const text = `IESNA:LM-63-2002\nTILT=NONE\n1 -1 1000 181 145 1 2 1 1 0\n1 1 10\n${vertical.join(' ')}\n${planes.join(' ')}\n${candela.join('\n')}`;
    const reading = readPhotometricFile(text);
    if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
    const { photometry, lumens, notes } = reading.file;
    expect(photometry.candela.length).toBeLessThanOrEqual(mostCandela);
    expect(v.safeParse(photometrySchema, photometry).success).toBe(true);
    expect(Math.abs(lumens / (1000 * Math.PI) - 1)).toBeLessThan(0.001);
    expect(notes.join()).toMatch(/thinned from 145 planes of 181 angles to 145 of 91/);
  });
});

describe('photometric files that are refused, with the line', () => {
  it.each([
    ['cut off', lambertian.slice(0, lambertian.indexOf('243.84')), 11, 'candela 5 of 10, got the end'],
    ['too few candela', changed(' 55.27 0', ' 55.27'), 11, 'candela 10 of 10'],
    ['too many candela', changed(' 55.27 0', ' 55.27 0 1'), 11, 'expected the end of the file'],
    ['a count that is wrong', changed('1 1000 1 10 1', '1 1000 1 11 1'), 10, 'rising vertical angles'],
    ['negative candela', changed('299.11', '-299.11'), 11, 'candela of at least 0, got -299.11'],
    ['no number', changed('299.11', '299,11x'), 11, 'got “11x”'],
    ['hexadecimal', changed('299.11', '0x20'), 11, 'got “0x20”'],
    ['infinite', changed('299.11', '1e999'), 11, 'got “1e999”'],
    ['vertical angles that fall', changed('30 40', '40 30'), 9, 'rising vertical angles, got 30 after 40'],
    ['a tilt file', changed('TILT=NONE', 'TILT=LAMP.TLT'), 6, 'got TILT=LAMP.TLT'],
    ['no tilt line', changed('TILT=NONE', 'TILTED'), 12, 'TILT=NONE or TILT=INCLUDE'],
    ['type A', changed('1 10 1 1 2', '1 10 1 3 2'), 7, 'type A'],
    ['type 4', changed('1 10 1 1 2', '1 10 1 4 2'), 7, 'photometric type'],
    ['other units', changed('1 10 1 1 2', '1 10 1 1 3'), 7, 'unit (1 feet, 2 metres)'],
    ['no lumens', changed('1 1000 1', '1 0 1'), 7, 'lumens per lamp above 0, or −1'],
    ['a multiplier of 0', changed('1 1000 1 10', '1 1000 0 10'), 7, 'candela multiplier above 0'],
    ['billions of angles', changed('1 1000 1 10 1', '1 1000 1 9999999999 1'), 7, 'from 2 to 1441'],
    [
      'planes that end at 200',
      changed('80 90\n0\n', '80 90\n200\n'),
      10,
      'horizontal angles from 0 to 0, 90',
    ],
    [
      'only dark',
      lambertian.replace(/318[\s\S]*$/, '0 0 0 0 0 0 0 0 0 0\n'),
      11,
      'light of at least 0.001 lm',
    ],
    ['nothing', '', 1, 'TILT=NONE'],
  ])('%s', (_, text, line, message) => {
    const problem = refusal(text);
    expect(problem.message).toContain(message);
    expect(problem.line).toBe(line);
  });

  it('50 MB at once, the limit stated', () => {
    const start = performance.now();
    expect(refusal(new Uint8Array(50_000_000)).message).toBe('expected at most 4 MB, got 50.0 MB');
    expect(refusal('1'.repeat(50_000_000)).message).toContain('at most 4 MB');
    expect(performance.now() - start).toBeLessThan(500);
  });

  it('takes no longer for input made to be slow', () => {
    const start = performance.now();
    const long = 3_900_000;
    for (const text of [
      `IESNA:LM-63-2002\n[A]${' '.repeat(long)}\u2028x`,
      `TILT=NONE\n${'1'.repeat(long)}x`,
      `TILT=NONE\n${'\n'.repeat(long)}`,
      `TILT=NONE\n${' '.repeat(long)}x`,
      `${' '.repeat(long)}TILT`,
      `TILT=NONE 1 1 1 1441 1441 1 2 0 0 0 1 1 1 ${'1 '.repeat(long / 2)}`,
    ]) {
      expect(readPhotometricFile(text).ok).toBe(false);
    }
    // Linear work over 24 MB takes about a second here; anything worse takes minutes.
    expect(performance.now() - start).toBeLessThan(10_000);
  });

  it('never throws, whatever a file is turned into', () => {
    const sources = ['lambertian-2002.ies', 'invented-globe-1991.ies', 'invented-flood-type-b-2019.ies'].map(
      bytes,
    );
    fc.assert(
      fc.property(
        fc.constantFrom(...sources),
        fc.array(fc.tuple(fc.nat(4000), fc.integer({ min: 0, max: 255 })), { maxLength: 12 }),
        fc.nat(4000),
        (source, changes, cut) => {
          const copy = source.slice(0, Math.max(1, source.length - (cut % source.length)));
          for (const [at, byte] of changes) copy[at % copy.length] = byte;
          const reading = readPhotometricFile(copy);
          if (reading.ok) {
            expect(v.safeParse(photometrySchema, reading.file.photometry).success).toBe(true);
            expect(reading.file.lumens).toBeGreaterThan(0);
          } else expect(reading.problems[0].line).toBeGreaterThan(0);
        },
      ),
      { numRuns: 600, seed: 5 },
    );
    fc.assert(
      fc.property(fc.string({ maxLength: 400 }), (text) => {
        expect(readPhotometricFile(`TILT=NONE\n${text}`).ok).toBe(false);
      }),
      { numRuns: 300, seed: 6 },
    );
  });
});
