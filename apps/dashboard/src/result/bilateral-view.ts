import {
  type Governing,
  governingSide,
  type Side,
  type SinceVisit,
  scoresAtLeast,
  type Verdict,
} from '@surae/analysis';
import { type LegPast, pullSetOf, setOf, type TestKind, type Visit } from '@surae/casebook';
import { BILATERAL_WORDS, CHANGE_ZONE_SENTENCES, NO_CHANGE_SENTENCES, RATIO_BLOCK_SENTENCES } from '@surae/shared';
import { dayOf } from '../words/dates.ts';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';
import type { AnyCompared } from './compared.ts';
import type { GroupView } from './group-view.ts';
import { timesBodyWeight } from './target-view.ts';
import { amountWords, capital, type ValueWords } from './value-words.ts';

/** Both legs where both are sore, each by itself. There is no field that a ratio could be read from. */
export interface BilateralView {
  /** which leg governs */
  readonly lead: string;
  readonly legs: readonly { readonly side: Side; readonly lines: readonly string[] }[];
}

/** Whether a leg reached the target that a clinician set for it, with the 95 % bounds of what it did. */
export interface TargetReached {
  readonly target: number;
  readonly unit: 'repetitions' | 'times-body-weight';
  /** null where the test does not show what the calf could do */
  readonly verdict: Verdict | null;
  readonly low: string;
  readonly high: string;
}

const sides = ['left', 'right'] as const satisfies readonly Side[];
const words = BILATERAL_WORDS;

/** Which leg governs, by the irritability that was told of each. */
export function governing({ found }: Pick<AnyCompared, 'found'>): Governing {
  const { left, right } = found.findings;
  return governingSide({ left: left?.irritability ?? null, right: right?.irritability ?? null });
}

function governsWords(one: Governing): string {
  switch (one.kind) {
    case 'side':
      return fill(words['governs-side'], {
        leg: one.side,
        grade: words[one.grade].text,
        other: words[one.other].text,
      });
    case 'alike':
      return fill(words['governs-alike'], { grade: words[one.grade].text });
    case 'cannot-tell': {
      const [first] = one.notGraded;
      const legs = one.notGraded.length > 1 || first === undefined ? words['both-legs'] : words[first];
      return fill(words['governs-cannot-tell'], { legs: legs.text });
    }
  }
}

/** The change of a leg since its first test of this complaint; undefined where there is none yet. */
function sinceStart({ course }: LegPast<unknown>): SinceVisit | undefined {
  const changes = course?.changes ?? [];
  return changes.find(({ since }) => since === 'first-visit') ?? changes[0];
}

/** Whether the start of a leg was taken in a flare: of the first test of this complaint, or of this one where it is that. */
export function startInFlare({ alike, now }: Pick<LegPast<unknown>, 'alike' | 'now'>): 'start' | 'now' | null {
  const [first] = alike;
  if (first === undefined) return now.result.inFlare === true ? 'now' : null;
  return first.result.inFlare === true ? 'start' : null;
}

function startWords(leg: string, past: LegPast<unknown>, valueWords: ValueWords): readonly string[] {
  const { now, alike } = past;
  if (now.result.blocks.length > 0) {
    const why = now.result.blocks.map((block) => RATIO_BLOCK_SENTENCES[block].text).join(' ');
    return [fill(words['not-now'], { leg, why })];
  }
  const flare = startInFlare(past);
  const inFlare = flare === null ? [] : [fill(words[flare === 'start' ? 'start-in-flare' : 'now-in-flare'], { leg })];
  const [first] = alike;
  const since = sinceStart(past);
  if (first === undefined || since === undefined) return [fill(words['no-start'], { leg }), ...inFlare];
  const day = dayOf(first.visit.begunAt);
  const { outcome } = since;
  if (outcome.kind === 'side-by-side') {
    const why = outcome.reasons.map((reason) => NO_CHANGE_SENTENCES[reason].text).join(' ');
    return [fill(words['since-open'], { leg, day, why }), ...inFlare];
  }
  const { value } = outcome.change;
  const zone = CHANGE_ZONE_SENTENCES[outcome.detectable.zone].text;
  const isEqual = Number(decimal(value, valueWords.decimals)) === 0;
  const told = isEqual
    ? fill(words['since-equal'], { leg, day, zone })
    : fill(words.since, { leg, day, zone, difference: amountWords(value, valueWords) });
  return [told, ...inFlare];
}

/** The target of a leg in a test, and whether it is reached; null where none was set, or nothing was measured. */
export function targetReached(visit: Visit, side: Side, test: TestKind, u: number | null): TargetReached | null {
  const set = visit.around?.targets.find((one) => one.test === test && one.side === side);
  if (set === undefined) return null;
  const { value: target, unit } = set;
  if (test === 'heel-raise') {
    const report = setOf(visit, side)?.report;
    if (report == null) return null;
    const { count, end } = report;
    const isHeld = end.class === 'capacity' || end.class === 'censored';
    const [low, high] = [count.scoredLow, count.scoredHigh].map(String);
    return { target, unit, verdict: isHeld ? scoresAtLeast(count, target) : null, low: low ?? '', high: high ?? '' };
  }
  const report = pullSetOf(visit, side)?.report;
  if (report == null) return null;
  const times = timesBodyWeight(report, u);
  if (times === null) return { target, unit, verdict: null, low: '', high: '' };
  const verdict = times.low >= target ? 'yes' : times.high < target ? 'no' : 'cannot_tell';
  return { target, unit, verdict, low: decimal(times.low, 2), high: decimal(times.high, 2) };
}

function targetWords(leg: string, reached: TargetReached | null): readonly string[] {
  if (reached === null) return [];
  const { target, unit, verdict, low, high } = reached;
  const told = { leg, target, unit: words[unit].text };
  if (verdict === null) return [fill(words['target-not-held'], told)];
  return [fill(words[`target-${verdict}`], { ...told, low, high })];
}

/**
 * Both legs where both are sore: each against the first test of this complaint that was done alike, beside the published
 * groups and its target, and which leg governs; null where not both are sore.
 */
export function bilateralView(
  visit: Visit,
  test: TestKind,
  { found, baselines, wordsOf }: AnyCompared,
  groups: readonly GroupView[],
): BilateralView | null {
  if (baselines === null) return null;
  return {
    lead: governsWords(governing({ found })),
    legs: sides.flatMap((side) => {
      const [past, finding] = [baselines[side], found.findings[side]];
      if (past === undefined || finding === null) return [];
      const leg = capital(side);
      const group = groups.find((one) => one.side === side)?.lead;
      return [
        {
          side,
          lines: [
            ...startWords(leg, past, wordsOf(past.now.result.unit)),
            ...(group === undefined ? [] : [group]),
            ...targetWords(leg, targetReached(visit, side, test, finding.value.u)),
          ],
        },
      ];
    }),
  };
}
