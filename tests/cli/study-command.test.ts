import { readCsvTable, readCsvwMetadata } from '@surae/exchange';
import { expect, test } from 'vitest';
import { sha256 } from '../../apps/cli/src/fingerprints.ts';
import { main } from '../../apps/cli/src/main.ts';
import { csvRows } from '../support/csv-rows.ts';
import type { MemoryIo } from '../support/memory-io.ts';
import { FOLDER_STUDY, STUDY_ROWS, studyFolder } from '../support/study-folder.ts';

const RUN = ['study', 'study.json', '--manifest', 'm.csv'];

async function run(memory: MemoryIo, ...more: string[]): Promise<number> {
  memory.out = '';
  memory.error = '';
  return main([...RUN, ...more], memory.io);
}

/** The folder `o` after a run: made once, since a run takes seconds; each test has a copy. */
let whole: Promise<MemoryIo> | undefined;

async function ran(): Promise<MemoryIo> {
  whole ??= (async () => {
    const memory = studyFolder();
    expect(await run(memory, '--out', 'o')).toBe(0);
    return memory;
  })();
  const copy = studyFolder();
  for (const [path, content] of (await whole).files) copy.files.set(path, content);
  copy.out = (await whole).out;
  return copy;
}

const filesOf = (memory: MemoryIo, folder: string): Map<string, string> =>
  new Map(
    [...memory.files]
      .filter(([path]) => path.startsWith(`${folder}/`))
      .map(([path, text]) => [path.slice(folder.length + 1), text as string]),
  );

interface Record {
  readonly command: string;
  readonly study: string;
  readonly inputs: { file: string; sha256: string }[];
  readonly files: { name: string; sha256: string }[];
  readonly assessed: { as: string; settings_hashes: string[] }[];
}

const recordOf = (memory: MemoryIo, folder: string): Record =>
  JSON.parse(memory.text(`${folder}/reproduce.json`)) as Record;

test('a study becomes tables, figures and a record, and the command in the record makes the same bytes again', async () => {
  const memory = await ran();
  const first = filesOf(memory, 'o');
  expect(memory.out).toContain('8 taken, 0 left out, 0 to be decided');
  expect(memory.out).toMatch(/cycling is higher than walking\n +cycling less walking: 4\.0 \(1\.8 to 6\.2\)/);
  expect(memory.out).toContain('1 of 2 analyses say something else than the declared one (2 analyses)');
  const record = recordOf(memory, 'o');
  expect(record.command).toBe('surae study study.json --manifest m.csv --out OUT');
  expect(await main(record.command.replace('OUT', 'second').split(' ').slice(1), memory.io)).toBe(0);
  const second = filesOf(memory, 'second');
  expect([...second.keys()]).toEqual([...first.keys()]);
  for (const [name, text] of first) expect([name, second.get(name) === text]).toEqual([name, true]);
  // what the record says of files and inputs is so
  expect(
    record.files
      .map(({ name }) => name)
      .concat('reproduce.json')
      .sort(),
  ).toEqual([...first.keys()].sort());
  for (const { name, sha256: hash } of record.files) expect(sha256(first.get(name)!)).toBe(hash);
  for (const { file, sha256: hash } of record.inputs) expect(sha256(memory.text(file))).toBe(hash);
  expect(record.assessed.map(({ as, settings_hashes: hashes }) => [as, hashes.length])).toEqual([
    ['as declared', 1],
    ['protocol.heightFraction=0.95', 1],
  ]);
});

test('the tables hold what surae assess finds, and each says in its metadata how it is made again', async () => {
  const memory = await ran();
  const quality = csvRows(memory.text('o/quality.csv'));
  expect(quality.map((row) => [row['file'], row['status'], row['count.scored']])).toEqual(
    STUDY_ROWS.map(({ file }) => [file, 'include', /\d+/.exec(String(file))![0]]),
  );
  await main(['assess', '--manifest', 'm.csv', '--csv', 'sets', '--protocol', 'single-leg.floor'], memory.io);
  const sets = csvRows(memory.text('sets/sets.csv'));
  expect(quality.map((row) => [row['sha256'], row['settings_hash']])).toEqual(
    sets.map((row) => [row['sha256'], row['settings_hash']]),
  );
  const { study } = recordOf(memory, 'o');
  for (const name of ['quality', 'outcomes', 'people', 'groups', 'multiverse', 'choices', 'dictionary']) {
    const text = memory.text(`o/${name}.csv-metadata.json`);
    const { shape } = readCsvwMetadata(text, name);
    expect(readCsvTable(memory.text(`o/${name}.csv`), shape, name).rows.length).toBeGreaterThan(0);
    const made = (JSON.parse(text) as { 'dc:provenance': string })['dc:provenance'];
    expect(made).toContain(`surae study study.json --manifest m.csv --out OUT; study ${study}; read study.json `);
  }
  for (const name of ['estimates', 'people']) expect(memory.text(`o/${name}.svg`)).toContain(`study ${study}`);
  const explained = csvRows(memory.text('o/dictionary.csv')).map((row) => `${row['table']} ${row['column']}`);
  for (const name of ['quality', 'groups', 'choices']) {
    const header = memory.text(`o/${name}.csv`).split('\r\n')[0].split(',');
    expect(explained).toEqual(expect.arrayContaining(header.map((column) => `${name} ${column}`)));
  }
});

test('the order of the manifest makes no difference to what is compared', async () => {
  const [one, other] = [await ran(), studyFolder([...STUDY_ROWS].reverse())];
  await run(other, '--out', 'o');
  for (const name of ['groups', 'multiverse', 'choices', 'people']) {
    expect(other.text(`o/${name}.csv`)).toBe(one.text(`o/${name}.csv`));
  }
});

