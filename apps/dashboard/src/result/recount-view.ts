import { identityDifferences, type Report, testIdentity } from '@surae/analysis';
import { type Entry, judgedProtocol, type Recount } from '@surae/casebook';
import { RECOUNT_WORDS } from '@surae/shared';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import { differenceWords } from './past-view.ts';
import { scoreFigure } from './score-figure.ts';

/** By what a result was made, beside its protocol; null is not kept. */
export interface MadeBy {
  readonly settingsHash: string | null;
  readonly software: string | null;
}

/** One result of a set in the table in which they stand beside each other. */
export interface RecountRow {
  /** id of the document; null of the first result and of one that is not kept yet */
  readonly id: string | null;
  readonly what: string;
  readonly count: string;
  readonly interval: string;
  readonly met: string;
  /** in what it differs from the first result, one a line */
  readonly differs: readonly string[];
}

/** In what the criteria of two results of one set differ, each in words. */
export function criteriaDifferences(first: Report, again: Report): readonly string[] {
  const [before, after] = [judgedProtocol(first), judgedProtocol(again)];
  if (before === undefined || after === undefined) return [`${first.protocol.id} → ${again.protocol.id}`];
  return differenceWords(identityDifferences(testIdentity(first, before, {}), testIdentity(again, after, {})));
}

function madeDifferences(first: MadeBy, again: MadeBy, isSameProtocol: boolean): readonly string[] {
  const words = RECOUNT_WORDS;
  const isOtherSoftware = first.software !== again.software && again.software !== null;
  // the hash holds the protocol too: it tells of the method alone where that is the same
  const isOtherMethod = isSameProtocol && first.settingsHash !== null && first.settingsHash !== again.settingsHash;
  return [
    ...(isOtherSoftware ? [fill(words['other-software'], { software: again.software ?? '' })] : []),
    ...(isOtherMethod ? [words['other-settings'].text] : []),
  ];
}

function rowOf(what: string, report: Report, differs: readonly string[], id: string | null = null): RecountRow {
  const { value, low, high, atLeast } = scoreFigure(report);
  const { attempted, valid } = report.count;
  return {
    id,
    what,
    count: atLeast ? fill(RECOUNT_WORDS['at-least'], { value }) : String(value),
    interval: fill(RECOUNT_WORDS.range, { low, high }),
    met: fill(RECOUNT_WORDS['met-of'], { attempted, valid }),
    differs,
  };
}

/** The first result of a set and every re-count beside it, each with what it differs in; the first stands first. */
export function recountRows(
  first: Report,
  made: MadeBy,
  kept: readonly Entry<Recount>[],
  now: Report | null = null,
): readonly RecountRow[] {
  const words = RECOUNT_WORDS;
  const told = (differs: readonly string[]): readonly string[] =>
    differs.length === 0 ? [words['no-difference'].text] : differs;
  return [
    rowOf(words['is-first'].text, first, []),
    ...kept.map(({ id, at, body: { report, settingsHash, software, why } }) => {
      const isSame = report.protocol.fingerprint === first.protocol.fingerprint;
      const reason = why === null ? words['why-none'].text : fill(words['why-told'], { why });
      const differs = told([
        ...criteriaDifferences(first, report),
        ...madeDifferences(made, { settingsHash, software }, isSame),
      ]);
      return rowOf(fill(words['is-kept'], { day: dayOf(at) }), report, [...differs, reason], id);
    }),
    ...(now === null ? [] : [rowOf(words['is-again'].text, now, told(criteriaDifferences(first, now)))]),
  ];
}

/** A re-count in one sentence, beside the test on the line of time. */
export function recountSentence(first: Report, { at, body: { report } }: Entry<Recount>): string {
  const { value, low, high } = scoreFigure(report);
  const differs = criteriaDifferences(first, report).join('; ') || RECOUNT_WORDS['no-difference'].text;
  return fill(RECOUNT_WORDS['on-course'], { day: dayOf(at), count: value, low, high, differs });
}
