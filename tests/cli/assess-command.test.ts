import { expect, test } from 'vitest';
import type { AssessArguments } from '../../apps/cli/src/arguments.ts';
import { assessCommand } from '../../apps/cli/src/assess-command.ts';
import { csvRows } from '../support/csv-rows.ts';
import { handMadeRefusal } from '../support/hand-made-outcome.ts';
import { MemoryIo } from '../support/memory-io.ts';

const GOOD = 'fixtures/recordings/made/heel-three-raises.csv';
const GONE = 'no-such.csv';

const ASKED: AssessArguments = {
  command: 'assess',
  files: [GOOD],
  manifest: undefined,
  given: handMadeRefusal().item.about,
  settings: undefined,
  reliability: undefined,
  vary: undefined,
  output: { kind: 'text' },
};

async function run(changes: Partial<AssessArguments>, watched = false) {
  const memory = new MemoryIo();
  const code = await assessCommand({ ...ASKED, ...changes }, { ...memory.io, watched });
  return { code, memory };
}

test('exit code 0 when all are assessed, 1 when one is not, and the refusals come last on standard error', async () => {
  expect((await run({})).code).toBe(0);
  const { code, memory } = await run({ files: [GONE, GOOD] });
  expect(code).toBe(1);
  expect(memory.error).toBe(`Refused, 1 of 2:\n  ${GONE}: there is no such file\n`);
  expect(memory.out).toContain('attempted');
});

test('progress is shown to a person who watches, and wiped away at the end', async () => {
  const { memory } = await run({ files: [GOOD, GOOD] }, true);
  expect(memory.error).toBe(`\r1 of 2  ${GOOD}\u001b[K\r2 of 2  ${GOOD}\u001b[K\r\u001b[K`);
  expect((await run({ files: [GOOD, GOOD] })).memory.error).toBe('');
});

test('with tables as output every outcome is in one of them and the files are named', async () => {
  const { memory } = await run({ files: [GOOD, GONE], output: { kind: 'csv', folder: 'out', replace: false } });
  expect(csvRows(memory.text('out/sets.csv')).map((row) => row['file'])).toEqual([GOOD]);
  expect(csvRows(memory.text('out/refused.csv')).map((row) => row['file'])).toEqual([GONE]);
  expect(memory.out).toContain('repetitions.csv');
  expect(memory.out).not.toContain('Not a diagnosis');
});

test('one JSON object a line and nothing else', async () => {
  const { memory } = await run({ files: [GOOD, GONE], output: { kind: 'json' } });
  const lines = memory.out.trimEnd().split('\n');
  expect(lines.map((line) => (JSON.parse(line) as { status: string }).status)).toEqual(['ok', 'refused']);
});

test('a recording that is in the list twice is assessed twice, and the second says so', async () => {
  const { code, memory } = await run({ files: [GOOD, GOOD], output: { kind: 'json' } });
  expect(code).toBe(0);
  const sentences = memory.out
    .trim()
    .split('\n')
    .map((line) => (JSON.parse(line) as { issues: { code: string; sentence: string }[] }).issues)
    .map((issues) => issues.filter((issue) => issue.code === 'same-bytes').map((issue) => issue.sentence));
  expect(sentences).toEqual([[], [`This recording was in the list before: ${GOOD} is the same.`]]);
});
