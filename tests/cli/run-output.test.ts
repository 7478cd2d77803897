import type { Outcome } from '@surae/study';
import { describe, expect, test } from 'vitest';
import { assessFile } from '../../apps/cli/src/assess-file.ts';
import { entryOf } from '../../apps/cli/src/entry.ts';
import { runOutput } from '../../apps/cli/src/run-output.ts';
import { usualSettings } from '../../apps/cli/src/settings-file.ts';
import type { TestName } from '../../packages/study/src/listed/known-words.ts';
import type { WorkItem } from '../../packages/study/src/listed/work-list.ts';
import { csvRows } from '../support/csv-rows.ts';
import { handMadeOutcome, handMadeRefusal } from '../support/hand-made-outcome.ts';
import { madeForce } from '../support/made-hops.ts';
import { MemoryIo } from '../support/memory-io.ts';

const { timesS, force } = madeForce({ count: 22, contactS: 0.25, flightS: 0.2, massKg: 70, sampleRateHz: 500 });
const HOPS = ['time [s],force [N],mood', ...[...timesS].map((timeS, i) => `${timeS},${force[i]},1`)].join('\n');
const { about } = handMadeRefusal().item;
const itemOf = (file: string, changes: Partial<WorkItem['about']> = {}): WorkItem => ({
  file,
  path: file,
  about: { ...about, test: 'hop-series', side: 'left', placement: 'platform', ...changes },
  carried: {},
  refusal: undefined,
});
const ITEMS = [itemOf('a.csv'), itemOf('gone.csv'), itemOf('a.csv', { placement: 'trunk' })];

const TABLES = { kind: 'tables', csv: 'out', parquet: undefined, replace: false } as const;
const SCREEN = { width: 80, drawsBlocks: true };

async function run(kind: 'text' | 'json' | 'csv') {
  const memory = new MemoryIo();
  memory.files.set('a.csv', HOPS);
  const asked = kind === 'csv' ? TABLES : { kind };
  const want = kind === 'csv' ? 'rows' : kind;
  const output = runOutput(asked, { carried: [], tests: new Set(['hop-series']), compares: false }, memory.io);
  const add = (outcome: Outcome) => output.add(entryOf(outcome, { want: { kind: want, ...SCREEN }, carried: [] }));
  for (const item of ITEMS) {
    const outcome = await assessFile(item, usualSettings(), memory.io);
    add(outcome.status === 'ok' ? { ...outcome, sameAs: 'first.csv' } : outcome);
  }
  output.close('a note');
  return memory;
}

const TWIN = 'This recording was in the list before: first.csv is the same.';

describe('a hop series is an outcome like any other', () => {
  test('as tables: refusals in refused.csv, notes in issues.csv, its figures in its own tables', async () => {
    const memory = await run('csv');
    const table = (name: string) => csvRows(memory.text(`out/${name}`));
    expect(table('refused.csv')).toMatchObject([
      { file: 'gone.csv', test: 'hop-series', sha256: '', reason: 'gone.csv: there is no such file' },
      { file: 'a.csv', test: 'hop-series', reason: expect.stringContaining('not at the placement trunk') as string },
    ]);
    expect(table('issues.csv').map((row) => row['sentence'])).toEqual([
      'The column "mood" was not used: its name is none of ours.',
      TWIN,
    ]);
    expect([table('hops.csv').length, table('hop-series.csv').length]).toEqual([22, 1]);
    expect([table('sets.csv'), table('repetitions.csv')]).toEqual([[], []]);
    expect(memory.files.has('out/efforts.csv')).toBe(false);
  });

  test('as text: its report with the note, and a line of its own at the end', async () => {
    const { out } = await run('text');
    expect(out.replace(/\s+/g, ' ')).toContain(`note ${TWIN}`);
    expect(out).toMatch(/^a\.csv +22 hops +15 analysed$/m);
    expect(out).toMatch(/^gone\.csv +refused$/m);
    expect(out).not.toContain('a note');
  });

  test('as JSON: its line with the issues, and a refused one with its reason', async () => {
    const lines = (await run('json')).out.trimEnd().split('\n');
    const [ok, gone] = lines.map((line) => JSON.parse(line) as Record<string, unknown>);
    expect(lines).toHaveLength(3);
    expect(ok).toMatchObject({
      status: 'ok',
      test: 'hop-series',
      placement: 'platform',
      found: 'yes',
      no_series: null,
    });
    expect((ok['issues'] as { code: string }[]).map(({ code }) => code)).toEqual(['unused-column', 'same-bytes']);
    expect(gone).toMatchObject({ status: 'refused', test: 'hop-series', placement: 'platform', sha256: null });
  });
});

test('tables of hops and of comparisons are written only where the list asks for them', () => {
  const memory = new MemoryIo();
  const tests = new Set<TestName>(['heel-raise']);
  const output = runOutput(TABLES, { carried: [], tests, compares: false }, memory.io);
  output.add(entryOf(handMadeOutcome([100]), { want: { kind: 'rows' }, carried: [] }));
  output.close('');
  const names = [...memory.files.keys()].map((name) => name.replace('out/', '')).sort();
  expect(names).toEqual(['dictionary.csv', 'issues.csv', 'refused.csv', 'repetitions.csv', 'sets.csv']);
});
