import { expect, test } from 'vitest';
import { designAnswer } from '../../../packages/study/src/design/design-answer.ts';
import { designCommand, designOutputs } from '../../../packages/study/src/design/design-files.ts';
import { requestOf } from '../../support/told-design.ts';

const answer = designAnswer(
  requestOf('paired', { difference: -3, sem: { numbers: [2.25], people: 32 }, 'drop-out': 0.1 }),
);

test('the command holds every input, those that nobody told as well', () => {
  expect(designCommand(answer)).toBe(
    'surae design paired --difference=-3 --sem=2.25 --sem-people=32 --legs=1 --legs-alike=1 --power=0.8 --level=0.95 --drop-out=0.1 --out OUT',
  );
});

test('every file says how it is made, and the record has the hash of each', () => {
  const files = designOutputs(answer, 'surae 9.9');
  expect(files.map(({ name }) => name)).toEqual([
    'design.csv',
    'design.csv-metadata.json',
    'curve.csv',
    'curve.csv-metadata.json',
    'dictionary.csv',
    'dictionary.csv-metadata.json',
    'design.svg',
    'reproduce.json',
  ]);
  const textOf = (end: string): string => files.find(({ name }) => name === end)!.text;
  for (const name of ['design.csv-metadata.json', 'curve.csv-metadata.json', 'design.svg']) {
    expect(textOf(name)).toContain(`surae 9.9: ${designCommand(answer)}`);
  }
  const record = JSON.parse(textOf('reproduce.json')) as { files: { name: string; sha256: string }[]; command: string };
  expect(record.command).toBe(designCommand(answer));
  expect(record.files.map(({ name }) => name)).toEqual(files.slice(0, -1).map(({ name }) => name));
  expect(new Set(record.files.map(({ sha256 }) => sha256)).size).toBe(7);
});

test('the table has a row for each case and for each end', () => {
  const lines = designOutputs(answer, 'surae 9.9')[0].text.trim().split('\r\n');
  expect(lines.map((line) => line.split(',').slice(0, 2).join(' ').trim())).toEqual([
    'case end',
    'expected',
    'fewest',
    'most',
    'sem low',
    'sem high',
  ]);
});
