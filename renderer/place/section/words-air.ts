import type { Circulation, Door, Fan, Vent } from '../../../core/index.ts';
import {
  formatArea,
  formatNumber,
  formatPower,
  formatTemperature,
  formatTemperatureChange,
} from '../../state/units.ts';
import type { UnitPreferences } from '../../state/units.ts';

const ventNames: Record<Vent['position'], string> = {
  roof: 'Roof vent',
  side: 'Side vent',
  end: 'End vent',
};

/** A vent that begins to open here stands open always [°C] (`ventSchema`). */
const openAlways = -60;

export function ventWords(vent: Vent, units: UnitPreferences): string {
  if (vent.openAt <= openAlways)
    return `${ventNames[vent.position]}: ${formatArea(vent.area, units)}, always open`;
  const range = formatTemperatureChange(vent.band, units, 0).replace('+', '');
  return `${ventNames[vent.position]}: ${formatArea(vent.area, units)} when open, opens from ${formatTemperature(vent.openAt, units)} over ${range}`;
}

export function doorWords(door: Door, units: UnitPreferences): string {
  const warm = door.above === null ? '' : ` on days of ${formatTemperature(door.above, units)} and more`;
  return `Door: ${formatArea(door.area, units)}, open from ${door.from} to ${door.to}${warm}`;
}

const drawnFrom: Record<Fan['draws'], string> = {
  around: '',
  room: ', draws air from the room',
  outdoors: ', draws air from outdoors',
};

export function fanWords(fan: Fan, units: UnitPreferences): string {
  const least =
    fan.leastSpeed > 0 ? `, never under ${formatNumber(fan.leastSpeed * 100)} % of full speed` : '';
  return `Extract fan: ${formatNumber(fan.flow)} m³ an hour, ${formatPower(fan.watts)}, runs from ${formatTemperature(fan.onAt, units)}${least}${drawnFrom[fan.draws]}`;
}

const runTimes: Record<Circulation['runs'], string> = {
  always: 'runs day and night',
  day: 'runs by day',
  night: 'runs by night',
};

export function circulationWords(circulation: Circulation): string {
  return `Circulation fan: ${formatPower(circulation.watts)}, moves the air at ${formatNumber(circulation.airSpeed, 1)} m/s, ${runTimes[circulation.runs]}`;
}

/** Vents, door and fans in few words. */
export function airWords(
  place: {
    vents: readonly Vent[];
    door: Door | null;
    fan: Fan | null;
    circulation: Circulation | null;
  },
  units: UnitPreferences,
): string[] {
  return [
    ...place.vents.map((vent) => ventWords(vent, units)),
    place.door ? doorWords(place.door, units) : '',
    place.fan ? fanWords(place.fan, units) : '',
    place.circulation ? circulationWords(place.circulation) : '',
  ];
}
