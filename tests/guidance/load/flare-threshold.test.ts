import { flareThreshold, type SessionAndMorning } from '@surae/guidance';
import { FLARE_NUMBERS } from '@surae/shared';
import { describe, expect, test } from 'vitest';
import { createRandom } from '../../../packages/analysis/src/signal/random.ts';
import { marchDay } from '../../support/run-logs.ts';
import { isLong } from '../../support/runs.ts';

interface Truth {
  readonly sessions: number;
  readonly threshold: number;
  /** how gradually flares become likely; null: load makes no difference */
  readonly spread: number | null;
  /** share of mornings that flare for another reason */
  readonly otherwise?: number;
}

/** A diary whose truth is known: a session every second day, of a load between 20 and 100. */
function diary({ sessions, threshold, spread, otherwise = 0 }: Truth, seed: number): SessionAndMorning[] {
  const random = createRandom(seed);
  return Array.from({ length: sessions }, (_, i) => {
    const load = 20 + 80 * random();
    const p = spread === null ? 0.4 : 1 / (1 + Math.exp(-(load - threshold) / spread));
    return { on: marchDay(2 * i), load, isFlare: random() < otherwise + (1 - otherwise) * p };
  });
}

const times = isLong ? 2000 : 40;

function coverage(truth: Truth): { told: number; within: number; low: number } {
  let [told, within, low] = [0, 0, 0];
  for (let seed = 1; seed <= times; seed++) {
    const found = flareThreshold(diary(truth, seed));
    if (found.held !== 'yes') continue;
    told++;
    const [from, to] = found.interval;
    if (from <= truth.threshold && truth.threshold <= to) within++;
    else if (to < truth.threshold) low++;
  }
  return { told: told / times, within: within / told, low: low / told };
}

describe('diaries whose truth is known', () => {
  // 0.95 is asked for; of 80 diaries four standard errors are 0.1
  test.each([
    [{ sessions: 40, threshold: 70, spread: 8 }, 0.95],
    [{ sessions: 60, threshold: 70, spread: 15 }, 0.85],
    [{ sessions: 60, threshold: 70, spread: 3 }, 0.95],
  ])('%o: the interval holds the truth as often as it says, and is told in at least %f', (truth, least) => {
    const { told, within } = coverage(truth);
    expect(told).toBeGreaterThan(least);
    expect(within).toBeGreaterThan(isLong ? 0.92 : 0.85);
  });

  test('where load makes no difference, a threshold is told to hardly anybody', () => {
    const truth = { sessions: 60, threshold: 50, spread: null };
    expect(coverage(truth).told).toBeLessThan(0.03);
    const whys = Array.from({ length: 20 }, (_, seed) => flareThreshold(diary(truth, seed + 1))).flatMap((one) =>
      one.held === 'yes' ? [] : one.missing,
    );
    expect(whys.filter((one) => one === 'no-relation').length).toBeGreaterThan(14);
  });

  test('flares for other reasons, one morning in seven, make it too low and not too high', () => {
    const { within, low } = coverage({ sessions: 60, threshold: 70, spread: 8, otherwise: 0.15 });
    expect(within).toBeLessThan(0.9);
    expect(within + low).toBeGreaterThan(0.97);
  });
});

/** Flares after 60 and more, steady after less, with one of each the other way round; one session every second day. */
const loads = [30, 35, 40, 45, 50, 55, 58, 62, 65, 70, 75, 80, 40, 50, 45, 70, 35, 30, 75, 52, 44, 68];
const plain: readonly SessionAndMorning[] = loads.map((load, i) => ({
  on: marchDay(2 * i),
  load,
  isFlare: load === 55 || (load >= 60 && load !== 62),
}));

