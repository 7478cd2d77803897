import { join } from 'node:path';
import { RecordError, readWordTable, type WordRow } from '@surae/records';
import {
  BLIND_VERDICTS,
  type BlindKey,
  type BlindStep,
  entryLine,
  itemsLeft,
  nextSteps,
  readVerdicts,
  type VerdictBook,
} from '@surae/study';
import { appendLines } from './append-lines.ts';
import type { Io } from './io.ts';
import type { RaterFiles, StudyAct } from './study-arguments.ts';
import { COUNTS, VERDICTS } from './study-blind.ts';
import { followed } from './study-inputs.ts';
import { UsageError } from './usage-error.ts';

async function bookSoFar(
  { verdicts }: RaterFiles,
  key: BlindKey,
  io: Io,
): Promise<{ text: string; book: VerdictBook }> {
  const text = io.exists(verdicts) ? new TextDecoder().decode(await io.readFile(verdicts)) : '';
  return { text, book: followed(() => readVerdicts(text, key, verdicts), verdicts) };
}

/** Puts steps at the end of a file of verdicts. */
async function append(
  rater: RaterFiles,
  key: BlindKey,
  steps: (book: VerdictBook) => BlindStep[],
  io: Io,
): Promise<VerdictBook> {
  const { text, book } = await bookSoFar(rater, key, io);
  const entries = followed(() => nextSteps(book, key, steps(book)), rater.verdicts);
  const lines = entries.map(entryLine).join('');
  if (entries.length > 0) appendLines(rater.verdicts, lines, io);
  return readVerdicts(text + lines, key, rater.verdicts);
}

async function filled(path: string, needed: readonly string[], io: Io): Promise<WordRow[]> {
  try {
    return readWordTable(await io.readFile(path), needed, path);
  } catch (error) {
    if (error instanceof RecordError) throw new UsageError(error.message);
    throw new UsageError(`${path} cannot be read: ${error instanceof Error ? error.message : String(error)}`);
  }
}

function whole(path: string, { line, cells }: WordRow, column: string): number {
  const text = cells[column]!;
  if (!/^\d{1,6}$/.test(text)) {
    throw new UsageError(
      `${path}, row ${line}, column "${column}": expected a whole number, got ${JSON.stringify(text)}`,
    );
  }
  return Number(text);
}

/** What a rater filled in and what is not in the file of verdicts yet. An empty cell says nothing. */
export async function takeInAct(
  { folder, rater }: Extract<StudyAct, { act: 'take-in' }>,
  key: BlindKey,
  io: Io,
): Promise<string[]> {
  const [countsPath, verdictsPath] = [join(folder, COUNTS), join(folder, VERDICTS)];
  const counts = (await filled(countsPath, ['item', 'count'], io)).filter(({ cells }) => cells['count'] !== '');
  const said = (await filled(verdictsPath, ['item', 'repetition', 'verdict'], io)).filter(
    ({ cells }) => cells['verdict'] !== '',
  );
  const words: BlindStep[] = [
    ...counts.map(
      (row): BlindStep => ({ step: 'count', item: row.cells['item']!, count: whole(countsPath, row, 'count') }),
    ),
    ...said.map((row): BlindStep => {
      const verdict = BLIND_VERDICTS.find((word) => word === row.cells['verdict']);
      if (verdict === undefined) {
        const expected = `expected one of ${BLIND_VERDICTS.join(', ')}, or nothing`;
        throw new UsageError(
          `${verdictsPath}, row ${row.line}, column "verdict": ${expected}, got "${row.cells['verdict']}"`,
        );
      }
      const repetition = whole(verdictsPath, row, 'repetition');
      return { step: 'verdict', item: row.cells['item']!, repetition, verdict };
    }),
  ];
  const { book: before } = await bookSoFar(rater, key, io);
  const marked = said.find(({ cells }) => before.marks.has(cells['item']!));
  if (marked !== undefined) {
    const item = marked.cells['item']!;
    throw new UsageError(
      `${verdictsPath}, row ${marked.line}: ${item} was counted by marks of ${key.rater}, which have numbers of their own: leave its verdicts empty`,
    );
  }
  let taken = 0;
  const book = await append(
    rater,
    key,
    ({ counts: known, verdicts }) => {
      const fresh = words.filter((one) =>
        one.step === 'count'
          ? known.get(one.item) !== one.count
          : one.step === 'verdict' && verdicts.get(one.item)?.get(one.repetition) !== one.verdict,
      );
      taken = fresh.length;
      return fresh;
    },
    io,
  );
  const left = itemsLeft(book, key);
  return [
    `${rater.verdicts}: ${taken} taken in`,
    left.length === 0
      ? 'Every item has a count.'
      : `${left.length} of ${key.items.length} items have no count yet: ${left[0]}`,
  ];
}

/** Closes a file of verdicts, and says the hash to be written down elsewhere. */
export async function lockAct(
  { rater, who }: Extract<StudyAct, { act: 'lock' }>,
  key: BlindKey,
  io: Io,
): Promise<string[]> {
  const book = await append(rater, key, () => [{ step: 'lock', ...who }], io);
  const left = itemsLeft(book, key);
  return [
    `${rater.verdicts} is locked: ${book.lock}`,
    'Write this down elsewhere: another hash later means another list.',
    ...(left.length === 0 ? [] : [`${left.length} of ${key.items.length} items have no count.`]),
  ];
}

/** Records that somebody looked at what is behind the names. */
export async function openAct(
  { rater, who, why, early }: Extract<StudyAct, { act: 'open' }>,
  key: BlindKey,
  io: Io,
): Promise<string[]> {
  const steps = (book: VerdictBook): BlindStep[] => {
    if (book.lock === null && !early) {
      throw new UsageError(
        `${rater.verdicts} is not locked: lock it first, or say --early, which marks what comes after`,
      );
    }
    return [{ step: 'open', ...who, why }];
  };
  const book = await append(rater, key, steps, io);
  return [
    `${rater.verdicts}: the names of ${key.rater} are opened, ${book.lock === null ? 'before the lock' : 'after the lock'}`,
  ];
}
