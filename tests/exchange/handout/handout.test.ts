import {
  ExchangeError,
  type Handout,
  type HandoutWeeks,
  handoutCode,
  handoutOfCode,
  type Morning,
  morningsCode,
  morningsOfCode,
  openedCode,
  sealedCode,
  weekPointsMost,
  wordsHome,
} from '@surae/exchange';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { homeExercise, homeLine, homeRun } from '../../support/home-lines.ts';

const day = fc
  .integer({ min: 0, max: 40_000 })
  .map((days) => new Date(Date.UTC(2020, 0, 1) + days * 86_400_000).toISOString().slice(0, 10));
const zeroToTen = fc.option(fc.integer({ min: 0, max: 10 }));
const stiffness = fc.constantFrom('none', 'under-10', '10-to-30', 'over-30' as const);
const side = fc.constantFrom('left', 'right', 'both' as const);
const count = fc.nat({ max: 100_000 });
const text = fc.string({ unit: 'grapheme', maxLength: 40 });
const leg = fc.option(
  fc.record({
    told: fc.constantFrom('did', 'at-least', 'pain', 'ended-early', 'probe', 'reason-unknown', 'none' as const),
    value: count,
    low: count,
    high: count,
  }),
);
/** Values to a tenth. */
const tenths = fc.nat({ max: 90_000 }).map((value) => value / 10);
const pushLeg = fc.option(
  fc.record({ told: fc.constantFrom('reached', 'pain', 'none' as const), value: tenths, low: tenths, high: tenths }),
);
const pushes = fc.option(
  fc.record({
    unit: fc.constantFrom('N', 'N.m' as const),
    decimals: fc.nat({ max: 1 }),
    left: pushLeg,
    right: pushLeg,
  }),
);
const weeks: fc.Arbitrary<HandoutWeeks> = fc.record({
  test: fc.constantFrom('heel-raise', 'isometric' as const),
  side: fc.constantFrom('left', 'right' as const),
  unit: fc.constantFrom('count', 'N', 'N.m' as const),
  points: fc
    .array(fc.record({ day, value: tenths }), { maxLength: weekPointsMost })
    .map((all) => all.toSorted((a, b) => (a.day < b.day ? -1 : 1))),
  band: fc.option(fc.record({ from: day, low: tenths, high: tenths })),
  change: fc.option(
    fc.record({
      since: day,
      zone: fc.constantFrom('likely-real', 'possible', 'cannot-tell', 'open' as const),
      difference: fc.oneof(
        tenths,
        fc.integer({ min: 1, max: 900 }).map((value) => -value / 10),
      ),
      hangs: fc.boolean(),
      cautions: fc.subarray(['first-retest', 'baseline-in-flare'] as const),
    }),
  ),
});
const handout: fc.Arbitrary<Handout> = fc.record({
  day,
  asked: side,
  usual: fc.record({ left: zeroToTen, right: zeroToTen, stiffness: fc.option(stiffness) }),
  contact: fc.option(fc.record({ name: text, telephone: text })),
  lines: fc.array(text, { maxLength: 4 }),
  legs: fc.record({ left: leg, right: leg }),
  plan: fc.array(homeLine, { maxLength: 6 }),
  planKey: fc.integer({ min: 0, max: 0xffff }),
  series: fc.integer({ min: 0, max: 0xffff }),
  pushes,
  weeks: fc.array(weeks, { maxLength: 4 }),
});
const morning: fc.Arbitrary<Morning> = fc.record({ day, left: zeroToTen, right: zeroToTen, stiffness });

const usual: Handout = {
  day: '2026-11-29',
  asked: 'right',
  usual: { left: null, right: 3, stiffness: '10-to-30' },
  contact: { name: 'Practice at the mill', telephone: '+41 00 000 00 00' },
  lines: ['steady-go-on', 'hold-same', 'eased-less'],
  legs: { left: { told: 'did', value: 27, low: 25, high: 28 }, right: { told: 'pain', value: 9, low: 9, high: 10 } },
  plan: [
    wordsHome('Holds, slightly up on the toes', 'right', '2026-11-29'),
    wordsHome('Less running for now', 'both', '2026-11-29'),
  ],
  planKey: 51_234,
  series: 4711,
  pushes: null,
  weeks: [],
};

