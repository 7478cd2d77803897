import { defaultSettings, type IrritabilityAnswers, type LegFacts, type LegFinding, legFinding } from '@surae/analysis';
import type { EndReason } from '@surae/shared';
import { expect, test } from 'vitest';
import { effortWords, irritabilityWords, legView, painWords } from '../../../apps/dashboard/src/result/leg-view.ts';
import { JUDGING_WORDS } from '../../support/judging-words.ts';
import { CALM, testedLeg, WOMAN } from '../../support/tested-leg.ts';

function found(facts: Partial<LegFacts> = {}, end: EndReason | null = 'fatigue'): LegFinding {
  return legFinding(testedLeg('left', 9, { sore: true, ...facts }, end), WOMAN, {}, defaultSettings().judging);
}

test('a full effort, one that stopped early and one of which too little is known, each in neutral words', () => {
  expect(effortWords(found().effort)).toBe('Full effort, by a falling height.');
  const early = { ...found().effort, good: 'no', signs: [], reason: 'stopped-before-signs-of-fatigue' } as const;
  expect(effortWords(early)).toMatch(/^Stopped before signs of fatigue\. Ask what stopped it: pain, worry, balance/);
  expect(effortWords(found({}, 'pain').effort)).toMatch(/ended for something other than fatigue/);
  expect(effortWords(found({ exertion: null }).effort)).toMatch(
    /^Cannot tell how full the effort was\. Not known: exertion at the end/,
  );
  for (const word of JUDGING_WORDS) expect(effortWords(early)).not.toMatch(word);
});

test('a set that pain ended says what was tolerated, first of all', () => {
  const view = legView(found({ painPeak: 6 }, 'pain'), true);
  expect(view.lead).toBe('Tolerated 9 before the pain limit. This is tolerance, not capacity.');
  expect(legView(found(), true).lead).toBe('Full effort, by a falling height.');
});

test('pain within its limit, over it, and not to be told', () => {
  expect(painWords(found({ painPeak: 2 }).pain)).toEqual(['Pain during the set stayed within 5 of 10.']);
  expect(painWords(found({ painPeak: 7 }).pain)[0]).toMatch(/went over its limit of 5 of 10, or was sharp/);
  expect(painWords(found({ painPeak: 7 }).pain)).toContain('Pain rose by more than 2 over its level at rest.');
  expect(painWords(found({ painPeak: 2, painSharp: null }).pain)[0]).toMatch(
    /cannot be told\. Not known: whether the pain was sharp\./,
  );
});

test('every grade of irritability, and none where an input is missing', () => {
  const graded = (changes: Partial<IrritabilityAnswers>): string =>
    irritabilityWords(found({ irritability: { ...CALM, ...changes } }).irritability, true);
  expect(graded({})).toBe('Irritability: low.');
  expect(graded({ settlesAfter: 24 })).toBe('Irritability: moderate, by time until the pain settles.');
  expect(graded({ peakPain: 6 })).toBe('Irritability: high, by greatest pain.');
  expect(graded({ trend: null })).toBe(
    'Irritability: not graded, and taken as moderate for limits. Not known: the last two weeks.',
  );
  expect(irritabilityWords(found().irritability, false)).toBe('Irritability: this leg is not sore.');
});
