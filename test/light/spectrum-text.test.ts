import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readSpectrum } from '../../core/light/spectrum-text.ts';
import { spectralFactors } from '../../core/light/spectrum.ts';

const read = (text: string) => {
  const result = readSpectrum(text, 'energy');
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.spectrum;
};
const problems = (text: string) => {
  const result = readSpectrum(text, 'energy');
  return result.ok ? [] : result.problems;
};

describe('a spectral table as text', () => {
  it.each([
    ['commas', '400,1\n700,2.5'],
    ['commas and blanks', '400, 1\n700, 2.5'],
    ['semicolons and decimal commas', '400;1,0\r\n700;2,5'],
    ['tabs', '400\t1\n700\t2.5\n'],
    ['tabs and decimal commas', '400,0\t1\n700,0\t2,5'],
    ['blanks', '  400   1\n\n  700   2.5'],
    ['a heading and a byte-order mark', '\uFEFFWavelength (nm),W/nm\n400,1\n700,2.5'],
    ['a third column', '400,1,9\n700,2.5,9'],
    ['powers of ten', '4e2 1.0E0\n700 2.5e0'],
  ])('parted by %s', (_name, text) => {
    expect(read(text)).toEqual({ wavelengths: [400, 700], values: [1, 2.5], of: 'energy' });
  });

  it('gives the factors of what it holds: flat energy is 4.5976 µmol/J', () => {
    const { photonsPerJoule } = spectralFactors(read('400 1\n550 1\n700 1'));
    expect(Math.abs(photonsPerJoule - 4.5976)).toBeLessThan(1e-4);
  });

  it.each([
    ['400,1\n700', 2, "expected a wavelength and its light, got '700'"],
    ['400,1\nabc,2\n700,1', 2, "expected a wavelength and its light, got 'abc,2'"],
    ['400,1\n400,2', 2, 'expected rising wavelengths in nm, got 400 after 400'],
    ['700,1\n400,2', 2, 'expected rising wavelengths in nm, got 400 after 700'],
    ['400,1\n500,-2', 2, 'expected light of 0 or more, got -2'],
    ['400,1\n500,Infinity', 2, "expected a wavelength and its light, got '500,Infinity'"],
    ['', 0, 'expected two lines or more of wavelength and light'],
    ['only words', 0, 'expected two lines or more of wavelength and light'],
    ['800,1\n900,1', 0, 'expected light between 400 and 700 nm, got none'],
    ['380,0\n400,1', 0, 'expected light between 400 and 700 nm, got none'],
    ['700,1\n720,1', 0, 'expected light between 400 and 700 nm, got none'],
    ['400,0\n700,0', 0, 'expected light between 400 and 700 nm, got none'],
  ])('%j is refused with its line', (text, line, message) => {
    expect(problems(text)).toContainEqual({ line, message });
  });

  it('names at most ten lines, and refuses a table without end at once', () => {
    expect(problems(`400,1\n${'bad\n'.repeat(50)}`)).toHaveLength(10);
    expect(problems('500,1\n'.repeat(6000))[0]).toMatchObject({ line: 0 });
  });

  it('light at the very edge of a table is light', () => {
    expect(spectralFactors(read('380 1\n401 0')).photonsPerJoule).toBeGreaterThan(3);
    expect(spectralFactors(read('699.5 0\n720 1')).photonsPerJoule).toBeLessThan(6);
  });

  it('never gives a number that is none, whatever the text', () => {
    fc.assert(
      fc.property(fc.array(fc.stringMatching(/^[0-9.,;e \t-]{0,12}$/), { maxLength: 8 }), (lines) => {
        const result = readSpectrum(lines.join('\n'), 'photons');
        if (!result.ok) expect(result.problems.length).toBeGreaterThan(0);
        else {
          for (const factor of Object.values(spectralFactors(result.spectrum))) {
            expect(Number.isFinite(factor)).toBe(true);
          }
        }
      }),
      { numRuns: 300 },
    );
  });
});
