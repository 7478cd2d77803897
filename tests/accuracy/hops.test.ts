import * as analysis from '@surae/analysis';
import { HOP_SERIES, type HopProtocol } from '@surae/shared';
import * as simulation from '@surae/simulation';
import { describe, expect, test } from 'vitest';

interface HopSummary {
  readonly series: number;
  readonly exact: number;
  readonly within: number;
  readonly contactP95Ms?: number;
  readonly flightP95Ms?: number;
  readonly stiffnessP95Percent?: number;
  readonly contactCoverage?: number;
}

interface MeasureModule {
  readonly measureHops: (request: {
    readonly simulation: Pick<typeof simulation, 'simulateHops'>;
    readonly analysis: Pick<typeof analysis, 'findHops' | 'hopDefaults'>;
    readonly protocol: HopProtocol;
    readonly placement: 'platform' | 'foot';
    readonly level: simulation.Level;
    readonly series: number;
    readonly from: number;
  }) => { summary(): HopSummary };
}

interface GoalsModule {
  readonly missedHopGoals: (
    placement: 'platform' | 'foot',
    level: simulation.Level,
    summary: HopSummary,
    slack?: number,
  ) => string[];
}

const beside = (name: string): string => new URL(name, import.meta.url).href;
const { measureHops } = (await import(/* @vite-ignore */ beside('hops-measure.mjs'))) as MeasureModule;
const { missedHopGoals } = (await import(/* @vite-ignore */ beside('hops-goals.mjs'))) as GoalsModule;

// The long run measures series that nothing was tuned on; the short run takes others, and fewer.
const whole = process.env['SURAE_LONG'] === '1';
const from = whole ? 61_001 : 31_001;
const series = whole ? 200 : 6;
const levels: simulation.Level[] = ['clean', 'typical', 'hard', 'field'];
const placements = ['platform', 'foot'] as const;

describe('hop series on simulated recordings', () => {
  test.each(placements.flatMap((placement) => levels.map((level) => ({ placement, level }))))(
    '$placement, $level: count, contact, flight and stiffness reach their goals',
    ({ placement, level }) => {
      const summary = measureHops({
        simulation,
        analysis,
        protocol: HOP_SERIES,
        placement,
        level,
        series,
        from,
      }).summary();
      expect(missedHopGoals(placement, level, summary, whole ? 1.2 : 2)).toEqual([]);
      expect(summary.contactCoverage).toBeGreaterThan(0.93);
    },
    600_000,
  );
});

test('a goal that is missed is named; a figure that is missing is a miss', () => {
  const good = { series: 100, exact: 1, within: 1, contactP95Ms: 1, flightP95Ms: 1, stiffnessP95Percent: 2 };
  expect(missedHopGoals('platform', 'typical', good)).toEqual([]);
  expect(missedHopGoals('platform', 'typical', { ...good, exact: 0.9, flightP95Ms: 2.5 })).toEqual([
    'platform typical exact: 0.900, goal 0.99',
    'platform typical flightP95Ms: 2.500, goal 2',
  ]);
  expect(missedHopGoals('foot', 'hard', { series: 100, exact: 1, within: 1 })).toHaveLength(3);
});
