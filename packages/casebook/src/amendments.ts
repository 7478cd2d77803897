import type { Json, StoredDocument } from '@surae/storage';

/** Members of a body as they are from then on. */
interface AmendmentBody {
  readonly change: Readonly<Record<string, Json>>;
}

/** What corrections did that cannot stand: the document is read as it was before. */
export interface AmendmentRefused {
  /** of the amendment or removal */
  readonly id: string;
  readonly kind: string;
  /** what it is about is not there; may not be changed; no longer fits its kind */
  readonly code: 'about-nothing' | 'not-amendable' | 'no-fit-after';
}

/** Kinds that tell what was done with the record: taken out, they would hide it. */
const staying: readonly string[] = ['audit-entry', 'author-changed', 'person-erased', 'clock-set-back'];

/** How a document is judged that an amendment would make. */
export interface AmendmentRules {
  /** whether documents of a kind may be amended at all */
  isAmendable(kind: string): boolean;
  /** whether a document still is one of its kind */
  fits(document: StoredDocument): boolean;
}

/**
 * Documents as they count: every amendment laid over the one that it is about, and what was removed left out.
 *
 * An amendment names members of the body as they are from then on; the other members stay. Of several the later in order
 * wins, member by member. One that makes a body that is none of its kind is refused and changes nothing. A removal takes
 * out of what counts the document that it is about, whatever amends it. Amendments and removals cannot be amended or
 * removed themselves: a further one says how it is.
 *
 * @param documents - in their order, amendments and removals among them [-]
 * @param rules - what may be amended, and what fits [-]
 * @returns the documents that count, amendments and removals not among them, and what was refused [-]
 * Source: ours
 */
export function laidOver(
  documents: readonly StoredDocument[],
  rules: AmendmentRules,
): { readonly documents: readonly StoredDocument[]; readonly refused: readonly AmendmentRefused[] } {
  const changes = documents.filter(({ kind }) => kind === 'amendment' || kind === 'removal');
  if (changes.length === 0) return { documents, refused: [] };
  const state = new Map(
    documents.filter(({ kind }) => kind !== 'amendment' && kind !== 'removal').map((one) => [one.id, one]),
  );
  const removed = new Set<string>();
  const refused: AmendmentRefused[] = [];
  for (const { id, kind, about, body } of changes) {
    const refuse = (code: AmendmentRefused['code']): void => void refused.push({ id, kind, code });
    const target = about === null ? undefined : state.get(about);
    if (target === undefined) {
      refuse('about-nothing');
      continue;
    }
    if (kind === 'removal') {
      if (staying.includes(target.kind)) refuse('not-amendable');
      else removed.add(target.id);
      continue;
    }
    if (!rules.isAmendable(target.kind)) {
      refuse('not-amendable');
      continue;
    }
    const { change } = body as unknown as AmendmentBody;
    const after = { ...target, body: { ...(target.body as Readonly<Record<string, Json>>), ...change } };
    if (rules.fits(after)) state.set(target.id, after);
    else refuse('no-fit-after');
  }
  return { documents: [...state.values()].filter(({ id }) => !removed.has(id)), refused };
}
