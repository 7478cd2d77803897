import type { NewDocument } from '@surae/storage';

/** What is read and written by {@link PersonNotes}. */
interface NotesStore {
  readonly add: (document: Omit<NewDocument, 'author' | 'at'>) => Promise<{ readonly id: string }>;
}

/** What is kept of a person beside the visits, and what takes a document back. */
export class PersonNotes {
  private readonly store: NotesStore;

  constructor(store: NotesStore) {
    this.store = store;
  }

  /** Takes documents out of what counts; they stay readable. */
  async remove(ids: readonly string[], why: string): Promise<void> {
    for (const about of ids) {
      await this.store.add({ kind: 'removal', schema: 1, about, body: { why } });
    }
  }
}
