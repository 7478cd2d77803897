import { expect, test } from 'vitest';
import { agreementOfPairs } from '../../../packages/study/src/blind/blind-agreement.ts';
import { blindDefaults } from '../../../packages/study/src/blind/blind-defaults.ts';
import type { PairedTrial, PairOfLists } from '../../../packages/study/src/blind/paired-lists.ts';
import { agreementPicture } from '../../../packages/study/src/picture/agreement-picture.ts';

function trial(name: string, counts: PairedTrial['counts']): PairedTrial {
  return { trial: name, counts, both: [], firstAlone: [], secondAlone: [] };
}

function list(kind: PairOfLists['kind'], counts: readonly PairedTrial['counts'][]): PairOfLists {
  return { kind, first: 'ada', second: 'ben & co', trials: counts.map((one, at) => trial(`t${at}`, one)) };
}

const picture = (...lists: readonly PairOfLists[]): string =>
  agreementPicture({ title: 'A study' }, lists, agreementOfPairs(lists, blindDefaults), 'made by hand');

test('a ring stands for each recording with two counts, larger where several fall on one place', () => {
  const svg = picture(
    list('between-raters', [
      [10, 9],
      [10, 9],
      [12, 12],
      [8, null],
      [7, 9],
      [20, 19],
    ]),
  ); // six, one without
  const radii = [...svg.matchAll(/<circle class="open"[^>]* r="([\d.]+)"/g)].map(([, radius]) => Number(radius));
  expect(radii).toEqual([5.5, 4, 4, 4]);
  expect(svg).toContain('ada less ben &amp; co');
  expect(svg).toMatch(/>mean 0\.2</);
  expect([...svg.matchAll(/>limit /g)]).toHaveLength(2);
  expect(svg).toContain('<metadata>made by hand</metadata>');
});

test('too few recordings, alike differences and none at all have no limits', () => {
  for (const counts of [
    [
      [10, 9],
      [8, 9],
    ],
    Array(6).fill([10, 9]),
    [],
  ] as PairedTrial['counts'][][]) {
    const svg = picture(list('with-automatic', counts));
    expect(svg).not.toContain('>limit ');
    expect(svg).toContain('no limits');
    expect(svg).not.toMatch(/NaN|Infinity|undefined/);
  }
  expect(picture(list('within-rater', []))).toContain('no recording counted by both');
});

test('every pair has a place of its own', () => {
  const lists = Array(3).fill(
    list('within-rater', [
      [10, 9],
      [8, 9],
    ]),
  ) as PairOfLists[];
  expect(picture(...lists)).toMatch(/viewBox="0 0 760 696"/);
});
