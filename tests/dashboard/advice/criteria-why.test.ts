import { type GivenFact, judgeCriteria } from '@surae/guidance';
import {
  ADVICE_WORDS,
  FULL_RETURN,
  GUIDANCE_SETTLED_BY,
  MARK_WORDS,
  type ReturnCriterion,
  START_RUNNING,
} from '@surae/shared';
import { describe, expect, test } from 'vitest';
import { criteriaWhy, factsOfCriterion, pointWords } from '../../../apps/dashboard/src/advice/criteria-why.ts';
import { known, madeFacts } from '../../support/guidance-facts.ts';
import { holdsNoCode } from '../../support/no-code.ts';
import { factEntries, type Told, waysOf } from '../../support/rule-ways.ts';

const all = [...START_RUNNING, ...FULL_RETURN];
const settled: Readonly<Record<string, { readonly text: string }>> = GUIDANCE_SETTLED_BY;

function explained(criterion: ReturnCriterion, told: Told, missing: Readonly<Record<string, GivenFact>> = {}) {
  const from = { what: 'history', day: '2026-03-01' };
  const answers = Object.fromEntries(Object.entries(told).map(([fact, value]) => [fact, { ...known(value), from }]));
  const [trace] = judgeCriteria([criterion], 'left', madeFacts({ ...answers, ...missing }), factEntries).criteria;
  const parts = criteriaWhy([trace], 'v', () => 'not-asked');
  const of = (code: keyof typeof ADVICE_WORDS): string =>
    (parts.find(({ title }) => title === ADVICE_WORDS[code].text)?.lines ?? []).join('\n');
  return { trace, parts, of };
}

const asked = ['why-from', 'why-points', 'why-sure', 'why-whose', 'why-change'] as const;

describe('every point of a return answers why this, from what, how sure, whose it is, and what would change it', () => {
  test.each(all.map((one) => [one.code, one] as const))('%s in every way of answers', (_, criterion) => {
    // those that meet it, and those that do not; where it is asked for at all
    const asks = criterion.applies === undefined ? {} : waysOf(criterion.applies, criterion)[0];
    const ways = [true, false].flatMap((is) => waysOf(criterion.when, criterion, is).slice(0, 20));
    const held = new Set<string>();
    for (const told of ways) {
      const { trace, parts, of } = explained(criterion, { ...asks, ...told });
      held.add(trace.held);
      for (const code of asked) expect(of(code).length, code).toBeGreaterThan(5);
      for (const { title, lines } of parts) for (const line of lines) holdsNoCode(line, `${title}: ${line}`);
      // each number as it counts, the source where there is one, and how well each is supported
      const basis = of('why-points');
      for (const { source, mark } of [criterion, ...Object.values(criterion.numbers)]) {
        expect(basis).toContain(MARK_WORDS[mark].text);
        if (mark !== 'common-practice') expect(basis).toContain(source);
      }
      for (const { value } of Object.values(criterion.numbers)) {
        // none is said as none, and the whole of a target as the target
        if (value !== 0 && criterion.code !== 'push')
          expect(
            pointWords(trace)
              .match(/\d+(?:\.\d+)?/g)
              ?.map(Number),
          ).toContain(value);
      }
      // each answer that was read with its day, and for each what would change it
      expect(of('why-from').match(/1 Mar 2026/g)?.length ?? 0).toBe(trace.used.length);
      for (const fact of factsOfCriterion(criterion)) expect(of('why-change')).toContain(settled[fact].text);
    }
    expect([...held].sort()).toEqual(['no', 'yes']);
  });

  test.each(all.map((one) => [one.code, one] as const))(
    '%s with each answer missing: why it is not known',
    (_, one) => {
      for (const fact of factsOfCriterion(one)) {
        const { of, parts } = explained(one, {}, { [fact]: { missing: 'not-asked' } });
        expect(of('why-from')).toContain('not known (not asked in this visit)');
        for (const { title, lines } of parts) for (const line of lines) holdsNoCode(line, `${title}: ${line}`);
      }
    },
  );
});

test('how sure says how many cannot be told, and that no set is agreed on', () => {
  const traces = judgeCriteria(START_RUNNING, 'left', madeFacts({ 'valid-raises': 22 }), factEntries).criteria;
  const sure = criteriaWhy(traces, 'v', () => 'not-asked').find(({ title }) => title === ADVICE_WORDS['why-sure'].text);
  // one of eight is known; Habets 2018 Sports Med 48:705: 19 of 35 studies stated any
  expect(sure?.lines).toEqual([
    'Of 8 points 7 cannot be told. That counts as not met, and is shown as what it is.',
    'No agreed set exists: of 35 studies of a return, 19 stated any (Habets 2018 Sports Med 48:705).',
  ]);
});
