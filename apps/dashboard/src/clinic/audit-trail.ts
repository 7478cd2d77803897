import type { AuditEntry, Entry } from '@surae/casebook';
import { entryOf } from '@surae/casebook';
import type { Json, RecordStore } from '@surae/storage';
import type { WallClock } from '../journey/visit-book.ts';

/** Version of the bodies of these documents. */
export const auditSchema = 1;

/**
 * Who opened, changed, exported and removed what, as documents in the clinic itself. Nothing but random ids is named, so that it
 * outlives a person who was erased. Of a clinic that is open to everybody nothing is written.
 */
export class AuditTrail extends EventTarget {
  private readonly store: RecordStore;
  private readonly clock: WallClock;
  private readonly author: string | null;
  private readonly opened = new Set<string>();
  /** entries that could not be written since the clinic was opened: what was done stands all the same */
  missing = 0;

  /** @param author - code of who works here; null where nothing is written */
  constructor(store: RecordStore, clock: WallClock, author: string | null) {
    super();
    this.store = store;
    this.clock = clock;
    this.author = author;
  }

  /** Writes that something was done; where it cannot be written, that is counted and told by `audit-missing`. */
  async write(
    what: AuditEntry['what'],
    subject: string | null = null,
    counts?: Readonly<Record<string, number>>,
  ): Promise<void> {
    const { author } = this;
    if (author === null) return;
    const body: Json = { what, subject, ...(counts === undefined ? {} : { counts }) };
    const at = this.clock.isoNow();
    try {
      // nobody's: it must outlive the person whom it names by id
      await this.store.add({ kind: 'audit-entry', schema: auditSchema, about: null, whose: null, author, at, body });
    } catch {
      this.missing += 1;
      this.dispatchEvent(new Event('audit-missing'));
    }
  }

  /** Somebody's page was opened; once in a session for each. */
  async personOpened(personId: string): Promise<void> {
    if (this.opened.has(personId)) return;
    this.opened.add(personId);
    await this.write('person-opened', personId);
  }

  /** All entries, the newest first. */
  async entries(): Promise<readonly Entry<AuditEntry>[]> {
    const documents = await this.store.documents({ kind: 'audit-entry' });
    return documents.map((one) => entryOf<AuditEntry>(one)).reverse();
  }
}
