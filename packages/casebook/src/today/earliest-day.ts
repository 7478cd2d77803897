import { dayNumber } from '../compare/leg-past.ts';
import type { EpisodeLine } from './today-facts.ts';

/**
 * The first day that an episode can have begun on: of a month its first day, of a year likewise; where it was not told, the day on
 * which it was written down. Null where that cannot be read [d].
 */
export function earliestDay({ began, at }: Pick<EpisodeLine, 'began' | 'at'>): number | null {
  return dayNumber(began === null ? at : `${began}${'-01-01'.slice(0, 10 - began.length)}`);
}
