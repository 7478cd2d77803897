import {
  type ChangeCaution,
  type ChangeZone,
  type NoChangeReason,
  type NoReferenceReason,
  RATIO_BLOCKS,
  type RatioBlock,
  type RatioError,
  type SideCaution,
  VALUE_BLOCKS,
  type ValueBlock,
} from '@surae/analysis';
import * as shared from '@surae/shared';
import { COMPARE_SENTENCES, RATIO_BLOCK_SENTENCES, type Sentence } from '@surae/shared';
import { expect, test } from 'vitest';
import { JUDGING_WORDS } from '../../support/judging-words.ts';

// a reason without words, or words without a reason, does not compile
const words = RATIO_BLOCK_SENTENCES satisfies Readonly<Record<RatioBlock, Sentence>>;
const lifts = shared.RATIO_UNBLOCK_SENTENCES satisfies Readonly<Record<RatioBlock, Sentence>>;
const values = shared.VALUE_BLOCK_SENTENCES satisfies Readonly<Record<ValueBlock, Sentence>>;
const valueLifts = shared.VALUE_UNBLOCK_SENTENCES satisfies Readonly<Record<ValueBlock, Sentence>>;
const cautions = shared.COMPARE_CAUTION_SENTENCES satisfies Readonly<Record<SideCaution | ChangeCaution, Sentence>>;
const noReference = shared.NO_REFERENCE_SENTENCES satisfies Readonly<Record<NoReferenceReason, Sentence>>;
const noChange = shared.NO_CHANGE_SENTENCES satisfies Readonly<Record<NoChangeReason, Sentence>>;
const ratioErrors = shared.RATIO_ERROR_SENTENCES satisfies Readonly<Record<RatioError['from'], Sentence>>;
const ownRatios = shared.OWN_RATIO_SENTENCES satisfies Readonly<Record<RatioError['own'], Sentence>>;
const zones = shared.CHANGE_ZONE_SENTENCES satisfies Readonly<Record<ChangeZone, Sentence>>;

test('every reason why no ratio is given has one sentence of its own, in the order of the reasons', () => {
  expect(Object.keys(words)).toEqual([...RATIO_BLOCKS]);
  const texts = Object.values(words).map(({ text }) => text);
  expect(new Set(texts).size).toBe(texts.length);
  for (const text of texts) expect(text).toMatch(/^[A-Z].*\.$/);
});

test('a reason that a force can meet does not speak of a count: only those of counted repetitions do', () => {
  const speak = (pattern: RegExp): string[] => RATIO_BLOCKS.filter((code) => pattern.test(words[code].text));
  // a preset number ends heel raises alone; no protocol of isometric efforts ends by one
  expect(speak(/\bcount\b/i)).toEqual(['censored']);
  expect(speak(/\brepetitions?\b(?! and no effort)/i)).toEqual(['few-repetitions']);
});

test('the reasons judge nobody and give no figure of a difference', () => {
  for (const { text } of [...Object.values(words), ...Object.values(COMPARE_SENTENCES)]) {
    for (const word of JUDGING_WORDS) expect(text).not.toMatch(word);
    expect(text).not.toMatch(/%/);
  }
});

test('what was not asked or recorded says so, and does not sound like a finding', () => {
  const unknown = RATIO_BLOCKS.filter((code) => /-not-(asked|recorded)$|-unknown$/.test(code));
  expect(unknown).toHaveLength(10);
  for (const code of unknown) expect(words[code].text, code).toMatch(/not (recorded|asked)|too little is known/i);
});

test('every reason comes with what would lift it, in the same order', () => {
  expect(Object.keys(lifts)).toEqual([...RATIO_BLOCKS]);
  expect(Object.keys(values)).toEqual([...VALUE_BLOCKS]);
  expect(Object.keys(valueLifts)).toEqual([...VALUE_BLOCKS]);
});

test.each(
  Object.entries({ lifts, values, valueLifts, cautions, noReference, noChange, zones, ratioErrors, ownRatios }),
)('%s: whole sentences, each its own, that judge nobody', (_, family: Readonly<Record<string, Sentence>>) => {
  const texts = Object.values(family).map(({ text }) => text);
  expect(new Set(texts).size).toBe(texts.length);
  for (const text of texts) {
    expect(text).toMatch(/^[A-Z].*\.$/);
    for (const word of JUDGING_WORDS) expect(text).not.toMatch(word);
  }
});

test('a detectable change is nowhere called important', () => {
  for (const { text } of Object.values(zones)) expect(text).not.toMatch(/important|clinical/i);
  expect(cautions['detectable-is-not-important'].text).toMatch(/need not be an important one/);
});

test('of somebody under 18 the growing heel bone is named, and no reference', () => {
  expect(shared.NO_REFERENCE_SENTENCES['under-18'].text).toMatch(/^No reference under 18 years\..*growth plate/);
});
