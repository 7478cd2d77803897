import type { AssessedTrials, RaterKeyKept, RaterLinesKept, StudyDecisionKept, StudyKept } from '@surae/casebook';
import type { Json, RecordStore, StoredDocument } from '@surae/storage';
import { readDecisions } from '@surae/study';
import type { BookHand } from '../journey/taken-shelf.ts';
import type { KeptTrial } from './kept-trial.ts';
import type { RaterTexts } from './session-results.ts';
import { StreamFiles, StretchReader } from './stream-files.ts';
import { type HashedFile, type StudySources, studyContent } from './study-content.ts';
import { type StudyKeeper, StudySession } from './study-session.ts';

/** A recording that the manifest names, as it was found. */
export type FoundRecording = HashedFile | { readonly name: string; readonly fault: string };

/** A study as a list shows it. */
export interface StudyEntry {
  readonly id: string;
  readonly title: string;
  /** when it was taken in */
  readonly at: string;
  readonly recordings: number;
  readonly isDemo: boolean;
}

/** Version of the bodies. */
const schema = 1;

const LISTS = ['study-trials', 'study-decision', 'study-rater-key', 'study-rater-lines'] as const;

const bodyOf = <Body>({ body }: StoredDocument): Body => body as unknown as Body;

/** Studies in the store: the files as they came, what they came to, and lists that only grow. */
export class StudyShelf {
  private readonly store: RecordStore;
  private readonly hand: BookHand;
  private readonly reader: StretchReader;

  constructor(store: RecordStore, hand: BookHand) {
    this.store = store;
    this.hand = hand;
    this.reader = new StretchReader(store);
  }

  async entries(): Promise<readonly StudyEntry[]> {
    return (await this.hand.read({ kind: 'study' })).map((document) => {
      const { title, recordings, demo } = bodyOf<StudyKept>(document);
      return { id: document.id, at: document.at, title, recordings: recordings.length, isDemo: demo };
    });
  }

  /**
   * Keeps the files of a study as they are; gives its id. The document comes last: what was cut off before it is nothing that was
   * promised.
   */
  async keep(
    title: string,
    sources: StudySources,
    recordings: AsyncIterable<FoundRecording> | Iterable<FoundRecording>,
    isDemo = false,
  ): Promise<string> {
    const files = new StreamFiles(this.store, 'files of a study');
    const write = async ({ name, bytes, sha256 }: HashedFile) => ({ name, sha256, ...(await files.write(bytes)) });
    const study = await write(sources.study);
    const manifest = await write(sources.manifest);
    const earlier: StudyKept['earlier'] = [];
    for (const one of sources.earlier) earlier.push(await write(one));
    const recipes: StudyKept['recipes'] = [];
    for (const one of sources.recipes) recipes.push(await write(one));
    const kept: StudyKept['recordings'] = [];
    for await (const one of recordings) kept.push('fault' in one ? one : await write(one));
    await files.close();
    const body: StudyKept = { title, study, manifest, earlier, recipes, recordings: kept, demo: isDemo };
    return (await this.hand.add({ kind: 'study', schema, about: null, body: body })).id;
  }

