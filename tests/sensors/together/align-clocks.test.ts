import { type Alignment, alignClocks, type SourceFit } from '@surae/sensors';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createRandom } from '../../../packages/analysis/src/signal/random.ts';
import { spreadWithin } from '../../../packages/sensors/src/together/align-clocks.ts';
import { SourceClock } from '../../../packages/sensors/src/together/source-clock.ts';
import { isLong, runs } from '../../support/runs.ts';
import { blocksOf, type ClockedSource, ownTimeS, type Stall } from '../../support/two-clocks.ts';

const noDelay = { fromMs: 0, toMs: 0 };
const exact: SourceFit = {
  offsetMs: 1000,
  middleMs: 6000,
  uncertaintyMs: 0,
  driftPpm: 0,
  driftUncertaintyPpm: 0,
  fromS: 0,
  toS: 10,
};

const alignmentOf = (one: SourceFit, other: SourceFit, delays = [noDelay, noDelay]): Alignment => {
  const answer = alignClocks({ fit: one, leastDelay: delays[0] }, { fit: other, leastDelay: delays[1] });
  if (answer.kind !== 'aligned') throw new Error(answer.reason);
  return answer.alignment;
};

describe('by hand', () => {
  test('a source that began two seconds later and counts 1 % fast', () => {
    // its time 0 is host time 3 s, where the other reads 2; its 1.01 is host time 4 s, where the other reads 3
    const one = { ...exact, offsetMs: 3000, driftPpm: 10_000 };
    const { map, fromS, toS, withinMs } = alignmentOf(one, exact);
    expect(map.offsetS).toBeCloseTo(2, 12);
    expect(map.offsetS + map.rate * 1.01).toBeCloseTo(3, 12);
    expect([fromS, toS]).toEqual([expect.closeTo(2, 12) as number, 10]);
    expect(withinMs).toBe(0);
  });

  test('what is known of the delays moves the one, and what is not known is said', () => {
    const delays = [
      { fromMs: 4, toMs: 16 },
      { fromMs: 0, toMs: 2 },
    ];
    const { map, uncertaintyMs, withinMs, delayWithinMs } = alignmentOf(exact, exact, delays);
    // its packets take 10 ms at best and those of the other 1 ms: what arrives with it was taken 9 ms earlier
    expect(map.offsetS).toBeCloseTo(-0.009, 12);
    expect(uncertaintyMs).toBeCloseTo(Math.hypot(12, 2) / Math.sqrt(12), 12);
    expect(delayWithinMs).toBe(spreadWithin(12, 2));
    expect(withinMs).toBe(delayWithinMs);
  });

  test('uncertainties of both lines add up, at the worse end of the stretch that both cover', () => {
    const one = { ...exact, uncertaintyMs: 3, driftUncertaintyPpm: 100 };
    const other = { ...exact, uncertaintyMs: 4 };
    const { uncertaintyMs, withinMs } = alignmentOf(one, other);
    // 100 ppm over 5 s from the middle to an end are 0.5 ms
    expect(uncertaintyMs).toBeCloseTo(Math.hypot(3, 0.5, 4), 12);
    expect(withinMs).toBeCloseTo(2 * Math.hypot(3, 0.5, 4), 12);
  });

  test('sources that were never heard together, or too little, are not aligned', () => {
    const source = { fit: exact, leastDelay: noDelay };
    const later = { fit: { ...exact, offsetMs: 11_001 }, leastDelay: noDelay };
    expect(alignClocks(later, source)).toEqual({ kind: 'not-aligned', reason: 'never-together' });
    expect(alignClocks(source, { ...source, fit: null })).toEqual({ kind: 'not-aligned', reason: 'too-short' });
    expect(alignClocks({ ...source, fit: null }, source)).toEqual({ kind: 'not-aligned', reason: 'too-short' });
  });
});

test('the spread of a difference holds 95 of 100 random ones', () => {
  expect(spreadWithin(0, 0)).toBe(0);
  // one value alone: even from -10 to 10
  expect(spreadWithin(20, 0)).toBeCloseTo(9.5, 12);
  // two of the same width: a triangle, 20 (1 - sqrt 0.05)
  expect(spreadWithin(20, 20)).toBeCloseTo(20 * (1 - Math.sqrt(0.05)), 12);
  const random = createRandom(5);
  for (const [one, other] of [
    [20, 0.4],
    [20, 8],
    [3, 20],
    [20, 20],
  ]) {
    const within = spreadWithin(one, other);
    let inside = 0;
    for (let i = 0; i < 40_000; i++) {
      if (Math.abs(one * (random() - 0.5) - other * (random() - 0.5)) <= within) inside += 1;
    }
    expect(Math.abs(inside / 40_000 - 0.95)).toBeLessThan(0.005);
  }
});

