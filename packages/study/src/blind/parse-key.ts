import { z } from 'zod';
import type { DeclaredStudy } from '../declared/parse-study.ts';
import { parseDocument } from '../document-fault.ts';
import { StudyError } from '../errors.ts';
import { type BlindKey, blindedOrder } from './blinded-order.ts';

const keyDocument = z.strictObject({
  kind: z.literal('surae-study-key'),
  version: z.literal(1),
  study: z.string(),
  rater: z.string(),
  items: z
    .array(
      z.strictObject({
        item: z.string().min(1),
        trial: z.string().min(1),
        sha256: z.string(),
        showing: z.union([z.literal(1), z.literal(2)]),
      }),
    )
    .min(1),
});

/** A key as a file. */
export function keyText(key: BlindKey): string {
  const { study, rater, items } = key;
  const plain = items.map(({ item, trial, sha256, showing }) => ({ item, trial, sha256, showing }));
  return `${JSON.stringify({ kind: 'surae-study-key', version: 1, study, rater, items: plain }, null, 1)}\n`;
}

/**
 * A key out of a text that came from outside. Its order is found again from the study: one that was changed is told.
 *
 * @throws {@link StudyError} `bad-file` where it is no key of this study; `out-of-range` where the study has no such rater
 */
export function parseBlindKey(text: string, declared: DeclaredStudy, file?: string): BlindKey {
  const { study, rater, items } = parseDocument(keyDocument, text, {
    of: 'a key',
    kind: 'surae-study-key',
    version: 1,
    file,
  });
  const at = file === undefined ? {} : { file };
  if (study !== declared.hash) {
    throw new StudyError('bad-file', { ...at, path: 'study', expected: declared.hash, actual: study });
  }
  const firsts = items.filter(({ showing }) => showing === 1).map(({ trial, sha256 }) => ({ trial, sha256 }));
  const own = blindedOrder(declared, rater, firsts);
  const key = { study, rater, items };
  if (keyText(own) !== keyText(key)) {
    const expected = 'the order that follows from study, rater and recordings';
    throw new StudyError('bad-file', { ...at, path: 'items', expected, actual: 'another' });
  }
  return own;
}
