import { dirname, join } from 'node:path';
import { type DeclaredStudy, type MadeWhen, madeWhen } from '@surae/study';
import { sha256 } from './fingerprints.ts';
import type { Io } from './io.ts';
import { readNamed } from './read-named.ts';
import type { StudyInputs } from './study-inputs.ts';
import { UsageError } from './usage-error.ts';

const WORDS: Readonly<Record<MadeWhen, string>> = {
  'as-declared-now': 'made with the study as it stands',
  'before-an-amendment': 'made before an amendment of the study',
  'of-another-study': 'made with another study, or with a version that is not at hand',
};

interface ResultRecord {
  readonly study: string;
  readonly files: readonly { readonly name: string; readonly sha256: string }[];
}

function recordIn(text: string, path: string): ResultRecord {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    value = undefined;
  }
  const { kind, study, files } = (typeof value === 'object' && value !== null ? value : {}) as Partial<ResultRecord> & {
    kind?: unknown;
  };
  if (kind !== 'surae-study-result' || typeof study !== 'string' || !Array.isArray(files)) {
    throw new UsageError(`${path}: expected the record of a result, as surae study writes it`);
  }
  return { study, files };
}

/** Whether a result was made with the study as it stands, and whether its files are as they were made. */
export async function checkAct(
  path: string,
  declared: DeclaredStudy,
  earlier: readonly string[],
  inputs: StudyInputs,
  io: Io,
): Promise<{ readonly lines: string[]; readonly isSame: boolean }> {
  const record = recordIn(new TextDecoder().decode(await readNamed(path, io)), path);
  const line = (await inputs.line(declared, earlier)) ?? { versions: [declared], amendments: [] };
  const when = madeWhen(record.study, line);
  const changed: string[] = [];
  for (const { name, sha256: made } of record.files) {
    const at = join(dirname(path), name);
    let now: string | undefined;
    try {
      now = sha256(await io.readFile(at));
    } catch {
      now = undefined;
    }
    if (now !== made) changed.push(`${at} ${now === undefined ? 'is not there' : 'was changed since'}`);
  }
  return {
    lines: [
      `${path}: ${WORDS[when]}`,
      ...(changed.length === 0 ? [`${record.files.length} files are as they were made`] : changed),
    ],
    isSame: when === 'as-declared-now' && changed.length === 0,
  };
}
