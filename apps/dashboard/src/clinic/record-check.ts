import { casebookOf } from '@surae/casebook';
import { CLINIC_WORDS, RECORD_PROBLEMS } from '@surae/shared';
import type { RecordStore, StoredDocument } from '@surae/storage';
import { fill } from '../words/fill.ts';

/** Everything that was looked through, and what of it cannot be read, in words. */
export interface RecordCheck {
  readonly entries: number;
  readonly lines: readonly string[];
}

/** All documents of a store, page by page. */
export async function allDocuments(store: Pick<RecordStore, 'changesSince'>): Promise<readonly StoredDocument[]> {
  const found: StoredDocument[] = [];
  let mark: string | null = null;
  for (;;) {
    const changes = await store.changesSince(mark);
    found.push(...changes.documents.map(({ document }) => document));
    if (!changes.more) return found;
    mark = changes.mark;
  }
}

/** Reads everything of a store, and says what is damaged or does not fit; it changes nothing. */
export async function checkedRecord(store: Pick<RecordStore, 'changesSince' | 'problems'>): Promise<RecordCheck> {
  const documents = await allDocuments(store);
  const line = (id: string, kind: string, why: string): string =>
    fill(CLINIC_WORDS['problem-line'], { kind, id: id.slice(0, 8), why });
  const bodies = casebookOf(documents).problems.map(({ id, kind, code, detail }) =>
    line(id, kind, detail === '' ? RECORD_PROBLEMS[code].text : `${RECORD_PROBLEMS[code].text} (${detail})`),
  );
  const stored = (await store.problems()).map(({ id, code }) =>
    line(
      id,
      CLINIC_WORDS[code === 'piece-missing' ? 'problem-recording' : 'problem-entry'].text,
      RECORD_PROBLEMS[code].text,
    ),
  );
  return { entries: documents.length, lines: [...stored, ...bodies] };
}
