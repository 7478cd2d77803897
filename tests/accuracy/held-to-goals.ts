import * as analysis from '@surae/analysis';
import type { Level } from '@surae/simulation';
import * as simulation from '@surae/simulation';
import { describe, expect, test } from 'vitest';
import { type Kind, lostGround, measure } from './modules.ts';

/** The long run measures the sets that the README's table is about; the short run takes others, and fewer. */
export const whole = process.env['SURAE_LONG'] === '1';
export const from = whole ? 30_001 : 20_001;

const levels: Level[] = ['clean', 'typical', 'hard', 'field'];

/** Holds some kinds of recording to their goals at every level; the kinds stand in files of their own, which run side by side. */
export function heldToGoals(kinds: readonly Kind[], fewSets: number): void {
  describe('detection on simulated sets', () => {
    test.each(kinds.flatMap((kind) => levels.map((level) => ({ kind, level }))))(
      '$kind, $level: count, timing and height reach their goals, or what was reached where a goal is still ahead',
      ({ kind, level }) => {
        const sets = whole ? 300 : fewSets;
        const summary = measure({ simulation, analysis, kind, level, sets, from }).summary();
        expect(lostGround(kind, level, summary, whole)).toEqual([]);
      },
      3_600_000,
    );
  });
}
