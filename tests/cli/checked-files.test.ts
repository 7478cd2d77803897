import { expect, test } from 'vitest';
import { CheckedFiles } from '../../apps/cli/src/checked-files.ts';
import { sha256 } from '../../apps/cli/src/fingerprints.ts';
import { MemoryIo } from '../support/memory-io.ts';

const TEXT = 'time [s],force [N]\n'.repeat(200);
const OTHER = 'it holds other bytes than when the list was made; the run knows it as it was';

function disk(text: string): MemoryIo {
  const memory = new MemoryIo();
  memory.files.set('a.csv', text);
  return memory;
}

const expected = { sha256: sha256(TEXT), bytes: undefined };

test.each([
  [TEXT, undefined],
  [`${TEXT} `, OTHER],
])('what was read whole or in pieces, to its end or not at all, is the expected or is not', async (text, fault) => {
  const { io } = disk(text);
  const whole = new CheckedFiles('a.csv', expected, io);
  expect(Buffer.from(await whole.readFile('a.csv')).toString()).toBe(text);
  expect(await whole.fault()).toBe(fault);

  const inPieces = new CheckedFiles('a.csv', expected, io);
  let pieces = 0;
  for await (const piece of inPieces.readChunks('a.csv')) pieces += piece.length;
  expect([pieces, await inPieces.fault()]).toEqual([text.length, fault]);

  const begun = new CheckedFiles('a.csv', expected, io);
  for await (const piece of begun.readChunks('a.csv')) if (piece.length > 0) break;
  expect(await begun.fault()).toBe(fault);
  expect(await new CheckedFiles('a.csv', expected, io).fault()).toBe(fault);
});

test('a file that cannot be read is told as such, and never as other bytes', async () => {
  const { io } = new MemoryIo();
  const checked = new CheckedFiles('gone.csv', expected, io);
  await expect(checked.readFile('gone.csv')).rejects.toMatchObject({ code: 'ENOENT' });
  expect(await checked.fault()).toBe('there is no such file');
  expect(await new CheckedFiles('gone.csv', expected, io).fault()).toBe('there is no such file');
});

test('bytes that came along are taken and no file is looked at; others than expected are not', async () => {
  const { io } = new MemoryIo();
  const bytes = new TextEncoder().encode(TEXT);
  const sent = new CheckedFiles('gone.csv', { ...expected, bytes }, io);
  expect(await sent.readFile('gone.csv')).toEqual(bytes);
  let pieces = 0;
  for await (const piece of sent.readChunks('gone.csv')) pieces += piece.length;
  expect([pieces, await sent.fault()]).toEqual([bytes.length, undefined]);
  const damaged = new CheckedFiles('gone.csv', { ...expected, bytes: bytes.subarray(1) }, io);
  await damaged.readFile('gone.csv');
  expect(await damaged.fault()).toBe(OTHER);
});
