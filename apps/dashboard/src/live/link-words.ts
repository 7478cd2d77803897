import { type LinkNews, linkSettings } from '@surae/sensors';
import { LIVE_WORDS } from '@surae/shared';
import { fill } from '../words/fill.ts';

/** What to say while a test runs of news of the connection; undefined where what was said before goes on to be true. */
export function linkWords(news: LinkNews): string | undefined {
  switch (news.state) {
    case 'lost':
      return fill(LIVE_WORDS.lost, { seconds: linkSettings.longestHoleMs / 1000 });
    case 'back': {
      const seconds = news.afterS.toFixed(1);
      return news.lostCount === null
        ? fill(LIVE_WORDS['back-untold'], { seconds })
        : fill(LIVE_WORDS.back, { seconds, lost: news.lostCount });
    }
    case 'disturbed':
      return LIVE_WORDS.disturbed.text;
    case 'waiting':
    case 'trying':
      return undefined;
    default:
      return news satisfies never;
  }
}
