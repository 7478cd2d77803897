import type { LinkNews, SampleBlock } from '@surae/sensors';
import { HoleWatch } from './hole-watch.ts';
import { linkWords } from './link-words.ts';

/** What a running test tells of its sensor: the last news of the connection, and holes in the samples. */
export class LinkFollow {
  private readonly holes = new HoleWatch();
  private words: string | null = null;
  private isAfterHole = false;
  private away = false;

  /** what was last told of the connection; null when there is nothing to tell */
  get said(): string | null {
    return this.words;
  }

  /** whether the connection is broken now */
  get isAway(): boolean {
    return this.away;
  }

  hear(news: LinkNews): void {
    if (news.state === 'lost') this.away = true;
    if (news.state === 'back') this.away = false;
    this.words = linkWords(news) ?? this.words;
  }

  add(block: SampleBlock): void {
    this.isAfterHole ||= this.holes.isAfterHole(block);
  }

  /** Whether samples are missing since this was last asked. */
  takeHole(): boolean {
    const { isAfterHole } = this;
    this.isAfterHole = false;
    return isAfterHole;
  }
}
