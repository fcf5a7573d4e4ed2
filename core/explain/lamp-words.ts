import type { Lamp } from '../plan/lamp.ts';
import { lampTechnology } from '../plan/lamps.ts';
import { round } from './format.ts';

/** When a lamp burns, in words. */
export function lampHoursWords({ on, off, second, control, mostDay }: Lamp): string {
  const blocks = second === null ? `${on} to ${off}` : `${on} to ${off} and ${second.on} to ${second.off}`;
  const end = { dawn: 'before dawn', dusk: 'after dusk', both: 'before dawn and after dusk' };
  const longest = mostDay === null ? '' : `, never so that the day is longer than ${round(mostDay)} h`;
  switch (control.kind) {
    case 'clock':
      return `on from ${blocks}${longest}`;
    case 'extend':
      return `on ${end[control.end]} until the day is ${round(control.hours)} h long${longest}`;
    case 'daylight':
      return `on from ${blocks} while daylight is under ${round(control.below)} µmol/m²s${longest}`;
  }
}

/** Where the photon flux of a lamp comes from, in words with its figures. */
export function lightSourceWords({ light, efficacy, technology }: Lamp): string {
  const { luxPerMicromole } = lampTechnology(technology);
  const lux = (own: number | null) => `${round(own ?? luxPerMicromole.value)} lux for one µmol/m²s`;
  switch (light.kind) {
    case 'efficacy':
      return `${round(efficacy)} µmol for each joule`;
    case 'lumens':
      return `${round(light.lumens)} lm, ${lux(light.luxPerMicromole)}`;
    case 'reading':
      return light.unit === 'ppfd'
        ? `${round(light.value)} µmol/m²s read ${round(light.distance)} m under it`
        : `${round(light.value)} lux read ${round(light.distance)} m under it, ${lux(light.luxPerMicromole)}`;
    case 'file':
      return `the photometric file, ${lux(light.luxPerMicromole)}`;
  }
}
