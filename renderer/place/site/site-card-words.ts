import { ratingFor } from '../../../core/index.ts';
import type { SiteCard } from '../../../core/index.ts';

type Show = (celsius: number) => string;

/** What zone and rating mean for plants left outdoors. */
export function hardinessWords(card: SiteCard, show: Show): string {
  const { words } = ratingFor(card.tenthMinimum);
  const colder = `One winter in ten is colder than about ${show(card.tenthMinimum)}`;
  if (card.rating === 'H1a') return `${colder}. Even ${words} stand the other nine outdoors.`;
  return `${colder}. To stand the other nine outdoors takes ${words}: rating ${card.rating} or hardier.`;
}

/** First and last frost in sentences; `dayWords` says a day `MM-DD`. */
export function frostWords(card: SiteCard, dayWords: (monthDay: string) => string): string {
  const { firstFrost: first, lastFrost: last } = card;
  if (first.median === null || last.median === null) {
    if (first.oneInTen === null || last.oneInTen === null) return 'No frost in the years looked at.';
    return `Most years have no frost. In one of ten it comes from ${dayWords(first.oneInTen)} on and may last until ${dayWords(last.oneInTen)}.`;
  }
  if (card.frostFreeDays < 14) return 'Frost may come in any month.';
  const early = first.oneInTen === null ? '' : `, in one year of ten by ${dayWords(first.oneInTen)}`;
  const late = last.oneInTen === null ? '' : `, in one year of ten as late as ${dayWords(last.oneInTen)}`;
  return `First frost about ${dayWords(first.median)}${early}. Last frost about ${dayWords(last.median)}${late}. ${Math.round(card.frostFreeDays)} days between them are free of frost.`;
}

/** Where the figures come from. */
export function originWords(card: SiteCard, showChange: Show): string {
  const years = `${card.years} years ${card.origin}`;
  if (card.frostHollow === 0) return `From ${years}.`;
  const how = card.frostHollow > 0 ? 'below' : 'above';
  return `From ${years}, with clear still nights up to ${showChange(Math.abs(card.frostHollow))} ${how} the weather station’s.`;
}
