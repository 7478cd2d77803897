import {
  type ComparedReport,
  compareSets,
  compareValues,
  type MeasuredValue,
  type PairCircumstances,
  RATIO_BLOCKS,
  type RatioBlock,
  type RatioRules,
  ratioDirection,
  type Side,
  type SideBlock,
  type SideComparison,
  type SideRatio,
  VALUE_BLOCKS,
} from '@surae/analysis';
import {
  COMPARISON_RULES,
  RATIO_BLOCK_SENTENCES,
  RATIO_UNBLOCK_SENTENCES,
  VALUE_BLOCK_SENTENCES,
  VALUE_UNBLOCK_SENTENCES,
} from '@surae/shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { madeReport, sureCount } from '../support/made-visit.ts';
import { runs } from '../support/runs.ts';

const rules: RatioRules = {
  ratioLine: COMPARISON_RULES.ratioLine.value,
  plainNoMost: COMPARISON_RULES.plainNoMost.value,
  plainYesLeast: COMPARISON_RULES.plainYesLeast.value,
};
const plain = { oneSidedSport: false, legLengthRaise: false, ageYears: 38 };

describe('the fifteen lines against a ratio (common practice, no source)', () => {
  interface Line {
    /** what is known and stands against it */
    readonly known: readonly SideBlock[];
    /** what is not known; empty where the report always knows it */
    readonly unknown: readonly SideBlock[];
  }
  const LINES: Readonly<Record<string, Line>> = {
    'both sides sore now': { known: ['both-sides-sore'], unknown: ['soreness-not-asked'] },
    'ended for pain, technical, safety, fear, cramp': {
      known: ['ended-for-pain', 'ended-incomplete'],
      unknown: ['end-not-recorded'],
    },
    'ended at the cap': { known: ['censored'], unknown: [] },
    'tested in another way': {
      known: [
        'different-protocol',
        'different-placement',
        'different-source',
        'different-unit',
        'different-convention',
      ],
      unknown: ['source-not-recorded', 'value-missing', 'uncertainty-missing'],
    },
    'under five repetitions or three standard errors': {
      known: ['few-repetitions', 'within-error', 'value-not-positive'],
      unknown: [],
    },
    'rest under two minutes, or order not recorded': {
      known: ['short-rest'],
      unknown: ['rest-not-recorded', 'order-not-recorded'],
    },
    'earlier injury of the side that is compared with': {
      known: ['earlier-injury', 'earlier-injury-not-confirmed'],
      unknown: ['earlier-injury-not-asked'],
    },
    'data lost, or the signal does not hold': { known: ['signal-not-usable'], unknown: [] },
    'side uncertain': { known: [], unknown: ['side-uncertain'] },
    'effort not full': { known: ['effort-not-full'], unknown: ['effort-unknown'] },
    'hands differ, or seen on one side only': { known: ['hands-used'], unknown: ['hands-observed-once'] },
    'different days': { known: ['different-days'], unknown: ['day-not-recorded'] },
    'different rule of the reference height': { known: ['different-reference'], unknown: ['no-reference'] },
    'signs of a nerve': { known: ['nerve-signs'], unknown: ['nerve-signs-not-asked'] },
    'fixed count for tolerance': { known: ['fixed-test'], unknown: [] },
  };
  const words = { ...RATIO_BLOCK_SENTENCES, ...VALUE_BLOCK_SENTENCES };
  const lifts = { ...RATIO_UNBLOCK_SENTENCES, ...VALUE_UNBLOCK_SENTENCES };

  test('are fifteen, and no code belongs to two of them', () => {
    expect(Object.keys(LINES)).toHaveLength(15);
    const codes = Object.values(LINES).flatMap(({ known, unknown }) => [...known, ...unknown]);
    expect(new Set(codes).size).toBe(codes.length);
  });

  test.each(Object.entries(LINES))('%s: each code has a sentence, says what lifts it, and blocks', (_, line) => {
    for (const code of [...line.known, ...line.unknown]) {
      expect([...RATIO_BLOCKS, ...VALUE_BLOCKS]).toContain(code);
      expect(words[code].text).not.toBe(lifts[code].text);
      const value = { value: 20, u: 2, unit: '1', convention: 'scored repetitions' };
      const values = { left: value, right: value };
      const found = compareValues(values, [code], ratioDirection({ left: true, right: false }), plain, rules);
      expect(found).toEqual({ kind: 'blocked', blocks: [{ code, unblock: lifts[code] }] });
    }
  });
});

