import { RECOUNT_STUDY_WORDS } from '@surae/shared';
import type { BlindVerdict } from '@surae/study';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';
import type { RecountAgreement } from './recount-desk.ts';
import type { TraceLane } from './recount-trace.ts';

/** One recording as everybody counted it. */
export interface AgreementItem {
  readonly trial: string;
  readonly sha256: string;
  /** counts in the order of {@link AgreementItems.columns}; null where it was not counted */
  readonly counts: readonly (number | 'shown-once' | null)[];
  /** greatest difference of two counts; null below two counts */
  readonly apart: number | null;
  /** repetitions that two judged otherwise or that one alone saw, over all pairs */
  readonly disputed: number;
}

export interface AgreementItems {
  readonly columns: readonly string[];
  /** the most apart first */
  readonly rows: readonly AgreementItem[];
}

/** A count in words where it is no number. */
export function countWords(count: AgreementItem['counts'][number]): string {
  if (typeof count === 'number') return decimal(count, 0);
  return RECOUNT_STUDY_WORDS[count ?? 'not-counted'].text;
}

/** Every recording with the counts of all, the most apart first. */
export function agreementItems({ raters, automatic, lists }: RecountAgreement): AgreementItems {
  const words = RECOUNT_STUDY_WORDS;
  const machine = new Map(automatic.map(({ trial, count }) => [trial, count]));
  const hashes = new Map(raters.flatMap(({ key }) => key.items.map(({ trial, sha256 }) => [trial, sha256] as const)));
  const showings = raters.flatMap(({ key, book }) =>
    ([1, 2] as const).map((showing) => ({
      showing,
      name: showing === 1 ? key.rater : fill(words['lane-second'], { rater: key.rater }),
      of: new Map(
        key.items
          .filter((one) => one.showing === showing && !book.afterOpening.includes(one.item))
          .map(({ trial, item }) => [trial, book.counts.get(item) ?? null]),
      ),
    })),
  );
  const rows = [...hashes].map(([trial, sha256]): AgreementItem => {
    const counts = [
      ...showings.map(({ showing, of }) => (showing === 2 && !of.has(trial) ? 'shown-once' : (of.get(trial) ?? null))),
      machine.get(trial) ?? null,
    ];
    const known = counts.filter((count) => typeof count === 'number');
    const disputed = lists.reduce((sum, list) => {
      const own = list.trials.find((one) => one.trial === trial);
      if (own === undefined) return sum;
      const other = own.both.filter(([one, two]) => one.verdict !== two.verdict).length;
      return sum + other + own.firstAlone.length + own.secondAlone.length;
    }, 0);
    const apart = known.length < 2 ? null : Math.max(...known) - Math.min(...known);
    return { trial, sha256, counts, apart, disputed };
  });
  rows.sort((a, b) => (b.apart ?? -1) - (a.apart ?? -1) || b.disputed - a.disputed || (a.trial < b.trial ? -1 : 1));
  return { columns: [...showings.map(({ name }) => name), words.machine.text], rows };
}

/** The marks of everybody on one recording, each on a line of its own. */
export function lanesOf({ raters, automatic }: RecountAgreement, trial: string): TraceLane[] {
  const words = RECOUNT_STUDY_WORDS;
  const own = automatic.find((one) => one.trial === trial);
  type Told = { readonly atS: number | null | undefined; readonly verdict: BlindVerdict };
  const lane = (name: string, told: readonly Told[]): TraceLane => ({
    name,
    marks: told
      .flatMap(({ atS, verdict }) => (atS === null || atS === undefined ? [] : [{ atS, verdict }]))
      .sort((a, b) => a.atS - b.atS)
      .map((one, at) => ({ ...one, place: at + 1 })),
  });
  return [
    ...raters.flatMap(({ key, book }) =>
      key.items
        .filter((one) => one.trial === trial)
        .sort((a, b) => a.showing - b.showing)
        .map(({ item, showing }) => {
          const marks = book.marks.get(item);
          const verdicts = [...(book.verdicts.get(item) ?? [])];
          const name = showing === 1 ? key.rater : fill(words['lane-second'], { rater: key.rater });
          return lane(
            name,
            verdicts.map(([repetition, verdict]) => ({
              atS: marks === undefined ? own?.topsS[repetition - 1] : marks.get(repetition),
              verdict,
            })),
          );
        }),
    ),
    lane(words.machine.text, own?.verdicts.map((verdict, at) => ({ atS: own.topsS[at], verdict })) ?? []),
  ];
}
