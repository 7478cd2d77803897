import type { FlareThreshold, LoadViews, NextRun, NoThreshold, RaceReach } from '@surae/guidance';
import {
  FLARE_NUMBERS,
  FULL_RETURN,
  LOAD_DOUBT_SENTENCES,
  LONGEST_RUN_BANDS,
  LONGEST_RUN_SENTENCES,
  NO_THRESHOLD_SENTENCES,
  RACE_OPEN_SENTENCES,
  RACE_SENTENCES,
  RETURN_SENTENCES,
  RUN_SETTLED_BY,
  RUN_STEP_SENTENCES,
  type Sentence,
  type Sentences,
  START_RUNNING,
  THRESHOLD_DOUBT_SENTENCES,
} from '@surae/shared';
import { expect, test } from 'vitest';
import { JUDGING_WORDS } from '../../support/judging-words.ts';

type Worded<Code extends string> = Readonly<Record<Code, Sentence>>;
type Told = Extract<FlareThreshold, { held: 'yes' }>;

// a code without words does not compile
const families = [
  RUN_STEP_SENTENCES satisfies Worded<NextRun['step']>,
  RUN_SETTLED_BY satisfies Worded<NextRun['settledBy'][number]>,
  RACE_SENTENCES satisfies Worded<RaceReach['held']>,
  RACE_OPEN_SENTENCES satisfies Worded<RaceReach['openBy'][number]>,
  LOAD_DOUBT_SENTENCES satisfies Worded<LoadViews['doubts'][number]>,
  NO_THRESHOLD_SENTENCES satisfies Worded<NoThreshold>,
  THRESHOLD_DOUBT_SENTENCES satisfies Worded<Told['doubts'][number]>,
  LONGEST_RUN_SENTENCES,
  RETURN_SENTENCES,
];
const said = families.flatMap((words: Sentences<string>) => Object.values(words));

test.each(said.map(({ id, text }) => [id, text]))('%s is plain, judges nobody and foretells nothing', (_, text) => {
  for (const word of [...JUDGING_WORDS, /\bmust\b/i, /\bwill be (?:able|ready)\b/i]) expect(text).not.toMatch(word);
  expect(text).toMatch(/^[A-Z]/);
  // a number may be changed by a clinic: no sentence writes one out
  expect(text).not.toMatch(/\d/);
});

test('every criterion has words, with numbers of its own alone, and no words are left over', () => {
  const criteria = [...START_RUNNING, ...FULL_RETURN];
  expect(Object.keys(RETURN_SENTENCES).sort()).toEqual(criteria.map(({ code }) => code).sort());
  for (const { code, numbers } of criteria) {
    const { text } = (RETURN_SENTENCES as Sentences<string>)[code];
    for (const [, blank] of text.matchAll(/\{(\w+)\}/g)) expect(numbers).toHaveProperty(blank);
  }
});

test('every band of a run has words', () => {
  for (const { code } of LONGEST_RUN_BANDS) expect(LONGEST_RUN_SENTENCES).toHaveProperty(code);
});

test('blanks of what is missing to a threshold are its numbers', () => {
  for (const { text } of Object.values(NO_THRESHOLD_SENTENCES)) {
    for (const [, blank] of text.matchAll(/\{(\w+)\}/g)) expect(FLARE_NUMBERS).toHaveProperty(blank);
  }
});