const unknown = <Value>(value: fc.Arbitrary<Value>): fc.Arbitrary<Value | null> =>
  fc.oneof({ weight: 8, arbitrary: value }, { weight: 1, arbitrary: fc.constantFrom(null, undefined as never) });
/** Mostly the harmless answer, so that ratios come up as well. */
const mostly = <Value>(harmless: Value, other: fc.Arbitrary<Value>): fc.Arbitrary<Value> =>
  fc.oneof({ weight: 30, arbitrary: fc.constant(harmless) }, { weight: 1, arbitrary: other });
const both = <Value>(one: fc.Arbitrary<Value>): fc.Arbitrary<Record<Side, Value>> =>
  fc.record({ left: one, right: one });

const injury = fc.oneof(
  fc.boolean(),
  fc.record({ monthsAgo: unknown(fc.double({ min: -5, max: 60 })), confirmed: unknown(fc.boolean()) }),
);
const anyPair: fc.Arbitrary<PairCircumstances> = fc.record({
  sore: fc.oneof(fc.constant({ left: false, right: true }), both(unknown(fc.boolean()))),
  first: mostly('left', fc.constantFrom('left', 'right', null, 'neither' as Side)),
  restS: mostly<number | null>(180, unknown(fc.double())),
  sameDay: mostly<boolean | null>(true, unknown(fc.boolean())),
  sameSource: mostly<boolean | null>(true, unknown(fc.boolean())),
  earlierInjury: both(mostly<PairCircumstances['earlierInjury']['left']>(false, unknown(injury))),
  nerveSigns: mostly<boolean | null>(false, unknown(fc.boolean())),
});

const sound = madeReport('left', sureCount(20), 'fatigue', {
  effort: { good: 'yes', signs: ['height-drop'], reason: 'signs-of-fatigue' },
});

/** What is told of a set; the answers need not fit together, such as a full effort of a set that pain ended. */
const anyTold = (side: Side) =>
  fc.record({
    side: mostly<Side | null>(side, fc.constantFrom('left', 'right', null)),
    scored: fc.oneof(fc.integer({ min: 8, max: 40 }), fc.nat(9)),
    censored: mostly(false, fc.boolean()),
    placement: mostly(sound.placement, fc.constantFrom('foot', 'trunk')),
    kind: mostly(sound.kind, fc.constantFrom('heel-height', 'body-rise')),
    fingerprint: mostly('one', fc.constantFrom('one', 'another')),
    endClass: mostly('capacity', fc.constantFrom('tolerance', 'incomplete', 'censored', 'probe', 'unknown')),
    endReason: mostly<ComparedReport['end']['reasonGiven']>(
      'fatigue',
      fc.constantFrom('pain', 'cap', 'technical', 'safety', 'other-stop', 'fixed-count-done', null),
    ),
    good: mostly<ComparedReport['effort']['good']>('yes', fc.constantFrom('no', 'cannot_tell')),
    why: mostly<ComparedReport['effort']['reason']>(
      'signs-of-fatigue',
      fc.constantFrom('stopped-before-signs-of-fatigue', 'not-a-capacity-test', 'too-little-known'),
    ),
    usable: mostly<ComparedReport['gate']['usable']>('yes', fc.constantFrom('no', 'cannot_tell')),
    reasons: mostly<ComparedReport['gate']['reasons']>(
      [],
      fc.subarray(['invalid-signal', 'doubtful-signal', 'gaps', 'side-unknown', 'no-repetition'] as const),
    ),
    reference: mostly<'same' | 'other' | 'none'>('same', fc.constantFrom('other', 'none')),
    hands: mostly<'not_observed' | 'pass' | 'fail'>('not_observed', fc.constantFrom('pass', 'fail')),
  });

type Told = ReturnType<typeof anyTold> extends fc.Arbitrary<infer One> ? One : never;

