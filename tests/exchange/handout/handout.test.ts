import {
  ExchangeError,
  type Handout,
  handoutCode,
  handoutOfCode,
  type Morning,
  morningsCode,
  morningsOfCode,
  openedCode,
  sealedCode,
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

/** What version 1 wrote. */
const FIRST_VERSION =
  'AQHcEwEABAMBFFByYWN0aWNlIGF0IHRoZSBtaWxsECs0MSAwMCAwMDAgMDAgMDACDHN0ZWFkeS1nby1vbglob2xkLXNhbWUBGxkcAwkJCgIBHkhvbGRzLCBzbGlnaHRseSB1cCBvbiB0aGUgdG9lcwIUTGVzcyBydW5uaW5nIGZvciBub3dHGw';

test('a code of version 1 is read: its plan is words, and is named by no key', () => {
  expect(handoutOfCode(FIRST_VERSION)).toEqual({ ...usual, lines: usual.lines.slice(0, 2), planKey: 0, series: 0 });
});

/** What version 2 wrote. */
const SECOND_VERSION =
  'AQLcEwEABAMBFFByYWN0aWNlIGF0IHRoZSBtaWxsECs0MSAwMCAwMDAgMDAgMDADDHN0ZWFkeS1nby1vbglob2xkLXNhbWUKZWFzZWQtbGVzcwEbGRwDCQkKopADAgMB3BMAAB5Ib2xkcywgc2xpZ2h0bHkgdXAgb24gdGhlIHRvZXMAAAAAAAAAAAMC3BMAABRMZXNzIHJ1bm5pbmcgZm9yIG5vdwAAAAAAAAAAoVY';

test('a code of version 2 is read: it knows no series', () => {
  expect(handoutOfCode(SECOND_VERSION)).toEqual({ ...usual, series: 0 });
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
  expect(refusal(() => handoutOfCode(codeOf(1, 4, ...bytes.slice(2))))).toBe('newer-version');
  expect(refusal(() => handoutOfCode(codeOf(1, 0, ...bytes.slice(2))))).toBe('newer-version');
  expect(refusal(() => handoutOfCode(codeOf(...bytes, 0)))).toBe('bad-file');
  expect(refusal(() => handoutOfCode(codeOf(...bytes.slice(0, -1))))).toBe('bad-file');
  expect(refusal(() => morningsOfCode(codeOf(2, 1, 1, 0, 12, 0, 0)))).toBe('bad-file');
  expect(refusal(() => morningsOfCode(codeOf(2, 1, 1, 0, 0, 0, 4)))).toBe('bad-file');
  expect(refusal(() => morningsOfCode(codeOf(2, 1, 255, 255, 1)))).toBe('bad-file');
});
