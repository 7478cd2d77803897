import {
  type ComparedReport,
  circumstanceBlocks,
  type PairCircumstances,
  RATIO_BLOCKS,
  type RatioBlock,
  ratioBlocks,
  restsOnConfirmedInjury,
} from '@surae/analysis';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { madeReport, sureCount } from '../../support/made-visit.ts';

const full = { good: 'yes', signs: ['height-drop'], reason: 'signs-of-fatigue' } as const;
const board = { id: 'single-leg.incline10', version: '1', fingerprint: 'f' };

const made = madeReport('left', sureCount(20));

function report(side: 'left' | 'right', changes: Partial<ComparedReport> = {}): ComparedReport {
  return { ...made, side, effort: full, protocol: board, ...changes };
}

/** A left tendon that is sore and a right one that is not, everything known and nothing against a ratio. */
const known: PairCircumstances = {
  sore: { left: true, right: false },
  first: 'right',
  restS: 120,
  sameDay: true,
  sameSource: true,
  earlierInjury: { left: false, right: false },
  nerveSigns: false,
};

function blocksOf(changes: {
  readonly left?: Partial<ComparedReport>;
  readonly right?: Partial<ComparedReport>;
  readonly circumstances?: Partial<PairCircumstances>;
}): readonly RatioBlock[] {
  const { left, right, circumstances } = changes;
  return ratioBlocks(report('left', left), report('right', right), { ...known, ...circumstances });
}

function count(scored: number, changes: Partial<ComparedReport['count']> = {}): Pick<ComparedReport, 'count'> {
  return { count: { ...made.count, ...sureCount(scored), ...changes } };
}

const ends = new Map(
  (['fatigue', 'pain', 'other-stop', 'safety', 'technical', 'cap', 'fixed-count-done', null] as const).map((reason) => [
    reason,
    madeReport('left', {}, reason).end,
  ]),
);

function ended(reason: Parameters<typeof ends.get>[0]): Pick<ComparedReport, 'end'> {
  return { end: ends.get(reason)! };
}

/** The first repetition with the hands as given, the others as they were. */
function handsOnce(result: 'pass' | 'fail' | 'not_observed', afterEnd = false): Pick<ComparedReport, 'repetitions'> {
  const [first, ...others] = made.repetitions;
  const hands = { ...first.criteria.hands, result };
  return { repetitions: [{ ...first, afterEnd, criteria: { ...first.criteria, hands } }, ...others] };
}

test('with everything known and nothing against it there is no reason', () => {
  expect(blocksOf({})).toEqual([]);
});

test.each([
  ['both-sides-sore', { circumstances: { sore: { left: true, right: true } } }],
  ['soreness-not-asked', { circumstances: { sore: { left: null, right: false } } }],
  ['soreness-not-asked', { circumstances: { sore: { left: true, right: null } } }],
  ['ended-incomplete', { left: ended('other-stop') }],
  ['ended-incomplete', { right: ended('technical') }],
  ['ended-incomplete', { right: ended('safety') }],
  ['ended-for-pain', { left: ended('pain') }],
  ['ended-for-pain', { right: ended('pain') }],
  ['end-not-recorded', { right: ended(null) }],
  ['censored', { left: ended('cap') }],
  ['censored', { right: count(20, { censored: true }) }],
  ['different-protocol', { left: { protocol: { ...board, fingerprint: 'another' } } }],
  ['different-placement', { left: { placement: 'foot' } }],
  ['different-placement', { left: { kind: 'body-rise' } }],
  ['different-source', { circumstances: { sameSource: false } }],
  ['source-not-recorded', { circumstances: { sameSource: null } }],
  ['short-rest', { circumstances: { restS: 119.9 } }],
  ['short-rest', { circumstances: { restS: -300 } }],
  ['rest-not-recorded', { circumstances: { restS: null } }],
  ['order-not-recorded', { circumstances: { first: null } }],
  ['earlier-injury', { circumstances: { earlierInjury: { left: false, right: true } } }],
  ['earlier-injury-not-asked', { circumstances: { earlierInjury: { left: false, right: null } } }],
  ['signal-not-usable', { left: { gate: { usable: 'cannot_tell', reasons: ['gaps'] } } }],
  ['signal-not-usable', { right: { gate: { usable: 'no', reasons: ['invalid-signal'] } } }],
  ['side-uncertain', { left: { side: null } }],
  ['side-uncertain', { right: { side: 'left' } }],
  ['side-uncertain', { right: { gate: { usable: 'cannot_tell', reasons: ['side-unknown'] } } }],
  ['effort-not-full', { left: { effort: { good: 'no', signs: [], reason: 'stopped-before-signs-of-fatigue' } } }],
  ['effort-unknown', { right: { effort: { good: 'cannot_tell', signs: [], reason: 'too-little-known' } } }],
  ['hands-observed-once', { left: handsOnce('pass') }],
  ['different-days', { circumstances: { sameDay: false } }],
  ['day-not-recorded', { circumstances: { sameDay: null } }],
  ['different-reference', { left: { reference: withRule('best-two-of-familiarisation') } }],
  ['no-reference', { right: { reference: null } }],
  ['nerve-signs', { circumstances: { nerveSigns: true } }],
  ['nerve-signs-not-asked', { circumstances: { nerveSigns: null } }],
  ['fixed-test', { left: ended('fixed-count-done') }],
] satisfies [RatioBlock, Parameters<typeof blocksOf>[0]][])('%s alone, for one cause alone', (block, changes) => {
  expect(blocksOf(changes)).toEqual([block]);
});

