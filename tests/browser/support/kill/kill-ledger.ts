// What a page was told by its store before its browser was killed, and what must therefore be there after the restart.
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import type { KillFound, KillNews, KillWork } from './kill-page.ts';

/** Each sort of work once before any comes again; two of them twice, because they are what a clinic does all day. */
const order: readonly KillWork[] = [
  'saving',
  'streaming',
  'backing-up',
  'migrating',
  'streaming',
  'erasing',
  'passphrase',
  'saving',
  'migrating',
  'backing-up',
];

/** Random numbers from 0 to 1, the same each time (mulberry32). */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** What is done, and how long after its beginning the browser is killed. */
export function killMoments(count: number): { work: KillWork; afterMs: number; next: string }[] {
  const random = seeded(20_260_101);
  return Array.from({ length: count }, (_, i) => {
    const work = order[i % order.length];
    // a migration is over within a moment; a stream is to be met between its writes
    const longestMs = work === 'migrating' ? 30 : work === 'streaming' ? 900 : 500;
    return { work, afterMs: Math.round(random() * longestMs), next: `kill number ${i + 1}` };
  });
}

interface StreamAcknowledged {
  readonly whose: string;
  generated: number;
  written: number;
  sha256: string | null;
}

const sampleRateHz = 1000;

export class KillLedger {
  private readonly documents = new Map<string, { hash: string; whose: string | null }>();
  private readonly streams = new Map<string, StreamAcknowledged>();
  private readonly old = new Map<string, readonly string[]>();
  /** people of whom an erasing was asked for, and whether it was acknowledged */
  private readonly erased = new Map<string, boolean>();
  private readonly gone = new Set<string>();
  private passphrases = ['seven lamps in the old mill'];
  private backup: string[] = [];
  private isBackupNoted = false;
  private kills = 0;
  private mostMissing = 0;
  private halfBackups = 0;
  private migrated = 0;
  private unacknowledged = 0;
  private readonly works = new Map<string, number>();
  private begun: () => void = () => {};

  take(news: KillNews): void {
    switch (news.is) {
      case 'begun':
        this.begun();
        break;
      case 'document':
        this.documents.set(news.id, news);
        break;
      case 'stream':
        this.streams.set(news.id, { whose: news.whose, generated: 0, written: 0, sha256: null });
        break;
      case 'generated':
        this.streams.get(news.id)!.generated = news.count;
        break;
      case 'written':
        this.streams.get(news.id)!.written = news.count;
        break;
      case 'closed':
        this.streams.get(news.id)!.sha256 = news.sha256;
        break;
      case 'erasing':
      case 'erased':
        this.erased.set(news.whose, news.is === 'erased');
        break;
      case 'passphrase':
        this.passphrases.push(news.asked);
        break;
      case 'changed':
        this.passphrases = [news.passphrase];
        break;
      case 'backup-begun':
        this.backup = [];
        break;
      case 'backup-part':
        this.backup.push(news.base64);
        break;
      case 'backup-noted':
        this.isBackupNoted = true;
        break;
      case 'old':
        this.old.set(news.name, news.ids);
        break;
      case 'migrated':
        this.migrated += 1;
        break;
      default:
        news satisfies never;
    }
  }

  /** Fulfilled once the work has begun. */
  begin(work: KillWork): Promise<void> {
    this.works.set(work, (this.works.get(work) ?? 0) + 1);
    return new Promise((resolve) => {
      this.begun = resolve;
    });
  }

  end(): void {
    this.kills += 1;
  }

  /** Opens the store of a page and compares what is there with what was acknowledged. */
  async expectAll(page: Page): Promise<KillFound> {
    const found = await page.evaluate(([passphrases, streams, old]) => killPage.open(passphrases, streams, old), [
      this.passphrases,
      [...this.streams.keys()],
      [...this.old.keys()],
    ] as const);
    expect(found.problems).toEqual([]);
    expect(found.plaintext).toBe(false);
    this.passphrases = [found.passphrase];
    this.expectPeople(found);
    this.expectStreams(found);
    for (const [name, ids] of this.old) expect(found.old[name]).toEqual(expect.arrayContaining([...ids]));
    if (this.isBackupNoted) expect(found.hasBackup).toBe(true);
    await this.expectBackup(page);
    return found;
  }

  figures(): string {
    const works = [...this.works].map(([work, count]) => `${count} ${work}`).join(', ');
    const acknowledged = [...this.old.values()].reduce((sum, { length }) => sum + length, this.documents.size);
    return (
      `${this.kills} kills (${works}): ${acknowledged} acknowledged documents and ${this.streams.size} streams, all whole but ` +
      `what was erased; ${this.unacknowledged} documents more; at most ${this.mostMissing} ms of a running stream missing; ` +
      `${this.halfBackups} backups cut off and told so; ${this.old.size - this.migrated} migrations met half way.`
    );
  }

  private expectPeople({ documents, people }: KillFound): void {
    // an erasing that was cut off before it was acknowledged has happened as a whole or not at all
    for (const [whose, isDone] of this.erased) {
      const left = [...this.documents].filter(([id, one]) => one.whose === whose && id in documents);
      const all = [...this.documents].filter(([, one]) => one.whose === whose);
      expect(left.length === 0 || (!isDone && left.length === all.length)).toBe(true);
      expect(people.includes(whose)).toBe(left.length > 0);
      if (left.length > 0) continue;
      this.gone.add(whose);
      for (const [id] of all) this.documents.delete(id);
    }
    this.erased.clear();
    const acknowledged = [...this.documents].map(([id, { hash }]) => [id, hash]);
    expect(documents).toMatchObject(Object.fromEntries(acknowledged));
    this.unacknowledged = Object.keys(documents).length - acknowledged.length;
  }

  private expectStreams({ streams }: KillFound): void {
    for (const [id, acknowledged] of this.streams) {
      const kept = streams[id] as KillFound['streams'][string] | undefined;
      // it goes with its person and not before
      expect(kept === undefined).toBe(this.gone.has(acknowledged.whose));
      if (kept === undefined) continue;
      expect(kept.isSame).toBe(true);
      expect(kept.samples).toBeGreaterThanOrEqual(acknowledged.written);
      if (acknowledged.sha256 !== null) expect(kept.sha256).toBe(acknowledged.sha256);
      const missing = ((acknowledged.generated - kept.samples) / sampleRateHz) * 1000;
      if (acknowledged.sha256 === null) expect(missing).toBeLessThanOrEqual(1000);
      if (acknowledged.sha256 === null) this.mostMissing = Math.max(this.mostMissing, missing);
    }
  }

  /** What came of a backup is whole to its last line, or told to be cut off. */
  private async expectBackup(page: Page): Promise<void> {
    if (this.backup.length === 0) return;
    const { isWhole, missing, whole } = await page.evaluate((parts) => killPage.check(parts), this.backup);
    if (!isWhole) this.halfBackups += 1;
    // the header and one list stand before what is listed; a line more or less is a stream of several lines
    if (!isWhole && this.backup.length > 3) expect(missing + whole).toBeGreaterThan(0);
    if (isWhole) expect(missing).toBe(0);
    this.backup = [];
  }
}
