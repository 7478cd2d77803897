import { readFileSync } from 'node:fs';
import {
  type Answers,
  makeRecipe,
  type Proposal,
  type RecipeOptions,
  RecipeReader,
  type RecipeReading,
  readWithRecipe,
  type SurveyedTable,
  TableSurvey,
} from '@surae/records';
import { describe, expect, test } from 'vitest';
import { fixturePath } from '../../support/fixture.ts';

const bytesOf = (name: string): Uint8Array => new Uint8Array(readFileSync(fixturePath(`messy/${name}`)));

function surveyed(bytes: Uint8Array, answers: Answers = {}, chunk = bytes.length): SurveyedTable {
  const survey = new TableSurvey({ file: 'table.csv', answers });
  for (let at = 0; at < bytes.length; at += chunk) survey.push(bytes.subarray(at, at + chunk));
  return survey.end();
}

const look = (name: string, answers: Answers = {}): Proposal => surveyed(bytesOf(name), answers).proposal;

function read(name: string, answers: Answers = {}, options: RecipeOptions = {}): RecipeReading {
  const bytes = bytesOf(name);
  return readWithRecipe(bytes, makeRecipe(surveyed(bytes, answers).proposal, name), { file: name, ...options });
}

const ids = (proposal: Proposal): string[] => proposal.questions.map(({ id }) => id);

/** The heel of the fixtures, as its definition says [m]. */
const heightM = (timeS: number): number => (timeS < 1 || timeS >= 7 ? 0 : 0.04 * (1 - Math.cos(Math.PI * (timeS - 1))));

function expectHeel({ recording }: RecipeReading): void {
  const [{ timesS, channels }] = recording.groups as [(typeof recording.groups)[number]];
  expect(timesS.length).toBe(400);
  for (const [i, timeS] of timesS.entries()) {
    expect(timeS).toBeCloseTo(i / 50, 9);
    // two decimals of a millimetre were written
    expect(Math.abs(channels[0].samples[i] - heightM(i / 50))).toBeLessThan(5.1e-6);
  }
}

describe('a decimal comma and semicolons', () => {
  test('are found by consistency, and the first rows are shown as they are read', () => {
    const { form, firstRows, questions, columns } = look('decimal-comma.csv');
    expect([form.delimiter.value, form.decimal.value, form.thousands.value]).toEqual([';', ',', 'none']);
    expect(form.decimal.evidence[0]).toMatchObject({ code: 'decimal-seen', figures: { mark: ',', example: '0,00' } });
    expect(firstRows[1]).toEqual([0.02, 0]);
    expect(columns[0]).toMatchObject({
      label: 'Fersenhöhe [mm]',
      use: { value: 'heel-height' },
      unit: { value: 'mm' },
    });
    expect(questions).toEqual([]);
    expectHeel(read('decimal-comma.csv'));
  });

  test('a number such as 1,234 that can be either is asked, and both answers are followed', () => {
    const { form, questions } = look('comma-either.csv');
    expect(form.decimal.confidence).toBeLessThan(0.9);
    expect(questions.map(({ id }) => id)).toContain('decimal');
    const asked = questions.find(({ topic }) => topic === 'decimal')!;
    expect(asked.options.map(({ answer }) => answer)).toEqual([',', '.']);
    expect(asked.evidence[0]).toMatchObject({ code: 'decimal-either', figures: { example: '1,100' } });
    expect(look('comma-either.csv', { decimal: ',' }).firstRows[0]).toEqual([0, 1.1]);
    expect(look('comma-either.csv', { decimal: '.' }).firstRows[0]).toEqual([0, 1100]);
    expect(ids(look('comma-either.csv', { decimal: '.' }))).not.toContain('decimal');
  });
});