function reportOf(made: Told): ComparedReport {
  const [first, ...others] = sound.repetitions;
  const criteria = { ...first.criteria, hands: { ...first.criteria.hands, result: made.hands } };
  const { reference } = sound;
  return {
    side: made.side,
    placement: made.placement,
    kind: made.kind,
    protocol: { id: 'single-leg.incline10', version: '1', fingerprint: made.fingerprint },
    repetitions: [{ ...first, criteria }, ...others],
    count: { ...sound.count, ...sureCount(made.scored), censored: made.censored },
    reference:
      made.reference === 'none' || reference === null
        ? null
        : { ...reference, rule: made.reference === 'other' ? 'best-two-of-familiarisation' : reference.rule },
    end: { ...sound.end, class: made.endClass, reasonGiven: made.endReason },
    effort: { good: made.good, signs: [], reason: made.why },
    gate: { usable: made.usable, reasons: made.reasons },
  };
}

const anyNumber = fc.oneof(fc.double(), fc.constantFrom(0, -1, Number.NaN, Number.POSITIVE_INFINITY));
const anyValue: fc.Arbitrary<MeasuredValue> = fc.record({
  value: fc.oneof(
    { weight: 12, arbitrary: fc.double({ min: 8, max: 40, noNaN: true }) },
    { weight: 1, arbitrary: unknown(anyNumber) },
  ),
  u: fc.oneof(
    { weight: 12, arbitrary: fc.double({ min: 0.1, max: 2.5, noNaN: true }) },
    { weight: 1, arbitrary: unknown(anyNumber) },
  ),
  unit: mostly('1', fc.constantFrom('1', 'J', 'N')),
  convention: mostly('scored repetitions', fc.constantFrom('net force', 'gross force')),
});
const anyBlock = fc.constantFrom<SideBlock>(...RATIO_BLOCKS, ...VALUE_BLOCKS);

const yes = (answer: unknown): boolean => answer === true;
const no = (answer: unknown): boolean => answer === false;
const bothSides = (holds: (side: Side) => boolean): boolean => holds('left') && holds('right');

/** Whether everything that a ratio needs is known and harmless: written from the list of lines, not from the code. */
function nothingStandsAgainst(
  reports: Readonly<Record<Side, ComparedReport>>,
  values: Readonly<Record<Side, MeasuredValue>>,
  pair: PairCircumstances,
): boolean {
  const { sore, earlierInjury: injuries } = pair;
  const one = (side: Side): ComparedReport => reports[side];
  const alike = (of: (report: ComparedReport) => unknown): boolean => of(reports.left) === of(reports.right);
  const compared: Side[] =
    yes(sore.left) && no(sore.right) ? ['right'] : yes(sore.right) && no(sore.left) ? ['left'] : ['left', 'right'];
  const mayBeCompared = (side: Side): boolean => {
    const told = injuries[side];
    if (typeof told !== 'object' || told === null) return no(told);
    return yes(told.confirmed) && told.monthsAgo !== null && told.monthsAgo > 12;
  };
  const positive = (number: number | null | undefined): boolean => typeof number === 'number' && number > 0;
  const handsSeen = (report: ComparedReport): string => report.repetitions[0].criteria.hands.result;
  const handsFine = bothSides((side) => handsSeen(one(side)) !== 'fail') && alike((report) => handsSeen(report));
  return (
    bothSides((side) => typeof sore[side] === 'boolean') &&
    !(yes(sore.left) && yes(sore.right)) &&
    (pair.first === 'left' || pair.first === 'right') &&
    typeof pair.restS === 'number' &&
    pair.restS >= 120 &&
    pair.restS < Number.POSITIVE_INFINITY &&
    yes(pair.sameDay) &&
    yes(pair.sameSource) &&
    no(pair.nerveSigns) &&
    compared.every(mayBeCompared) &&
    compared.every((side) => one(side).count.scored >= 7 && values[side].value! >= 3 * values[side].u!) &&
    alike(({ protocol }) => protocol.fingerprint) &&
    alike(({ placement }) => placement) &&
    alike(({ kind }) => kind) &&
    alike(({ reference }) => reference?.rule) &&
    handsFine &&
    values.left.unit === values.right.unit &&
    values.left.convention === values.right.convention &&
    bothSides(
      (side) =>
        one(side).side === side &&
        one(side).end.class === 'capacity' &&
        one(side).end.reasonGiven === 'fatigue' &&
        !one(side).count.censored &&
        one(side).effort.good === 'yes' &&
        one(side).effort.reason !== 'stopped-before-signs-of-fatigue' &&
        one(side).gate.reasons.length === 0 &&
        one(side).gate.usable === 'yes' &&
        one(side).reference !== null &&
        positive(values[side].value) &&
        positive(values[side].u),
    )
  );
}

