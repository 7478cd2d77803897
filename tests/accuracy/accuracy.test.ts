import * as analysis from '@surae/analysis';
import type { Level } from '@surae/simulation';
import * as simulation from '@surae/simulation';
import { describe, expect, test } from 'vitest';
import { Figures, type Kind, lostGround, measure, modelErrors } from './modules.ts';

// The long run measures the sets that the README's table is about; the short run takes others, and fewer.
const whole = process.env['SURAE_LONG'] === '1';
const from = whole ? 30_001 : 20_001;
const positionKinds: Kind[] = ['heel', 'foot', 'foot without gyroscope'];
const bodyKinds: Kind[] = ['trunk', 'platform'];
const kinds = [...positionKinds, ...bodyKinds];
const levels: Level[] = ['clean', 'typical', 'hard', 'field'];
const setsOf = (kind: Kind): number => (whole ? 300 : bodyKinds.includes(kind) ? 6 : 12);

describe('detection on simulated sets', () => {
  test.each(kinds.flatMap((kind) => levels.map((level) => ({ kind, level }))))(
    '$kind, $level: count, timing and height reach their goals, or what was reached where a goal is still ahead',
    ({ kind, level }) => {
      const summary = measure({ simulation, analysis, kind, level, sets: setsOf(kind), from }).summary();
      expect(lostGround(kind, level, summary, whole)).toEqual([]);
    },
    3_600_000,
  );
});

describe('uncertainty, with the errors of the body model drawn', () => {
  test('95 % intervals of height and top time cover 93 to 97 % over all kinds and disturbed levels', () => {
    const figures = new Figures();
    const disturbed: Level[] = ['typical', 'hard', 'field'];
    for (const kind of kinds) {
      // 34 sets of five kinds and three levels are 510; all repetitions of a set share its lever, so a few sets say little
      const sets = whole ? 34 : bodyKinds.includes(kind) ? 2 : 14;
      for (const level of disturbed) {
        measure({ simulation, analysis, kind, level, sets, from: from + 1000, figures, faultsOf: modelErrors });
      }
    }
    const { heightCoverage, topCoverage } = figures.summary();
    const [low, high] = whole ? [0.93, 0.97] : [0.88, 1];
    for (const coverage of [heightCoverage, topCoverage]) {
      expect(coverage).toBeGreaterThanOrEqual(low);
      expect(coverage).toBeLessThanOrEqual(high);
    }
  }, 3_600_000);
});