test('whatever is taken home comes back', () => {
  fc.assert(
    fc.property(handout, (given) => {
      expect(handoutOfCode(handoutCode(given))).toEqual(given);
    }),
    { seed: 21, numRuns: 200 },
  );
});

test('an ordinary one is short enough for a camera', () => {
  expect(handoutOfCode(handoutCode(usual))).toEqual(usual);
  expect(handoutCode(usual).length).toBeLessThan(260);
});

test('a full plan stays short enough for a camera: four exercises, a limit for runs and three lines of advice', () => {
  const advice = (code: string) => ({ ...wordsHome('', 'both', usual.day), of: 'advice' as const, code });
  const plan = [
    homeExercise('seated-raise', { load: { value: 12.5, unit: 'kg' } }),
    homeExercise('one-leg-hold', { repetitions: null, holdS: 45, tempo: null }),
    homeExercise('one-leg-raise', { until: '2027-01-10' }),
    homeExercise('loaded-one-leg-raise', { restS: 150, load: { value: 20, unit: 'kg' } }),
    homeRun(),
    advice('no-hills'),
    advice('heel-lift'),
    advice('test-again'),
  ];
  const full = { ...usual, plan };
  expect(handoutOfCode(handoutCode(full))).toEqual(full);
  expect(handoutCode(full).length).toBeLessThan(330);
});

/** Twelve weeks of one leg in one test, a test every two weeks. */
function twelveWeeks(test: HandoutWeeks['test'], side: HandoutWeeks['side']): HandoutWeeks {
  const points = [7, 21, 35, 49, 63, 77].map((at, i) => ({
    day: new Date(Date.UTC(2026, 8, 6 + at)).toISOString().slice(0, 10),
    value: test === 'heel-raise' ? 14 + i : 1034.5 + 31.2 * i,
  }));
  const band = { from: '2026-09-13', low: 8.2, high: 19.8 };
  const change = {
    since: '2026-09-13',
    zone: 'possible',
    difference: 5,
    hangs: true,
    cautions: ['first-retest'],
  } as const;
  return { test, side, unit: test === 'heel-raise' ? 'count' : 'N', points, band, change };
}

test('pushes and twelve weeks of both legs in both tests, beside a full plan, stay within half of what is drawn', () => {
  const leg = { told: 'reached', value: 1234.5, low: 1190.2, high: 1278.8 } as const;
  const full = {
    ...usual,
    plan: ['seated-raise', 'one-leg-hold', 'one-leg-raise', 'loaded-one-leg-raise'].map((code) => homeExercise(code)),
    pushes: { unit: 'N', decimals: 1, left: leg, right: { ...leg, told: 'pain' } } as const,
    weeks: (['heel-raise', 'isometric'] as const).flatMap((one) => [
      twelveWeeks(one, 'left'),
      twelveWeeks(one, 'right'),
    ]),
  };
  const rounded = (values: HandoutWeeks): HandoutWeeks => ({
    ...values,
    points: values.points.map((one) => ({ ...one, value: Math.round(10 * one.value) / 10 })),
  });
  expect(handoutOfCode(handoutCode(full))).toEqual({ ...full, weeks: full.weeks.map(rounded) });
  // 858 bytes are what the largest code holds that is drawn, with the address before it
  expect(handoutCode(full).length).toBeLessThan(520);
});

/** What version 1 wrote. */
const FIRST_VERSION =
  'AQHcEwEABAMBFFByYWN0aWNlIGF0IHRoZSBtaWxsECs0MSAwMCAwMDAgMDAgMDACDHN0ZWFkeS1nby1vbglob2xkLXNhbWUBGxkcAwkJCgIBHkhvbGRzLCBzbGlnaHRseSB1cCBvbiB0aGUgdG9lcwIUTGVzcyBydW5uaW5nIGZvciBub3dHGw';

