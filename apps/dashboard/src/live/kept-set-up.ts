import type { Light } from '@surae/analysis';
import type { SensorAnswerEntry, SetUpKept } from '@surae/casebook';
import type { ReadAs } from './read-as.ts';

/** Everything that is known when a test begins, as the page holds it. */
export interface SetUpNow extends Pick<SetUpKept, 'zero' | 'certificate'> {
  readonly lights: readonly Light[];
  readonly answers: readonly SensorAnswerEntry[];
  readonly readAs: ReadAs;
  /** keys of the questions that stand open */
  readonly open: readonly string[];
  readonly restLoad: SetUpKept['restLoad'] | null;
  readonly up: SetUpKept['up'] | null;
}

/** How things stand, as it is kept with a test: what was not answered, asked or taken leaves no trace. */
export function keptSetUp({ lights, zero, certificate, answers, readAs, open, restLoad, up }: SetUpNow): SetUpKept {
  return {
    lights: lights.map(({ name, state, reason }) => ({ name, state, reason })),
    zero,
    certificate,
    ...(answers.length === 0 ? {} : { answers }),
    ...(Object.keys(readAs).length === 0 ? {} : { readAs }),
    ...(open.length === 0 ? {} : { open }),
    ...(restLoad == null ? {} : { restLoad }),
    ...(up == null ? {} : { up }),
  };
}
