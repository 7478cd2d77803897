import type { SideComparison } from '@surae/analysis';
import { defaultSettings } from '@surae/analysis';
import { casebookOf, noOwnErrors } from '@surae/casebook';
import { legLines, letterOf, recordStudy, type StudyLegs } from '@surae/exchange';
import { RATIO_BLOCK_SENTENCES, VALUE_BLOCK_SENTENCES } from '@surae/shared';
import { MemoryStore } from '@surae/storage';
import { beforeAll, expect, test } from 'vitest';
import { comparisonsOf } from '../../../apps/dashboard/src/result/comparisons.ts';
import { raiseTrial, studyPerson, studyVisit } from '../../support/made-study.ts';
import { tellVisits } from '../../support/told-visit.ts';

/** A ratio of the legs as a comparison gives it, as far as a letter reads it. */
function ratio(verdict: 'yes' | 'no' | 'cannot_tell'): SideComparison {
  return {
    kind: 'ratio',
    direction: { over: 'right', under: 'left', why: 'sore-over-other' },
    ratio: { value: 0.709, low: 0.6, high: 0.836 },
    underLine: [
      { side: 'right', probability: 0.98, verdict },
      { side: 'left', probability: 0, verdict: 'no' },
    ],
  } as unknown as SideComparison;
}

const blocked = (codes: readonly string[]): StudyLegs => ({
  test: 'heel-raise',
  comparison: { kind: 'blocked', blocks: codes.map((code) => ({ code, unblock: {} })) } as unknown as SideComparison,
});

/** Digits outside pieces that hold an interval. */
const naked = (text: string): string[] =>
  (text.match(/[^\s\u00A0]+(?:\u00A0[^\s\u00A0]+)+/g) ?? [])
    .filter((piece) => !piece.includes('interval'))
    .concat(text.replace(/[^\s\u00A0]+(?:\u00A0[^\s\u00A0]+)+/g, '').match(/\d+/g) ?? []);

test.each(['yes', 'no', 'cannot_tell'] as const)('a ratio stands with its interval and the verdict %s', (verdict) => {
  const text = legLines({ test: 'heel-raise', comparison: ratio(verdict) }).join(' ');
  const plain = text.replaceAll('\u00A0', ' ');
  expect(plain).toContain('Right leg over left leg, heel raises: 71 % (95 % interval 60 to 84 %).');
  expect(plain).toContain(`Whether the right leg does less than the other: ${verdict.replace('_', ' ')}.`);
  expect(plain).toContain('no pass mark');
  expect(naked(text)).toEqual([]);
  expect(plain).not.toMatch(/deficit|weak|healthy|injured|normal leg|significant/i);
});

test('what stands against a ratio is told, every reason of it, and no figure', () => {
  const codes = [...Object.keys(RATIO_BLOCK_SENTENCES), ...Object.keys(VALUE_BLOCK_SENTENCES)];
  const lines = legLines(blocked(codes));
  expect(lines).toHaveLength(codes.length + 1);
  expect(lines[0]).toBe('No ratio of the legs, heel raises.');
  expect(lines.join(' ')).not.toMatch(/\d/);
});

test('a letter holds the comparison in place of the words that it judges none', () => {
  const visit = studyVisit({ compared: () => [{ test: 'heel-raise', comparison: ratio('yes') }] });
  const trials = [raiseTrial(), raiseTrial({ key: 'x', side: 'right' })];
  const { text, html } = letterOf(studyPerson(), visit, trials);
  expect(text).toContain('does less than the other: yes');
  expect(text).not.toContain('does not judge it');
  expect(naked(text.replace('2026-03-01', '')).filter((piece) => !/±|as\u00A0told/.test(piece))).toEqual([]);
  expect(html).toContain('<span class="figure">71\u00A0%');
});

test('a letter without names is still one of the figures', () => {
  const { text } = letterOf(undefined, studyVisit({ at: null, compared: () => [blocked(['both-sides-sore'])] }), []);
  expect(text).toContain(RATIO_BLOCK_SENTENCES['both-sides-sore'].text);
});

const store = new MemoryStore();
beforeAll(async () => {
  const person = { name: 'A', bodyMassKg: 82, heelLeverM: null, sex: 'women', birthYear: 1988 } as const;
  await tellVisits(store, person, [
    { day: '2026-03-01', left: { count: 27 }, right: { count: 19 } },
    { day: '2026-03-15', left: { count: 21 }, right: { count: 18, reason: 'pain', pain: 5 } },
    { day: '2026-03-29', left: { count: 21 } },
  ]);
});

test('the letter of a record says what the page of its result says', async () => {
  const documents = await store.documents({});
  const study = await recordStudy(documents, {
    extent: { of: 'clinic' },
    settings: defaultSettings(),
    software: 's 1',
    read: null,
  });
  const [entry] = casebookOf(documents).people;
  const pages = entry.visits.map(({ visit, person }, at) =>
    comparisonsOf(
      visit,
      person,
      entry.visits.slice(0, at).map((one) => one.visit),
      noOwnErrors,
    ),
  );
  const [whole, pain, single] = study.visits.map((visit) => visit.compared());
  const [{ comparison }] = whole;
  if (comparison.kind !== 'ratio') throw new Error('a ratio was expected');
  const percent = (share: number): number => Math.round(100 * share);
  expect([comparison.ratio.value, comparison.ratio.low, comparison.ratio.high].map(percent)).toEqual(
    [pages[0].side.ratio?.percent, pages[0].side.ratio?.low, pages[0].side.ratio?.high].map((one) => Math.round(one!)),
  );
  expect(pages[1].side.ratio).toBeNull();
  expect(pain[0].comparison.kind).toBe('blocked');
  expect(legLines(pain[0]).slice(1)).toEqual(pages[1].side.blocks.map(({ why }) => why));
  expect(single).toEqual([]);
});
