import type { PullSet, VisitSet } from '@surae/casebook';
import { COURSE_WORDS, END_CHOICES, PROTOCOLS, PULL_PROTOCOLS } from '@surae/shared';
import { pullClause } from '../result/pull-sentences.ts';
import { legClause } from '../result/summary-sentence.ts';
import { capital } from '../result/value-words.ts';
import { entryWords } from '../words/entry-words.ts';
import { fill } from '../words/fill.ts';

function isRaises(set: VisitSet | PullSet): set is VisitSet {
  return 'bytesId' in set;
}

function resultWords(set: VisitSet | PullSet): string {
  const { side } = set.choice;
  return isRaises(set)
    ? fill(COURSE_WORDS['raises-of'], { what: legClause(side, set) })
    : fill(COURSE_WORDS['pushes-of'], { what: pullClause(side, set) });
}

function wayWords({ choice: { protocolId } }: VisitSet | PullSet): readonly string[] {
  const known = [...PROTOCOLS, ...PULL_PROTOCOLS].find(({ id }) => id === protocolId);
  return known === undefined ? [] : [`${capital(entryWords(known, 'title'))}.`];
}

/** One leg in one test: its count or force with its interval, by which protocol, and how it ended. */
export function testWords(set: VisitSet | PullSet): readonly string[] {
  const { end, setAside, setAsideWhy } = set;
  return [
    resultWords(set),
    ...wayWords(set),
    end === null ? COURSE_WORDS['ended-open'].text : fill(COURSE_WORDS.ended, { reason: END_CHOICES[end.reason].text }),
    ...(setAside ? [fill(COURSE_WORDS['set-aside'], { why: setAsideWhy ?? COURSE_WORDS['not-told'].text })] : []),
  ];
}