function withRule(rule: 'best-two-of-familiarisation'): ComparedReport['reference'] {
  return { ...made.reference!, rule };
}

describe('the count of the side that is compared with', () => {
  test('on the board it needs three errors of 2.25: seven repetitions are enough, six are not', () => {
    expect(blocksOf({ right: count(7) })).toEqual([]);
    expect(blocksOf({ right: count(6) })).toEqual(['within-error']);
  });

  test('under five it is also plainly too small', () => {
    expect(blocksOf({ right: count(5) })).toEqual(['within-error']);
    expect(blocksOf({ right: count(4) })).toEqual(['few-repetitions', 'within-error']);
    expect(blocksOf({ right: count(0) })).toEqual(['few-repetitions', 'within-error']);
  });

  test('a small count of the sore side is no reason, it is the finding', () => {
    expect(blocksOf({ left: count(2) })).toEqual([]);
    expect(blocksOf({ right: count(2), circumstances: { sore: { left: false, right: true } } })).toEqual([]);
  });

  test('where neither side is sore each may be the one compared with', () => {
    const neither = { sore: { left: false, right: false }, earlierInjury: { left: true, right: false } };
    expect(blocksOf({ left: count(6), circumstances: neither })).toEqual(['within-error', 'earlier-injury']);
  });
});

test('an earlier injury of the sore side is no reason', () => {
  expect(blocksOf({ circumstances: { earlierInjury: { left: true, right: false } } })).toEqual([]);
  expect(blocksOf({ circumstances: { earlierInjury: { left: null, right: false } } })).toEqual([]);
});

describe('an earlier injury of the side that is compared with', () => {
  const blocks = (right: PairCircumstances['earlierInjury']['right']) =>
    blocksOf({ circumstances: { earlierInjury: { left: false, right } } });

  test('is allowed when it lies over twelve months back and a clinician confirms, and the ratio rests on it', () => {
    const earlierInjury = { left: false, right: { monthsAgo: 30, confirmed: true } };
    expect(blocksOf({ circumstances: { earlierInjury } })).toEqual([]);
    expect(restsOnConfirmedInjury({ ...known, earlierInjury })).toBe(true);
    expect(restsOnConfirmedInjury(known)).toBe(false);
    // of the sore side it changes nothing
    const turned = { left: earlierInjury.right, right: false };
    expect(restsOnConfirmedInjury({ ...known, earlierInjury: turned })).toBe(false);
  });

  test('else it is a reason, each for itself', () => {
    expect(blocks({ monthsAgo: 30, confirmed: false })).toEqual(['earlier-injury-not-confirmed']);
    expect(blocks({ monthsAgo: 30, confirmed: null })).toEqual(['earlier-injury-not-confirmed']);
    expect(blocks({ monthsAgo: 11, confirmed: true })).toEqual(['earlier-injury']);
    expect(blocks({ monthsAgo: null, confirmed: true })).toEqual(['earlier-injury']);
  });

  test('where neither side is sore both must be confirmed', () => {
    const confirmed = { monthsAgo: 30, confirmed: true };
    const neither = (right: PairCircumstances['earlierInjury']['right']) =>
      blocksOf({ circumstances: { sore: { left: false, right: false }, earlierInjury: { left: confirmed, right } } });
    expect(neither(confirmed)).toEqual([]);
    expect(neither(true)).toEqual(['earlier-injury']);
  });
});

