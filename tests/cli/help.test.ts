import { expect, test } from 'vitest';
import { readArguments } from '../../apps/cli/src/arguments.ts';
import { helpText } from '../../apps/cli/src/help.ts';
import { PLACEMENTS, SIDES, TESTS } from '../../apps/cli/src/known-words.ts';

/** Options that a help text explains, with a value where one is named behind them. */
function explained(about: 'assess' | 'simulate'): string[][] {
  return helpText(about)
    .split('\n')
    .flatMap((line) => {
      const found = /^ {2}(--[a-z-]+)( [A-Z]+)?/.exec(line);
      return found === null ? [] : [[found[1], ...(found[2] === undefined ? [] : [found[2].trim()])]];
    });
}

/** A value that the parser takes for what stands in capitals. */
const VALUES: Readonly<Record<string, string>> = {
  WHERE: 'heel',
  SIDE: 'left',
  TEST: 'heel-raise',
  N: '60',
  ID: 'p',
  FILE: 's.json',
  DIR: 'out',
  LEVEL: 'typical',
};

/** What an option asks for beside it. */
const NEEDS: Readonly<Record<'assess' | 'simulate', Readonly<Record<string, string[]>>>> = {
  assess: { '--replace': ['--csv', 'out'] },
  simulate: { '--no-gyroscope': ['--placement', 'foot'] },
};

test.each([
  ['assess', 12, ['assess', 'a.csv']],
  ['simulate', 7, ['simulate', '--out', 'out']],
] as const)('every option that the help of %s explains is taken by the command line', (about, least, start) => {
  const options = explained(about);
  expect(options.length).toBeGreaterThanOrEqual(least);
  for (const [option, value] of options) {
    const args = [...start, ...(NEEDS[about][option] ?? []), option, ...(value === undefined ? [] : [VALUES[value]])];
    expect(() => readArguments(args), args.join(' ')).not.toThrow();
  }
});

test('the help names every word that is known', () => {
  const text = helpText('assess');
  for (const word of [...PLACEMENTS, ...SIDES, ...TESTS]) expect(text).toContain(word);
});

test('the first page leads to both commands and says what this is not', () => {
  const text = helpText('surae');
  for (const words of ['surae assess', 'surae simulate', 'not a diagnosis']) expect(text).toContain(words);
});
