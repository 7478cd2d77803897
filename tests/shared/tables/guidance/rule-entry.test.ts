import { factsOf, type GivenFact, judgeRule, numbersOf } from '@surae/guidance';
import { GUIDANCE_RULES, type GuidanceRule } from '@surae/shared';
import { expect, test } from 'vitest';
import { known, madeFacts } from '../../../support/guidance-facts.ts';
import { factEntries, filledUp, spread, type Told, waysOf } from '../../../support/rule-ways.ts';

/** Much less than any answer is told by. */
const little = 0.001;

function heldWith(rule: GuidanceRule, told: Readonly<Record<string, GivenFact>>): string {
  const of = (which: 'leg' | 'person') =>
    Object.fromEntries(Object.entries(told).filter(([fact]) => factEntries.get(fact)?.of === which));
  const given = madeFacts(of('leg'), {}, of('person'));
  return judgeRule(rule, rule.of === 'leg' ? 'left' : null, given, factEntries).held;
}

const letters: Readonly<Record<string, string>> = { yes: 'y', no: 'n', 'cannot-tell': '?' };

const ways = new Map<GuidanceRule, readonly Told[]>();

/** Sets of answers that make a rule hold, and those that do not: found once for all its numbers. */
function everyWay(rule: GuidanceRule): readonly Told[] {
  const found = ways.get(rule) ?? [...waysOf(rule.when, rule), ...waysOf(rule.when, rule, false)];
  ways.set(rule, found);
  return found;
}

/** Whether a rule holds just under a number, at it and just over it, and where the answer is missing; everything else as it is asked for. */
function boundary(rule: GuidanceRule, fact: string, limit: number): string {
  const { holds } = factEntries.get(fact)!;
  const [least, most] = holds.kind === 'number' ? [holds.least, holds.most ?? limit + 1] : [0, 0];
  const shown = (told: Told): string => {
    const others = Object.fromEntries(
      Object.entries(told).flatMap(([code, value]) => (code === fact ? [] : [[code, known(value)] as const])),
    );
    const at = [limit - little, limit, limit + little].map((value) =>
      value < least || value > most ? '-' : letters[heldWith(rule, { ...others, [fact]: known(value) })],
    );
    // most sets of answers turn nothing at the number: they are not asked about once more
    if (!at.includes('y') || !at.includes('n')) return at.join('');
    return `${at.join('')} ${letters[heldWith(rule, { ...others, [fact]: { missing: 'not-asked' } })]}`;
  };
  const telling = everyWay(rule).filter((told) => Object.hasOwn(told, fact));
  const facts = factsOf(rule.when);
  for (const draw of Array.from({ length: 300 }, (_, i) => i)) {
    // as few answers as do it, else with others beside them
    for (const told of spread(telling, 40)) {
      const one = shown(draw === 0 ? told : filledUp(told, rule, facts, draw));
      if (/^\S*y\S* /.test(one) && /^\S*n\S* /.test(one)) return one;
    }
  }
  return 'never';
}

