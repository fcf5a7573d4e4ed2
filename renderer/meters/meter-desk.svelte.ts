import { lampTechnology, readMeter } from '../../core/index.ts';
import type { DaylightReading, Lot, MeterReading, MeterResult, Place, Plan } from '../../core/index.ts';
import { namedHours } from '../lamps/hours.ts';
import { readTyped } from './reading-text.ts';
import type { MeterUnit } from './reading-text.ts';

/** What was read, under which light and for which plants; the answer follows. */
export class MeterDesk {
  readonly #plan: () => Plan;

  value = $state(400);
  unit = $state<MeterUnit>('lux');
  meter = $state<MeterReading['meter']>('cheap');
  kind = $state<'daylight' | 'lamp'>('daylight');
  technology = $state('led-white');
  hours = $state(12);
  /** `12-21`. */
  day = $state('12-21');
  time = $state('12:00');
  sky = $state<DaylightReading['sky']>('overcast');
  where = $state<DaylightReading['where']>('sill');
  facing = $state<number | null>(180);
  placeId = $state<string | null>(null);
  lotId = $state<string | null>(null);

  constructor(plan: () => Plan, day: string, placeId: string | null) {
    this.#plan = plan;
    this.day = day;
    this.choosePlace(placeId);
  }

  get place(): Place | null {
    return this.#plan().places.find((place) => place.id === this.placeId) ?? null;
  }
  /** Lots to judge by: those of the place, or all where no place is chosen. */
  get lots(): readonly Lot[] {
    const { lots } = this.#plan();
    return this.placeId === null ? lots : lots.filter((lot) => lot.place === this.placeId);
  }
  get lot(): Lot | null {
    return this.lots.find((lot) => lot.id === this.lotId) ?? this.lots[0] ?? null;
  }

  readonly reading: MeterReading = $derived.by(() => ({
    value: this.value,
    unit: this.unit,
    meter: this.meter,
    light:
      this.kind === 'lamp'
        ? { kind: 'lamp', technology: this.technology, hours: this.hours }
        : {
            kind: 'daylight',
            day: this.day,
            time: this.time,
            sky: this.sky,
            where: this.where,
            facing: this.facing,
          },
  }));
  readonly result: MeterResult = $derived.by(() => readMeter(this.reading, this.#plan().site));

  /** Takes what was typed into the field; a unit typed with it is taken too. */
  type(text: string): void {
    const typed = readTyped(text);
    if (typeof typed === 'string') return;
    this.value = typed.value;
    if (typed.unit !== null) this.unit = typed.unit;
  }

  /** The light that is usual in a place becomes the light read. */
  choosePlace(placeId: string | null): void {
    this.placeId = placeId;
    this.lotId = null;
    const { place } = this;
    if (place === null) return;
    const { shape } = place;
    const indoors = shape.kind === 'tent' || shape.kind === 'shelf';
    this.kind = indoors ? 'lamp' : 'daylight';
    this.where = shape.kind === 'window-bay' ? 'sill' : 'under glass';
    this.facing = shape.kind === 'window-bay' ? shape.azimuth : null;
    const [lamp] = place.lamps;
    if (lamp === undefined) return;
    this.technology = lampTechnology(lamp.technology).id;
    this.hours = Math.min(namedHours(lamp), indoors ? (lamp.mostDay ?? 24) : 24);
  }
}
