import { join } from 'node:path';
import { csvText } from '@surae/exchange';
import { type Recording, writeRecordingCsv } from '@surae/records';
import {
  BLIND_VERDICTS,
  type BlindItem,
  blindedOrder,
  blindingOf,
  blindTrials,
  type DeclaredStudy,
  keyText,
  type Outcome,
  qualityRows,
  standingDecisions,
  studyTrials,
} from '@surae/study';
import type { Io } from './io.ts';
import { readAgain } from './read-again.ts';
import type { StudyAct } from './study-arguments.ts';
import { assessStudy, manifestOf } from './study-assess.ts';
import { followed, type StudyInputs } from './study-inputs.ts';
import { UsageError } from './usage-error.ts';
import { WriteFolder } from './write-folder.ts';

/** Tables that a rater fills in. */
export const COUNTS = 'counts.csv';
export const VERDICTS = 'verdicts.csv';

/** A recording whose times begin at nought and whose remarks are gone: neither tells when or whose it was. */
function withoutOrigin({ groups, ...rest }: Recording): { recording: Recording; originS: number } {
  const originS = Math.min(...groups.map(({ timesS }) => timesS[0]!));
  const moved = groups.map((group) => ({ ...group, timesS: group.timesS.map((timeS) => timeS - originS) }));
  return { recording: { ...rest, groups: moved, deviceNotes: [] }, originS };
}

/** The samples of an item, and its repetitions as they are shown: when the top of each is. */
async function itemFiles(
  { item }: BlindItem,
  outcome: Extract<Outcome, { test: 'heel-raise' }>,
  io: Pick<Io, 'readFile' | 'readChunks'>,
): Promise<{ files: { name: string; text: string }[]; tops: number[] }> {
  const { recording, originS } = withoutOrigin(await readAgain(outcome.item, io));
  const files = writeRecordingCsv(recording).map((text, at) => ({
    name: at === 0 ? `${item}.csv` : `${item}-${at + 1}.csv`,
    text,
  }));
  return { files, tops: outcome.report.repetitions.map(({ topS }) => Number((topS - originS).toFixed(2))) };
}

function countable(outcomes: readonly Outcome[]): Map<string, Extract<Outcome, { test: 'heel-raise' }>> {
  return new Map(
    outcomes.flatMap((outcome) =>
      outcome.status === 'ok' && outcome.test === 'heel-raise' ? [[outcome.item.file, outcome]] : [],
    ),
  );
}

/** Writes what a rater is shown, and the key that is kept from the rater. */
export async function blindAct(
  asked: Extract<StudyAct, { act: 'blind' }>,
  declared: DeclaredStudy,
  inputs: StudyInputs,
  replace: boolean,
  io: Io,
): Promise<string[]> {
  const { study } = declared;
  if (study.test !== 'heel-raise') throw new UsageError(`--blind is for heel raises: the study does ${study.test}`);
  followed(() => blindingOf(declared, asked.rater));
  if (io.exists(asked.key) && !replace) {
    throw new UsageError(`${asked.key} is there already: name another, or add --replace`);
  }
  const items = await manifestOf(study, asked.manifest, inputs);
  const decisions = standingDecisions(await inputs.decisions(asked.decisions, declared));
  const plain = { key: 'as declared', protocol: {}, settings: {} };
  const { trials, outcomes } = await assessStudy(study, items, [plain], io);
  const found = countable(outcomes);
  const rows = qualityRows(study, studyTrials([plain], trials).of.get(plain.key)!, decisions);
  const shown = followed(() => blindTrials(declared, rows), asked.manifest);
  const key = followed(() => blindedOrder(declared, asked.rater, shown));
  const made: Awaited<ReturnType<typeof itemFiles>>[] = [];
  for (const one of key.items) made.push(await itemFiles(one, found.get(one.trial)!, io));
  const samples = made.flatMap(({ files }) => files);
  const folder = new WriteFolder(asked.out, [COUNTS, VERDICTS], replace, io);
  const inside = new WriteFolder(
    join(asked.out, 'items'),
    samples.map(({ name }) => name),
    replace,
    io,
  );
  for (const { name, text } of samples) inside.write(name, text);
  const asWords = key.items.map(({ item }) => [item, null]);
  const repetitions = key.items.flatMap(({ item }, at) =>
    made[at]!.tops.map((topS, place) => [item, place + 1, topS, null]),
  );
  folder.write(COUNTS, csvText(['item', 'count'], asWords));
  folder.write(VERDICTS, csvText(['item', 'repetition', 'at_s', 'verdict'], repetitions));
  io.writeFile(asked.key, keyText(key));
  return [
    `${asked.out}: ${key.items.length} recordings for ${asked.rater}, ${key.items.length - shown.length} of them a second time`,
    `Fill in ${COUNTS} (how many repetitions count) and ${VERDICTS} (${BLIND_VERDICTS.join(', ')}).`,
    `${asked.key} holds what is behind the names: keep it from ${asked.rater}, like the study file and the manifest.`,
  ];
}
