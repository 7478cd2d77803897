import type { OwnedDocument } from '../document.ts';
import { StorageError } from '../errors.ts';
import type { Adoption, ForeignStream } from '../record-store.ts';
import type { BackupReport, BackupSource, RefusedItem, RestoreReport } from './backup-report.ts';
import { checkBackup } from './check-backup.ts';
import { type BackupOpener, readBackup } from './read-backup.ts';

const pageSize = 200;

/** A backup that was not restored because it is not whole; what of it is whole stands in the report. */
export class DamagedBackupError extends StorageError {
  readonly report: BackupReport;

  constructor(report: BackupReport) {
    super('damaged-backup', 'This backup is cut off or altered: nothing was restored.');
    this.report = report;
  }
}

/** What takes the things of a backup. */
export interface Restorer {
  adopt(documents: readonly OwnedDocument[]): Promise<readonly Adoption[]>;
  adoptStream(stream: ForeignStream): Promise<Adoption>;
}

/**
 * Reads a backup twice: once to see whether it is whole, and then to take what is not there yet. One that is not whole is
 * refused with what is missing, unless what is whole of it is asked for. One that was cut off while it was restored is restored
 * again.
 */
export async function restoreBackup(
  into: Restorer,
  source: BackupSource,
  open: BackupOpener,
  evenIfDamaged: boolean,
): Promise<RestoreReport> {
  const report = await checkBackup(source(), open);
  if (!report.isWhole && !evenIfDamaged) throw new DamagedBackupError(report);
  let added = 0;
  let alreadyThere = 0;
  const refused: RefusedItem[] = [];
  const count = (id: string, became: Adoption): void => {
    if (became === 'added') added += 1;
    else if (became === 'already-there') alreadyThere += 1;
    else refused.push({ id, why: became });
  };
  let waiting: OwnedDocument[] = [];
  const adopt = async (): Promise<void> => {
    const became = await into.adopt(waiting);
    waiting.forEach(({ document }, i) => count(document.id, became[i]!));
    waiting = [];
  };
  for await (const news of readBackup(source(), open)) {
    if (news.is === 'document') waiting.push(news.owned);
    if (waiting.length === pageSize) await adopt();
    if (news.is === 'stream') count(news.stream.id, await into.adoptStream(news.stream));
  }
  await adopt();
  return { ...report, added, alreadyThere, refused };
}
