import {
  type BlindKey,
  type DecisionEntry,
  type DeclaredStudy,
  ListFault,
  parseBlindKey,
  parseStudy,
  type ReadInput,
  readDecisions,
  readVerdicts,
  StudyError,
  type StudyLine,
  studyLine,
  type VerdictBook,
} from '@surae/study';
import { sha256 } from './fingerprints.ts';
import type { Io } from './io.ts';
import { readNamed } from './read-named.ts';
import type { RaterFiles } from './study-arguments.ts';
import { UsageError } from './usage-error.ts';

/** Reads files of a study and keeps the hash of each. */
export class StudyInputs {
  readonly read: ReadInput[] = [];
  readonly #io: Pick<Io, 'readFile'>;

  constructor(io: Pick<Io, 'readFile'>) {
    this.#io = io;
  }

  /** @throws {@link UsageError} when it cannot be read */
  async bytes(file: string): Promise<Uint8Array> {
    const bytes = await readNamed(file, this.#io);
    this.read.push({ file, sha256: sha256(bytes) });
    return bytes;
  }

  /** the same for those that say themselves why a file cannot be read */
  readonly reader = async (file: string): Promise<Uint8Array> => {
    const bytes = await this.#io.readFile(file);
    this.read.push({ file, sha256: sha256(bytes) });
    return bytes;
  };

  async text(file: string): Promise<string> {
    return new TextDecoder().decode(await this.bytes(file));
  }

  async study(file: string): Promise<DeclaredStudy> {
    const text = await this.text(file);
    return followed(() => parseStudy(text, file));
  }

  /** The study with the versions before it; undefined where it amends one and none is at hand. */
  async line(now: DeclaredStudy, earlier: readonly string[]): Promise<StudyLine | undefined> {
    const others: DeclaredStudy[] = [];
    for (const file of earlier) others.push(await this.study(file));
    if (others.length === 0 && now.study.amends !== null) return undefined;
    return followed(() => studyLine(now, others));
  }

  async decisions(file: string | undefined, declared: DeclaredStudy): Promise<DecisionEntry[]> {
    if (file === undefined) return [];
    const text = await this.text(file);
    return followed(() => readDecisions(text, declared, file));
  }

  async key(file: string, declared: DeclaredStudy): Promise<BlindKey> {
    const text = await this.text(file);
    return followed(() => parseBlindKey(text, declared, file));
  }

  async book({ verdicts }: RaterFiles, key: BlindKey): Promise<VerdictBook> {
    const text = await this.text(verdicts);
    return followed(() => readVerdicts(text, key, verdicts), verdicts);
  }
}

/** What an act comes to; a refusal of the study becomes one of the command line, with the file that it is about. */
export function followed<Result>(act: () => Result, file?: string): Result {
  try {
    return act();
  } catch (error) {
    if (error instanceof ListFault) throw new UsageError(error.message);
    if (!(error instanceof StudyError)) throw error;
    const place = file === undefined || error.details.file !== undefined ? '' : `${file}, `;
    throw new UsageError(`${place}${error.message}`);
  }
}