/** Each read against what its rule is to ask: holding under, at and over a number (y, n; - is no answer), and with the answer missing. */
const expected = [
  'lock-no-raise: valid-raises 0: -yn ?',
  'range-step: level-now 3: nyy ?',
  'start-calm: valid-raises 1: ynn ?',
  'start-calm: pain-double-raise 5: nny ?',
  'start-calm: pain-single-raise 5: nny ?',
  'start-learn: valid-raises 1: nyy ?',
  'start-learn: valid-raises 10: ynn ?',
  'start-learn: pain-single-raise 4: nyy ?',
  'start-single: valid-raises 10: nyy ?',
  'start-single: valid-raises 20: ynn ?',
  'start-single: pain-single-raise 5: yyn ?',
  'start-range: valid-raises 10: nyy ?',
  'start-range: valid-raises 20: ynn ?',
  'start-range: pain-single-raise 5: yyn ?',
  'start-heavy: valid-raises 20: nyy ?',
  'load-less-than-body: valid-raises 6: ynn ?',
  'load-body-fewer: valid-raises 6: nyy ?',
  'load-body-fewer: valid-raises 16: ynn ?',
  'load-body-then-add: valid-raises 16: nyy ?',
  'load-body-then-add: valid-raises 25: yyn ?',
  'load-add-by-trial: valid-raises 25: nny ?',
  'heavy-slow-week-1: heavy-slow-week 1: nyy ?',
  'heavy-slow-week-1: heavy-slow-week 2: ynn ?',
  'heavy-slow-week-2: heavy-slow-week 2: nyy ?',
  'heavy-slow-week-2: heavy-slow-week 4: ynn ?',
  'heavy-slow-week-4: heavy-slow-week 4: nyy ?',
  'heavy-slow-week-4: heavy-slow-week 6: ynn ?',
  'heavy-slow-week-6: heavy-slow-week 6: nyy ?',
  'heavy-slow-week-6: heavy-slow-week 9: ynn ?',
  'heavy-slow-week-9: heavy-slow-week 9: nyy ?',
  'heavy-slow-week-9: heavy-slow-week 13: ynn ?',
  'option-lowering-step: valid-raises 10: nyy ?',
  'option-lowering-step: pain-single-raise 4: ynn ?',
  'option-lowering-level: valid-raises 10: nyy ?',
  'option-lowering-level: pain-single-raise 4: ynn ?',
  'option-combined: valid-raises 10: nyy ?',
  'option-combined: pain-single-raise 4: ynn ?',
  'option-heavy-slow: valid-raises 10: nyy ?',
  'option-heavy-slow: pain-single-raise 4: ynn ?',
  'option-hard-holds: pain-single-raise 4: ynn ?',
  'step-ask: missed-in-row 3: nyy ?',
  'step-ask: planned-two-weeks 4: nyy ?',
  'step-ask: left-out-two-weeks 0.3: nny ?',
  'step-restart-lower: days-since-session 14: nny ?',
  'step-restart-lower: level-now 1: nyy ?',
  'step-drop: hard-days 2: nyy ?',
  'step-drop: morning-weeks 5: nyy ?',
  'step-drop: morning-slope 0.25: nyy ?',
  'step-drop: morning-slope-least 0: nny ?',
  'step-drop: level-now 1: nyy ?',
  'step-lightest: hard-days 2: nyy ?',
  'step-lightest: morning-weeks 5: nyy ?',
  'step-lightest: morning-slope 0.25: nyy ?',
  'step-lightest: morning-slope-least 0: nny ?',
  'step-lightest: level-now 1: ynn ?',
  'step-reduce: pain-during-last 5: nny ?',
  'step-reduce: pain-after-last 5: nny ?',
  'step-reduce: pain-during-last 3: nny ?',
  'step-reduce: pain-after-last 3: nny ?',
  'step-reduce: morning-rise-last 2: nny ?',
  'step-reduce: morning-pain-last 5: nny ?',
  'step-reduce: stiffness-rise-last 5: nny ?',
  'step-reduce: stiffness-over-double-last 0: nyy ?',
  'step-hold: share-done-last 0.9: ynn ?',
  'step-hold: pain-during-last 5: nny ?',
  'step-hold: pain-after-last 5: nny ?',
  'step-hold: pain-during-last 3: nny ?',
  'step-hold: pain-after-last 3: nny ?',
  'step-hold: morning-rise-last 1: nny ?',
  'step-hold: stiffness-rise-last 0: nny ?',
  'step-hold: exertion-last 8: nny ?',
  'step-hold: share-done-before 0.9: ynn ?',
  'step-hold: pain-during-before 5: nny ?',
  'step-hold: pain-after-before 5: nny ?',
  'step-hold: pain-during-before 3: nny ?',
  'step-hold: pain-after-before 3: nny ?',
  'step-hold: morning-rise-before 1: nny ?',
  'step-hold: stiffness-rise-before 0: nny ?',
  'step-hold: exertion-before 8: nny ?',
  'step-hold: sessions-logged 2: ynn ?',
  'step-hold: morning-pain-last 3: nny ?',
  'step-hold: planned-two-weeks 4: nyy ?',
  'step-hold: left-out-two-weeks 0.3: nny ?',
  'step-progress: share-done-last 0.9: nyy ?',
  'step-progress: pain-during-last 5: yyn ?',
  'step-progress: pain-after-last 5: yyn ?',
  'step-progress: pain-during-last 3: yyn ?',
  'step-progress: pain-after-last 3: yyn ?',
  'step-progress: morning-rise-last 1: yyn ?',
  'step-progress: stiffness-rise-last 0: yyn ?',
  'step-progress: exertion-last 8: yyn ?',
  'step-progress: share-done-before 0.9: nyy ?',
  'step-progress: pain-during-before 5: yyn ?',
  'step-progress: pain-after-before 5: yyn ?',
  'step-progress: pain-during-before 3: yyn ?',
  'step-progress: pain-after-before 3: yyn ?',
  'step-progress: morning-rise-before 1: yyn ?',
  'step-progress: stiffness-rise-before 0: yyn ?',
  'step-progress: exertion-before 8: yyn ?',
  'step-progress: sessions-logged 2: nyy ?',
  'step-progress: morning-pain-last 3: yyn ?',
  'step-progress: planned-two-weeks 4: ynn ?',
  'step-progress: left-out-two-weeks 0.3: yyn ?',
  'change-to-learn: level-now 1: ynn ?',
  'change-to-learn: valid-raises 1: nyy ?',
  'change-to-learn: pain-double-raise 5: yyn ?',
  'change-to-learn: pain-single-raise 5: yyn ?',
  'change-to-learn: days-at-level 7: nyy ?',
  'change-to-single: level-now 1: nyy ?',
  'change-to-single: level-now 2: ynn ?',
  'change-to-single: valid-raises 10: nyy ?',
  'change-to-single: pain-single-raise 4: ynn ?',
  'change-to-single: days-since-flare 14: nyy ?',
  'change-to-single: days-at-level 7: nyy ?',
  'change-to-heavy: level-now 2: nyy ?',
  'change-to-heavy: level-now 4: ynn ?',
  'change-to-heavy: valid-raises 20: nyy ?',
  'change-to-heavy: pain-single-raise 4: ynn ?',
  'change-to-heavy: days-since-flare 14: nyy ?',
  'change-to-heavy: days-at-level 7: nyy ?',
  'change-to-heavy-late: level-now 3: nyy ?',
  'change-to-heavy-late: level-now 2: nyy ?',
  'change-to-heavy-late: level-now 4: ynn ?',
  'change-to-heavy-late: valid-raises 10: nyy ?',
  'change-to-heavy-late: pain-single-raise 4: ynn ?',
  'change-to-heavy-late: days-since-flare 14: nyy ?',
  'change-to-heavy-late: days-at-level 28: nyy ?',
  'change-to-range: level-now 2: nyy ?',
  'change-to-range: level-now 3: ynn ?',
  'change-to-range: valid-raises 10: nyy ?',
  'change-to-range: pain-single-raise 4: ynn ?',
  'change-to-range: days-since-flare 14: nyy ?',
  'change-to-range: days-at-level 7: nyy ?',
  'change-springs: level-now 4: nyy ?',
  'change-springs: level-now 5: ynn ?',
  'change-springs: days-at-level 28: nyy ?',
  'change-springs: worst-pain-lately 2: yyn ?',
  'change-springs: days-since-flare 14: nyy ?',
  'change-sport: level-now 5: nyy ?',
  'change-sport: level-now 6: yn- ?',
  'change-sport: days-at-level 14: nyy ?',
  'change-repetitions: repetitions-left 0: -ny ?',
  'change-range: level-now 3: nyy ?',
  'change-range: range-left 0: -ny ?',
  'change-load: level-now 3: nyy ?',
  'change-load: level-now 1: nyy ?',
  'change-load: days-at-level 28: nyy ?',
  'change-speed: level-now 4: nyy ?',
  'change-impact: level-now 5: nyy ?',
  'impact-after-heavy: days-since-heavy 2: ynn ?',
  'impact-after-bounces: days-since-bounces 2: ynn ?',
  'flare: morning-rise-last 2: nny ?',
  'not-settled: morning-rise-last 1: nny ?',
  'calm-long: level-now 1: ynn ?',
  'calm-long: days-at-level 14: nyy ?',
  'level-long: level-now 1: nyy ?',
  'level-long: level-now 4: ynn ?',
  'level-long: days-at-level 28: nyy ?',
  'plateau: share-six-weeks 0.7: nyy ?',
  'plateau: days-in-programme 42: nyy ?',
  'twelve-weeks: days-in-programme 84: nyy ?',
  'go-on: days-in-programme 84: ynn ?',
  'inflammatory: morning-stiffness 30: nny ?',
  'inflammatory-young: age-at-least 45: ynn ?',
  'recovery-high: recovery-days 3: ynn ?',
  'recovery-medium: recovery-days 2: ynn ?',
  'recovery-after-run: days-since-run 2: ynn ?',
  'recovery-after-bounces: days-since-bounces 2: ynn ?',
];

// the numbers are common practice or of the papers that stand beside them in the tables
test('every number of every rule turns it at its boundary, and a missing answer never lets it hold', () => {
  const found = GUIDANCE_RULES.flatMap((rule) =>
    numbersOf(rule.when).map(({ fact, number }) => {
      const { value } = rule.numbers[number];
      return `${rule.code}: ${fact} ${value}: ${boundary(rule, fact, value)}`;
    }),
  );
  expect([...new Set(found)]).toEqual(expected);
});
