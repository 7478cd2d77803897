import type { StoredDocument } from '@surae/storage';

/**
 * What stands for a person or a visit whose own page cannot be read, so that what was done with them is not hidden: a name
 * of one question mark and nothing known of the body; a visit by whom it is about. Undefined for every other kind.
 */
export function standIn(document: StoredDocument): StoredDocument | undefined {
  if (document.kind === 'person') {
    return { ...document, body: { name: '?', bodyMassKg: null, heelLeverM: null, demo: false } };
  }
  if (document.kind === 'visit' && document.about !== null) {
    return { ...document, body: { personId: document.about } };
  }
  return undefined;
}
