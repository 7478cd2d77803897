import {
  defaultSettings,
  type IrritabilityAnswers,
  type LegFacts,
  type LegFinding,
  legFinding,
  pullFinding,
} from '@surae/analysis';
import type { EndReason } from '@surae/shared';
import { describe, expect, test } from 'vitest';
import {
  effortWords,
  irritabilityWords,
  legView,
  maximumWords,
  painWords,
  pullLegView,
} from '../../../apps/dashboard/src/result/leg-view.ts';
import { JUDGING_WORDS } from '../../support/judging-words.ts';
import { CALM, testedLeg, WOMAN } from '../../support/tested-leg.ts';
import { testedPull } from '../../support/tested-pull.ts';

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
  // what is worth following is the pain at one repetition, and nothing of it stands where no pain ended the set
  expect(view.lines.at(-1)).toMatch(/^To follow it, the pain at one and the same repetition/);
  expect(legView(found(), true).lines.join(' ')).not.toMatch(/To follow it|load on top/);
});

test('a set that reached the largest number says what would tell more', () => {
  expect(legView(found(), true, true).lines.at(-1)).toMatch(/^The largest number of this protocol was reached: .*load/);
});

test('pain within its limit, over it, and not to be told', () => {
  expect(painWords(found({ painPeak: 2 }).pain, null)).toEqual(['Pain during the set stayed within 5 of 10.']);
  expect(painWords(found({ painPeak: 7 }).pain, null)[0]).toMatch(/went over its limit of 5 of 10, or was sharp/);
  expect(painWords(found({ painPeak: 7 }).pain, null)).toContain('Pain rose by more than 2 over its level at rest.');
  expect(painWords(found({ painPeak: 2, painSharp: null }).pain, null)[0]).toMatch(
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

describe('pushes', () => {
  const newtons = { unit: 'N', decimals: 0, isCount: false };
  const pushed = (facts: Partial<LegFacts> = {}, endReason: EndReason = 'trials-done') =>
    pullFinding(testedPull('right', 1150, { sore: true, ...facts }, { context: { endReason } }), {});

  test('efforts that agree show a maximum; others do not yet, with the reason and without judging', () => {
    const { effort } = pushed();
    expect(maximumWords(effort)).toEqual(['The efforts agree and were held: they show a maximum.']);
    const rising = { ...effort!, good: 'no', reasons: ['last-trial-still-rising'] } as const;
    expect(maximumWords(rising)).toEqual([
      'The efforts do not show a maximum yet. The last effort is the best by far: a further one may be better still.',
    ]);
    expect(maximumWords(null)).toEqual([]);
    for (const word of JUDGING_WORDS) expect(maximumWords(rising).join(' ')).not.toMatch(word);
  });

  test('what pain ended is told first, as the force that was tolerated', () => {
    expect(pullLegView(pushed({ painPeak: 6 }, 'pain'), true, newtons).lead).toMatch(
      /^Tolerated 11[45]\d N before the pain limit\. This is tolerance, not capacity\.$/,
    );
    const { lead, lines } = pullLegView(pushed(), true, newtons);
    expect(lead).toBe('The efforts agree and were held: they show a maximum.');
    expect(lines).toEqual(['Pain during the set stayed within 5 of 10.', 'Irritability: low.']);
  });
});
