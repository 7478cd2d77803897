import { MANIFEST_NUMBERS } from '@surae/shared';
import { expect, test } from 'vitest';
import { COMMANDS, readArguments } from '../../apps/cli/src/arguments.ts';
import { readDesignArguments } from '../../apps/cli/src/design-arguments.ts';
import { helpText } from '../../apps/cli/src/help.ts';
import { main } from '../../apps/cli/src/main.ts';
import { PLACEMENTS, SIDES, TESTS } from '../../packages/study/src/listed/known-words.ts';
import { TOLD_COLUMNS, type ToldColumn } from '../../packages/study/src/listed/told-columns.ts';
import { MemoryIo } from '../support/memory-io.ts';
import { projectText } from '../support/project.ts';

type Command = 'look' | 'assess' | 'simulate' | 'agree' | 'export' | 'scatter' | 'work' | 'gather';

/** Options that a help text explains, with a value where one is named behind them. */
function explained(about: Command): string[][] {
  return helpText(about)
    .split('\n')
    .flatMap((line) => {
      const found = /^ {2}(--[a-z-]+)( [A-Z]+(?:=[A-Z,.]+)?)?/.exec(line);
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
  WHAT: 'day',
  PAIR: 'A,B',
  'NAME=V,V,...': 'heightFraction=0.6,0.8',
  PERCENT: '1',
  KIND: 'fast',
  HZ: '80',
  SIGN: 'negative',
  WORDS: 'none,slight,clear',
  FORMS: 'csv,parquet',
  DAY: '2026-03-01',
  FORM: 'json',
  MB: '512',
  PATH: 'o.zip',
  PART: '2',
  SECONDS: '10-20',
  'TOPIC=ANSWER': 'rate=100',
  NAME: 'plate',
  PATTERN: '{person}_{visit}',
  URL: 'postgres://db/calf',
  S: '60',
  'FROM=TO': '/data=/mnt',
};

/** What an option asks for beside it. */
const NEEDS: Readonly<Record<Command, Readonly<Record<string, string[]>>>> = {
  assess: {
    '--forefoot-lever-mm': ['--test', 'isometric'],
    '--calibration-u-percent': ['--test', 'isometric'],
    '--calibration-zero-u': ['--test', 'isometric'],
    '--polarity': ['--test', 'isometric'],
    '--warm-up-pushes': ['--test', 'isometric'],
    '--replace': ['--csv', 'out'],
    '--reliability-of': ['--reliability', 's.json'],
    '--lines': ['--stdin'],
    '--part': ['--recipe', 'r.json'],
    '--window': ['--recipe', 'r.json'],
    '--rate-hz': ['--recipe', 'r.json'],
  },
  agree: {
    '--pair': ['--picture', 'a.svg'],
    '--replace': ['--picture', 'a.svg'],
    '--icc-expected': ['--icc-width', '0.1'],
  },
  export: {
    '--passphrase-file': ['--backup', 'b'],
    '--secret-file': ['--without-names'],
    '--keep-devices': ['--without-names'],
  },
  look: {
    '--name': ['--recipe-out', 'r.json'],
    '--replace': ['--recipe-out', 'r.json'],
    '--names': ['--manifest-out', 'm.csv'],
    '--facts': ['--manifest-out', 'm.csv', '--names', '{person}'],
  },
  scatter: {},
  work: {},
  gather: {
    '--database': ['--left'],
    '--run': ['--left'],
    '--replace': ['--csv', 'out'],
    '--reliability': ['--json'],
    '--reliability-of': ['--json', '--reliability', 'r.json'],
  },
  simulate: {
    '--no-gyroscope': ['--placement', 'foot'],
    '--kind': ['--test', 'isometric'],
    '--rate-hz': ['--test', 'isometric'],
    '--people': ['--messy'],
  },
};

test.each([
  ['assess', 30, ['assess', 'a.csv']],
  ['simulate', 7, ['simulate', '--out', 'out']],
  ['agree', 13, ['agree', 'a.csv']],
  ['export', 10, ['export', '--manifest', 'm.csv', '--out', 'o']],
  ['look', 5, ['look', 'a.csv']],
  ['scatter', 5, ['scatter', 'a.csv']],
  ['work', 6, ['work']],
  ['gather', 9, ['gather']],
] as const)('every option that the help of %s explains is taken by the command line', (about, least, start) => {
  const options = explained(about);
  expect(options.length).toBeGreaterThanOrEqual(least);
  for (const [option, value] of options) {
    const given = option.startsWith('--icc')
      ? '0.5'
      : value === undefined
        ? undefined
        : about === 'agree' && value === 'N'
          ? '2'
          : VALUES[value];
    const isSource = about === 'assess' && /^--(?:manifest|stdin|lines)$/.test(option);
    const begin =
      about === 'scatter' && option === '--manifest'
        ? ['scatter']
        : isSource
          ? ['assess']
          : /^--(?:backup|store|passphrase-file)$/.test(option)
            ? ['export', '--out', 'o']
            : about === 'assess' && option.startsWith('--reliability')
              ? ['assess', '--manifest', 'm.csv']
              : start;
    const args = [...begin, ...(NEEDS[about][option] ?? []), option, ...(given === undefined ? [] : [given])];
    expect(() => readArguments(args), args.join(' ')).not.toThrow();
  }
});

/** What the command says when it is asked so. */
async function said(...args: string[]): Promise<string> {
  const memory = new MemoryIo();
  expect([await main(args, memory.io), memory.error]).toEqual([0, '']);
  return memory.out;
}

/** The commands among the examples of a help text, as the words that a shell would hand over. */
function examples(text: string): string[][] {
  const after = text.replaceAll('\\\n', ' ').slice(text.search(/^Examples?$/m));
  return [...after.matchAll(/\bsurae +([^|>\n]+)/g)].map(([, words]) =>
    [...words.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, bare]) => quoted ?? bare),
  );
}

