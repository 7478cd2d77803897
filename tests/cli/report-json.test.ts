import { REPETITION_COLUMNS } from '@surae/shared';
import { expect, test } from 'vitest';
import { jsonLine } from '../../apps/cli/src/report-json.ts';
import { handMadeOutcome, handMadeRefusal } from '../support/hand-made-outcome.ts';

interface Line {
  readonly [key: string]: unknown;
  readonly repetitions: Record<string, unknown>[];
}

function read(text: string): Line {
  expect(text).not.toContain('\n');
  return JSON.parse(text) as Line;
}

test('a line holds the recording, where its result comes from, and the result', () => {
  const line = read(jsonLine(handMadeOutcome([100, 98, 96, 60], 70)));
  expect(line).toMatchObject({
    file: 'left, first.csv',
    person: 'P1',
    visit: '2',
    sha256: 'a'.repeat(64),
    settings_hash: 'b'.repeat(64),
    protocol_hash: 'c'.repeat(64),
    status: 'ok',
    test: 'heel-raise',
    placement: 'heel',
    side: 'left',
    protocol: 'single-leg.floor',
    count: { attempted: 4, valid: 3, low: 4, high: 5 },
  });
  expect(line['software']).toMatch(/^surae \d+\.\d+\.\d+$/);
  expect(line).not.toHaveProperty('reason');
});

test('a repetition has its figures in the units of its names, null where nothing was measured', () => {
  const [first, , , last] = read(jsonLine(handMadeOutcome([100, 98, 96, 60]))).repetitions;
  expect(first).toMatchObject({
    start_s: 1,
    top_s: 1.8,
    end_s: 2.6,
    height_mm: 100,
    height_u_mm: 2,
    rise_mm: null,
    rise_u_mm: null,
    work_heel_j: null,
    valid: 'yes',
    criteria: { height: 'pass', knee: 'not_observed' },
  });
  expect(last).toMatchObject({ valid: 'no', headline: 'height', criteria: { height: 'fail' } });
});

test('the keys of a repetition are those of the shared list, no more and no fewer', () => {
  const flat = (value: object, at: string): string[] =>
    Object.entries(value).flatMap(([key, part]) =>
      typeof part === 'object' && part !== null ? flat(part as object, `${at}${key}.`) : [`${at}${key}`],
    );
  const [first] = read(jsonLine(handMadeOutcome([100]))).repetitions;
  expect(flat(first, '').sort()).toEqual(REPETITION_COLUMNS.map(({ key }) => key).sort());
});

test('issues have code, place and sentence', () => {
  const line = read(jsonLine(handMadeOutcome([100])));
  expect(line['issues']).toMatchObject([
    { code: 'gap', severity: 'warning', from_s: 3.2, to_s: 3.45 },
    { code: 'unused-column', severity: 'note', from_s: null, to_s: null },
  ]);
});

test('every difference between the count while recording and the final pass is listed', () => {
  const { report, ...outcome } = handMadeOutcome([100, 90]);
  const blockDifferences = [{ kind: 'top-moved', repetition: 2, finalTopS: 4.1, blockTopS: 4.2 } as const];
  const line = read(jsonLine({ ...outcome, report: { ...report, blockDifferences } }));
  expect(line['block_differences']).toEqual([{ kind: 'top-moved', repetition: 2, final_top_s: 4.1, block_top_s: 4.2 }]);
});

test('body weight is null where no platform measured it, and a figure where one did', () => {
  const { report, ...outcome } = handMadeOutcome([100]);
  expect(read(jsonLine({ ...outcome, report }))['body_weight_n']).toBeNull();
  const weighed = { ...report, bodyWeightN: 700, bodyWeightUN: 1.5 };
  expect(read(jsonLine({ ...outcome, report: weighed }))).toMatchObject({ body_weight_n: 700, body_weight_u_n: 1.5 });
});

test('a refusal is one line with its reason and what was known', () => {
  expect(read(jsonLine(handMadeRefusal()))).toEqual({
    file: 'bad.csv',
    person: 'P2',
    sha256: null,
    software: expect.stringMatching(/^surae /) as string,
    settings_hash: null,
    protocol_hash: null,
    status: 'refused',
    reason: 'bad.csv: there is no such file',
    side: null,
    test: 'heel-raise',
    placement: null,
    protocol: null,
  });
});
