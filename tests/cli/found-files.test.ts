import fc from 'fast-check';
import { expect, test } from 'vitest';
import { foundFiles, passedOverLine } from '../../apps/cli/src/found-files.ts';
import { ZipFault } from '../../apps/cli/src/zip-fault.ts';
import { MemoryIo } from '../support/memory-io.ts';

/** A disk with these files; a zip holds the names that stand beside it. */
function disk(names: readonly string[], zips: Readonly<Record<string, readonly string[]>> = {}) {
  const memory = new MemoryIo();
  for (const name of [...names, ...Object.keys(zips)]) memory.files.set(name, '');
  const zipNames = (path: string) =>
    path in zips ? Promise.resolve(zips[path]) : Promise.reject(new ZipFault('this zip is damaged: no end'));
  return { ...memory.io, zipNames };
}

const pathsOf = async (named: readonly string[], io: ReturnType<typeof disk>) =>
  (await foundFiles(named, io)).files.map(({ path }) => path);

test('folders and zips are looked through to the bottom, in the order of code units; what is no table is counted', async () => {
  const io = disk(
    ['s/b.csv', 's/B.CSV', 's/a/2.txt', 's/a/10.tsv', 's/note.pdf', 's/.hidden.csv', 's/README', 's/é.csv'],
    {
      's/more.zip': ['z/1.csv', 'z/Ab.dat', '__MACOSX/1.csv', 'x.zip', 'y.json'],
    },
  );
  const found = await foundFiles(['s/'], io);
  expect(found.files.map(({ path }) => path)).toEqual([
    's/B.CSV',
    's/a/10.tsv',
    's/a/2.txt',
    's/b.csv',
    's/more.zip/z/1.csv',
    's/more.zip/z/Ab.dat',
    's/é.csv',
  ]);
  expect(passedOverLine(found)).toBe(
    'Passed over, no tables by their names: 2 .csv, 1 .json, 1 .pdf, 1 without ending, 1 zips in zips.\n',
  );
  expect(passedOverLine(await foundFiles(['s/a'], io))).toBe('');
});

test('what is named itself is taken as it is, in the order of the names, whatever its ending and whether it is there', async () => {
  expect(await pathsOf(['b.log', 'gone.csv', 'a.csv'], disk(['a.csv', 'b.log']))).toEqual([
    'b.log',
    'gone.csv',
    'a.csv',
  ]);
});

test('a zip that cannot be opened is refused alone', async () => {
  const io = disk(['s/a.csv', 's/bad.zip']);
  expect((await foundFiles(['s'], io)).files).toEqual([
    { path: 's/a.csv' },
    { path: 's/bad.zip', refusal: 's/bad.zip: this zip is damaged: no end' },
  ]);
});

test('a folder without a table is a mistake of the command line', async () => {
  await expect(foundFiles(['s'], disk(['s/a.pdf']))).rejects.toThrow('s holds no table');
});

test('a folder and a zip of it give the same order, however the disk lists them', async () => {
  const name = fc
    .stringMatching(/^[a-cA-C.é0-2-]{1,3}$/)
    .filter((text) => !text.startsWith('.') && !text.endsWith('.'));
  const file = fc.array(name, { minLength: 1, maxLength: 3 }).map((parts) => `${parts.join('/')}x.csv`);
  await fc.assert(
    fc.asyncProperty(fc.uniqueArray(file, { minLength: 1, maxLength: 8 }), async (files) => {
      // no name is that of a file and of a folder
      fc.pre(files.every((one) => !files.some((other) => other.startsWith(`${one}/`))));
      const inFolder = await pathsOf(['s'], disk(files.map((one) => `s/${one}`)));
      const inZip = await pathsOf(['s.zip'], disk([], { 's.zip': [...files].reverse() }));
      expect(inZip.map((path) => path.slice('s.zip/'.length))).toEqual(inFolder.map((path) => path.slice('s/'.length)));
      expect([...inFolder].reverse()).toEqual(
        await pathsOf(['s'], disk(files.map((one) => `s/${one}`).reverse())).then((paths) => [...paths].reverse()),
      );
    }),
  );
});
