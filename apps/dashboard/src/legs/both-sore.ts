import type { Side } from '@surae/analysis';
import type { TestKind, Visit } from '@surae/casebook';
import { BILATERAL_WORDS, LEGS_BOTH_WORDS, LEGS_WORDS } from '@surae/shared';
import { governing, startInFlare, targetReached } from '../result/bilateral-view.ts';
import type { AnyCompared } from '../result/compared.ts';
import { placeOf } from '../result/group-view.ts';
import { capital } from '../result/value-words.ts';
import { fill } from '../words/fill.ts';

const words = LEGS_BOTH_WORDS;

function targetSentences(visit: Visit, side: Side, test: TestKind, u: number | null): readonly string[] {
  const reached = targetReached(visit, side, test, u);
  if (reached === null || reached.verdict === null) return [];
  const { target, unit, verdict } = reached;
  const told = { leg: capital(LEGS_WORDS[side].text), target, unit: BILATERAL_WORDS[unit].text };
  return [fill(words[`target-${verdict}`], told)];
}

function groupSentences(side: Side, finding: NonNullable<AnyCompared['found']['findings'][Side]>): readonly string[] {
  const { reference, value } = finding;
  if (reference.kind !== 'references') return [];
  const places = new Set(reference.references.map((one) => placeOf(value.value, value.u, one)));
  const [place] = places;
  if (place == null) return [];
  const code = places.size === 1 ? place : 'mixed';
  return [fill(words[`group-${code}`], { leg: capital(LEGS_WORDS[side].text) })];
}

/** What one leg is told where both are sore, beside the change since its own start: a sorer start, the studies, its target. */
export function bothSoreLeg(visit: Visit, side: Side, test: TestKind, compared: AnyCompared): readonly string[] {
  const [past, finding] = [compared.baselines?.[side], compared.found.findings[side]];
  if (past === undefined || finding === null) return [];
  const leg = capital(LEGS_WORDS[side].text);
  const inFlare = startInFlare(past) === 'now' ? [fill(words['start-in-flare'], { leg })] : [];
  return [...inFlare, ...groupSentences(side, finding), ...targetSentences(visit, side, test, finding.value.u)];
}

/** Which leg sets the pace where both are sore. */
export function paceSentence(compared: AnyCompared): string {
  const one = governing(compared);
  if (one.kind === 'side') return words[one.side === 'left' ? 'governs-left' : 'governs-right'].text;
  return words[one.kind === 'alike' ? 'governs-alike' : 'governs-cannot-tell'].text;
}
