import { eyeSensitivity, lumensPerWattAtPeak } from './spectrum-vision.ts';

/** A spectral table: rising wavelengths [nm] and the light at each, in any one unit a nanometre. */
export interface Spectrum {
  readonly wavelengths: readonly number[];
  readonly values: readonly number[];
  /** Whether the values are radiant energy (W nm⁻¹) or photons (µmol s⁻¹ nm⁻¹). */
  readonly of: 'energy' | 'photons';
}

/** What a spectrum says of its light to plants and to the eye. */
export interface SpectralFactors {
  /** Photons of 400–700 nm a joule of the light of 400–700 nm [µmol J⁻¹]. */
  readonly photonsPerJoule: number;
  /** Lux for one µmol m⁻² s⁻¹ of photons of 400–700 nm. */
  readonly luxPerMicromole: number;
  /** Share of the table's radiant energy that lies in 400–700 nm, 0–1. */
  readonly parShare: number;
  /** Lumens a watt of the table's radiant energy [lm W⁻¹]. */
  readonly lumensPerWatt: number;
}

/** Planck's constant × speed of light × Avogadro's [J nm µmol⁻¹]: exact in the SI, 0.1196266 J m mol⁻¹. */
export const jouleNanometres = 119.626566;

/** Photons a joule of light of one wavelength [µmol J⁻¹]: λ ÷ 119.627 nm. */
export function photonsPerJouleAt(wavelength: number): number {
  return wavelength / jouleNanometres;
}

/** Ends of the light plants use, and of the light the eye sees [nm] (McCree 1972; CIE). */
const par = { from: 400, to: 700 };

/**
 * Factors of a spectrum, read straight between the values of its table and summed nanometre by nanometre. What lies
 * outside the table counts as dark.
 */
export function spectralFactors(spectrum: Spectrum): SpectralFactors {
  checkSpectrum(spectrum);
  const { wavelengths, values } = spectrum;
  const [start, end] = [wavelengths[0], wavelengths[wavelengths.length - 1]];
  let [photons, parEnergy, lumens, energy] = [0, 0, 0, 0];
  let left = 0;
  for (let low = start; low < end;) {
    // Whole nanometres, so that 400 and 700 are cut cleanly.
    const high = Math.min(end, Math.floor(low) + 1);
    const middle = (low + high) / 2;
    while (wavelengths[left + 1] < middle) left++;
    const along = (middle - wavelengths[left]) / (wavelengths[left + 1] - wavelengths[left]);
    const value = (values[left] + (values[left + 1] - values[left]) * along) * (high - low);
    const watts = spectrum.of === 'energy' ? value : value / photonsPerJouleAt(middle);
    energy += watts;
    lumens += watts * lumensPerWattAtPeak * eyeSensitivity(middle);
    if (middle > par.from && middle < par.to) {
      parEnergy += watts;
      photons += watts * photonsPerJouleAt(middle);
    }
    low = high;
  }
  if (!(photons > 0)) throw new Error('expected a spectrum with light between 400 and 700 nm, got none');
  return {
    photonsPerJoule: photons / parEnergy,
    luxPerMicromole: lumens / photons,
    parShare: parEnergy / energy,
    lumensPerWatt: lumens / energy,
  };
}

function checkSpectrum({ wavelengths, values }: Spectrum): void {
  if (!(wavelengths.length >= 2 && wavelengths.length === values.length)) {
    throw new Error(
      `expected a value for each of two or more wavelengths, got ${wavelengths.length} and ${values.length}`,
    );
  }
  wavelengths.forEach((wavelength, i) => {
    if (!(wavelength > (i === 0 ? 0 : wavelengths[i - 1]) && wavelength < 1e6)) {
      throw new Error(`expected rising wavelengths in nm, got ${wavelength} at place ${i + 1}`);
    }
    if (!(values[i] >= 0 && values[i] < Infinity)) {
      throw new Error(`expected light of 0 or more at ${wavelength} nm, got ${values[i]}`);
    }
  });
}

/** Second radiation constant [nm K] (CODATA 2018: 1.438777 cm K). */
const secondRadiation = 1.438777e7;

/**
 * Spectrum of a black body (Planck) each `step` nm: a filament near 2,856 K, the sun and the whole sky near 5,800 K.
 * @param kelvin its temperature @param from @param to ends of the table [nm]
 */
export function blackBody(kelvin: number, from = 380, to = 780, step = 5): Spectrum {
  if (!(kelvin > 0)) throw new Error(`expected a temperature above 0 K, got ${kelvin}`);
  if (!(step > 0 && to > from))
    throw new Error(`expected a rising range of wavelengths, got ${from} to ${to} by ${step}`);
  const wavelengths: number[] = [];
  for (let i = 0; from + i * step <= to; i++) wavelengths.push(from + i * step);
  const values = wavelengths.map((nm) => (nm / 555) ** -5 / Math.expm1(secondRadiation / (nm * kelvin)));
  return { wavelengths, values, of: 'energy' };
}
