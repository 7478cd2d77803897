import { STUDY_RESULT_WORDS } from '@surae/shared';
import type { StudyOrigin, StudyOutput } from '@surae/study';
import { fill } from '../words/fill.ts';
import { sha256Text } from './sha256-text.ts';

/** What a figure or a table was made from, beside the command: each in a line. */
export function originLines({ study, inputs, recordings, assessed }: StudyOrigin): string[] {
  const words = STUDY_RESULT_WORDS;
  return [
    fill(words['study-hash'], { hash: study }),
    ...inputs.map(({ file, sha256 }) => fill(words['input-hash'], { file, hash: sha256 })),
    fill(words['recordings-line'], { count: recordings.length }),
    ...(assessed[0]?.settings_hashes ?? []).map((hash) => fill(words['settings-hash'], { hash })),
  ];
}

/** The hash of a file that is made. */
export function madeLine({ name, text }: StudyOutput): string {
  return fill(STUDY_RESULT_WORDS['made-hash'], { file: name, hash: sha256Text(text) });
}
