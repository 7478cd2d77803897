import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { parseStudy } from '../../../packages/study/src/declared/parse-study.ts';
import type { StudyFile } from '../../../packages/study/src/declared/study-document.ts';
import { StudyError } from '../../../packages/study/src/errors.ts';
import { declaredStudy } from '../../support/declared-study.ts';

function refusal(text: string): StudyError {
  try {
    parseStudy(text, 'study.json');
  } catch (error) {
    if (error instanceof StudyError) return error;
    throw error;
  }
  throw new Error('it was not refused');
}

/** The same study with one part changed, as text. */
function changed(part: Record<string, unknown>): string {
  return JSON.stringify({ ...declaredStudy(), ...part });
}

function comparison(part: Partial<StudyFile['comparison']>): string {
  return changed({ comparison: { ...declaredStudy().comparison, ...part } });
}

test('a study is read as it was declared', () => {
  expect(parseStudy(JSON.stringify(declaredStudy())).study).toEqual(declaredStudy());
});

test('the hash is SHA-256 of the canonical JSON: the order of keys and spaces do not count, a letter does', () => {
  const study = declaredStudy();
  const backwards = Object.fromEntries(Object.entries(study).reverse());
  const { hash } = parseStudy(JSON.stringify(study));
  expect(parseStudy(JSON.stringify(backwards, null, 4)).hash).toBe(hash);
  expect(parseStudy(JSON.stringify({ ...study, title: `${study.title}.` })).hash).not.toBe(hash);
  // the same by the definition, sorted by hand
  const sorted = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(sorted);
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(
      Object.entries(value)
        .sort(([a], [b]) => (a < b ? -1 : 1))
        .map(([key, one]) => [key, sorted(one)]),
    );
  };
  const text = JSON.stringify(sorted(study));
  expect(hash).toBe(createHash('sha256').update(text, 'utf8').digest('hex'));
});

test.each([
  ['{', 'study.json: expected a study file as JSON, got '],
  ['[]', 'study.json, kind: expected "surae-study", got none'],
  [changed({ kind: 'surae-recipe' }), 'study.json, kind: expected "surae-study", got "surae-recipe"'],
  [changed({ version: 2 }), 'study.json, version: expected a version up to 1, got 2'],
  [changed({ title: 7 }), 'study.json, title: expected a value of type string, got 7'],
  [changed({ outcome: 'count.scored' }), 'expected only the keys of the schema, got "outcome"'],
  [
    changed({ outcomes: { primary: 'count.score', secondary: [] } }),
    'outcomes.primary: expected a column of numbers of the test heel-raise, such as count.attempted, ',
  ],
  [changed({ outcomes: { primary: 'end.class', secondary: [] } }), 'outcomes.primary: expected a column of numbers'],
  [
    changed({ outcomes: { primary: 'count.scored', secondary: ['count.scored'] } }),
    'outcomes.secondary[0]: expected every one once',
  ],
  [changed({ protocol: { id: 'isometric.seated', parameters: {} } }), 'protocol.id: expected one of single-leg.'],
  [
    changed({ protocol: { id: 'single-leg.floor', parameters: { heightFraction: 7 } } }),
    'protocol.parameters.heightFraction: expected ',
  ],
  [changed({ settings: { judgement: {} } }), 'settings.judgement: expected one of '],
  [comparison({ second: 'cycling' }), 'comparison.second: expected another than the first, got "cycling"'],
  [comparison({ manifest: null }), 'comparison.manifest: expected the column of the manifest that says the group'],
  [comparison({ of: 'visits' }), 'comparison.manifest: expected null, since visits have a column of their own'],
  [
    comparison({ of: 'sides', manifest: null }),
    'comparison.first: expected left and right, in the order in which they are compared, got cycling and walking',
  ],
  [comparison({ scale: 'ratio', margin: 0.9 }), 'comparison.margin: expected a factor above 1 for a ratio, got 0.9'],
  [comparison({ margin: 0 }), 'comparison.margin: expected above 0, got 0'],
  [
    changed({ exclusions: [{ code: 'few', words: 'few', rule: { column: 'end.class', below: 3 } }] }),
    'exclusions[0].rule.column: expected a column of numbers',
  ],
  [
    changed({ exclusions: [{ code: 'few', words: 'few', rule: { column: 'count.scored', is: ['3'] } }] }),
    'exclusions[0].rule.column: expected a column of words or flags',
  ],
  [
    changed({ exclusions: [{ code: 'few', words: 'few', rule: { column: 'count.scored' } }] }),
    'exclusions[0].rule: expected below or above, got neither',
  ],
  [
    changed({ exclusions: [{ code: 'Too few', words: 'few', rule: null }] }),
    'exclusions[0].code: expected text that matches',
  ],
  [
    changed({ choices: [{ parameter: 'protocol.height', values: [1], why: 'why' }] }),
    'choices[0].parameter: expected protocol. with one of surface, ',
  ],
  [
    changed({ choices: [{ parameter: 'exclusion.other', values: ['not-applied'], why: 'why' }] }),
    'choices[0].parameter: expected exclusion. with one of few, shod, unusable, got "exclusion.other"',
  ],
  [
    changed({ choices: [{ parameter: 'exclusion.late', values: ['not-applied'], why: 'why' }] }),
    'choices[0].parameter: expected exclusion. with one of few, shod, unusable, got "exclusion.late"',
  ],
  [
    changed({ choices: [{ parameter: 'weather', values: ['wet'], why: 'why' }] }),
    'choices[0].parameter: expected protocol.NAME, settings.PATH, exclusion.CODE, perPerson or scale, got "weather"',
  ],
  [
    changed({ choices: [{ parameter: 'settings.judging', values: [1], why: 'why' }] }),
    'choices[0].parameter: expected settings. with the path of a number or a word of the settings',
  ],
  [
    changed({ choices: [{ parameter: 'scale', values: ['difference'], why: 'why' }] }),
    'choices[0].values[0]: expected another value than the declared one, got "difference"',
  ],
  [
    changed({ choices: [{ parameter: 'protocol.heightFraction', values: [0.6, 3], why: 'why' }] }),
    'choices[0].values[1]: expected ',
  ],
  [
    changed({ choices: [{ parameter: 'perPerson', values: ['best'], why: 'why' }] }),
    'choices[0].values[0]: expected one of only, mean, greatest, first, got "best"',
  ],
])('refused, with the place, what was expected and what came: %#', (text, message) => {
  expect(refusal(text).message).toContain(message);
});

test('a newer version is told apart from a file that is wrong', () => {
  expect(refusal(changed({ version: 2 })).code).toBe('newer-version');
  expect(refusal(changed({ version: 0 })).code).toBe('bad-file');
});
