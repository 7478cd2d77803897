import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { type AgreeArguments, readAgree } from '../../apps/cli/src/agree-arguments.ts';
import { agreeResult } from '../../apps/cli/src/agree-result.ts';
import { agreeText } from '../../apps/cli/src/agree-text.ts';
import { fixturePath } from '../support/fixture.ts';

function text(bytes: Uint8Array, options: string[] = [], width = 80): string[] {
  const found = agreeResult(bytes, 't.csv', readAgree(['t.csv', ...options]) as AgreeArguments);
  if ('reason' in found) throw new Error(found.reason);
  return agreeText(found, { width, drawsBlocks: true });
}

const made = (table: string, ...options: string[]): string => text(new TextEncoder().encode(table), options).join('\n');
const ofFixture = (name: string, ...options: string[]): string =>
  text(readFileSync(fixturePath(`agreement/${name}.csv`)), options).join('\n');

test('Bland & Altman (1986) as printed, with the usual cautions', () => {
  const shown = ofFixture('bland-altman-1986-meters', '--reach', '2');
  expect(shown).toMatch(/bias +−2\.1 \(−22\.0 to 17\.8\) l\/min: cannot tell which is higher/);
  expect(shown).toMatch(/lower limit +−79\.6 \(−114\.2 to −45\.1\) l\/min/);
  expect(shown).toMatch(/upper limit +75\.4 \(40\.9 to 109\.9\) l\/min/);
  expect(shown).toContain('few pairs: judge changes by its upper 80 % bound');
  expect(shown).toContain('It is not a diagnosis.');
  expect(shown).toContain('came out below zero');
});

test('Shrout & Fleiss (1979): six forms under both names', () => {
  const shown = ofFixture('shrout-fleiss-1979');
  expect(shown).toMatch(
    /ICC\(2,1\) ICC\(A,1\) +0\.290 \(0\.019 to 0\.761\): poor to good\n +F\(5, 15\) = 11\.03, p < 0\.001/,
  );
  expect(shown).toContain('words by Koo & Li (2016)');
  expect(shown).toContain('Few are compared and they differ much');
  expect(ofFixture('weir-2005-a')).not.toContain('Few are compared');
  // by both ends of the interval, whatever the estimate
  expect(shown).toMatch(/ICC\(3,k\) ICC\(C,k\) +0\.909 \(0\.676 to 0\.986\): moderate to excellent/);
  expect(ofFixture('weir-2005-a')).toMatch(/bias +2\.8 \(−6\.2 to 11\.7\) kg: cannot tell which is higher/);
  expect(ofFixture('weir-2005-a')).toContain('shown and not to be used: worth 8 pairs of tests, 15 are');
});

test('who is left out is named, and what cannot be told is said', () => {
  const shown = made('subject,A [mm],B [mm]\nP1,1,2\nP2,3,\nP3,5,6\nP4,9,10\n');
  expect(shown).toContain('1, a value is missing: P2 (none by B)');
  expect(shown).toContain('no proof that they never do');
  expect(shown).toContain('all differences are equal');
});

test('ratios have no unit, and a clear difference is a clear word', () => {
  const shown = made('subject,A [mm],B [mm]\nP1,10,12\nP2,20,25\nP3,30,35\nP4,40,49\n', '--ratio');
  expect(shown).toContain('A over B');
  expect(shown).toMatch(/bias +0\.8\d\d \([^)]*\): A is clearly lower than B/);
});

test('words: kappa with its interval and what it rests on', () => {
  const shown = ofFixture('altman-1991-mammograms');
  expect(shown).toMatch(/kappa +0\.47 \(0\.\d\d to 0\.\d\d\)/);
  expect(shown).toMatch(/agree +64 %, where chance would give 31 %/);
  expect(made('subject,A [verdict],B [verdict]\n1,yes,yes\n2,yes,yes\n')).toContain('only one word was used');
  expect(made('subject,A [verdict],B [verdict]\n1,yes,yes\n2,no,no\n')).toContain('1, every item agrees');
  const constant = made('subject,A [verdict],B [verdict]\n1,yes,yes\n2,no,yes\n3,no,yes\n');
  expect(constant).toMatch(/kappa +0\.00, one of them used one word only/);
});

test('words on a scale: kappa by steps and by squares, with the scale', () => {
  const order = ['--order', 'normal,benign,suspected,cancer'];
  const shown = ofFixture('altman-1991-mammograms', ...order);
  // vcd of R: 0.5684 +- 0.0676 and 0.6714 +- 0.0681
  expect(shown).toMatch(/kappa by steps +0\.57 \(0\.44 to 0\.70\), on normal, benign, suspected,/);
  expect(shown).toMatch(/kappa by squares +0\.67 \(0\.54 to 0\.80\), large steps count more/);
  expect(ofFixture('altman-1991-mammograms')).not.toContain('by steps');
  const alike = 'subject,A [verdict],B [verdict]\n1,yes,yes\n2,no,no\n';
  expect(made(alike, '--order', 'no,yes')).toMatch(/kappa by steps +1\.00, no width from the formula/);
});

test('no line is wider than the terminal', () => {
  for (const width of [60, 100]) {
    const lines = text(readFileSync(fixturePath('agreement/isometric-two-days/within-day-1.csv')), [], width);
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(width);
  }
});