/** Every key and every plain value of an answer as it would be stored. */
function leaves(value: unknown, path = ''): { readonly path: string; readonly value: unknown }[] {
  if (typeof value !== 'object' || value === null) return [{ path, value }];
  return Object.entries(value).flatMap(([key, inner]) => leaves(inner, `${path}/${key}`));
}

/** That an answer holds reasons, each with its words, and nothing that a ratio could be read from. */
function holdsNoFigure(found: SideComparison): void {
  expect(Object.keys(found).sort()).toEqual(['blocks', 'kind']);
  const stored = leaves(JSON.parse(JSON.stringify(found)));
  expect(stored.length).toBeGreaterThan(1);
  for (const { path, value } of stored) {
    expect(typeof value, path).toBe('string');
    expect(path).not.toMatch(/ratio|difference|low|high|probability|line|value/i);
    if (/\/(code|text)$/.test(path)) expect(value, path).not.toMatch(/\d/);
  }
}

/** That every figure of a ratio is finite and stands where it must. */
function isWhole({ ratio, difference, underLine }: SideRatio): void {
  for (const one of [ratio.value, ratio.low, ratio.high, ratio.logU, difference.low, difference.high])
    expect(Number.isFinite(one)).toBe(true);
  for (const { probability } of underLine) expect(probability >= 0 && probability <= 1).toBe(true);
  // an error far below the last digit of a ratio leaves its bounds where it is
  expect(0 < ratio.low && ratio.low <= ratio.value && ratio.value <= ratio.high).toBe(true);
}

test('no two sets whatever yield a ratio while anything known or unknown stands against it, and the answer holds no figure', () => {
  const seen = { ratio: 0, blocked: 0 };
  fc.assert(
    fc.property(anyTold('left'), anyTold('right'), both(anyValue), anyPair, (left, right, values, pair) => {
      const reports = { left: reportOf(left), right: reportOf(right) };
      const found = compareSets(reports, values, pair, plain, rules);
      seen[found.kind] += 1;
      if (found.kind === 'blocked') holdsNoFigure(found);
      const harmless = nothingStandsAgainst(reports, values, pair);
      if (!harmless) expect(found.kind).toBe('blocked');
      // beyond these sizes the interval is no finite one
      const ordinary = [values.left, values.right].every(({ value, u }) => value! > 1 && value! < 1e3 && u! < 1e3);
      if (harmless && ordinary) expect(found.kind).toBe('ratio');
      if (found.kind === 'ratio') isWhole(found);
    }),
    runs(1500, 60_000),
  );
  expect(Math.min(seen.ratio, seen.blocked)).toBeGreaterThan(50);
});

test('no two values whatever yield a ratio while the caller knows of a reason', () => {
  const direction = both(unknown(fc.boolean())).map(ratioDirection);
  const reasons = fc.array(anyBlock, { minLength: 1, maxLength: 4 });
  fc.assert(
    fc.property(both(anyValue), reasons, direction, (values, blocks, stands) => {
      const found = compareValues(values, blocks, stands, plain, rules);
      holdsNoFigure(found);
      const codes = found.kind === 'blocked' ? found.blocks.map(({ code }) => code) : [];
      expect(new Set(codes).size).toBe(codes.length);
      for (const block of blocks) expect(codes).toContain(block);
    }),
    runs(500, 20_000),
  );
});

test('a reason that is not in the list blocks as well', () => {
  const value = { value: 20, u: 2, unit: '1', convention: 'scored repetitions' };
  const values = { left: value, right: value };
  const direction = ratioDirection({ left: true, right: false });
  expect(compareValues(values, ['not of the list' as RatioBlock], direction, plain, rules).kind).toBe('blocked');
});
