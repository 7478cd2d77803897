import { type BackupReport, MemoryStore, memoryVault, type RecordStore, type StoredDocument } from '@surae/storage';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { backupKeyBySecret } from '../../../packages/storage/src/backup/backup-keys.ts';
import { BackupTally } from '../../../packages/storage/src/backup/check-backup.ts';
import { lineOf } from '../../../packages/storage/src/backup/lines.ts';
import { type BackupNews, type BackupOpener, readBackup } from '../../../packages/storage/src/backup/read-backup.ts';
import { backupOf, fileOf, fillStore } from '../../support/backup-laws.ts';
import { cheapCost, passphrase } from '../../support/cheap-vault.ts';
import { runs } from '../../support/runs.ts';
import { asked } from '../../support/whose-laws.ts';

interface Written {
  readonly store: RecordStore;
  readonly lines: readonly Buffer[];
  /** what each line after the first carries: the list, a document by its id, a stream by its id, the end */
  readonly carries: readonly string[];
  readonly documents: readonly StoredDocument[];
  readonly texts: ReadonlySet<string>;
  readonly open: BackupOpener;
  readonly streamIds: readonly string[];
}

async function written(store: RecordStore): Promise<Written> {
  await fillStore(store);
  const bytes = await backupOf(store);
  const lines: Buffer[] = [];
  for (let at = 0; at < bytes.length; ) {
    const end = bytes.indexOf(10, at) + 1;
    lines.push(Buffer.from(bytes.slice(at, end)));
    at = end;
  }
  const documents = await store.documents({});
  const named = documents.flatMap(({ body }) => JSON.stringify(body).match(/\b[0-9a-f]{32}\b/g) ?? []);
  // each stream has a line of its own and one with its pieces
  const carries = ['list', ...documents.map(({ id }) => id), ...named.flatMap((id) => [id, id]), 'end'];
  expect(lines).toHaveLength(1 + carries.length);
  // one key for all of them: it is made anew for every reading elsewhere
  let key: Promise<CryptoKey> | undefined;
  const open: BackupOpener = (keys, id) => (key ??= backupKeyBySecret(keys, id, passphrase));
  const texts = new Set(documents.map((one) => JSON.stringify(one)));
  return { store, lines, carries, documents, texts, open, streamIds: named };
}

const plain = await written(new MemoryStore());
const sealed = await written((await memoryVault({ cost: cheapCost }).create(passphrase)).store);

/** What is read of a file, and everything whole that came out of it. */
async function readAll(from: Written, bytes: Uint8Array): Promise<{ report: BackupReport; news: BackupNews[] }> {
  const news: BackupNews[] = [];
  const tally = new BackupTally();
  for await (const one of readBackup(fileOf(bytes, 4000)(), from.open)) {
    news.push(one);
    tally.take(one);
  }
  return { report: tally.report(), news };
}

/** Nothing that is given as whole is anything but what was written. */
function expectHonest({ texts, streamIds }: Written, news: readonly BackupNews[]): void {
  for (const one of news) {
    if (one.is === 'document') expect(texts.has(JSON.stringify(one.owned.document))).toBe(true);
    if (one.is === 'stream') expect(streamIds).toContain(one.stream.id);
  }
}

/** What is missing when some lines carry nothing any more. */
function missingOf(from: Written, lost: ReadonlySet<string>): { documents: string[]; streams: string[] } {
  if (lost.has('list')) return { documents: [], streams: [] };
  return {
    documents: from.documents.map(({ id }) => id).filter((id) => lost.has(id)),
    streams: from.streamIds.filter((id) => lost.has(id)),
  };
}

async function expectMissing(from: Written, bytes: Uint8Array, lost: ReadonlySet<string>): Promise<BackupReport> {
  const { report, news } = await readAll(from, bytes);
  expectHonest(from, news);
  const missing = missingOf(from, lost);
  expect({ documents: report.documents.missing, streams: report.streams.missing }).toEqual(missing);
  expect(report.isWhole).toBe(false);
  expect(report.isListWhole).toBe(!lost.has('list'));
  const whole = (all: readonly unknown[], ids: readonly string[]): number => all.length - ids.length;
  if (!lost.has('list')) {
    expect(report.documents.whole).toBe(whole(from.documents, missing.documents));
    expect(report.streams.whole).toBe(whole(from.streamIds, missing.streams));
  }
  return report;
}