const leastDelay = { fromMs: 0, toMs: 20 };

function fitOf(source: ClockedSource, still: readonly Stall[], seed: number): SourceFit | null {
  const clock = new SourceClock();
  for (const block of blocksOf(source, still, seed)) clock.take(block);
  return clock.fitted;
}

/** How far the time line of two sources is off, where both begin to be heard and where one ends [ms]. */
function alignedTwo(one: ClockedSource, other: ClockedSource, still: readonly Stall[], seed: number) {
  const given = [fitOf(one, still, seed), fitOf(other, still, seed + 1)].map((fit) => ({ fit, leastDelay }));
  const answer = alignClocks(given[0], given[1]);
  if (answer.kind !== 'aligned') throw new Error(answer.reason);
  const { map } = answer.alignment;
  const ends = [Math.max(one.beginsS, other.beginsS), Math.min(one.endsS, other.endsS)];
  const errorsMs = ends.map((hostS) => 1000 * (map.offsetS + map.rate * ownTimeS(one, hostS) - ownTimeS(other, hostS)));
  return { alignment: answer.alignment, errorsMs };
}

const from = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const clockedSource: fc.Arbitrary<ClockedSource> = fc
  .record({
    beginsS: from(0, 20),
    endsS: from(35, 90),
    driftPpm: from(-300, 300),
    rateHz: fc.constantFrom(80, 100, 200, 500),
    samplesPerPacket: fc.integer({ min: 1, max: 8 }),
    leastDelayMs: from(0, 20),
    jitter: fc.constantFrom('even' as const, 'exponential' as const, 'radio' as const),
    meanJitterMs: from(0.5, 40),
  })
  // a device in step with its radio may always wait for all of an interval
  .map((one) => (one.jitter === 'radio' ? { ...one, leastDelayMs: 0, meanJitterMs: one.meanJitterMs / 4 } : one));
const stalls: fc.Arbitrary<Stall[]> = fc.array(
  from(0, 60).map((fromS) => ({ fromS, toS: fromS + 1 })),
  { maxLength: 2 },
);

test('for any clocks and any way of the packets no time is further off than the delays and the fit allow', () => {
  fc.assert(
    fc.property(clockedSource, clockedSource, stalls, fc.nat(), (one, other, still, seed) => {
      const { alignment, errorsMs } = alignedTwo(one, other, still, seed);
      expect(alignment.toS).toBeGreaterThan(alignment.fromS);
      const fitMs = Math.sqrt(Math.max(0, alignment.uncertaintyMs ** 2 - (2 * leastDelay.toMs ** 2) / 12));
      // half the range for each of both, and five times what the fits say of themselves
      for (const errorMs of errorsMs) expect(Math.abs(errorMs)).toBeLessThan(leastDelay.toMs + 5 * fitMs);
    }),
    runs(40, 3000),
  );
});

test('the true time lies within the stated one as often as is said', () => {
  const count = isLong ? 3000 : 100;
  const random = createRandom(2_611);
  const between = (min: number, max: number): number => min + (max - min) * random();
  const drawn = (): ClockedSource => ({
    beginsS: between(0, 20),
    endsS: between(35, 90),
    driftPpm: between(-300, 300),
    rateHz: [80, 100, 200, 500][Math.floor(between(0, 4))],
    samplesPerPacket: Math.floor(between(1, 9)),
    leastDelayMs: between(leastDelay.fromMs, leastDelay.toMs),
    jitter: random() < 0.5 ? 'even' : 'exponential',
    meanJitterMs: between(0.5, 40),
  });
  let inside = 0;
  let squares = 0;
  let statedMs = 0;
  for (let seed = 0; seed < count; seed++) {
    const stallS = between(0, 60);
    const { alignment, errorsMs } = alignedTwo(drawn(), drawn(), [{ fromS: stallS, toS: stallS + 1 }], seed);
    inside += errorsMs.filter((errorMs) => Math.abs(errorMs) <= alignment.withinMs).length;
    squares += errorsMs.reduce((sum, errorMs) => sum + (errorMs / alignment.uncertaintyMs) ** 2, 0);
    statedMs += alignment.withinMs;
  }
  const share = inside / (2 * count);
  const ratio = Math.sqrt(squares / (2 * count));
  process.stdout.write(
    `Two clocks, ${count} pairs: ${(100 * share).toFixed(1)} % within the stated time, which is ` +
      `${(statedMs / count).toFixed(1)} ms on average; errors are ${ratio.toFixed(2)} times the stated uncertainty.\n`,
  );
  expect(share).toBeGreaterThan(0.92);
  expect(share).toBeLessThan(0.985);
  expect(ratio).toBeGreaterThan(0.85);
  expect(ratio).toBeLessThan(1.15);
});
