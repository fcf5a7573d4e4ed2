import type { Heater, Place, Section, WaterStore } from '../../../core/index.ts';
import { formatArea, formatLength, formatNumber, formatPower, formatTemperature } from '../../state/units.ts';
import type { UnitPreferences } from '../../state/units.ts';
import { hoursWords } from '../../lamps/hours.ts';

export function lampWords(lamp: Place['lamps'][number], units: UnitPreferences): string {
  const count = lamp.count > 1 ? `${lamp.count} × ` : '';
  return `${lamp.name}: ${count}${formatPower(lamp.watts)}, ${formatLength(lamp.height, units)} over the plants, ${hoursWords(lamp)}`;
}

const heaterKinds: Record<Heater['kind'], string> = {
  fan: 'fan heater',
  tubular: 'tube heater',
  'oil-filled': 'oil-filled radiator',
  propane: 'propane heater',
  paraffin: 'paraffin heater',
  'heat-mat': 'heat mat',
  'heat-pump': 'heat pump',
};

/** What kind of heater it is, where its name does not say so. */
function kindWords({ name, kind }: Heater): string {
  return name.toLowerCase().includes(heaterKinds[kind]) ? '' : `${heaterKinds[kind]}, `;
}

export function heaterWords(heater: Heater, units: UnitPreferences): string {
  const hours = heater.hours === null ? '' : `, from ${heater.hours.from} to ${heater.hours.to}`;
  const flue = heater.flued ? ', with a flue' : '';
  return `${heater.name}: ${kindWords(heater)}${formatPower(heater.power)}, holds ${formatTemperature(heater.setPointNight, units)} by night${hours}${flue}`;
}

const waterForms: Record<WaterStore['form'], readonly [string, string]> = {
  drum: ['drum', 'drums'],
  canister: ['canister', 'canisters'],
  bottle: ['bottle', 'bottles'],
  trough: ['trough', 'troughs'],
};

export function waterWords(store: WaterStore): string {
  const [one, many] = waterForms[store.form];
  if (store.count <= 1) return `${store.name}: a ${one} of ${formatNumber(store.litres)} litres of water`;
  return `${store.name}: ${formatNumber(store.count)} ${many} of ${formatNumber(store.litres)} litres of water`;
}

export function plantsWords(place: Place, section: Section, units: UnitPreferences): string {
  const on =
    section.plantLevel > 0.05 ? `on a bench ${formatLength(section.plantLevel, units)} high` : onFloor(place);
  return `Plants ${on}, ${formatArea(place.growingArea, units)}`;
}

function onFloor({ shape }: Place): string {
  if (shape.kind === 'window-bay') return 'on the sill';
  if (shape.kind === 'shelf') return 'on the shelf';
  return shape.kind === 'tent' ? 'on the floor' : 'on the ground';
}
