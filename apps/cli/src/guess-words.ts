import { type Evidence, findingsOf, type Proposal } from '@surae/records';
import { IMPORT_EVIDENCE, IMPORT_FINDINGS } from '@surae/shared';
import { filledSentence } from './filled-sentence.ts';

/** The sentence of a piece of evidence. */
export function evidenceWords({ code, figures }: Evidence): string {
  const sentence = (IMPORT_EVIDENCE as Readonly<Record<string, { readonly text: string } | undefined>>)[code];
  if (sentence === undefined) throw new RangeError(`No sentence for the evidence ${code}.`);
  return filledSentence(sentence, figures);
}

/** What is to be said about a file beside its guesses. */
export function findingWords(proposal: Proposal): string[] {
  return findingsOf(proposal).map(({ code, figures }) => {
    const sentence = (IMPORT_FINDINGS as Readonly<Record<string, { readonly text: string } | undefined>>)[code];
    if (sentence === undefined) throw new RangeError(`No sentence for the finding ${code}.`);
    return filledSentence(sentence, figures);
  });
}
