import { defaultSettings, type OwnReliabilities } from '@surae/analysis';
import { describe, expect, test } from 'vitest';
import type { ComparedSet } from '../../apps/cli/src/compared-set.ts';
import { comparisonText } from '../../apps/cli/src/comparison-text.ts';
import { comparisonsOf } from '../../apps/cli/src/comparisons.ts';
import { assessRows, type Cells, pullRecording, WHOLE_ROW } from '../support/compared-manifest.ts';
import { pulledSet, wholeTold } from '../support/compared-set.ts';

/** The text of one comparison, with its line breaks taken out. */
async function textOf(
  headline: string,
  rows: readonly Cells[],
  options: readonly string[] = [],
  files: Readonly<Record<string, string>> = {},
): Promise<string> {
  const { memory, code } = await assessRows(rows, options, files);
  expect(memory.error).toBe('');
  expect(code).toBe(0);
  const from = memory.out.indexOf(`${headline} ──`);
  expect(from, `${headline} in the output`).toBeGreaterThanOrEqual(0);
  return memory.out.slice(from, memory.out.indexOf('\n\n', from)).replace(/\s+/g, ' ');
}

/** A runner with one sore leg: 27 and 19 to fatigue, and the sore leg again after eight weeks. */
const leftLeg: Cells = { ...WHOLE_ROW, person: 'P1', visit: '1', side: 'left', order: 'first', file: 'left-27.csv' };
const rightLeg: Cells = {
  ...WHOLE_ROW,
  person: 'P1',
  visit: '1',
  side: 'right',
  order: 'second',
  rest_s: 150,
  file: 'right-19.csv',
  symptomatic: 'dominant',
  pain_peak: 3,
  provoked_by: 'single-raises-or-long-walk',
  settles_h: 14,
  morning_stiffness_min: 5,
  rest_pain: 'none',
  trend: 'steady-or-better',
};
const weekEight: Cells = { ...rightLeg, visit: '8', date: '2026-04-26', file: 'right-24.csv', tests_before: 3 };

describe('worked case, one leg sore: left 27, right 19, eight weeks later 24', () => {
  test('both legs: the ratio with its interval, lower with 0.96, a real difference of 8 +- 6', async () => {
    const text = await textOf('P1, visit 1, both legs', [leftLeg, rightLeg]);
    // 19 / 27 = 0.704; exp(+-1.96 sqrt((2.25 / 19)^2 + (2.25 / 27)^2)) = 0.530 to 0.935; 1.96 sqrt 2 2.25 = 6.24
    for (const words of [
      'left 27 repetitions. Stopped for fatigue. The count shows what the calf could do.',
      'right over left: 70 % (53 to 93). The more sore side stands over the other.',
      'lower yes: right against left, 0.96 that the true ratio is under 90 %.',
      "right minus left: −8 ± 6 repetitions. A difference this size is larger than this test's usual wobble: a real difference is likely.",
      'rests on error of measurement 2.25 repetitions, published: Hébert-Losier 2017 Physiotherapy 103:446',
      'The verdict hangs on which reliability is used.',
      'By the error 6.7 (Byrne 2017 J Electromyogr Kinesiol 34-39): Cannot tell whether it is lower.',
      'mind The other leg may be low too.',
      'irritability moderate, by what brings the pain on, time until the pain settles.',
    ]) {
      expect(text).toContain(words);
    }
  });

  test('the published groups stand side by side, each with its people, protocol and source', async () => {
    const text = await textOf('P1, visit 1, both legs', [leftLeg, rightLeg]);
    expect(text).toContain('left at, right below: median 27 of women of 30 to 39, tested by single-leg.incline10');
    expect(text).toContain('left above, right below: median 25 of 500 women and men of 18 and over');
    expect(text).toContain('The groups disagree: each is context, and none is an expected number.');
    expect(text).toContain('second-hand');
  });

  test('eight weeks later: +5 against 6.2 and 4.1 is possible, and the verdict hangs on which reliability is used', async () => {
    const text = await textOf('P1, right leg over its visits', [leftLeg, rightLeg, weekEight]);
    for (const words of [
      'visits 1 (2026-03-01): 19 repetitions; 8 (2026-04-26): 24 repetitions',
      'since 1 +5 (−1 to +11) repetitions. Detectable: 6.2 at 95 %, 4.1 at 80 %. A change is possible.',
      'other errors The verdict hangs on which reliability is used.',
      'By the error 6.7 (Byrne 2017 J Electromyogr Kinesiol 34-39): Cannot be told from the usual wobble of the test.',
      'A change that can be told from the usual wobble need not be an important one.',
      'The error is not known from people in pain; with pain it may be larger.',
    ]) {
      expect(text).toContain(words);
    }
  });

  test('in shoes on the second visit nothing is subtracted, and what differs is named', async () => {
    const text = await textOf('P1, right leg over its visits', [rightLeg, { ...weekEight, footwear: 'shoe' }]);
    expect(text).toContain('since 1 side by side, nothing is subtracted. The tests were not done in the same way');
    expect(text).toContain('footwearWorn: barefoot / shoe');
    expect(text).not.toContain('+5');
  });
});

