import { appendFileSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { appendLines } from '../../apps/cli/src/append-lines.ts';
import { nodeIo } from '../../apps/cli/src/node-io.ts';

test('lines are added to a real file, whatever stands there, and a folder that is not there is told', () => {
  const folder = mkdtempSync(join(tmpdir(), 'surae-append-'));
  try {
    const path = join(folder, 'list.jsonl');
    appendLines(path, 'one\n', nodeIo());
    appendFileSync(path, 'of another\n');
    appendLines(path, 'two\n', nodeIo());
    expect(readFileSync(path, 'utf8')).toBe('one\nof another\ntwo\n');
    expect(() => appendLines(join(folder, 'none', 'list.jsonl'), 'one\n', nodeIo())).toThrow(' cannot be written: ');
  } finally {
    rmSync(folder, { recursive: true });
  }
});
