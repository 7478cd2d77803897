import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { type AgreeArguments, readAgree } from '../../apps/cli/src/agree-arguments.ts';
import { agreeJson } from '../../apps/cli/src/agree-json.ts';
import { agreeResult } from '../../apps/cli/src/agree-result.ts';
import { fixturePath } from '../support/fixture.ts';

function json(
  bytes: Uint8Array,
  ...options: string[]
): Record<string, unknown> & { groups: Record<string, unknown>[] } {
  const found = agreeResult(bytes, 't.csv', readAgree(['t.csv', ...options]) as AgreeArguments);
  if ('reason' in found) throw new Error(found.reason);
  const line = agreeJson(found, []);
  expect(line).not.toContain('\n');
  return JSON.parse(line) as ReturnType<typeof json>;
}

test('a line holds the figures, their intervals and where they come from', () => {
  const { groups, ...frame } = json(readFileSync(fixturePath('agreement/shrout-fleiss-1979.csv')));
  expect(frame).toMatchObject({ file: 't.csv', unit: 'points', across: 'rater', level: 0.95, reach: 1.96, plans: [] });
  expect(frame['sha256']).toMatch(/^[0-9a-f]{64}$/);
  expect(groups).toHaveLength(1);
  expect(groups[0]).toMatchObject({
    of: null,
    subjects: 6,
    left_out: [],
    icc: [
      {
        form: 'ICC(1,1)',
        other_name: 'ICC(1)',
        value: 0.165741768,
        low_word: 'poor',
        high_word: 'moderate',
        df_above: 5,
      },
      {},
      {},
      {},
      {},
      {},
    ],
    icc_absolute_interval_narrow: true,
    standard_error_use: { use: 'upper_bound', pairs: 16 },
  });
  expect(groups[0]['pairs']).toHaveLength(6);
});

test('what was not computed is null and there', () => {
  const { groups } = json(new TextEncoder().encode('subject,A [mm],B [mm]\n1,1,2\n2,5,6\n'));
  expect(groups[0]).toMatchObject({
    standard_error: null,
    standard_error_use: null,
    detectable_change: [],
    pairs: [{ limits: null, counts: null }],
  });
});

test('words come with kappa and the table behind it', () => {
  const { groups } = json(readFileSync(fixturePath('agreement/cohen-three-words.csv')));
  expect(groups[0]).toMatchObject({
    pairs: [
      {
        items: 100,
        observed_agreement: 0.7,
        chance_agreement: 0.41,
        counts: [
          [44, 5, 1],
          [7, 20, 3],
          [9, 5, 6],
        ],
      },
    ],
  });
});

test('words on a scale come with kappa by steps and by squares, and without a scale with null', () => {
  const bytes = readFileSync(fixturePath('agreement/altman-1991-mammograms.csv'));
  const { groups } = json(bytes, '--order', 'normal,benign,suspected,cancer');
  // vcd of R
  expect(groups[0]).toMatchObject({
    pairs: [
      {
        weighted: {
          order: ['normal', 'benign', 'suspected', 'cancer'],
          linear: { kappa: 0.568399044 },
          quadratic: { kappa: 0.671370578 },
        },
      },
    ],
  });
  expect(json(bytes).groups[0]).toMatchObject({ pairs: [{ weighted: null }] });
});