/** Reads a command line to its last option. */
function read(words: readonly string[]): void {
  const asked = readArguments(words);
  if (asked.command === 'design') readDesignArguments(asked.args);
}

test.each(COMMANDS)(
  'the help of %s has the one form: what it is, exit codes, and examples that can be given',
  async (about) => {
    const text = await said(about, '--help');
    expect([await said(about, '-h'), await said('help', about)]).toEqual([text, text]);
    expect(text.startsWith(`surae ${about} `)).toBe(true);
    expect(text.match(/^Exit code: 0 /gm)).toHaveLength(1);
    expect(text.match(/^Examples$/gm)).toHaveLength(1);
    expect(text.indexOf('Exit code:')).toBeLessThan(text.indexOf('\nExamples\n'));
    expect(text.split('\n').filter((line) => line.length > 80)).toEqual([]);
    const given = examples(text);
    expect(given.filter(([command]) => command === about).length).toBeGreaterThanOrEqual(2);
    for (const words of given) expect(() => read(words), words.join(' ')).not.toThrow();
  },
);

test('what no command knows is refused with every command, and what was mistyped with its name', () => {
  for (const named of [[], ['count']]) for (const command of COMMANDS) expect(() => read(named)).toThrow(command);
  for (const command of COMMANDS) expect(() => read([command, '--colour'])).toThrow('--colour');
  const first = helpText('surae');
  for (const command of COMMANDS) expect(first).toContain(`surae ${command} `);
});

test('the help names every word that is known', () => {
  const text = helpText('assess');
  for (const word of [...PLACEMENTS, ...SIDES, ...TESTS]) expect(text).toContain(word);
});

test('the help of simulate explains every level that is taken, and no other', () => {
  const levels = [...helpText('simulate').matchAll(/^ {24}([a-z]+) {2,}\w/gm)].map(([, level]) => level);
  expect(levels).toEqual(['clean', 'typical', 'hard', 'field', 'free']);
  for (const level of levels) {
    expect(readArguments(['simulate', '--out', 'o', '--level', level])).toMatchObject({ level });
  }
  expect(() => readArguments(['simulate', '--out', 'o', '--level', 'worse'])).toThrow(levels.join(', '));
});

test('the help explains every option of the command line', () => {
  const source = ['assess-arguments', 'given-about', 'agree-arguments', 'export-arguments']
    .map((name) => projectText(`apps/cli/src/${name}.ts`))
    .join('');
  const options = [...source.matchAll(/^ {2}(?: {6})?'?([a-z-]+)'?: \{ type: '(?:string|boolean)'/gm)].map(
    ([, name]) => name,
  );
  expect(options.length).toBeGreaterThan(32);
  const text = helpText('surae') + helpText('assess') + helpText('simulate') + helpText('agree') + helpText('export');
  for (const option of options) expect(text).toContain(`--${option} `.trimEnd());
});

test('the help names every column of a manifest that is used', () => {
  const text = helpText('assess').replace(/\s+/g, '');
  const source = projectText('packages/study/src/listed/manifest-items.ts');
  const used = [...source.matchAll(/'([a-z]+(?:_[a-z]+)+)'/g)].map(([, column]) => column);
  expect(used).toEqual(expect.arrayContaining(['external_mass_kg', 'ankle_angle_deg']));
  for (const column of [...used, ...Object.keys(MANIFEST_NUMBERS)]) expect(text).toContain(column);
});

test('the help explains every column that tells something, with each word that it takes', () => {
  const text = helpText('assess');
  const joined = text.replace(/\s+/g, ' ');
  for (const [name, column] of Object.entries<ToldColumn>(TOLD_COLUMNS)) {
    expect(text).toMatch(new RegExp(`^ {2}${name} `, 'm'));
    expect(joined).toContain(column.says);
    if (column.kind === 'word') expect(joined).toContain(column.words.join(', '));
  }
  for (const line of text.split('\n')) expect(line.length, line).toBeLessThanOrEqual(80);
});

test('the first page leads to every command and says what this is not', () => {
  const text = helpText('surae');
  for (const words of ['surae assess', 'surae simulate', 'surae agree', 'not a diagnosis'])
    expect(text).toContain(words);
});
