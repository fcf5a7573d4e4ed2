import { windOf } from '../../../core/index.ts';
import type { UnitPreferences } from '../../state/units.ts';
import { formatArea, formatNumber } from '../../state/units.ts';
import { clock, percent } from './figures.ts';
import { litArea, shareOf } from './sun-day.ts';
import type { Spell, SunMoment } from './sun-day.ts';

/** `from 09:20 to 15:00`, several joined. */
function stretches(spells: readonly Spell[]): string {
  return spells.map(({ from, to }) => `from ${clock(from)} to ${clock(to)}`).join(' and ');
}

/** The sun's day at a place in a sentence or two. */
export function dayWords(spells: readonly Spell[]): string {
  const of = (state: Spell['state']) => spells.filter((spell) => spell.state === state);
  const up = spells.filter((spell) => spell.state !== 'down');
  if (up.length === 0) return 'The sun does not rise.';
  const [lit, hidden, away] = [of('in'), of('skyline'), of('away')];
  const risen = `The sun is up from ${clock(up[0].from)} to ${clock(up[up.length - 1].to)}`;
  const always = hidden.length === 0 && away.length === 0;
  const reaches =
    lit.length === 0
      ? 'and never shines on the plants here'
      : `and shines on the plants ${always ? 'all that time' : stretches(lit)}`;
  const behind = hidden.length === 0 ? '' : ` It is behind what stands around ${stretches(hidden)}.`;
  const round = away.length === 0 ? '' : ` It stands where it cannot shine in ${stretches(away)}.`;
  return `${risen} ${reaches}.${behind}${round}`;
}

const listed = (things: readonly string[]) =>
  things.length < 2 ? things.join('') : `${things.slice(0, -1).join(', ')} and ${things[things.length - 1]}`;

/** The sun at one time, in words with its figures. */
export function nowWords(at: SunMoment, levelArea: number, units: UnitPreferences, lit = false): string {
  const stands = `At ${clock(at.minutes)} the sun stands ${formatNumber(at.elevation)}° high in the ${windOf(at.azimuth)}`;
  if (at.state === 'down')
    return `At ${clock(at.minutes)} the sun is down; only ${lit ? 'lamps and ' : ''}twilight can light the plants.`;
  if (at.state === 'skyline')
    return `${stands}, behind what stands around. The plants have the sky’s light alone.`;
  if (at.state === 'away')
    return `${stands}, where it cannot shine on the plants. They have the sky’s light alone.`;
  const share = Math.min(1, litArea(at) / levelArea);
  const on =
    share > 0.985
      ? `all of the plants’ level (${formatArea(levelArea, units)})`
      : `${percent(share)} of the plants’ level (${formatArea(levelArea, units)})`;
  const { shade, sheer } = at.cloths;
  const spread = sheer ? ' The sheer curtain spreads part of it, so the patch has no sharp edge.' : '';
  const under = [shade ? 'shade cloth' : '', 'the cover', sheer ? 'the sheer curtain' : ''].filter(Boolean);
  const trees = at.through < 1 ? ` Of it ${percent(at.through)} comes through what stands around.` : '';
  return `${stands}. It shines on ${on}, where ${listed(under)} ${under.length > 1 ? 'let' : 'lets'} in ${percent(shareOf(at))} of its light.${trees}${spread}`;
}
