import type { Episode, EpisodeLine, Soreness } from '@surae/casebook';
import { EPISODE_LINE_WORDS, SORENESS_WORDS } from '@surae/shared';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import { partDateOf } from '../words/part-dates.ts';

function where({ left, right }: Episode['sore']): string {
  const said = (place: Soreness): string => SORENESS_WORDS[place].text;
  const [ofLeft, ofRight] = [left, right].map((place) => (place === null || place === 'no' ? null : said(place)));
  if (ofLeft != null && ofRight != null) {
    return ofLeft === ofRight
      ? fill(EPISODE_LINE_WORDS['line-both'], { where: ofLeft })
      : fill(EPISODE_LINE_WORDS['line-each'], { left: ofLeft, right: ofRight });
  }
  return ofLeft != null
    ? fill(EPISODE_LINE_WORDS['line-left'], { where: ofLeft })
    : fill(EPISODE_LINE_WORDS['line-right'], { where: ofRight ?? said('no') });
}

/** An episode in one line: where, and since when; where that was not told, the day on which it was written down. */
export function episodeWords({
  sore,
  began,
  at,
  over = null,
}: Pick<EpisodeLine, 'sore' | 'began' | 'at'> & { readonly over?: Episode['over'] }): string {
  const what = where(sore);
  const since =
    began === null
      ? fill(EPISODE_LINE_WORDS['line-told'], { what, date: dayOf(at) })
      : fill(EPISODE_LINE_WORDS['line-since'], { what, date: partDateOf(began) });
  return over === null ? since : fill(EPISODE_LINE_WORDS['line-over'], { what: since, date: partDateOf(over) });
}
