import type { Fleece, Screen, SecondSkin, ShadeCloth, Sheer, UpperShelf } from '../../../core/index.ts';
import { dayWords } from '../../forms/days.ts';
import { formatLength, formatTemperature } from '../../state/units.ts';
import type { UnitPreferences } from '../../state/units.ts';
import { coveringName } from './words-fabric.ts';

function drawn(screen: Screen, units: UnitPreferences): string {
  if (screen.closedWhen === 'hours') return `drawn from ${screen.from} to ${screen.to}`;
  if (screen.closedWhen === 'night') return 'drawn at night';
  return `drawn on nights colder than ${formatTemperature(screen.below, units)}`;
}

function laid(fleece: Fleece, units: UnitPreferences): string {
  if (fleece.laidWhen === 'always') return 'all winter';
  if (fleece.laidWhen === 'night') return 'every night';
  return `on nights colder than ${formatTemperature(fleece.below, units)}`;
}

export const shadeWords = (cloth: ShadeCloth): string =>
  `Shade cloth: ${coveringName(cloth.covering)}, from ${dayWords(cloth.from)} to ${dayWords(cloth.to)}`;

export const sheerWords = ({ covering, from, to }: Sheer): string =>
  `Sheer curtain: ${coveringName(covering)}, ${from === '00:00' && to === '24:00' ? 'always drawn' : `drawn from ${from} to ${to}`}`;

export const shelfWords = ({ height, length, width }: UpperShelf, units: UnitPreferences): string =>
  `Upper shelf: ${formatLength(height, units)} over the plants below, ${formatLength(length, units)} by ${formatLength(width, units)}`;

export const liningWords = (lining: string): string => `Lining: ${coveringName(lining)}`;

export const skinWords = (skin: SecondSkin, units: UnitPreferences): string =>
  `Second skin: ${coveringName(skin.covering)}, ${formatLength(skin.gap, units, 3)} inside the cover`;

export const screenWords = (screen: Screen, units: UnitPreferences): string =>
  `Screen: ${coveringName(screen.covering)}, ${drawn(screen, units)}`;

export const curtainWords = (curtain: Screen, units: UnitPreferences): string =>
  `Curtain before the room: ${coveringName(curtain.covering)}, ${drawn(curtain, units)}`;

export function fleeceWords(fleece: Fleece, units: UnitPreferences): string {
  const layers = Math.round(fleece.layers) > 1 ? `${Math.round(fleece.layers)} layers of ` : '';
  const down = fleece.hangs === 'floor' ? 'hanging to the floor' : 'hanging to the bench';
  return `Fleece over the plants: ${layers}${coveringName(fleece.covering)}, ${laid(fleece, units)}, ${down}`;
}