describe('worked case, both legs sore: left stopped for pain at 9, right for fatigue at 16, level floor', () => {
  const both: Cells = { ...WHOLE_ROW, protocol: 'single-leg.floor', person: 'P2', visit: '1', age_years: 51 };
  const rows: Cells[] = [
    {
      ...both,
      side: 'left',
      file: 'left-9.csv',
      order: 'second',
      rest_s: 180,
      symptomatic: 'dominant',
      end_reason: 'pain',
      pain_peak: 6,
      provoked_by: 'single-raises-or-long-walk',
      settles_h: 12,
      morning_stiffness_min: 25,
      rest_pain: 'none',
      trend: 'fluctuating',
    },
    { ...both, side: 'right', file: 'right-16.csv', order: 'first', symptomatic: 'mild', pain_peak: 3 },
  ];

  test('no ratio, both reasons with what would lift them, and no figure of a ratio', async () => {
    const text = await textOf('P2, visit 1, both legs', rows);
    for (const words of [
      'no ratio No ratio of the two legs is given.',
      'because Both tendons are sore: neither leg shows what the other one could do.',
      'because A leg stopped for pain: its result is what was tolerated.',
      'Test again on a day on which pain ends neither leg.',
    ]) {
      expect(text).toContain(words);
    }
    expect(text).not.toContain('%');
    expect(text).not.toContain(' over ');
  });

  test('left tolerated 9 before the pain limit; its irritability is high by the greatest pain alone', async () => {
    const text = await textOf('P2, visit 1, both legs', rows);
    expect(text).toContain('left 9 repetitions. Stopped for pain. Tolerated 9 before the pain limit.');
    expect(text).toContain('irritability high, by greatest pain. Rests on what brings the pain on, greatest pain,');
    expect(text).toContain('right 16 repetitions. Stopped for fatigue.');
    expect(text).toContain('No matching reference for this way of testing.');
  });
});

describe('worked case, seated isometric: 1510 and 1235 N gross over 85 N at rest, later 1500 N net', () => {
  const { judging } = defaultSettings();
  const leftPull = pulledSet('left', 1425, { order: 'first' });
  const rightPull = pulledSet('right', 1150, { order: 'second', rest_s: 300, symptomatic: 'dominant' });
  const fivePercent = {
    'isometric.seated': {
      standardError: 0.05,
      standardErrorUpper80: 0.055,
      scale: 'log',
      unit: 'N',
      pairs: 30,
      source: { id: 'own', citation: 'own repeated tests', group: 'own people' },
    },
  } as const;
  const say = (sets: readonly ComparedSet[], own: OwnReliabilities = {}): string[] =>
    comparisonsOf(sets, { own, note: '' }, judging).map((one) =>
      comparisonText(one, { width: 100, drawsBlocks: true }).join(' ').replace(/\s+/g, ' '),
    );

  test('net forces, in body weights and as torque, and a ratio of 81 % (70 to 93) at 5 %, lower with 0.94', () => {
    const [text] = say([leftPull, rightPull], fivePercent);
    // 1150 / 1425 = 0.807; exp(+-1.96 sqrt 2 0.05) = 0.871 to 1.149; Phi(ln(0.9 / 0.807) / 0.0707) = 0.939
    for (const words of [
      'left 1425 N net (1510 gross, 85 at rest), 1.77 × body weight, 185 N·m, 2.26 N·m/kg.',
      'right 1150 N net (1235 gross, 85 at rest), 1.43 × body weight, 150 N·m, 1.82 N·m/kg.',
      'The force shows what the calf could do.',
      'effort yes: the efforts agree and were held: they show a maximum.',
      'right over left: 81 % (70 to 93). The more sore side stands over the other.',
      'lower yes: right against left, 0.94 that the true ratio is under 90 %.',
      'rests on error of measurement 5 %, own repeated tests: own repeated tests; 30 people: own people.',
      'reference No matching reference for this way of testing this measure.',
    ]) {
      expect(text).toContain(words);
    }
  });

  test('the re-test is 75 N more against 118 N: it cannot be told, by whichever error', () => {
    const later = { ...pulledSet('left', 1500, { date: wholeTold().date! + 56 }), visit: '8' };
    const text = say([leftPull, later]).find((one) => one.includes('over its visits'));
    for (const words of [
      'since 1 +75 (−43 to +193) N. Detectable: 118 at 95 %, 77 at 80 %. Cannot be told from the usual wobble of the test.',
      'The verdict is the same by every published reliability.',
      'By the error 5.23 % (Mattiussi 2022 J Sport Exerc Sci): Cannot be told from the usual wobble of the test.',
    ]) {
      expect(text).toContain(words);
    }
  });

  test('a cell over the thigh is refused beside the plate: net and gross are no matter of a factor', () => {
    const cell = pulledSet(
      'right',
      1150,
      { order: 'second', rest_s: 300, symptomatic: 'dominant' },
      { placement: 'inline' },
    );
    const [text] = say([leftPull, cell]);
    expect(text).toContain('No ratio of the two legs is given.');
    expect(text).toContain('The sensor sat in a different place on each leg.');
    expect(text).toContain('The values were taken by different conventions, such as net and gross force.');
    expect(text).not.toContain('%');
  });
});

