import fc from 'fast-check';
import { expect, test } from 'vitest';
import { Journal } from '../../apps/cli/src/journal.ts';
import { MemoryLog } from '../support/memory-io.ts';

const hash = (of: number) => of.toString(16).padStart(64, '0');
const opened = (log: MemoryLog) => new Journal(new MemoryLog(log.bytes), 'x.journal');
const bytes = (of: string) => new TextEncoder().encode(of);
const text = (of: Uint8Array) => new TextDecoder().decode(of);
const bodyOf = (journal: Journal, told: string, sha: string) => text(journal.read(journal.placeOf(told, sha)));

/** A log with three results, and where each of its lines ends. */
function three(): { log: MemoryLog; ends: number[] } {
  const log = new MemoryLog();
  const journal = new Journal(log, 'x.journal');
  const ends = [log.length];
  for (const [at, body] of ['first', 'second', 'third'].entries()) {
    const place = journal.add(hash(at), { sha256: hash(100 + at), body: bytes(body) });
    expect(text(journal.read(place))).toBe(body);
    ends.push(log.length);
  }
  return { log, ends };
}

test('a result is found by what was told and the hash of the bytes together, now and when it is opened again', () => {
  const { log } = three();
  const journal = opened(log);
  expect([journal.size, journal.damaged]).toEqual([3, 0]);
  expect(journal.known(hash(1))).toEqual([hash(101)]);
  expect(bodyOf(journal, hash(1), hash(101))).toBe('second');
  expect(journal.known(hash(7))).toEqual([]);
});

test('the same recording told the same with other bytes is another result', () => {
  const log = new MemoryLog();
  const journal = new Journal(log, 'x');
  journal.add(hash(1), { sha256: hash(2), body: bytes('a') });
  journal.add(hash(1), { sha256: hash(3), body: bytes('b') });
  expect(new Set(opened(log).known(hash(1)))).toEqual(new Set([hash(2), hash(3)]));
  expect(bodyOf(opened(log), hash(1), hash(2))).toBe('a');
});

test('one whose bytes could not be read is for this run alone', () => {
  const log = new MemoryLog();
  const journal = new Journal(log, 'x');
  const place = journal.add(hash(1), { sha256: null, body: bytes('refused') });
  expect(text(journal.read(place))).toBe('refused');
  expect(opened(log).known(hash(1))).toEqual([]);
});

test('cut off at any byte it costs the one result that was being written, and goes on whole', () => {
  const { log, ends } = three();
  fc.assert(
    fc.property(fc.nat(log.length), (cut) => {
      const torn = new MemoryLog(log.bytes.subarray(0, cut));
      const journal = new Journal(torn, 'x.journal');
      // a line that lacks its end alone is whole
      expect(journal.size).toBe(ends.slice(1).filter((end) => end - 1 <= cut).length);
      const place = journal.add(hash(9), { sha256: hash(109), body: bytes('later') });
      expect(text(journal.read(place))).toBe('later');
      const again = opened(torn);
      expect(again.size).toBe(journal.size);
      expect(bodyOf(again, hash(9), hash(109))).toBe('later');
    }),
    { numRuns: 300 },
  );
});

test('a byte that has changed loses its line, which is counted, and no other', () => {
  const { log, ends } = three();
  fc.assert(
    fc.property(fc.integer({ min: ends[0], max: log.length - 1 }), (at) => {
      const bytes = Buffer.from(log.bytes);
      bytes[at] = bytes[at] === 0x7a ? 0x79 : 0x7a;
      const journal = new Journal(new MemoryLog(bytes), 'x');
      const found = [0, 1, 2].filter((one) => journal.known(hash(one)).includes(hash(100 + one)));
      expect(found.length).toBeGreaterThanOrEqual(1);
      // the end of a line takes the one after it along
      expect(found.length).toBeLessThanOrEqual(2);
      expect(journal.damaged).toBeGreaterThanOrEqual(1);
      for (const one of found) expect(bodyOf(journal, hash(one), hash(100 + one))).toMatch(/^(first|second|third)$/);
    }),
    { numRuns: 300 },
  );
});

test('lines that are longer than what is read at a time are whole', () => {
  const log = new MemoryLog();
  const body = 'x'.repeat(3_000_000);
  const journal = new Journal(log, 'x');
  journal.add(hash(1), { sha256: hash(2), body: bytes(body) });
  journal.add(hash(3), { sha256: hash(4), body: bytes('y') });
  const again = opened(log);
  expect(bodyOf(again, hash(1), hash(2)) === body).toBe(true);
  expect(bodyOf(again, hash(3), hash(4))).toBe('y');
});

test('a file that is no journal is refused and never added to', () => {
  const log = new MemoryLog(Buffer.from('time [s],force [N]\n0,1\n'));
  expect(() => new Journal(log, 'data.csv')).toThrow('data.csv is no journal of surae');
  expect(log.bytes.toString()).toBe('time [s],force [N]\n0,1\n');
});

test('two runs that write into one are told of it', () => {
  const log = new MemoryLog();
  const journal = new Journal(log, 'x');
  log.add(Buffer.from('another run\n'));
  const other = { ...journal.add(hash(1), { sha256: hash(2), body: bytes('a') }) };
  expect(() => journal.read({ ...other, from: other.from - 12 })).toThrow('written by another run');
});
