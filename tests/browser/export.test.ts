import { readFileSync } from 'node:fs';
import { assess, defaultSettings } from '@surae/analysis';
import { unzipped } from '@surae/exchange';
import { EXPORT_WORDS, START_WORDS } from '@surae/shared';
import { type ForeignStream, MemoryStore } from '@surae/storage';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { main } from '../../apps/cli/src/main.ts';
import { VisitBook } from '../../apps/dashboard/src/journey/visit-book.ts';
import { assessmentRequest, recordingOf } from '../../apps/dashboard/src/result/assessment.ts';
import { madeSet } from '../support/made-visit.ts';
import { MemoryIo } from '../support/memory-io.ts';
import { simulatedStream } from '../support/simulated-stream.ts';
import { documentsOf, type ToldVisit } from '../support/told-visit.ts';
import { browserTest } from './support/browser-test.ts';
import { holdWorkers } from './support/held-workers.ts';
import { ADULT_82_KG, fitsAt, openResults } from './support/result-page.ts';
import { putDocuments, storedDocuments } from './support/stored.ts';
import { violations } from './support/violations.ts';

const VISITS: readonly ToldVisit[] = [
  { day: '2026-03-01', left: { count: 20 }, right: { count: 15, reason: 'pain', pain: 5 } },
  { day: '2026-03-15', left: { count: 21 }, right: { count: 18 }, pushes: { left: { netN: 1425 } } },
];

/** A person whose set was recorded: its documents, and the bytes of the set, the last block of them cut off. */
async function recordedSet(): Promise<{ store: MemoryStore; stream: ForeignStream }> {
  const store = new MemoryStore();
  const book = new VisitBook(store, { isoNow: () => '2026-04-01T10:00:00+02:00' }, 'test');
  const person = await book.addPerson({ name: 'Recorded', bodyMassKg: 70, heelLeverM: 0.18, demo: false });
  const visit = await book.beginVisit(person.id);
  const writer = await book.openBytes(visit, 'set');
  const { pieces } = simulatedStream('foot', 3, 4);
  for (const piece of pieces) await writer.append(piece);
  await writer.close();
  const bare = madeSet('left', null);
  const set = { ...bare, choice: { ...bare.choice, placement: 'foot' as const } };
  const recording = recordingOf(set, { id: writer.id, pieces, sha256: null });
  const report = assess({ groups: recording.groups }, assessmentRequest(set, person), defaultSettings());
  expect(report.repetitions.length).toBe(4);
  const practised = await book.record(visit, { kind: 'practice-begun', choice: set.choice, bytesId: 'none' });
  const raises = [{ heightM: 0.1, heightUM: 0.002 }];
  await book.record(visit, { kind: 'practice-stopped', practiceId: practised, raises });
  const setId = await book.record(visit, { kind: 'set-begun', choice: set.choice, bytesId: writer.id });
  await book.record(visit, { kind: 'set-result', setId, report, settingsHash: 'made' });
  const [facts] = (await store.changesSince(null, Number.MAX_SAFE_INTEGER)).streams;
  return { store, stream: { ...facts, pieces: (await store.bytes(writer.id))!.pieces } };
}

/** Puts a closed stream of bytes into the store of the browser, as it is. */
function putStream(page: Page, { pieces, ...row }: ForeignStream): Promise<void> {
  const signs = pieces.map((piece) => Array.from(piece, (byte) => String.fromCharCode(byte)).join(''));
  return page.evaluate(
    ([told, texts]) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('surae');
        opening.onerror = () => reject(new Error('The store cannot be opened.'));
        opening.onsuccess = () => {
          const database = opening.result;
          const writing = database.transaction(['streams', 'pieces'], 'readwrite');
          const { id } = told;
          writing.objectStore('streams').add({ ...told, pieces: texts.length });
          for (const [index, text] of texts.entries()) {
            const bytes = Uint8Array.from(text, (sign) => sign.charCodeAt(0));
            writing.objectStore('pieces').add({ stream: id, index, bytes });
          }
          writing.onerror = () => reject(new Error('The bytes cannot be put into the store.'));
          writing.oncomplete = () => {
            database.close();
            resolve();
          };
        };
      }),
    [row, signs] as const,
  );
}

/** The file that the page makes now, as it is saved. */
async function savedFile(page: Page): Promise<{ name: string; bytes: Buffer }> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: EXPORT_WORDS.save.text }).click(),
  ]);
  await page.getByText(/^Saved as /).waitFor();
  return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
}