describe('a threshold', () => {
  test('lies between the loads after which flares came and those after which they did not', () => {
    const found = flareThreshold(plain);
    expect(found).toMatchObject({ held: 'yes', confidence: 0.95, ground: { flares: 8, steady: 14, unknown: 0 } });
    if (found.held !== 'yes') return;
    expect(found.threshold).toBeGreaterThan(52);
    expect(found.threshold).toBeLessThan(68);
    expect(found.interval[0]).toBeLessThan(found.threshold);
    expect(found.interval[1]).toBeGreaterThan(found.threshold);
    expect(found.doubts).toEqual(['days-not-independent', 'tolerance-unchanged', 'load-only']);
  });

  test('follows the unit of the load', () => {
    const [one, other] = [
      flareThreshold(plain),
      flareThreshold(plain.map((each) => ({ ...each, load: (each.load ?? 0) * 10 }))),
    ];
    if (one.held !== 'yes' || other.held !== 'yes') throw new Error('not told');
    expect(other.threshold / one.threshold).toBeCloseTo(10, 6);
    expect(other.interval[1] / one.interval[1]).toBeCloseTo(10, 6);
  });

  test('asks for weeks: one day less is too few', () => {
    // 42 days are six weeks
    const over = (days: number) =>
      plain.map((one, i) => ({ ...one, on: marchDay(i === plain.length - 1 ? days : Math.min(2 * i, 40) + 1) }));
    expect(flareThreshold(over(42)).held).toBe('yes');
    expect(flareThreshold(over(41))).toMatchObject({ held: 'cannot-tell', missing: ['few-weeks'] });
  });

  test.each([
    [5, 'yes'],
    [4, 'few-flares'],
  ])('asks for flares: %d are %s', (most, answer) => {
    let flares = 0;
    const some = plain.filter(({ isFlare }) => isFlare !== true || ++flares <= most);
    const found = flareThreshold(some.concat({ on: marchDay(43), load: 30, isFlare: false }));
    expect(found.held === 'yes' ? 'yes' : found.missing[0]).toBe(answer);
  });

  test.each([
    [10, true],
    [9, false],
  ])('asks for steady mornings: %d are enough is %s', (least, isEnough) => {
    let steady = 0;
    const some = plain.filter(({ isFlare }) => isFlare !== false || ++steady <= least);
    const found = flareThreshold(some.concat({ on: marchDay(43), load: 80, isFlare: true }));
    expect(found.held === 'yes' || !found.missing.includes('few-steady')).toBe(isEnough);
  });

  test('asks for mornings: more than three in ten that are not known are too many, and none is taken to be steady', () => {
    const unknown = (n: number) => [
      ...plain,
      ...Array.from({ length: n }, (_, i) => ({ on: marchDay(i), load: 60, isFlare: null })),
    ];
    // 22 are known: 9 of 31 are 0.290, 10 of 32 are 0.3125
    expect(flareThreshold(unknown(9))).toMatchObject({ held: 'yes', ground: { unknown: 9, steady: 14 } });
    expect(flareThreshold(unknown(10))).toMatchObject({ missing: ['mornings-missing'] });
    expect(flareThreshold(plain.map((one) => ({ ...one, load: null })))).toMatchObject({
      held: 'cannot-tell',
      ground: { unknown: 22 },
    });
  });

  test('weeks of which nothing is known are no weeks: planned sessions without a log do not make six of them', () => {
    const short = Array.from({ length: 40 }, (_, i) => ({ on: marchDay(i), load: 20 + i, isFlare: i > 30 }));
    const open = Array.from({ length: 5 }, (_, i) => ({ on: marchDay(60 + i), load: null, isFlare: null }));
    expect(flareThreshold([...short, ...open])).toMatchObject({ held: 'cannot-tell', missing: ['few-weeks'] });
    // with the same days known they do
    const known = open.map(({ on }) => ({ on, load: 20, isFlare: false }));
    expect(flareThreshold([...short, ...known]).ground.weeks).toBeCloseTo(65 / 7, 6);
  });

  test('is not told where the loads are all the same, nor where it may lie beyond them', () => {
    expect(flareThreshold(plain.map((one) => ({ ...one, load: 50 })))).toMatchObject({ missing: ['one-load'] });
    // flares come after the largest loads and only sometimes
    const seldom = diary({ sessions: 60, threshold: 98, spread: 20 }, 4);
    expect(flareThreshold(seldom)).toMatchObject({ held: 'cannot-tell', missing: ['beyond-loads'] });
  });

  test('is not told where heavier sessions are followed by fewer flares', () => {
    expect(flareThreshold(plain.map((one) => ({ ...one, load: 110 - (one.load ?? 0) })))).toMatchObject({
      missing: ['no-relation'],
    });
  });

  test('says everything that is missing, of nothing', () => {
    expect(flareThreshold([])).toEqual({
      held: 'cannot-tell',
      ground: { weeks: 0, flares: 0, steady: 0, unknown: 0 },
      missing: ['few-weeks', 'few-flares', 'few-steady'],
    });
  });

  test('refuses a load under zero', () => {
    expect(() => flareThreshold([{ on: marchDay(1), load: -1, isFlare: true }])).toThrow('not-an-answer');
  });

  test('asks by common practice', () => {
    const { weeks, flares, steady, unknownMost } = FLARE_NUMBERS;
    expect([weeks, flares, steady, unknownMost].map(({ mark }) => mark)).toEqual(Array(4).fill('common-practice'));
  });
});
