import { RECOUNT_STUDY_WORDS } from '@surae/shared';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';
import type { RecountSession } from './recount-session.ts';

/** What was done last, in words; empty for a recording that was just come to. */
export function newsWords({ news }: Pick<RecountSession, 'news'>): string {
  const words = RECOUNT_STUDY_WORDS;
  switch (news.code) {
    case 'item':
      return '';
    case 'put':
    case 'changed':
    case 'same':
    case 'taken': {
      const { place, atS, verdict } = news.mark;
      return fill(words[news.code], { place, time: decimal(atS, 2), verdict: words[verdict].text });
    }
    case 'counted':
      return fill(words.counted, { count: news.count });
    default:
      return words[news.code].text;
  }
}

/** How many are marked and count, or that a table was filled in. */
export function tallyWords(session: Pick<RecountSession, 'marks' | 'counting' | 'confirmed' | 'isFromTable'>): string {
  const words = RECOUNT_STUDY_WORDS;
  const { marks, counting, confirmed } = session;
  if (session.isFromTable) {
    return confirmed === null ? words['from-table-open'].text : fill(words['from-table'], { count: confirmed });
  }
  const open = marks.filter(({ verdict }) => verdict === 'cannot_tell').length;
  const tally = fill(open === 0 ? words.tally : words['tally-open'], { marked: marks.length, counting, open });
  return confirmed === null ? `${tally}.` : `${fill(words['tally-confirmed'], { count: confirmed })}. ${tally}.`;
}