describe('times as the text of a clock', () => {
  test('go on over midnight, keep their offset, and it is said', () => {
    const { time } = look('clock-midnight.csv');
    expect(time.unit.value).toBe('clock');
    expect(time.changes).toEqual([{ index: 200, kind: 'midnight' }]);
    expect(time.unit.evidence.map(({ code }) => code)).toContain('clock-midnight');
    const { recording, clockChanges } = read('clock-midnight.csv');
    const { timesS, gaps } = recording.groups[0];
    expect([timesS[0], timesS[200], timesS.at(-1)]).toEqual([86_396, 86_400, 86_403.98]);
    expect(gaps).toEqual([]);
    expect(clockChanges).toEqual([{ index: 200, kind: 'midnight', line: 202 }]);
  });

  test.each([
    ['clock-summer-time.csv', 'hour-forward', 7196],
    ['clock-winter-time.csv', 'hour-back', 10_796],
  ])('%s: a clock that is changed by an hour does not change the time', (name, kind, firstS) => {
    const { recording, clockChanges } = read(name);
    const { timesS, gaps } = recording.groups[0];
    expect(clockChanges).toEqual([{ index: 200, kind, line: 202 }]);
    expect([timesS[0], timesS.at(-1)]).toEqual([firstS, firstS + 7.98]);
    expect(gaps).toEqual([]);
  });
});

describe('a header in mid-file, a footer, NaN and blank lines', () => {
  test('are tolerated, counted and listed by line; a missing value is a gap and never zero', () => {
    const { odd, form, questions } = look('untidy.csv');
    expect(form.header.value).toMatchObject({ line: 4, names: ['time', 'heel height'] });
    expect(form.unitRow.value).toMatchObject({ line: 5, units: ['s', 'mm'] });
    expect(odd.blank).toEqual({ count: 1, lines: [206] });
    expect(odd.repeated).toEqual({ count: 2, lines: [207, 208] });
    expect(odd.missing).toEqual({ count: 3, lines: [126, 127, 309], texts: ['NaN', ''] });
    expect(odd.footer.map(({ line }) => line)).toEqual([409, 410]);
    expect([odd.stray.count, odd.unreadable.count]).toEqual([0, 0]);
    expect(questions).toEqual([]);
    const { recording, passedOver } = read('untidy.csv');
    const { timesS, channels, gaps } = recording.groups[0];
    expect(timesS.length).toBe(397);
    expect(gaps.map(({ fromS, toS, missingCount }) => [fromS, toS, missingCount])).toEqual([
      [2.38, 2.44, 2],
      [5.98, 6.02, 1],
    ]);
    expect(Math.abs(channels[0].samples[120] - heightM(2.44))).toBeLessThan(5.1e-6);
    expect(passedOver.missing).toEqual({ count: 3, lines: [126, 127, 309] });
    expect(passedOver.footer.count).toBe(2);
  });
});

describe('UTF-16, byte order marks and Latin-1', () => {
  test.each([
    ['utf-8-mark.csv', 'utf-8'],
    ['utf-16le.csv', 'utf-16le'],
    ['utf-16be-no-mark.csv', 'utf-16be'],
    ['latin-1.csv', 'windows-1252'],
  ])('%s is %s, with every letter of its names', (name, encoding) => {
    const { form, labels } = look(name);
    expect(form.encoding.value).toBe(encoding);
    expect(form.encoding.asks).toBe(false);
    expect(labels).toEqual(['Zeit [s]', 'Fersenhöhe [mm]']);
    expectHeel(read(name));
  });

  test('nothing depends on where the chunks of a file end', () => {
    for (const name of ['utf-16le.csv', 'utf-8-mark.csv', 'untidy.csv']) {
      const whole = surveyed(bytesOf(name)).proposal;
      for (const chunk of [1, 2, 3, 997]) expect(surveyed(bytesOf(name), {}, chunk).proposal).toEqual(whole);
    }
  });
});