test('the same through the command line: a plate on both legs, a re-test, and a cell on the sore leg at the end', async () => {
  const pull: Cells = {
    ...WHOLE_ROW,
    person: 'P3',
    visit: '1',
    test: 'isometric',
    protocol: 'isometric.seated',
    placement: 'platform',
    end_reason: 'trials-done',
    exertion: '',
    body_mass_kg: 82,
    forefoot_lever_mm: 130,
    footwear: 'shoe',
  };
  const files = {
    'left-pull.csv': pullRecording(1425, 85),
    'right-pull.csv': pullRecording(1150, 85),
    'left-again.csv': pullRecording(1500, 85),
    'right-cell.csv': pullRecording(1150, 0),
    'own.json': JSON.stringify({
      protocol: 'isometric.seated',
      unit: 'N',
      scale: 'log',
      pairs: 30,
      standard_error: 0.05,
      standard_error_upper_80: 0.055,
    }),
  };
  const later = { visit: '8', date: '2026-04-26' };
  const left: Cells = { ...pull, side: 'left', order: 'first', file: 'left-pull.csv' };
  const right: Cells = {
    ...pull,
    side: 'right',
    order: 'second',
    rest_s: 300,
    symptomatic: 'dominant',
    file: 'right-pull.csv',
  };
  const leftAgain: Cells = { ...left, ...later, file: 'left-again.csv' };
  const cell: Cells = { ...right, ...later, file: 'right-cell.csv', placement: 'inline' };
  const rows = [left, right, leftAgain, cell];
  const first = await textOf('P3, visit 1, both legs', rows, ['--reliability', 'own.json'], files);
  expect(first).toContain('left 1425 N net (1510 gross, 85 at rest), 1.77 × body weight, 185 N·m, 2.26 N·m/kg.');
  expect(first).toContain('right 1150 N net (1235 gross, 85 at rest), 1.43 × body weight, 150 N·m, 1.82 N·m/kg.');
  expect(first).toContain('right over left: 81 % (70 to 93).');
  expect(first).toContain('0.94 that the true ratio is under 90 %');
  const past = await textOf('P3, left leg over its visits', rows, [], files);
  expect(past).toContain('+75 (−43 to +193) N. Detectable: 118 at 95 %, 77 at 80 %. Cannot be told');
  const refused = await textOf('P3, visit 8, both legs', rows, [], files);
  expect(refused).toContain('The values were taken by different conventions, such as net and gross force.');
  const apart = await textOf('P3, right leg over its visits', rows, [], files);
  expect(apart).toContain('side by side, nothing is subtracted.');
  expect(apart).toContain('placement: platform / inline');
}, 60_000);

test('one trace under several criteria: counts, intervals, and whether the conclusion is the same', async () => {
  const text = await textOf('P1, visit 1, both legs', [leftLeg, rightLeg], ['--vary', 'heightFraction=0.6,0.75']);
  expect(text).toContain('with heightFraction 0.6: left 27, right 19; lower: yes');
  expect(text).toContain('robust The conclusion is the same under every one of these criteria.');
});

test('words that are said to nobody stand in no comparison', async () => {
  const { memory } = await assessRows([leftLeg, rightLeg, weekEight]);
  const said = memory.out.slice(memory.out.indexOf('P1, visit 1, both legs'));
  expect(said).not.toMatch(
    /deficit|weak\b|fail|injured|healthy leg|normal leg|significant|must\b|cleared|expected to/i,
  );
});