describe.each([
  ['open', plain],
  ['encrypted', sealed],
] as const)('a mutated backup of a store that is %s', (_name, from) => {
  const lineIndex = fc.integer({ min: 1, max: from.lines.length - 1 });

  test('one byte turned: the line that carries it is lost, and no other', async () => {
    await fc.assert(
      fc.asyncProperty(lineIndex, fc.nat(), fc.integer({ min: 1, max: 255 }), async (i, at, turn) => {
        const lines = from.lines.map((line) => Buffer.from(line));
        const place = at % (lines[i].length - 1);
        lines[i][place] ^= turn;
        // an end of a line in the middle makes two of one
        fc.pre(lines[i][place] !== 10);
        const report = await expectMissing(from, Buffer.concat(lines), new Set([from.carries[i - 1]]));
        expect(report.problems[0]).toEqual({ line: i + 1, code: 'altered' });
      }),
      runs(30, 5000),
    );
  });

  test('cut off anywhere: what stands before is whole, the rest is missing', async () => {
    const whole = Buffer.concat(from.lines);
    const first = from.lines[0].length;
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: first, max: whole.length - 2 }), async (length) => {
        const lost = new Set<string>();
        let end = first;
        from.carries.forEach((what, i) => {
          end += from.lines[i + 1].length;
          // without its end a line is whole
          if (end - 1 > length) lost.add(what);
        });
        const report = await expectMissing(from, whole.subarray(0, length), lost);
        expect(report.problems.at(-1)?.code).toBe('cut-off');
      }),
      runs(30, 5000),
    );
  });

  test('a line left out, twice or in another place: nothing is taken for anything else', async () => {
    await fc.assert(
      fc.asyncProperty(lineIndex, lineIndex, async (i, j) => {
        fc.pre(i !== j);
        const end = from.carries.length;
        const without = from.lines.filter((_line, k) => k !== i);
        const left = await expectMissing(from, Buffer.concat(without), new Set([from.carries[i - 1]]));
        expect(left.problems[0].code).toBe(i === end ? 'cut-off' : 'out-of-place');
        const twice = from.lines.flatMap((line, k) => (k === j ? [line, from.lines[i]] : [line]));
        const { report, news } = await readAll(from, Buffer.concat(twice));
        expectHonest(from, news);
        expect(report.isWhole).toBe(false);
        const swapped = from.lines.with(i, from.lines[j]).with(j, from.lines[i]);
        const other = await readAll(from, Buffer.concat(swapped));
        expectHonest(from, other.news);
        expect(other.report.isWhole).toBe(false);
      }),
      runs(15, 5000),
    );
  });

  test('bytes put in, taken out or written over anywhere: what is given as whole is what was written', async () => {
    const whole = Buffer.concat(from.lines);
    const edit = fc.record({ at: fc.nat(whole.length), cut: fc.nat(80), put: fc.uint8Array({ maxLength: 80 }) });
    await fc.assert(
      fc.asyncProperty(fc.array(edit, { minLength: 1, maxLength: 3 }), async (edits) => {
        let bytes: Uint8Array = whole;
        for (const { at, cut, put } of edits) {
          bytes = Buffer.concat([bytes.subarray(0, at), put, bytes.subarray(at + cut)]);
        }
        fc.pre(!Buffer.from(bytes).equals(whole));
        try {
          const { report, news } = await readAll(from, bytes);
          expectHonest(from, news);
          // only the last end can go, or something be put where nothing was
          if (report.isWhole) expect(Buffer.from(bytes).equals(whole.subarray(0, -1))).toBe(true);
        } catch (error) {
          expect(error).toMatchObject({ name: 'StorageError' });
          expect(['no-backup', 'damaged-backup', 'newer-version']).toContain((error as { code: string }).code);
        }
      }),
      runs(30, 5000),
    );
  });

  test('something behind the end is told', async () => {
    const bytes = Buffer.concat([...from.lines, Buffer.from('more')]);
    const { report } = await readAll(from, bytes);
    expect(report).toMatchObject({ isWhole: false, problems: [{ line: from.lines.length + 1, code: 'after-end' }] });
    const twice = await readAll(from, Buffer.concat([...from.lines, ...from.lines]));
    expect(twice.report.isWhole).toBe(false);
  });
});

