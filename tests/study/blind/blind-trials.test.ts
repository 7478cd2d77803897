import { expect, test } from 'vitest';
import { blindTrials } from '../../../packages/study/src/blind/blind-trials.ts';
import type { QualityRow } from '../../../packages/study/src/quality/quality-rows.ts';
import { BLIND_STUDY } from '../../support/blind-raters.ts';

function row(trial: string, status: QualityRow['status'], refusal: string | null = null): QualityRow {
  return { status, trial: { trial, sha256: `hash of ${trial}`, refusal } } as QualityRow;
}

const trialsOf = (rows: readonly QualityRow[]) => blindTrials(BLIND_STUDY, rows).map(({ trial }) => trial);

test('what is taken and what is still to be decided is counted again; what was left out or refused is not', () => {
  const rows = [row('b', 'include'), row('a', 'to-decide'), row('c', 'exclude'), row('d', 'to-decide', 'no times')];
  expect(trialsOf(rows)).toEqual(['b', 'a']);
});

test('refused where nothing is left, and for a test without repetitions', () => {
  expect(() => trialsOf([row('c', 'exclude')])).toThrow(
    'expected a recording that was read and is not left out, got none',
  );
  const study = { ...BLIND_STUDY.study, test: 'isometric' } as const;
  expect(() => blindTrials({ ...BLIND_STUDY, study }, [row('a', 'include')])).toThrow(
    'expected heel-raise, got isometric',
  );
});
