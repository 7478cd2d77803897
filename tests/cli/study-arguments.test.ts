import { expect, test } from 'vitest';
import { readArguments } from '../../apps/cli/src/arguments.ts';
import { readStudyArguments } from '../../apps/cli/src/study-arguments.ts';
import { STUDY_HELP } from '../../apps/cli/src/study-help.ts';
import { projectText } from '../support/project.ts';

const RESULTS = ['study.json', '--manifest', 'm.csv', '--out', 'o'];
const RATER = ['--verdicts', 'a.jsonl', '--key', 'a.key'];

function refusal(...args: string[]): string {
  try {
    readStudyArguments(args);
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
  return 'none';
}

test('results: what is read, where it goes, and each rater with the key of the rater', () => {
  const more = ['--decisions', 'd', ...RATER, '--verdicts', 'b.jsonl', '--key', 'b.key', '--most', '50', '--json'];
  expect(readStudyArguments([...RESULTS, ...more, '--earlier', 'one', '--earlier', 'two', '--replace'])).toEqual({
    command: 'study',
    study: 'study.json',
    earlier: ['one', 'two'],
    replace: true,
    asked: {
      act: 'results',
      manifest: 'm.csv',
      out: 'o',
      decisions: 'd',
      raters: [
        { verdicts: 'a.jsonl', key: 'a.key' },
        { verdicts: 'b.jsonl', key: 'b.key' },
      ],
      most: 50,
      json: true,
    },
  });
});

test('each act has what it needs', () => {
  const asked = (...args: string[]): unknown => readStudyArguments(['s.json', ...args])?.asked;
  const who = { by: 'ada', at: '2026-03-01' };
  const rater = { verdicts: 'a.jsonl', key: 'a.key' };
  const by = ['--by', 'ada', '--on', '2026-03-01'];
  expect(
    asked('--decide', 'a=b.csv=exclude:late', '--manifest', 'm', '--decisions', 'd', ...by, '--why', 'seen'),
  ).toEqual({
    act: 'decide',
    manifest: 'm',
    decisions: 'd',
    trial: 'a=b.csv',
    decision: 'exclude:late',
    who,
    why: 'seen',
  });
  expect(asked('--blind', 'ada', '--manifest', 'm', '--out', 'o', '--key', 'k')).toMatchObject({
    act: 'blind',
    rater: 'ada',
    key: 'k',
  });
  expect(asked('--take-in', 'o', ...RATER)).toEqual({ act: 'take-in', folder: 'o', rater });
  expect(asked('--lock', ...RATER, ...by)).toEqual({ act: 'lock', rater, who });
  expect(asked('--open', ...RATER, '--by', 'ada', '--why', 'all done')).toEqual({
    act: 'open',
    rater,
    who: { by: 'ada', at: null },
    why: 'all done',
    early: false,
  });
  expect(asked('--check', 'o/reproduce.json')).toEqual({ act: 'check', record: 'o/reproduce.json' });
});

test.each([
  [[], 'name the study file'],
  [['a.json', 'b.json'], 'name one study file: "b.json" came after "a.json"'],
  [['a.json', '--out', 'o'], 'surae study needs --manifest'],
  [['a.json', '--manifest', 'm'], 'surae study needs --out'],
  [[...RESULTS, '--verdicts', 'a'], 'each --verdicts needs its --key: got 1 and 0'],
  [[...RESULTS, '--why', 'so'], '--why says something only with --open or --decide'],
  [[...RESULTS, '--most', '0'], '--most'],
  [['a.json', '--lock', '--open', ...RATER], 'choose --lock or --open, not both'],
  [['a.json', '--lock', ...RATER], '--lock needs --by'],
  [['a.json', '--lock', ...RATER, '--by', 'a', '--json'], '--json says nothing with --lock'],
  [['a.json', '--lock', ...RATER, ...RATER, '--by', 'a'], '--lock takes one --verdicts'],
  [['a.json', '--open', ...RATER, '--by', 'a'], '--open needs --why'],
  [
    ['a.json', '--decide', 'a.csv', '--manifest', 'm'],
    '--decide a.csv: expected a trial and include, exclude:REASON or open',
  ],
  [['a.json', '--blind', 'ada', '--manifest', 'm', '--out', 'o'], '--blind needs --key'],
  [['a.json', '--sort'], "Unknown option '--sort'"],
])('refused with one sentence: %j', (args, message) => {
  expect(refusal(...args)).toContain(message);
});

test('the help explains every option, in lines that fit, and is asked for with or without anything else', () => {
  const source = projectText('apps/cli/src/study-arguments.ts');
  const options = [...source.matchAll(/^ {8}'?([a-z-]+)'?: (?:text|several|flag),/gm)].map(([, name]) => name);
  expect(options).toHaveLength(19);
  for (const option of options) expect(STUDY_HELP).toContain(`--${option}`);
  for (const line of STUDY_HELP.split('\n')) expect(line.length, line).toBeLessThanOrEqual(80);
  expect(readArguments(['study', '--help'])).toEqual({ command: 'help', about: 'study' });
  expect(readArguments(['help', 'study'])).toEqual({ command: 'help', about: 'study' });
});

test('every example of the help is taken', () => {
  const examples = STUDY_HELP.slice(STUDY_HELP.indexOf('\nExamples'))
    .replaceAll('\\\n', ' ')
    .split('\n')
    .filter((line) => line.startsWith('  surae study '));
  expect(examples.length).toBeGreaterThanOrEqual(5);
  for (const line of examples) {
    const words = [...line.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, plain]) => quoted ?? plain);
    expect(() => readArguments(words.slice(1)), line).not.toThrow();
  }
});
