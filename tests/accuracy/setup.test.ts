import * as analysis from '@surae/analysis';
import * as simulation from '@surae/simulation';
import { expect, test } from 'vitest';
import { inRun } from '../support/runs.ts';

interface SetupSummary {
  readonly count: number;
  readonly sure: number;
  readonly wrongThoughSure: number;
}

interface MeasureModule {
  readonly setupQuestions: (modules: unknown) => string[];
  readonly measureSetup: (modules: unknown, name: string, from: number, count: number) => SetupSummary;
  readonly summary: (answers: readonly { confidence: number; right: boolean }[]) => SetupSummary;
  readonly firstSealedSetup: number;
}

const beside = (name: string): string => new URL(name, import.meta.url).href;
const { setupQuestions, measureSetup, summary, firstSealedSetup } = (await import(
  /* @vite-ignore */ beside('setup-measure.mjs')
)) as MeasureModule;
const modules = { simulation, analysis };

test('on sealed sensors of typical, hard and field level, an answer that is not asked about is right', () => {
  const seeds = inRun(4, 200);
  const found = setupQuestions(modules).map((name) => measureSetup(modules, name, firstSealedSetup, seeds));
  const sure = found.reduce((sum, one) => sum + one.sure, 0);
  const wrong = found.reduce((sum, one) => sum + one.wrongThoughSure, 0);
  expect(found.length).toBe(16);
  expect(sure).toBeGreaterThan(0.6 * found.reduce((sum, one) => sum + one.count, 0));
  // of 200 seeds each 2 answers of 2554 were wrong
  expect(wrong / sure).toBeLessThan(0.01);
});

test('a wrong answer that was sure of itself is counted', () => {
  const answers = [
    { confidence: 0.95, right: false },
    { confidence: 0.95, right: true },
    { confidence: 0.5, right: false },
  ];
  expect(summary(answers)).toMatchObject({ count: 3, sure: 2, wrongThoughSure: 1 });
});
