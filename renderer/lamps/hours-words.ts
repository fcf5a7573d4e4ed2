import type { LampPlacing, LampPlacings } from '../../core/index.ts';
import { formatEnergy, formatHours, formatMoney } from '../state/units.ts';
import { timesWords } from './hours.ts';

/** A placing in words: `23:00 to 07:00 and 17:00 to 19:00`, `day made longer before dawn`. */
export function placingWords(placing: LampPlacing): string {
  if (placing.end === null) return timesWords(placing);
  const end = { dawn: 'before dawn', dusk: 'after dusk', both: 'before dawn and after dusk' }[placing.end];
  return `the day made longer ${end}`;
}

/** What an amount of heat or light current changes by: `30 kWh less`, `the same`. */
function changeWords(kwh: number): string {
  if (Math.abs(kwh) < 0.5) return 'the same';
  return `${formatEnergy(Math.abs(kwh))} ${kwh < 0 ? 'less' : 'more'}`;
}

/** The proposal in one sentence with lamp, heater and money together; or that nothing is saved. */
export function proposalWords({ now, proposed, hours }: LampPlacings, currency: string): string {
  if (proposed === null)
    return `The hours as they are do best: no other placing of the ${formatHours(hours)} saves money without speaking against the plants. Lamp, heaters and fans cost ${formatMoney(now.cost, currency)} a season.`;
  const lamp = changeWords(proposed.lampKwh - now.lampKwh);
  const heater = changeWords(proposed.heaterKwh - now.heaterKwh);
  const heat =
    now.heaterKwh < 0.5 && proposed.heaterKwh < 0.5 ? 'there is no heater to spare' : `heaters ${heater}`;
  return `Burn it ${placingWords(proposed)} instead of ${placingWords(now)}: lamp ${lamp}, ${heat}, and ${formatMoney(proposed.saves, currency)} saved a season, lamp and heaters together.`;
}
