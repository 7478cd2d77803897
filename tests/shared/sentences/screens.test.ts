import * as shared from '@surae/shared';
import { expect, test } from 'vitest';
import { JUDGING_WORDS } from '../../support/judging-words.ts';

type Words = Readonly<Record<string, shared.Sentence>>;

/** Every list of words of the screens that the package gives out, by its name. */
const lists = Object.entries(shared).filter(
  ([name, value]) => /(_WORDS|_CHOICES|_REASONS|_STEPS)$/.test(name) && typeof value === 'object',
) as unknown as readonly (readonly [string, Words])[];

const texts = lists.flatMap(([name, words]) =>
  Object.entries(words).map(([code, { text }]) => [`${name} ${code}`, text] as const),
);

test('the lists of every page are among those looked at', () => {
  const names = lists.map(([name]) => name);
  for (const page of ['FRAME', 'START', 'STEP', 'SORENESS', 'SAFETY', 'LOCK', 'ENDING', 'REST', 'TEST', 'RESULT']) {
    expect(names).toContain(`${page}_WORDS`);
  }
});

test.each(texts)('%s says something, and nothing that judges a person', (_, text) => {
  expect(text).toBe(text.trim());
  expect(text).not.toBe('');
  // of what is stored one may say that it is safe; of a person or a movement nobody may
  const said = text.replace(/what was recorded is safe/i, '');
  for (const word of JUDGING_WORDS) expect(said).not.toMatch(word);
});

test('no two words of all pages have one id', () => {
  const ids = lists.flatMap(([, words]) => Object.values(words).map(({ id }) => id));
  expect(new Set(ids).size).toBe(ids.length);
});

test('blanks are whole words between braces', () => {
  for (const [place, text] of texts) expect(text.replace(/\{[a-z]\w*\}/gi, ''), place).not.toMatch(/[{}]/);
});

test('what the two legs say differs in the name of the leg alone', () => {
  const pairs = lists.flatMap(([name, words]) =>
    Object.entries(words).flatMap(([code, { text }]) => {
      const other = words[code.replace(/\bleft\b/, 'right')];
      return /\bleft\b/.test(code) && other !== undefined ? [[`${name} ${code}`, text, other.text] as const] : [];
    }),
  );
  expect(pairs.length).toBeGreaterThan(5);
  const mirrored = (text: string): string => text.replace(/left/g, 'right').replace(/Left/g, 'Right');
  for (const [place, left, right] of pairs) expect(mirrored(left), place).toBe(right);
});

test('what the safety list says leaves the decision to people and their rules', () => {
  expect(shared.SAFETY_WORDS.policy.text).toMatch(/local rules come before.*does not diagnose/i);
  expect(shared.LOCK_WORDS['tests-nobody'].text).toMatch(/simulated or replayed/);
});

test('an end that is chosen has a short name and a whole sentence', () => {
  expect(Object.keys(shared.END_CHOICES)).toEqual(Object.keys(shared.END_REASON_SENTENCES));
  for (const { text } of Object.values(shared.END_CHOICES)) expect(text).toMatch(/^[a-z].*[^.]$/);
});

// Web Content Accessibility Guidelines 2.2, 2.5.3 label in name: what is seen begins what is heard, and is not read once more after it
test('what a button of a proposal shows begins the name that a screen reader says of it', () => {
  const { ADVICE_WORDS: words } = shared;
  for (const code of ['take', 'decline', 'why'] as const) {
    expect(words[`${code}-label`].text.startsWith(words[code].text), code).toBe(true);
  }
  expect(words['option-take-label'].text.startsWith(words['option-take'].text)).toBe(true);
});