describe('two people in one file', () => {
  test('are found by the column of codes, and a part has to be named', () => {
    const { parts, partLines } = look('two-people-column.csv');
    expect(parts.by).toBe('column');
    expect(parts.parts.map(({ label }) => label)).toEqual(['P07', 'P08']);
    expect(partLines).toEqual([
      { from: 2, to: 401 },
      { from: 402, to: 801 },
    ]);
    expect(() => read('two-people-column.csv')).toThrow(
      /expected one part.*2 parts by the column of people.*"P08", lines 402/,
    );
    expectHeel(read('two-people-column.csv', {}, { part: 'P08' }));
    expectHeel(read('two-people-column.csv', {}, { part: '1' }));
    expect(() => read('two-people-column.csv', {}, { part: 'P09' })).toThrow(/"P09" of 2 parts/);
    // people who are called 2 and 1: a number counts parts, a text names them
    const named = new TextDecoder().decode(bytesOf('two-people-column.csv')).replace('P08,0.00,0.00', 'P08,0.00,7.00');
    const bytes = new TextEncoder().encode(named.replaceAll('P07', '2').replaceAll('P08', '1'));
    const recipe = makeRecipe(surveyed(bytes).proposal, 'numbered');
    const height = (part: string | number): number =>
      readWithRecipe(bytes, recipe, { part }).recording.groups[0].channels[0].samples[0];
    expect([1, 2, '1', '2'].map(height)).toEqual([0, 0.007, 0.007, 0]);
    const reader = new RecipeReader(recipe);
    reader.push(bytes);
    expect(() => reader.end()).toThrow(/expected one part/);
    expect(reader.choices).toMatchObject({
      parts: [
        { label: '2', fromLine: 2, toLine: 401 },
        { label: '1', fromLine: 402, toLine: 801 },
      ],
      isLong: false,
      rate: false,
    });
  });

  test('are found by a pause of more than a minute', () => {
    const { parts } = look('two-people-pause.csv');
    expect([parts.by, parts.parts.length, parts.evidence[0].figures['seconds']]).toEqual(['pause', 2, 87]);
    expect(() => read('two-people-pause.csv')).toThrow(/2 parts by pauses of more than a minute/);
    expectHeel(read('two-people-pause.csv', {}, { part: '1' }));
    expect(read('two-people-pause.csv', {}, { part: 'all' }).recording.groups[0].timesS.length).toBe(800);
  });
});

describe('left and right in one file', () => {
  test('both are mapped', () => {
    const { columns, questions } = look('left-right.csv');
    expect(columns.map(({ use, side, unit }) => [use.value, side.value, unit.value])).toEqual([
      ['force', 'left', 'N'],
      ['force', 'right', 'N'],
    ]);
    expect(questions).toEqual([]);
    const { channels } = read('left-right.csv').recording.groups[0];
    expect(channels.map(({ side }) => side)).toEqual(['left', 'right']);
  });

  test('which is which is asked where the names do not tell, and answered by column', () => {
    const asked = look('two-plates.csv');
    expect(ids(asked)).toEqual(['side:Fz [N] #2', 'side:Fz [N] #3']);
    expect(asked.questions[0].evidence[0].code).toBe('side-twin');
    expect(() => read('two-plates.csv')).toThrow(/answers to side:Fz/);
    const { channels } = read('two-plates.csv', { 'side:Fz [N] #2': 'right', 'side:Fz [N] #3': 'left' }).recording
      .groups[0];
    expect(channels.map(({ side }) => side)).toEqual(['right', 'left']);
  });
});

describe('numbers of samples and no rate', () => {
  test('the rate is asked; what hangs on time is null until it is told', () => {
    const { time, questions } = look('sample-numbers.csv');
    expect(time.unit.value).toBe('sample');
    expect([time.rateHz.value, time.durationS]).toEqual([null, null]);
    expect(questions.map(({ id }) => id)).toEqual(['rate']);
    expect(() => read('sample-numbers.csv')).toThrow(/expected the number of samples a second/);
    expect(look('sample-numbers.csv', { rate: '50' }).time.durationS).toBeCloseTo(7.98, 9);
    expectHeel(read('sample-numbers.csv', { rate: '50' }));
    expectHeel(read('sample-numbers.csv', {}, { rateHz: 50 }));
  });
});

