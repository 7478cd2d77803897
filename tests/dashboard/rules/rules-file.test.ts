import { RULES_FILE_WORDS, setWording } from '@surae/shared';
import { afterEach, expect, test } from 'vitest';
import { changesFromFile, RulesFileRefusal, rulesFileText } from '../../../apps/dashboard/src/rules/rules-file.ts';

const ten = { number: 'guidance.raises-ten', unit: '1', published: 10, value: 8, reason: 'older people' } as const;
const kept = { ...ten, by: 'K4', day: '2026-03-02' };

function file(changes: Readonly<Record<string, unknown>> = {}): string {
  return JSON.stringify({ format: 'surae-own-rules', version: 1, numbers: [kept], ...changes });
}

test('what is saved is read again as it was', () => {
  expect(changesFromFile('rules.json', rulesFileText([kept], 'surae 1'), [])).toEqual([ten]);
});

test('what stands here already is left out, and a file with nothing else is not taken', () => {
  const other = { ...ten, number: 'guidance.raises-twenty', published: 20, value: 25 };
  expect(changesFromFile('a.json', file({ numbers: [kept, other] }), [kept])).toEqual([other]);
  expect(() => changesFromFile('a.json', file(), [kept])).toThrow('every number in it stands here already');
});

test.each([
  ['no JSON', '{', /^a\.json was not taken, and nothing was changed\. \$: expected JSON, got .+/],
  ['a list', '[]', /\$: expected an object, got a list\.$/],
  ['another format', file({ format: 'other' }), /\$\.format: expected "surae-own-rules", got "other"\.$/],
  ['another version', file({ version: 2 }), /\$\.version: expected 1, got 2\.$/],
  ['no numbers', file({ numbers: null }), /\$\.numbers: expected a list, got null\.$/],
  [
    'a text for a value',
    file({ numbers: [{ ...ten, value: '8' }] }),
    /\$\.numbers\[0\]\.value: expected a number, got "8"\.$/,
  ],
  ['no reason', file({ numbers: [{ ...ten, reason: ' ' }] }), /\$\.numbers\[0\]\.reason: expected 1 to 500 characters/],
  [
    'an unknown number',
    file({ numbers: [{ ...ten, number: 'x' }] }),
    /\$\.numbers\[0\]\.number: .*no such number.* got "x"\.$/,
  ],
  [
    'another published number',
    file({ numbers: [{ ...ten, published: 12 }] }),
    /\$\.numbers\[0\]\.published: .* got 12\.$/,
  ],
  ['another unit', file({ numbers: [{ ...ten, unit: 'd' }] }), /\$\.numbers\[0\]\.unit: .* got "d"\.$/],
  [
    'too much',
    file({ numbers: [kept, { ...ten, number: 'guidance.raises-twenty', published: 20, value: 90 }] }),
    /\$\.numbers\[1\]\.value: .* got 90\.$/,
  ],
  [
    'a lock',
    file({ numbers: [{ ...ten, number: 'guidance.no-raise', published: 0, value: 1 }] }),
    /no clinic can change that away/,
  ],
  ['a number twice', file({ numbers: [kept, kept] }), /\$\.numbers\[1\]\.number: expected each number once/],
])('%s is refused with the file, the place, what was expected and what came', (_, text, message) => {
  expect(() => changesFromFile('a.json', text, [])).toThrow(RulesFileRefusal);
  expect(() => changesFromFile('a.json', text, [])).toThrow(message);
});

afterEach(() => setWording());

test('what was expected and what came are said in the language in use, and no word of them stands outside the catalogue', () => {
  setWording((id, text) => (id.startsWith('sentence.rules-file.') ? `«${text}»` : text));
  const refusal = (text: string): string => {
    try {
      changesFromFile('a.json', text, []);
    } catch (error) {
      return error instanceof RulesFileRefusal ? error.message : '';
    }
    return '';
  };
  expect(refusal('[]')).toMatch(/expected «an object», got «a list»\.$/);
  expect(refusal('{')).toMatch(/expected «JSON», got /);
  expect(refusal(file({ numbers: undefined }))).toMatch(/expected «a list», got «nothing»\.$/);
  expect(refusal(file({ numbers: {} }))).toMatch(/expected «a list», got «an object»\.$/);
  expect(refusal(file({ numbers: [{ ...ten, value: '8' }] }))).toMatch(/expected «a number», got/);
  expect(refusal(file({ numbers: [{ ...ten, reason: '' }] }))).toMatch(/expected «1 to 500 characters», got/);
  expect(refusal(file({ numbers: [kept, kept] }))).toMatch(/expected «each number once», got/);
  expect(refusal(file({ numbers: [{ ...ten, value: 90 }] }))).toMatch(
    /expected «a change that can be used \(.*\)», got 90/,
  );
  expect(Object.keys(RULES_FILE_WORDS)).toHaveLength(8);
});
