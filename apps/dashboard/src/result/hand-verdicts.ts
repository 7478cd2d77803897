import type { Verdict } from '@surae/analysis';
import {
  automaticReport,
  handVerdict,
  type VerdictByHand,
  type VisitEvent,
  type VisitSet,
  verdictAgreement,
} from '@surae/casebook';
import {
  CRITERION_SENTENCES,
  type CriterionId,
  HAND_CRITERIA,
  HAND_REASONS,
  HAND_REASONS_FOR,
  HAND_VERDICT_WORDS,
  REPETITION_WORDS,
} from '@surae/shared';
import { fill } from '../words/fill.ts';
import { verdictWords } from './verdict-words.ts';

type HandWord = VerdictByHand['verdict'];

/** The verdicts that a person can give, in the order in which they are offered. */
export const handWords = ['yes', 'no', 'cannot-tell'] as const satisfies readonly HandWord[];

/** One repetition of the strip. */
export interface StripMark {
  readonly index: number;
  /** as it counts */
  readonly valid: Verdict;
  /** as it was measured, where a person judged */
  readonly automatic: Verdict | null;
  /** for whoever does not see it */
  readonly label: string;
  /** the first one after the end of the test */
  readonly isFirstAfterEnd: boolean;
  /** why it was measured so */
  readonly measured: string;
  /** what a person saw, in words; null where nobody judged */
  readonly byHand: string | null;
  /** documents by which a person judged it */
  readonly ids: readonly string[];
}

/** Why a repetition was judged otherwise. */
export interface HandReason {
  readonly verdict: HandWord;
  readonly criterion: CriterionId | null;
  readonly why: keyof typeof HAND_REASONS;
  readonly text: string;
}

/** The reasons that can be given for a verdict; those that name a rule first. */
export function handReasons(verdict: HandWord): HandReason[] {
  const rules: readonly CriterionId[] = verdict === 'no' ? HAND_CRITERIA : [];
  return [
    ...rules.map((criterion) => ({
      verdict,
      criterion,
      why: 'seen' as const,
      text: CRITERION_SENTENCES[criterion].text,
    })),
    ...HAND_REASONS_FOR[verdict].map((why) => ({ verdict, criterion: null, why, text: HAND_REASONS[why].text })),
  ];
}

function reasonWords({ criterion, why }: VerdictByHand): string {
  if (criterion !== null) return CRITERION_SENTENCES[criterion as CriterionId].text.toLowerCase();
  if (why !== null && Object.hasOwn(HAND_REASONS, why)) return HAND_REASONS[why as keyof typeof HAND_REASONS].text;
  return why ?? HAND_VERDICT_WORDS['why-untold'].text;
}

/** The repetitions of an accepted set as marks; empty without a report. */
export function stripMarks(set: VisitSet): StripMark[] {
  const { report, byHand = [] } = set;
  const automatic = automaticReport(set);
  if (report === null || automatic === null) return [];
  const firstAfter = report.repetitions.find(({ afterEnd }) => afterEnd)?.index;
  return report.repetitions.map(({ index, valid }, at) => {
    const given = byHand.filter(({ body }) => body.repetition === index);
    const last = given.at(-1)?.body;
    const found = automatic.repetitions[at]!;
    const words = { index, verdict: REPETITION_WORDS[valid].text, automatic: REPETITION_WORDS[found.valid].text };
    return {
      index,
      valid,
      automatic: last === undefined ? null : found.valid,
      label: fill(HAND_VERDICT_WORDS[last === undefined ? 'mark' : 'mark-by-hand'], words),
      isFirstAfterEnd: index === firstAfter,
      measured: fill(HAND_VERDICT_WORDS.automatic, { verdict: verdictWords(found) }),
      byHand:
        last === undefined
          ? null
          : fill(HAND_VERDICT_WORDS['by-hand'], {
              verdict: HAND_VERDICT_WORDS[last.verdict].text,
              why: reasonWords(last),
            }),
      ids: given.map(({ id }) => id),
    };
  });
}

/** The event by which a person judges one repetition; the time of its top goes with its number. */
export function judgedByHand(
  { id: setId, report }: Pick<VisitSet, 'id' | 'report'>,
  repetition: number,
  { verdict, criterion, why }: HandReason,
): VisitEvent {
  const topS = report?.repetitions[repetition - 1]?.topS;
  const top = topS === undefined ? {} : { topS };
  return { kind: 'verdict-by-hand', setId, repetition, ...top, criterion, verdict, why };
}

/** How both count, and on how many they agree, and what is not laid on with its reason; empty where nobody judged by hand. */
export function handSentences(set: VisitSet): string[] {
  const { report, automatic, notLaidOn = [] } = set;
  const left = notLaidOn.map(({ verdict, why }) => fill(HAND_VERDICT_WORDS[why], { index: verdict.body.repetition }));
  const agreement = verdictAgreement(set);
  if (agreement === null || report === null || automatic === undefined) return left;
  return [
    fill(HAND_VERDICT_WORDS.both, { accepted: report.count.scored, automatic: automatic.count.scored }),
    fill(HAND_VERDICT_WORDS.agreement, { ...agreement }),
    ...left,
  ];
}

/** Whether a reason says what a person said last of a repetition. */
export function isSaid(set: VisitSet, repetition: number, { verdict, criterion, why }: HandReason): boolean {
  const last = (set.byHand ?? []).filter(({ body }) => body.repetition === repetition).at(-1)?.body;
  return (
    last !== undefined && last.why === why && handVerdict(last).criterion === criterion && last.verdict === verdict
  );
}
