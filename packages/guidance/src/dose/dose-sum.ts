import type { DoseLine, DoseSpan } from '@surae/shared';

/** What a line adds up to, from the least to the most of it. */
export interface DoseSum {
  /** raises, or holds, of a session */
  readonly repetitions: DoseSpan;
  /** under tension in a set, and in a session; null where it goes as quickly as it can, or no tempo is said [s] */
  readonly setTensionS: DoseSpan | null;
  readonly sessionTensionS: DoseSpan | null;
  readonly repetitionsPerWeek: DoseSpan;
}

function times([least, most]: DoseSpan, [otherLeast, otherMost]: DoseSpan): DoseSpan {
  return [least * otherLeast, most * otherMost];
}

/**
 * What a line of a dose adds up to.
 *
 * @param line - see {@link DoseLine}; a hold without a count is one hold a set [-]
 * @returns counts and times [1, s]
 *
 * Source: arithmetic: repetitions times seconds of a repetition, times sets
 */
export function doseSum(line: Pick<DoseLine, 'sets' | 'repetitions' | 'holdS' | 'tempo' | 'perWeek'>): DoseSum {
  const { sets, holdS, tempo, perWeek } = line;
  const inSet = line.repetitions ?? [1, 1];
  const one: DoseSpan | null =
    holdS ?? (tempo === null ? null : [tempo.upS + tempo.topS + tempo.downS, tempo.upS + tempo.topS + tempo.downS]);
  const repetitions = times(inSet, sets);
  const setTensionS = one === null ? null : times(inSet, one);
  return {
    repetitions,
    setTensionS,
    sessionTensionS: setTensionS === null ? null : times(setTensionS, sets),
    repetitionsPerWeek: times(repetitions, perWeek),
  };
}