test('what is known beyond the reports stands for itself, whatever was measured', () => {
  expect(circumstanceBlocks(known)).toEqual([]);
  const circumstances = { ...known, restS: 60, sameDay: false, nerveSigns: null, first: null };
  expect(circumstanceBlocks(circumstances)).toEqual([
    'short-rest',
    'order-not-recorded',
    'different-days',
    'nerve-signs-not-asked',
  ]);
  expect(blocksOf({ circumstances })).toEqual(circumstanceBlocks(circumstances));
});

test('an answer that a file lacks altogether is not known, and never harmless', () => {
  const lacking = { sore: {}, earlierInjury: {} } as unknown as PairCircumstances;
  expect(circumstanceBlocks(lacking)).toEqual([
    'soreness-not-asked',
    'source-not-recorded',
    'rest-not-recorded',
    'order-not-recorded',
    'earlier-injury-not-asked',
    'day-not-recorded',
    'nerve-signs-not-asked',
  ]);
});

describe('hands', () => {
  test('seen on both sides and within the limit are no reason', () => {
    expect(blocksOf({ left: handsOnce('pass'), right: handsOnce('pass') })).toEqual([]);
  });

  test('used on one side, with both observed, are one reason', () => {
    expect(blocksOf({ left: handsOnce('fail'), right: handsOnce('pass') })).toEqual(['hands-used']);
  });

  test('after the end of the test they do not count', () => {
    expect(blocksOf({ left: handsOnce('fail', true), right: handsOnce('pass') })).toEqual(['hands-observed-once']);
    expect(blocksOf({ left: handsOnce('fail', true) })).toEqual([]);
  });
});

test('when nothing is known every unknown is a reason, and none is read as harmless', () => {
  const nothing: PairCircumstances = {
    sore: { left: null, right: null },
    first: null,
    restS: null,
    sameDay: null,
    sameSource: null,
    earlierInjury: { left: null, right: null },
    nerveSigns: null,
  };
  const bare = {
    ...ended(null),
    reference: null,
    effort: { good: 'cannot_tell', signs: [], reason: 'too-little-known' },
  } as const;
  expect(ratioBlocks(report('left', bare), report('right', bare), nothing)).toEqual([
    'soreness-not-asked',
    'end-not-recorded',
    'source-not-recorded',
    'rest-not-recorded',
    'order-not-recorded',
    'earlier-injury-not-asked',
    'effort-unknown',
    'day-not-recorded',
    'no-reference',
    'nerve-signs-not-asked',
  ]);
});

test('whatever comes together, the reasons stand in the order of the list, each once', () => {
  const unknown = <Value>(value: fc.Arbitrary<Value>): fc.Arbitrary<Value | null> => fc.option(value, { nil: null });
  const bothSides = fc.record({ left: unknown(fc.boolean()), right: unknown(fc.boolean()) });
  const circumstances = fc.record({
    sore: bothSides,
    first: unknown(fc.constantFrom('left' as const, 'right' as const)),
    restS: unknown(fc.double({ min: -1000, max: 1000, noNaN: true })),
    sameDay: unknown(fc.boolean()),
    sameSource: unknown(fc.boolean()),
    earlierInjury: bothSides,
    nerveSigns: unknown(fc.boolean()),
  });
  const reason = fc.constantFrom('fatigue', 'pain', 'safety', 'cap', 'fixed-count-done', null);
  fc.assert(
    fc.property(circumstances, reason, reason, fc.nat(10), (given, leftEnd, rightEnd, scored) => {
      const left = report('left', { ...ended(leftEnd), ...count(scored) });
      const right = report('right', { ...ended(rightEnd), ...count(10 - scored) });
      const blocks = ratioBlocks(left, right, given);
      const places = blocks.map((block) => RATIO_BLOCKS.indexOf(block));
      expect(places).toEqual([...new Set(places)].sort((a, b) => a - b));
    }),
    { seed: 11, numRuns: 200 },
  );
});

test('which side is called left does not matter', () => {
  const left = report('left', { ...ended('pain'), ...count(3) });
  const right = report('right', count(6));
  const straight = ratioBlocks(left, right, known);
  const swapped = ratioBlocks(
    { ...right, side: 'left' },
    { ...left, side: 'right' },
    {
      ...known,
      sore: { left: false, right: true },
      first: 'left',
    },
  );
  expect(swapped).toEqual(straight);
});
