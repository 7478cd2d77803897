import type { Trace } from '@surae/analysis';
import { READY_WORDS } from '@surae/shared';
import { fill } from '../words/fill.ts';

/** What became of a file that was chosen to be played. */
export interface FileChosen {
  /** what it holds; undefined where none was chosen, or where it was refused */
  readonly file: { readonly name: string; readonly trace: Trace } | undefined;
  /** why it was refused, in the words of the reader; empty where it was not */
  readonly refusal: string;
  readonly fits: boolean;
}

/** The same in one sentence; what is said of a file that does not fit the test is handed over. */
export function fileWords({ file, refusal, fits }: FileChosen, doesNotFit: { readonly text: string }): string {
  if (refusal !== '') return fill(READY_WORDS['file-refused'], { reason: refusal });
  if (file === undefined) return READY_WORDS['file-missing'].text;
  if (!fits) return doesNotFit.text;
  const times = file.trace.groups[0]?.timesS;
  const seconds = ((times?.at(-1) ?? 0) - (times?.[0] ?? 0)).toFixed(0);
  return fill(READY_WORDS['file-chosen'], { name: file.name, seconds });
}
