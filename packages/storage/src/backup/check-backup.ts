import type { BackupProblem, BackupReport } from './backup-report.ts';
import { type BackupNews, type BackupOpener, readBackup } from './read-backup.ts';

/** Adds up what a backup holds while it is read. */
export class BackupTally {
  private isEncrypted = false;
  private bytes = 0;
  private readonly belongs = { documents: new Set<string>(), streams: new Set<string>() };
  private readonly whole = { documents: new Set<string>(), streams: new Set<string>() };
  private readonly lost = new Set<string>();
  private readonly problems: BackupProblem[] = [];
  /** parts of the list of what belongs in it; how many there are is not known before one of them came */
  private readonly parts = { came: 0, all: Infinity };

  take(news: BackupNews): void {
    if (news.is === 'header') this.isEncrypted = news.isEncrypted;
    else if (news.is === 'bytes') this.bytes = news.bytes;
    else if (news.is === 'problem') this.problems.push(news.problem);
    else if (news.is === 'ids') {
      this.parts.came += 1;
      this.parts.all = news.parts;
      for (const id of news.documents) this.belongs.documents.add(id);
      for (const id of news.streams) this.belongs.streams.add(id);
    } else if (news.is === 'document') this.whole.documents.add(news.owned.document.id);
    else if (news.is === 'stream') this.whole.streams.add(news.stream.id);
    else this.lost.add(news.id);
  }

  report(): BackupReport {
    const missing = (sort: 'documents' | 'streams'): string[] =>
      [...this.belongs[sort]].filter((id) => !this.whole[sort].has(id) && !this.lost.has(id));
    const documents = { whole: this.whole.documents.size, missing: missing('documents') };
    const streams = { whole: this.whole.streams.size, missing: missing('streams') };
    return {
      isWhole: this.problems.length === 0 && documents.missing.length === 0 && streams.missing.length === 0,
      isEncrypted: this.isEncrypted,
      documents,
      streams,
      isListWhole: this.parts.came === this.parts.all,
      lostBefore: [...this.lost],
      problems: this.problems,
      bytes: this.bytes,
    };
  }
}

/** Reads a backup to its end and tells what of it is whole. */
export async function checkBackup(source: AsyncIterable<Uint8Array>, open: BackupOpener): Promise<BackupReport> {
  const tally = new BackupTally();
  for await (const news of readBackup(source, open)) tally.take(news);
  return tally.report();
}