describe('an hour with the test in it', () => {
  const rows = Array.from({ length: 36_000 }, (_, i) => {
    const timeS = i / 10;
    const inTest = timeS >= 1800 && timeS < 1840;
    return `${timeS.toFixed(1)},${(inTest ? 40 * (1 - Math.cos(Math.PI * timeS)) : 0.3 * ((i * 7) % 3)).toFixed(2)}`;
  });
  const bytes = new TextEncoder().encode(`time [s],heel height [mm]\n${rows.join('\n')}\n`);

  test('a stretch is proposed, and nothing is read before one was named', () => {
    const { proposal } = surveyed(bytes);
    expect(proposal.windows.length).toBe(1);
    const [{ fromS, toS }] = proposal.windows as [{ fromS: number; toS: number }];
    expect([fromS, toS]).toEqual([1797, 1843]);
    const recipe = makeRecipe(proposal, 'an hour');
    expect(() => readWithRecipe(bytes, recipe)).toThrow(
      /a recording of 60 minutes; something moves from 1797 to 1843 s/,
    );
    expect(readWithRecipe(bytes, recipe, { window: { fromS, toS } }).recording.groups[0].timesS.length).toBe(461);
    expect(readWithRecipe(bytes, recipe, { window: 'all' }).recording.groups[0].timesS.length).toBe(36_000);
  });
});

test('what is no table is refused and says what came', () => {
  const text = (words: string): Uint8Array => new TextEncoder().encode(words);
  expect(() => surveyed(text('\n\n'))).toThrow(/table.csv: expected rows of numbers.*got no text/);
  expect(() => surveyed(text('once upon a time\nthere was a heel\n'))).toThrow(
    /no such row in 2 lines; the first is "once/,
  );
  expect(() => surveyed(text('{"a": 1}'))).toThrow(/expected rows of numbers/);
  expect(() => surveyed(Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 1, 2))).toThrow(/a PNG picture/);
  const survey = new TableSurvey();
  expect(() => survey.end()).toThrow(/an empty file/);
});

test('an answer to nothing, or a word that is none of the answers, is refused', () => {
  expect(() => look('untidy.csv', { colour: 'red' })).toThrow(/expected an answer to one of encoding/);
  expect(() => look('untidy.csv', { decimal: 'point' })).toThrow(/decimal as one of \., ,/);
  expect(() => look('untidy.csv', { 'unit:knee': 'N' })).toThrow(
    /one of the columns "time", "heel height", got "knee"/,
  );
  expect(() => look('untidy.csv', { 'unit:heel height': 'furlong' })).toThrow(/expected m, cm, mm/);
  expect(() => look('untidy.csv', { rate: '3' })).toThrow(/10 to 2000/);
});

describe('a row of units without names', () => {
  const rows = Array.from({ length: 50 }, (_, i) => `${10 * i};${780 + (i % 5)}`);
  const table = (units: string): Uint8Array => new TextEncoder().encode([units, ...rows, ''].join('\n'));

  test('says units and no names: N is newton, and no count of samples', () => {
    const { form, time, columns, questions } = surveyed(table('ms;N')).proposal;
    expect([form.header.value, form.unitRow.value]).toEqual(['none', { line: 1, units: ['ms', 'N'] }]);
    expect([time.column.value, time.unit.value, time.rateHz.value]).toEqual([0, 'ms', 100]);
    expect(columns[0]).toMatchObject({ label: '2', use: { value: 'force' }, unit: { value: 'N' } });
    expect(questions.map(({ topic }) => topic)).toEqual([]);
  });

  test('belongs to the recipe: a file with other units is refused', () => {
    const recipe = makeRecipe(surveyed(table('ms;N')).proposal, 'made');
    const { recording } = readWithRecipe(table('ms;N'), recipe);
    expect([...recording.groups[0].timesS.subarray(0, 3)]).toEqual([0, 0.01, 0.02]);
    expect(() => readWithRecipe(table('s;N'), recipe)).toThrow(/unit in line 1, column 1 "ms", got "s"/);
    expect(() => readWithRecipe(new TextEncoder().encode(rows.join('\n')), recipe)).toThrow(/unit in line 1/);
  });
});