test('a code of version 1 is read: its plan is words, and is named by no key', () => {
  expect(handoutOfCode(FIRST_VERSION)).toEqual({
    ...usual,
    lines: usual.lines.slice(0, 2),
    planKey: 0,
    series: 0,
    weeks: null,
  });
});

/** What version 2 wrote. */
const SECOND_VERSION =
  'AQLcEwEABAMBFFByYWN0aWNlIGF0IHRoZSBtaWxsECs0MSAwMCAwMDAgMDAgMDADDHN0ZWFkeS1nby1vbglob2xkLXNhbWUKZWFzZWQtbGVzcwEbGRwDCQkKopADAgMB3BMAAB5Ib2xkcywgc2xpZ2h0bHkgdXAgb24gdGhlIHRvZXMAAAAAAAAAAAMC3BMAABRMZXNzIHJ1bm5pbmcgZm9yIG5vdwAAAAAAAAAAoVY';

test('a code of version 2 is read: it knows no series', () => {
  expect(handoutOfCode(SECOND_VERSION)).toEqual({ ...usual, series: 0, weeks: null });
});

/** What version 3 wrote. */
const THIRD_VERSION =
  'AQPcEwEABAMBFFByYWN0aWNlIGF0IHRoZSBtaWxsECs0MSAwMCAwMDAgMDAgMDADDHN0ZWFkeS1nby1vbglob2xkLXNhbWUKZWFzZWQtbGVzcwEbGRwDCQkKopADAgMB3BMAAB5Ib2xkcywgc2xpZ2h0bHkgdXAgb24gdGhlIHRvZXMAAAAAAAAAAAMC3BMAABRMZXNzIHJ1bm5pbmcgZm9yIG5vdwAAAAAAAAAA5yTz4g';

test('a code of version 3 is read: it tells of no pushes, and not whether there were weeks', () => {
  expect(handoutOfCode(THIRD_VERSION)).toEqual({ ...usual, weeks: null });
});

test('whatever mornings are given come back', () => {
  fc.assert(
    fc.property(fc.array(morning, { maxLength: 120 }), (given) => {
      expect(morningsOfCode(morningsCode(given))).toEqual(given);
    }),
    { seed: 22, numRuns: 100 },
  );
});

test('one kind is not read as the other, a newer version is refused as such, and more than there should be is', () => {
  const bytes = openedCode(handoutCode(usual));
  const codeOf = (...given: number[]): string => sealedCode(Uint8Array.from(given));
  const refusal = (read: () => unknown): unknown => {
    try {
      return read();
    } catch (error) {
      return error instanceof ExchangeError ? error.code : error;
    }
  };
  expect(refusal(() => morningsOfCode(handoutCode(usual)))).toBe('bad-file');
  expect(refusal(() => handoutOfCode(morningsCode([])))).toBe('bad-file');
  expect(refusal(() => handoutOfCode(codeOf(1, 5, ...bytes.slice(2))))).toBe('newer-version');
  expect(refusal(() => handoutOfCode(codeOf(1, 0, ...bytes.slice(2))))).toBe('newer-version');
  expect(refusal(() => handoutOfCode(codeOf(...bytes, 0)))).toBe('bad-file');
  expect(refusal(() => handoutOfCode(codeOf(...bytes.slice(0, -1))))).toBe('bad-file');
  expect(refusal(() => morningsOfCode(codeOf(2, 1, 1, 0, 12, 0, 0)))).toBe('bad-file');
  expect(refusal(() => morningsOfCode(codeOf(2, 1, 1, 0, 0, 0, 4)))).toBe('bad-file');
  expect(refusal(() => morningsOfCode(codeOf(2, 1, 255, 255, 1)))).toBe('bad-file');
});
