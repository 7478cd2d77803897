import type { PullReport, Side } from '@surae/analysis';
import {
  betweenTestsS,
  endedWithPop,
  legsTested,
  type PullSet,
  pullSetOf,
  restBetweenTestsS,
  secondsBetween,
  setOf,
  type Visit,
} from '@surae/casebook';
import {
  CONSISTENCY_SENTENCES,
  ISSUE_SENTENCES,
  PULL_END_CLASS_SENTENCES,
  PULL_GATE_SENTENCES,
  PULL_RESULT_WORDS,
  PULL_WITHHELD_SENTENCES,
  SUMMARY_WORDS,
} from '@surae/shared';
import { minutesAndSeconds } from '../journey/rest-news.ts';
import { isAlike, pullProtocolOf } from '../live/pull-choices.ts';
import { fill } from '../words/fill.ts';
import type { Caution } from './cautions.ts';
import { restAgreement, restAgreementWords } from './rest-agreement.ts';
import { forceWords } from './trial-verdicts.ts';
import { capital } from './value-words.ts';

const sides = ['left', 'right'] as const satisfies readonly Side[];

/** What one leg reached, as a part of a sentence. */
export function pullClause(side: Side, set: PullSet | undefined): string {
  const leg = SUMMARY_WORDS[side].text;
  const words = PULL_RESULT_WORDS;
  if (set === undefined) return fill(words.untested, { leg });
  const { report } = set;
  if (endedWithPop(set)) return fill(words.popped, { leg });
  if (report === null) return fill(set.trials.length === 0 ? words.nothing : words.waiting, { leg });
  const net = report.score.net;
  if (net === null) return fill(words.nothing, { leg });
  const force = forceWords(net.value, report.unit);
  return fill(report.end.class === 'tolerance' ? words.pain : words.leg, { leg, force });
}

/** What the two legs reached, in one sentence. A leg that stopped for pain shows what was tolerated. */
export function pullSentence(visit: Visit): string {
  const [first, second] = legsTested(visit).map((side) => pullClause(side, pullSetOf(visit, side)));
  if (visit.only !== undefined) return fill(SUMMARY_WORDS.alone, { what: capital(first ?? '') });
  const sentence = fill(PULL_RESULT_WORDS.both, { first: first ?? '', second: second ?? '' });
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}

/** Rests between trials that were shorter than the protocol asks for, in one sentence. */
function restCautions(set: PullSet): string[] {
  const wholeS = pullProtocolOf(set.choice.protocolId)?.parameters.rest.value ?? 0;
  const short = set.trials.flatMap(({ restS }, i) => (restS === null || restS >= wholeS ? [] : [{ restS, n: i + 1 }]));
  if (short.length === 0) return [];
  return [
    fill(PULL_RESULT_WORDS['short-rest'], {
      whole: minutesAndSeconds(wholeS),
      trials: short.map(({ n }) => n).join(', '),
      rest: minutesAndSeconds(Math.min(...short.map(({ restS }) => restS))),
    }),
  ];
}

function reportCautions({ end, gate, withheld, issues, trials }: PullReport): string[] {
  return [
    ...(end.class === 'capacity' ? [] : [PULL_END_CLASS_SENTENCES[end.class].text]),
    ...(trials?.consistency == null ? [] : [CONSISTENCY_SENTENCES[trials.consistency].text]),
    ...gate.reasons.map((reason) => PULL_GATE_SENTENCES[reason].text),
    ...issues.filter(({ severity }) => severity !== 'note').map(({ code }) => ISSUE_SENTENCES[code].text),
    // a lever is optional, and a rate is not what a strength test is for
    ...withheld
      .filter((reason) => reason !== 'no-forefoot-lever' && reason !== 'no-rate')
      .map((reason) => PULL_WITHHELD_SENTENCES[reason].text),
  ];
}

function ofLeg(visit: Visit, side: Side): string[] {
  const set = pullSetOf(visit, side);
  if (set === undefined) return [];
  const words = PULL_RESULT_WORDS;
  const raises = setOf(visit, side)?.stoppedAt ?? null;
  const sinceRaisesS = raises === null ? null : secondsBetween(raises, set.begunAt);
  const betweenS = restBetweenTestsS(visit, side);
  return [
    ...(set.report === null ? [] : reportCautions(set.report)),
    ...(restAgreement(set)?.agree === 'no' ? [restAgreementWords(set) ?? ''] : []),
    ...(sinceRaisesS !== null && sinceRaisesS >= 0 ? [words['after-raises'].text] : []),
    ...(betweenS !== null && betweenS < betweenTestsS
      ? [fill(words['between-tests'], { rest: minutesAndSeconds(betweenS), whole: minutesAndSeconds(betweenTestsS) })]
      : []),
    ...restCautions(set),
    ...set.trials.flatMap(({ suddenDrop }, i) => (suddenDrop ? [fill(words.dropped, { n: i + 1 })] : [])),
  ];
}

/** With what the result of the pushes is read; what holds for both legs is said once. */
export function pullCautions(visit: Visit, sidesRestS: number): Caution[] {
  const [left, right] = sides.map((side) => [...new Set(ofLeg(visit, side))]);
  const shared = (left ?? []).filter((text) => right?.includes(text));
  const { pullRestS } = visit;
  const [a, b] = sides.map((side) => pullSetOf(visit, side));
  const both = [
    ...(a !== undefined && b !== undefined && !isAlike(a.choice, b.choice) ? [PULL_RESULT_WORDS.unlike.text] : []),
    ...(pullRestS !== undefined && pullRestS < sidesRestS && b !== undefined
      ? [
          fill(PULL_RESULT_WORDS['sides-rest'], {
            rest: minutesAndSeconds(pullRestS),
            whole: minutesAndSeconds(sidesRestS),
          }),
        ]
      : []),
    ...shared,
  ];
  const own = (side: Side, texts: readonly string[] = []): Caution[] =>
    texts.filter((text) => !shared.includes(text)).map((text) => ({ side, text }));
  return [...both.map((text) => ({ side: null, text })), ...own('left', left), ...own('right', right)];
}
