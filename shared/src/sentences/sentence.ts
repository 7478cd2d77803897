import type { Entry } from '../entry.ts';
import { inWords } from './wording.ts';

/** Words for one code, in the plain wording that reports use. */
export interface Sentence extends Entry {
  /** in the language in use when it is read */
  readonly text: string;
}

/** Sentences by their code. */
export type Sentences<Code extends string> = Readonly<Record<Code, Sentence>>;

const ours = { version: '1', unit: '1', source: 'ours', mark: 'computed' } as const;

/** Entries for a list of texts: the id is the family and the code. */
export function sentences<Code extends string>(family: string, texts: Readonly<Record<Code, string>>): Sentences<Code> {
  const entries = Object.entries(texts) as [Code, string][];
  const pairs = entries.map(([code, text]) => [code, sentence(`sentence.${family}.${code}`, text)] as const);
  return Object.fromEntries(pairs) as Record<Code, Sentence>;
}

function sentence(id: string, english: string): Sentence {
  return {
    ...ours,
    id,
    get text() {
      return inWords(id, english);
    },
  };
}
