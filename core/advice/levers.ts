import type { Place } from '../plan/schema.ts';
import type { Lamp } from '../plan/equipment.ts';
import { lampOf } from '../plan/parts.ts';
import type { LeverId, PlanChange } from './result.ts';
import { mainHeater } from './change.ts';
import { burningHours, stretchedHours } from './lamp-hours.ts';
import { strengthOf } from './lamp-view.ts';

/**
 * One lever of one place: a grid of settings in the order "least change first", each with its change,
 * its words and what it costs to buy. `life` is the years the purchase is spread over.
 */
export interface Lever {
  readonly id: LeverId;
  readonly placeId: string;
  readonly unit: string;
  readonly from: number;
  readonly settings: readonly LeverSetting[];
  readonly life: number;
  readonly cautions: readonly string[];
}

export interface LeverSetting {
  readonly value: number;
  readonly words: string;
  readonly purchase: number;
  readonly change: PlanChange;
}

/** Life of purchases [years]: lamps 8, heaters 10, bubble lining 4, fleece 3 (common practice, no source). */
const lifeOf = { lamp: 8, heater: 10, lining: 4, fleece: 3 };

/** Price of lining and fleece a square metre in the plan's currency (common practice, no source). */
const liningPrice = 1.8;
const fleecePrice = 0.9;

const mainsCaution =
  'Mains near water: have sockets with residual-current protection fitted by a licensed electrician, and keep to local codes.';
const heaterCaution =
  'Keep heaters clear of fleece, film and leaves, on a socket of their own, never on a coiled lead; local codes and the maker’s distances come first.';

/** All levers of a place that lead up (towards warmth and light) or down (towards a cool rest). */
export function leversOf(place: Place, coverArea: number, direction: 'up' | 'down'): Lever[] {
  const levers: Lever[] = [];
  place.lamps.forEach((lamp, index) => {
    levers.push(lampHours(place, lamp, index, direction), lampPower(place, lamp, index, direction));
  });
  if (direction === 'up' && place.lamps.length === 0) levers.push(lampPower(place, undefined, 0, direction));
  levers.push(setPoint(place, direction));
  if (direction === 'up' && place.lining === null && hasGlazing(place)) levers.push(lining(place, coverArea));
  if (direction === 'up' && place.shape.kind !== 'window-bay') levers.push(fleece(place));
  return levers.filter((lever) => lever.settings.length > 0);
}

function hasGlazing(place: Place): boolean {
  return !['tent', 'shelf', 'listed'].includes(place.shape.kind);
}

/**
 * Hours a day in half-hour steps, to 18 h up or 0.5 h down. A lamp that lengthens the natural day is set no longer
 * than its own longest day and no shorter than the hour a plan can hold.
 */
function lampHours(place: Place, lamp: Lamp, index: number, direction: 'up' | 'down'): Lever {
  const extending = lamp.control.kind === 'extend';
  const now = lamp.control.kind === 'extend' ? lamp.control.hours : burningHours(lamp);
  const most = extending ? Math.min(18, lamp.mostDay ?? 18) : 18;
  const least = extending ? 1 : 0.5;
  const step = direction === 'up' ? 0.5 : -0.5;
  const settings: LeverSetting[] = [];
  for (let hours = now + step; hours <= most && hours >= least; hours += step) {
    const extra = Math.round((hours - now) * 60);
    settings.push({
      value: hours,
      words: extending
        ? `${lamp.name}: a day of ${hours} h instead of ${now} h`
        : `${lamp.name}: ${hours} h a day instead of ${now} h`,
      purchase: 0,
      change: {
        placeId: place.id,
        lampIndex: index,
        lamp:
          lamp.control.kind === 'extend'
            ? { control: { ...lamp.control, hours } }
            : stretchedHours(lamp, extra),
      },
    });
  }
  return {
    id: 'lamp-hours',
    placeId: place.id,
    unit: 'h',
    from: now,
    settings,
    life: lifeOf.lamp,
    cautions: [],
  };
}

const addedLamp: Lamp = lampOf({
  id: 'added',
  name: 'LED panel',
  technology: 'led-white',
  efficacy: 2.5,
  count: 1,
  height: 0.4,
  length: 0.5,
  width: 0.5,
  on: '07:00',
  off: '19:00',
  watts: 1,
});

/** Price of a good LED fitting a watt, in the plan's currency (common practice, no source). */
const lampPricePerWatt = 1.5;

