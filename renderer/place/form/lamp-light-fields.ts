import { lampPhotons, pointFactor, rectangleAt } from '../../../core/index.ts';
import type { Beam, Lamp, LightSource } from '../../../core/index.ts';
import { choice, number } from '../../forms/fields.ts';
import type { Field } from '../../forms/fields.ts';
import type { Option } from '../../forms/option.ts';
import { formatNumber } from '../../state/units.ts';
import { optionsFrom } from './choices.ts';
import { technologyOf } from './lamp-fields.ts';

type LightOf<K extends LightSource['kind']> = Extract<LightSource, { kind: K }>;
type BeamOf<K extends Beam['kind']> = Extract<Beam, { kind: K }>;

/** How the light of a lamp may be known; its photometric file only once it has one. */
export function lightOptions(lamp: Lamp): Option[] {
  return optionsFrom({
    efficacy: 'its watts and light for a watt',
    lumens: 'the lumens on its box',
    reading: 'a reading under it',
    ...(lamp.beam.kind === 'file' ? { file: 'its photometric file' } : {}),
  });
}

const luxOf = ({ technology }: Lamp): number => technologyOf(technology)?.luxPerMicromole.value ?? 54;

/** Photons of one lamp at full output, as aged as it is [µmol s⁻¹], and those for a watt [µmol J⁻¹]. */
export function photonsOfOne(lamp: Lamp): { readonly flux: number; readonly forWatt: number } {
  const flux = lampPhotons({ ...lamp, count: 1, dimming: 1 });
  return { flux, forWatt: flux / lamp.watts };
}

/** Share of the light of a new lamp that this one has left, 0–1: what is on a box was measured new, a reading was not. */
function leftOf(lamp: Lamp): number {
  const bySpecification: Lamp = { ...lamp, light: { kind: 'efficacy' } };
  return lampPhotons(bySpecification) / lampPhotons({ ...bySpecification, burnt: 0 });
}

/** Limit of light without loss of a red and blue source [µmol J⁻¹] (Kusuma, Pattison & Bugbee 2020). */
const mostForWatt = 4.1;

/** What a light known otherwise comes to for a watt, and whether that can be. */
export function forWattWords(lamp: Lamp): string {
  const { flux, forWatt } = photonsOfOne(lamp);
  const comes = `so each now gives ${formatNumber(flux, flux < 10 ? 1 : 0)} µmol/s, ${formatNumber(forWatt, 2)} µmol/J`;
  if (forWatt > mostForWatt)
    return `${comes}: more than any lamp can (${formatNumber(mostForWatt, 1)}), so one of the figures is off`;
  return comes;
}

const threeFigures = (value: number, least: number, most: number) =>
  Math.min(most, Math.max(least, Number(value.toPrecision(3))));

/** Another way to know the light starts at about the light there is now. */
export function lightFrom(kind: string, lamp: Lamp): LightSource {
  const { flux } = photonsOfOne(lamp);
  if (kind === 'lumens')
    return { kind, lumens: threeFigures((flux / leftOf(lamp)) * luxOf(lamp), 1, 1e6), luxPerMicromole: null };
  if (kind === 'file') return { kind, luxPerMicromole: null };
  if (kind !== 'reading') return { kind: 'efficacy' };
  const distance = threeFigures(lamp.height, 0.05, 10);
  const face = rectangleAt(0, 0, lamp.length, lamp.width);
  const ppfd = (flux / (lamp.length * lamp.width)) * pointFactor(0, 0, face, distance);
  return {
    kind,
    value: threeFigures(ppfd * luxOf(lamp), 0.1, 1e6),
    unit: 'lux',
    distance,
    luxPerMicromole: null,
  };
}

/** A reading in the other unit, for the same light. */
export function inUnit(light: LightOf<'reading'>, unit: 'lux' | 'ppfd', lamp: Lamp): LightOf<'reading'> {
  if (unit === light.unit) return light;
  const lux = light.luxPerMicromole ?? luxOf(lamp);
  return { ...light, unit, value: threeFigures(light.value * (unit === 'lux' ? lux : 1 / lux), 0.1, 1e6) };
}

export const efficacyField = (lamp: Lamp): Field<Lamp> => {
  const sold = technologyOf(lamp.technology)?.efficacy;
  const hint = sold ? `sold with ${formatNumber(sold.low, 1)} to ${formatNumber(sold.high, 1)}` : '';
  return number('efficacy', 'Light for a watt', 'µmol/J', [0.05, 4.2], { hint });
};

const luxField = <T extends { luxPerMicromole: number | null }>(lamp: Lamp): Field<T> =>
  number<T>('luxPerMicromole' as keyof T & string, 'Lux for a micromole', 'lux per µmol', [1, 150], {
    empty: true,
    hint: `leave empty for ${formatNumber(luxOf(lamp))}, usual of its kind`,
  });

export const lumenFields = (lamp: Lamp): readonly Field<LightOf<'lumens'>>[] => [
  number('lumens', 'Lumens, each', 'lm', [1, 1e6], { digits: 0, words: 'lumens' }),
  luxField(lamp),
];

export const readingFields = (
  lamp: Lamp,
  light: LightOf<'reading'>,
): readonly Field<LightOf<'reading'>>[] => [
  number('value', 'It reads', light.unit === 'lux' ? 'lux' : 'µmol/m²s', [0.1, 1e6], { words: 'reading' }),
  choice('unit', 'On a meter for', optionsFrom({ lux: 'lux', ppfd: 'plant light (PPFD)' }), {
    words: 'unit of the reading',
  }),
  number('distance', 'Below its face', 'm', [0.05, 10], {
    words: 'distance of the reading',
    hint: 'straight under the middle of one lamp, no other light',
  }),
  luxField(lamp),
];

export const fileFields = (lamp: Lamp): readonly Field<LightOf<'file'>>[] => [luxField(lamp)];

/** How the light may be thrown; the file's beam stands in the list while there is one. */
export function beamOptions({ beam }: Lamp): Option[] {
  return optionsFrom({
    even: 'evenly, as a flat bright face does',
    'cosine-power': 'in a narrower beam',
    ...(beam.kind === 'file' ? { file: `as the file ${beam.photometry.name} has it` } : {}),
  });
}

/** Angle off the middle at which a beam of this power is half as bright [degrees]: cosⁿ = ½. */
const halfBright = (power: number) => (Math.acos(0.5 ** (1 / power)) * 180) / Math.PI;

export const powerFields = ({ power }: BeamOf<'cosine-power'>): readonly Field<BeamOf<'cosine-power'>>[] => [
  number('power', 'Narrower by the power', '', [0.5, 80], {
    words: 'narrowness',
    hint: `half as bright ${formatNumber(halfBright(power))}° off the middle; 1 an even face, 10 a narrow reflector`,
  }),
];

export const turnedFields: readonly Field<BeamOf<'file'>>[] = [
  number('turned', 'Turned', '°', [-180, 180], {
    digits: 0,
    hint: 'anticlockwise seen from above, from the length of the area',
  }),
];