describe('a file that is no backup of ours', () => {
  const check = (bytes: Uint8Array): Promise<BackupReport> => plain.store.checkBackup(fileOf(bytes));

  test.each([
    ['an empty one', Buffer.alloc(0)],
    ['a text', Buffer.from('time;force\n0;1\n')],
    ['bytes', Buffer.from(Uint8Array.from({ length: 3000 }, (_, i) => (i * 97) % 256))],
    ['a line with a hash', Buffer.from(lineOf('{"some":"json"}'))],
    ['a line with a hash and no JSON', Buffer.from(lineOf('null'))],
    ['the rest of a backup', Buffer.concat(plain.lines.slice(1))],
  ])('%s is refused as such', async (_what, bytes) => {
    await expect(check(bytes)).rejects.toMatchObject({ name: 'StorageError', code: 'no-backup' });
  });

  test('a newer version is refused as such', async () => {
    const newer = lineOf(JSON.stringify({ suraeBackup: 2, id: 'x', what: 'nobody knows yet' }));
    await expect(check(Buffer.concat([newer, ...plain.lines.slice(1)]))).rejects.toMatchObject({
      code: 'newer-version',
      message: 'This backup is of version 2; this software reads up to version 1.',
    });
  });

  test('an altered first line is a damaged backup', async () => {
    const first = Buffer.from(plain.lines[0]);
    first[first.length - 5] ^= 1;
    await expect(check(Buffer.concat([first, ...plain.lines.slice(1)]))).rejects.toMatchObject({
      code: 'damaged-backup',
    });
  });

  test('a line that was forged with a hash of its own is in no list as whole', async () => {
    const forged = JSON.parse(plain.lines[3].subarray(65).toString()) as { item: { document: { body: unknown } } };
    forged.item.document.body = 'something else';
    const lines = plain.lines.with(3, Buffer.from(lineOf(JSON.stringify(forged))));
    const { report, news } = await readAll(plain, Buffer.concat(lines));
    expectHonest(plain, news);
    expect(report.problems).toEqual([
      { line: 4, code: 'altered' },
      { line: lines.length, code: 'other-bytes' },
    ]);
    for (const item of [
      { is: 'pieces' },
      { is: 'stream', id: 3 },
      { is: 'ids', documents: 'x', streams: [] },
      { is: 'later' },
      null,
    ]) {
      const odd = plain.lines.with(3, Buffer.from(lineOf(JSON.stringify({ n: 3, item }))));
      expect((await readAll(plain, Buffer.concat(odd))).report.problems[0]).toEqual({ line: 4, code: 'altered' });
    }
  });

  test('lines of another backup of the same store fit in no place of an encrypted one', async () => {
    const other = await backupOf(sealed.store);
    const line = Buffer.from(other.slice(other.indexOf(10) + 1));
    const second = line.subarray(0, line.indexOf(10) + 1);
    const { report } = await readAll(sealed, Buffer.concat(sealed.lines.with(1, second)));
    expect(report.problems[0]).toEqual({ line: 2, code: 'altered' });
  });
});

describe('a backup of an encrypted store', () => {
  const bytes = Buffer.concat(sealed.lines);

  test('is opened by its passphrase and its recovery code as they were, and by nothing else', async () => {
    const vault = memoryVault({ cost: cheapCost });
    const { store, recoveryCode } = await vault.create(passphrase);
    await fillStore(store);
    const made = await backupOf(store);
    await vault.changePassphrase(passphrase, 'nine boats under the bridge');
    await vault.newRecoveryCode('nine boats under the bridge');
    for (const secret of [passphrase, recoveryCode]) {
      expect(await new MemoryStore().restore(fileOf(made), { secret })).toMatchObject({ added: 13 });
    }
    // the store itself needs none, whatever its passphrase is now
    expect((await vault.store!.checkBackup(fileOf(made))).isWhole).toBe(true);
    const none = new MemoryStore();
    await expect(none.checkBackup(fileOf(made))).rejects.toMatchObject({ code: 'locked' });
    await expect(none.checkBackup(fileOf(made), 'nine boats under the bridge')).rejects.toMatchObject({
      code: 'wrong-passphrase',
    });
    await expect(none.restore(fileOf(made), { secret: 'nine boats under the bridge' })).rejects.toMatchObject({
      code: 'wrong-passphrase',
    });
    expect(await none.documents({})).toEqual([]);
  });

  test('shows nothing of what it holds but how much it is', () => {
    const text = bytes.toString('latin1');
    for (const secret of [...sealed.documents.map(({ id }) => id), ...sealed.streamIds, 'set-begun', asked.author]) {
      expect(text).not.toContain(secret);
    }
  });
});