/** Watts at the plug in steps of 5 W: the lamp there is made stronger or weaker, or one is hung where none is. */
function lampPower(place: Place, lamp: Lamp | undefined, index: number, direction: 'up' | 'down'): Lever {
  const now = lamp === undefined ? 0 : lamp.watts * lamp.count * lamp.dimming;
  const settings: LeverSetting[] = [];
  const step = direction === 'up' ? 5 : -5;
  const most = Math.max(300, now * 3);
  for (let watts = now + step; watts <= most && watts >= 5; watts += step) {
    const full = lamp === undefined ? 0 : lamp.watts * lamp.count;
    const inReach = lamp !== undefined && watts <= full;
    const purchase = inReach || direction === 'down' ? 0 : (watts - full) * lampPricePerWatt;
    const change: PlanChange =
      lamp === undefined
        ? { placeId: place.id, addLamp: { ...addedLamp, watts, price: purchase } }
        : inReach && watts / full >= 0.1
          ? { placeId: place.id, lampIndex: index, lamp: { dimming: watts / full } }
          : { placeId: place.id, lampIndex: index, lamp: { ...strengthOf(lamp, watts / full), dimming: 1 } };
    const words =
      lamp === undefined
        ? `Hang an LED panel of ${watts} W, 12 h a day`
        : `${lamp.name}: ${Math.round(watts)} W instead of ${Math.round(now)} W`;
    settings.push({ value: watts, words, purchase, change });
  }
  return {
    id: 'lamp-power',
    placeId: place.id,
    unit: 'W',
    from: now,
    settings,
    life: lifeOf.lamp,
    cautions: [mainsCaution],
  };
}

/** Power of the heater bought where there is none [W] and its price: a fan heater in a house, a small tube in a tent or on a sill (common practice, no source). */
function boughtHeater(place: Place): { power: number; words: string; price: number } {
  const indoors = ['tent', 'shelf', 'window-bay'].includes(place.shape.kind);
  return indoors
    ? { power: 60, words: 'Buy a 60 W tubular heater', price: 25 }
    : { power: 2000, words: 'Buy a 2 kW fan heater', price: 45 };
}

/** Set point in half kelvin, to 22 °C up or 0 °C down; a fan heater is bought where there is none. */
function setPoint(place: Place, direction: 'up' | 'down'): Lever {
  const heater = place.heaters[mainHeater(place.heaters)];
  const settings: LeverSetting[] = [];
  const now = heater === undefined ? -1 : heater.setPointNight;
  const step = direction === 'up' ? 0.5 : -0.5;
  const first = heater === undefined ? 0 : Math.round((now + step) * 2) / 2;
  const none = heater === undefined;
  const bought = boughtHeater(place);
  for (let value = first; value <= 22 && value >= 0 && !(none && direction === 'down'); value += step) {
    settings.push({
      value,
      words: none
        ? `${bought.words} and set it to ${value} °C`
        : `${heater.name}: set to ${value} °C instead of ${now} °C`,
      purchase: none ? bought.price : 0,
      change: none
        ? { placeId: place.id, heaterSetPoint: value, heaterPower: bought.power }
        : { placeId: place.id, heaterSetPoint: value },
    });
  }
  return {
    id: 'heater-set-point',
    placeId: place.id,
    unit: '°C',
    from: now,
    settings,
    life: lifeOf.heater,
    cautions: [heaterCaution],
  };
}

function lining(place: Place, coverArea: number): Lever {
  const settings = [
    {
      value: 1,
      words: 'Line the glazing with bubble film',
      purchase: Math.round(coverArea * liningPrice),
      change: { placeId: place.id, lining: 'bubble-lining' },
    },
  ];
  return { id: 'lining', placeId: place.id, unit: '', from: 0, settings, life: lifeOf.lining, cautions: [] };
}

function fleece(place: Place): Lever {
  const now = place.fleece === null ? 0 : place.fleece.layers;
  const settings: LeverSetting[] = [];
  for (let layers = now + 1; layers <= 3; layers++) {
    settings.push({
      value: layers,
      words: `Frost fleece over the plants each night, ${layers} layer${layers > 1 ? 's' : ''}`,
      purchase: Math.round((layers - now) * place.growingArea * fleecePrice * 1.5),
      change: { placeId: place.id, fleece: { covering: 'fleece-30', layers } },
    });
  }
  return {
    id: 'fleece',
    placeId: place.id,
    unit: 'layers',
    from: now,
    settings,
    life: lifeOf.fleece,
    cautions: [],
  };
}
