import { unzipped, zipped } from '@surae/exchange';
import { sha256Hex } from '@surae/records';
import { parseStudy } from '@surae/study';
import { expect, test } from 'vitest';
import { chosenFiles, sortedStudy } from '../../../apps/dashboard/src/study/chosen-study.ts';
import type { FoundRecording } from '../../../apps/dashboard/src/study/study-shelf.ts';
import { takeStudy } from '../../../apps/dashboard/src/study/take-study.ts';
import { FOLDER_STUDY, studyFolder } from '../../support/study-folder.ts';

const folder = studyFolder();
const bytesOf = (text: string): Uint8Array<ArrayBuffer> => new TextEncoder().encode(text);

/** The files of the folder, under names that are given to them. */
function files(nameOf: (name: string) => string = (name) => name): File[] {
  return [...folder.files].map(([name, content]) => new File([bytesOf(content as string)], nameOf(name)));
}

const hashOf = (bytes: Uint8Array): Promise<string> => Promise.resolve(sha256Hex(bytes));

async function taken(chosen: readonly File[]) {
  const unpack = async (zip: File) => unzipped(new Uint8Array(await zip.arrayBuffer()), zip.name);
  const { studies, manifests, all } = await sortedStudy(await chosenFiles(chosen, unpack));
  return takeStudy(studies, manifests[0], all, hashOf);
}

async function all(recordings: AsyncIterable<FoundRecording>): Promise<FoundRecording[]> {
  const found: FoundRecording[] = [];
  for await (const one of recordings) found.push(one);
  return found;
}

test('study file and manifest are told from recordings by what is in them, in a zip as well', async () => {
  const zip = zipped(
    [...folder.files].map(([name, content]) => ({ name: `deep/${name}`, bytes: bytesOf(content as string) })),
  );
  const extra = { name: '__MACOSX/._study.json', bytes: bytesOf('{"kind":"surae-study"}') };
  for (const chosen of [files(), [new File([zip], 'x.zip'), new File([zipped([extra])], 'y.zip')]]) {
    const { content, missing, recordings } = await taken(chosen);
    expect(content.items).toHaveLength(8);
    expect(missing).toEqual([]);
    const [first] = await all(recordings());
    expect(first).toEqual({
      name: 'cycling-8.csv',
      bytes: bytesOf(folder.text('cycling-8.csv')),
      sha256: sha256Hex(bytesOf(folder.text('cycling-8.csv'))),
    });
  }
});

test('a recording that is not there, or in two places, has its reason', async () => {
  const chosen = files((name) => (name === 'cycling-8.csv' ? 'other.csv' : name));
  const missing = await taken(chosen);
  expect(missing.missing).toEqual(['cycling-8.csv']);
  expect((await all(missing.recordings()))[0]).toEqual({ name: 'cycling-8.csv', fault: 'there is no such file' });
  const one = (name: string) => ({ name, bytes: bytesOf('time [s],heel_height [mm]\n') });
  const zip = new File([zipped([one('a/cycling-8.csv'), one('b/cycling-8.csv')])], 'x.zip');
  const several = await taken([...chosen, zip]);
  expect((await all(several.recordings()))[0]).toMatchObject({
    fault: expect.stringContaining('several files') as string,
  });
});

test('the study file that no other amends is the study, whatever the order; two that stand alone are refused', async () => {
  const first = JSON.stringify(FOLDER_STUDY, null, 2);
  const { hash } = parseStudy(first);
  const later = JSON.stringify({ ...FOLDER_STUDY, question: 'Another?', amends: { study: hash, why: 'sharper' } });
  const amended = new File([bytesOf(later)], 'later.json');
  for (const chosen of [
    [amended, ...files()],
    [...files(), amended],
  ]) {
    const { content } = await taken(chosen);
    expect(content.sources.study.name).toBe('later.json');
    expect(content.sources.earlier.map(({ name }) => name)).toEqual(['study.json']);
    expect(content.line?.amendments.map(({ why }) => why)).toEqual(['sharper']);
    expect(content.inputs.map(({ file }) => file)).toEqual(['later.json', 'study.json', 'm.csv']);
  }
  const second = new File([bytesOf(JSON.stringify({ ...FOLDER_STUDY, title: 'Another' }))], 'b.json');
  await expect(taken([...files(), second])).rejects.toThrow('expected one study file that no other amends');
});
