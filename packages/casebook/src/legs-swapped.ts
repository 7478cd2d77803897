import type { Side } from '@surae/analysis';
import type { TestKind } from './test-kind.ts';
import type { Visit } from './visit.ts';

/** That left and right of a test were mixed up: what was recorded of it until then is of the other leg. */
export interface LegsSwapped {
  readonly kind: 'legs-swapped';
  readonly test: TestKind;
}

/** What was recorded of a leg, as far as the name of the leg goes. */
interface OfLeg {
  readonly choice: { readonly side: Side };
  readonly report?: { readonly side: Side | null } | null;
  readonly swapped?: boolean;
}

/** The other leg. */
export function otherLeg(side: Side): Side {
  return side === 'left' ? 'right' : 'left';
}

/** A report under the name that its leg has by now; one that never knew its leg stays so. */
export function namedReport<Report extends { readonly side: Side | null }>(
  report: Report,
  { swapped, choice }: Omit<OfLeg, 'report'>,
): Report {
  return swapped === true && report.side !== null ? { ...report, side: choice.side } : report;
}

/** The same recording under the name of the other leg: bytes and numbers are the same ones. */
export function renamed<Tested extends OfLeg>(one: Tested): Tested {
  const side = otherLeg(one.choice.side);
  const report = one.report == null || one.report.side === null ? one.report : { ...one.report, side };
  return {
    ...one,
    choice: { ...one.choice, side },
    swapped: one.swapped !== true,
    ...(report === undefined ? {} : { report }),
  };
}

/**
 * The visit after left and right of a test were mixed up: everything recorded of it so far has the name of the other leg, and
 * what comes after is asked under its own. Told once more, it is as it was. Both are kept.
 */
export function afterSwap(visit: Visit, { test }: LegsSwapped, at: string): Visit {
  const swaps = [...(visit.swaps ?? []), { test, at }];
  if (test === 'isometric') return { ...visit, swaps, pulls: (visit.pulls ?? []).map(renamed) };
  const practice = visit.practice === undefined ? {} : { practice: visit.practice.map(renamed) };
  return { ...visit, swaps, sets: visit.sets.map(renamed), ...practice };
}

/** When the legs of a test were last named otherwise than they were recorded; null where they are as they were recorded. */
export function swappedAt({ swaps = [] }: Pick<Visit, 'swaps'>, test: TestKind): string | null {
  const told = swaps.filter((one) => one.test === test);
  return told.length % 2 === 1 ? told.at(-1)!.at : null;
}