  /**
   * A study with everything that was found and decided; undefined where there is none of this id.
   *
   * @param software - what assesses now: what another version found is left out
   */
  async open(id: string, software: string): Promise<OpenedStudy | undefined> {
    const [document] = (await this.hand.read({ kind: 'study' })).filter((one) => one.id === id);
    if (document === undefined) return undefined;
    const kept = bodyOf<StudyKept>(document);
    const content = studyContent({
      study: await this.file(kept.study),
      manifest: await this.file(kept.manifest),
      earlier: await Promise.all(kept.earlier.map((one) => this.file(one))),
      recipes: await Promise.all(kept.recipes.map((one) => this.file(one))),
    });
    const lists = await this.hand.read({ kind: LISTS, about: id });
    const of = (kind: (typeof LISTS)[number]): readonly StoredDocument[] => lists.filter((one) => one.kind === kind);
    const found = new Map(kept.recordings.map((one) => [one.name, one]));
    const recordings = content.items.map(({ file }) => found.get(file));
    const trials: (KeptTrial | undefined)[] = content.items.map(() => undefined);
    for (const one of of('study-trials')) {
      const batch = bodyOf<AssessedTrials>(one);
      if (batch.software !== software) continue;
      for (const { at, sha256, from, byteLength } of batch.trials) {
        const recording = recordings[at];
        const now = recording === undefined || 'fault' in recording ? null : recording.sha256;
        // one that its row refuses was not read
        const isRefusedByRow = sha256 === null && content.items[at]?.refusal !== undefined;
        if (now !== sha256 && !isRefusedByRow) continue;
        const bytes = await this.reader.read({ bytesId: batch.bytesId, from, byteLength });
        if (bytes !== undefined) trials[at] = JSON.parse(new TextDecoder().decode(bytes)) as KeptTrial;
      }
    }
    const decisions = of('study-decision').map((one) => bodyOf<StudyDecisionKept>(one).line);
    const raters = new Map<string, RaterTexts>();
    for (const one of of('study-rater-key')) {
      const { rater, key } = bodyOf<RaterKeyKept>(one);
      raters.set(rater, { key, verdicts: '' });
    }
    for (const one of of('study-rater-lines')) {
      const { rater, lines } = bodyOf<RaterLinesKept>(one);
      const before = raters.get(rater);
      if (before !== undefined) raters.set(rater, { ...before, verdicts: before.verdicts + lines.join('') });
    }
    const session = new StudySession({
      id,
      content,
      keeper: this.keeper(id, kept),
      trials,
      decisions: readDecisions(decisions.join(''), content.declared),
      raters,
      software,
    });
    return { session, recordings };
  }

  /** The bytes of a recording of a study; undefined where they are gone. */
  read(recording: StudyKept['recordings'][number]): Promise<Uint8Array | undefined> {
    return 'fault' in recording ? Promise.resolve(undefined) : this.reader.read(recording);
  }

  /** Keeps what recordings came to, by their place in the manifest. */
  async keepTrials(id: string, software: string, found: ReadonlyMap<number, KeptTrial>): Promise<void> {
    if (found.size === 0) return;
    const files = new StreamFiles(this.store, 'assessed recordings of a study');
    const encoder = new TextEncoder();
    const texts = [...found].map(([at, trial]) => ({
      at,
      sha256: trial.facts[0]?.sha256 ?? null,
      bytes: encoder.encode(JSON.stringify(trial)),
    }));
    // one stream, however long: a batch is read as a whole
    const all = new Uint8Array(texts.reduce((sum, { bytes }) => sum + bytes.length, 0));
    let from = 0;
    const trials = texts.map(({ at, sha256, bytes }) => {
      all.set(bytes, from);
      from += bytes.length;
      return { at, sha256, from: from - bytes.length, byteLength: bytes.length };
    });
    const { bytesId } = await files.write(all);
    await files.close();
    const body: AssessedTrials = { software, bytesId, trials };
    await this.hand.add({ kind: 'study-trials', schema, about: id, body: body });
  }

  private keeper(id: string, { recordings }: StudyKept): StudyKeeper {
    const add = async (kind: string, body: Json): Promise<void> => {
      await this.hand.add({ kind, schema, about: id, body });
    };
    return {
      addDecision: (line) => add('study-decision', { line }),
      addKey: (rater, key) => add('study-rater-key', { rater, key }),
      addVerdicts: (rater, lines) => add('study-rater-lines', { rater, lines }),
      bytes: async (sha256) => {
        const found = recordings.find((one) => 'sha256' in one && one.sha256 === sha256);
        return found === undefined ? undefined : this.read(found);
      },
    };
  }

  private async file(kept: StudyKept['study']): Promise<HashedFile> {
    const bytes = await this.reader.read(kept);
    if (bytes === undefined) throw new Error(`${kept.name} is not there any more.`);
    return { name: kept.name, sha256: kept.sha256, bytes };
  }
}

/** A study as it was opened. */
export interface OpenedStudy {
  readonly session: StudySession;
  /** its recordings in the order of its manifest; undefined for one that was not handed over */
  readonly recordings: readonly (StudyKept['recordings'][number] | undefined)[];
}