test('a decision is an entry of a list, and a declared reason leaves a trial out with its effect', async () => {
  const memory = studyFolder();
  const decide = (what: string): Promise<number> =>
    run(memory, '--decisions', 'd', '--decide', what, '--by', 'ada', '--on', '2026-03-02', '--why', 'began late');
  expect(await decide('cycling-10.csv=exclude:late')).toBe(0);
  expect(memory.out).toBe('d: cycling-10.csv exclude:late, by ada (entry 1)\n');
  expect(await decide('cycling-10.csv=exclude:tired')).toBe(2);
  expect(memory.error).toContain('expected late, got "tired", which was not declared');
  expect(await decide('cycling-99.csv=exclude:late')).toBe(2);
  expect(memory.error).toContain('"cycling-99.csv"');
  expect(await decide('cycling-10.csv=leave')).toBe(2);
  expect(await run(memory, '--out', 'o', '--decisions', 'd', '--json')).toBe(0);
  const told = JSON.parse(memory.out) as { trials: object; comparison: object };
  expect(told.trials).toEqual({ include: 7, exclude: 1, to_decide: 0 });
  expect(told.comparison).toMatchObject({ compared: true, first: { n: 3 }, second: { n: 4 } });
  const row = csvRows(memory.text('o/quality.csv'))[1];
  expect(row).toMatchObject({ status: 'exclude', reasons: 'late', decision_by: 'ada', decision_at: '2026-03-02' });
  memory.files.set('d', memory.logText('d').replace('began late', 'began early'));
  expect(await run(memory, '--out', 'p', '--decisions', 'd')).toBe(2);
  expect(memory.error).toContain('d, entry 1: expected the hash ');
});

test('a recording that is refused, or of another test, is in the table, and the exit code tells', async () => {
  const rows = [
    ...STUDY_ROWS,
    { ...STUDY_ROWS[0], file: 'gone.csv' },
    { ...STUDY_ROWS[0], file: 'x-5.csv', test: 'isometric' },
  ];
  const memory = studyFolder(rows);
  expect(await run(memory, '--out', 'o')).toBe(1);
  expect(memory.error).toBe(
    'Refused, 2 of 10:\n  gone.csv: there is no such file\n' +
      '  x-5.csv: the study does the test heel-raise, the manifest says isometric\n',
  );
  const [gone] = csvRows(memory.text('o/quality.csv')).slice(8);
  expect(gone).toMatchObject({ status: 'to-decide', flags: 'refused', refusal: 'gone.csv: there is no such file' });
});

test('a result made before an amendment is told, and so is a file that was changed since', async () => {
  const memory = await ran();
  const { study: before } = recordOf(memory, 'o');
  const check = (study: string, ...more: string[]): Promise<number> => {
    memory.out = '';
    return main(['study', study, '--check', 'o/reproduce.json', ...more], memory.io);
  };
  expect(await check('study.json')).toBe(0);
  expect(memory.out).toMatch(
    /^o\/reproduce\.json: made with the study as it stands\n19 files are as they were made\n$/,
  );
  const amended = { ...FOLDER_STUDY, amends: { study: before, why: 'a second outcome' }, title: 'Heel raises' };
  memory.files.set('amended.json', JSON.stringify(amended));
  expect(await check('amended.json', '--earlier', 'study.json')).toBe(1);
  expect(memory.out).toContain('made before an amendment of the study');
  expect(await check('amended.json')).toBe(1);
  expect(memory.out).toContain('made with another study, or with a version that is not at hand');
  memory.files.set('o/groups.csv', memory.text('o/groups.csv').replace('cycling', 'walking'));
  expect(await check('study.json')).toBe(1);
  expect(memory.out).toContain('o/groups.csv was changed since');
  expect(
    await main(['study', 'amended.json', '--manifest', 'm.csv', '--out', 'q', '--earlier', 'study.json'], memory.io),
  ).toBe(0);
  expect(memory.out).toContain('amended (title): a second outcome');
});

test('what cannot be followed is said before anything is written', async () => {
  const memory = studyFolder(STUDY_ROWS, FOLDER_STUDY, { 'o/groups.csv': 'there' });
  expect(await run(memory, '--out', 'o')).toBe(2);
  expect(memory.error).toContain('o/groups.csv is there already: name another folder, or add --replace');
  expect(await run(memory, '--out', 'p', '--most', '1')).toBe(2);
  expect(memory.error).toContain('choices: expected at most 1 analyses, got 2: protocol.heightFraction 2');
  memory.files.set('bad.json', memory.text('study.json').replace('count.scored', 'count.score'));
  expect(await main(['study', 'bad.json', '--manifest', 'm.csv', '--out', 'p'], memory.io)).toBe(2);
  expect(memory.error).toContain('bad.json, outcomes.primary: expected a column of numbers of the test heel-raise');
  const twice = studyFolder([...STUDY_ROWS, STUDY_ROWS[0]]);
  expect(await run(twice, '--out', 'p')).toBe(2);
  expect(twice.error).toContain('expected every file once, got "cycling-8.csv" twice');
  const none = studyFolder(STUDY_ROWS, { ...FOLDER_STUDY, trials: [{ manifest: 'visit', is: ['2'] }] });
  expect(await run(none, '--out', 'p')).toBe(2);
  expect(none.error).toContain('no row has what the study says of its trials');
  expect([...filesOf(memory, 'p').keys()]).toEqual([]);
});