/** What the command line makes of a backup of the same documents and bytes, on the day that the page wrote. */
async function byCommandLine(
  page: Page,
  stream: ForeignStream,
  day: string,
  options: readonly string[],
): Promise<Buffer> {
  const store = new MemoryStore();
  await store.adopt((await storedDocuments(page)).map((document) => ({ document, whose: null })));
  expect(await store.adoptStream(stream)).toBe('added');
  const pieces: Uint8Array[] = [];
  for await (const piece of store.backup()) pieces.push(piece);
  const memory = new MemoryIo();
  memory.files.set('b', new Uint8Array(Buffer.concat(pieces)));
  expect(await main(['export', '--backup', 'b', '--out', 'o.zip', '--written-on', day, ...options], memory.io)).toBe(0);
  return Buffer.from(memory.files.get('o.zip') as Uint8Array);
}

browserTest(
  'what leaves is shown before, nobody is named unless it is asked for, and the command line makes the same bytes',
  async ({ page, origin }) => {
    const recorded = await recordedSet();
    await openResults(page, origin, [VISITS], ADULT_82_KG);
    await putDocuments(page, await documentsOf(recorded.store));
    await putStream(page, recorded.stream);
    await page.getByRole('link', { name: START_WORDS['export-link'].text }).click();
    await page.getByRole('heading', { name: EXPORT_WORDS.title.text }).waitFor();
    await page.getByText(/^People: \d+\. Visits: 3\. Trials: 6\.$/).waitFor();
    await fitsAt(page, 'export-unnamed', 360, 768, 1280);

    let downloads = 0;
    page.on('download', () => (downloads += 1));
    const unnamed = await savedFile(page);
    expect(unnamed.name).toMatch(/^surae-study-\d{8}-without-names\.zip$/);
    expect(unnamed.bytes.includes('Case')).toBe(false);

    // one that is stopped leaves nothing
    const letGo = await holdWorkers(page);
    await page.getByRole('button', { name: EXPORT_WORDS.save.text }).click();
    await page.getByRole('button', { name: EXPORT_WORDS.stop.text }).click();
    await page.getByText(EXPORT_WORDS.stopped.text).waitFor();
    await letGo();
    expect(downloads).toBe(1);

    // one person, every form, named
    await page.getByLabel(EXPORT_WORDS.whose.text).selectOption({ label: 'Case' });
    await page.getByText('People: 1. Visits: 2. Trials: 5.').waitFor();
    await page.getByLabel(EXPORT_WORDS.which.text).selectOption({ index: 1 });
    await page.getByText('People: 1. Visits: 1. Trials: 2.').waitFor();
    await page.getByLabel(EXPORT_WORDS.csv.text).uncheck();
    await page.getByText(EXPORT_WORDS['no-form'].text).waitFor();
    expect(await page.getByRole('button', { name: EXPORT_WORDS.save.text }).isDisabled()).toBe(true);
    await page.getByLabel(EXPORT_WORDS['without-names'].text).uncheck();
    for (const name of ['csv', 'json-lines', 'parquet', 'samples', 'raw', 'health-records', 'letters'] as const) {
      await page.getByLabel(EXPORT_WORDS[name].text).check();
    }
    await page.getByText(EXPORT_WORDS.named.text).waitFor();
    await page.getByLabel(EXPORT_WORDS.whose.text).selectOption({ label: EXPORT_WORDS.everybody.text });
    await page.getByText(/^People: \d+\. Visits: 3\. Trials: 6\.$/).waitFor();

    const named = await savedFile(page);
    expect(downloads).toBe(2);
    await fitsAt(page, 'export-named', 360, 768, 1280);
    expect(await violations(page)).toEqual([]);
    const [, year, month, date] = /-(\d{4})(\d{2})(\d{2})\.zip$/.exec(named.name) ?? [];
    const options = ['--tables', 'csv,json-lines,parquet', '--samples', '--raw', '--health-records', '--letters'];
    const same = await byCommandLine(page, recorded.stream, `${year}-${month}-${date}`, options);
    expect(Buffer.compare(named.bytes, same)).toBe(0);
    // and what is compared holds what was recorded: samples in each form, repetitions and the bytes themselves
    const files = new Map(unzipped(same, named.name).map(({ name, bytes }) => [name, bytes]));
    const text = (name: string): string => new TextDecoder().decode(files.get(name));
    const trial = [...files.keys()].flatMap((name) => /^raw\/(.*)\.bin$/.exec(name)?.[1] ?? []);
    expect(trial).toHaveLength(1);
    expect(Buffer.from(files.get(`raw/${trial[0]}.bin`)!)).toEqual(Buffer.concat(recorded.stream.pieces));
    for (const ending of ['csv', 'jsonl', 'parquet'])
      expect([...files.keys()]).toContain(`samples/${trial[0]}.${ending}`);
    expect(text(`samples/${trial[0]}.csv`).split('\r\n').length).toBeGreaterThan(500);
    expect(text('tables/practice.csv')).toMatch(/,left,foot,[^,]+,simulated,true,1,100,2,/);
    expect(
      text('tables/repetitions.csv')
        .split('\r\n')
        .filter((line) => line.includes(trial[0])),
    ).toHaveLength(4);
  },
);
