import type { MorningCheck } from '@surae/casebook';
import type { Morning } from '@surae/exchange';

/** A morning that is kept, with the id of its document. */
export interface KeptCheck {
  readonly id: string;
  readonly body: MorningCheck;
}

/** A morning that was given, beside what is kept of its day. */
export interface GivenMorning {
  readonly morning: Morning;
  /** not there yet; there with the same answers; there with others; a day that is still to come */
  readonly state: 'new' | 'same' | 'other' | 'future';
  /** documents that it would take the place of */
  readonly replaces: readonly string[];
}

/** A morning as it is kept. */
export function checkOf({ day, left, right, stiffness }: Morning): MorningCheck {
  return { on: day, pain: { left, right }, stiffnessMin: null, stiffness };
}

function isSame(one: MorningCheck, other: MorningCheck): boolean {
  return (
    one.pain.left === other.pain.left &&
    one.pain.right === other.pain.right &&
    one.stiffness === other.stiffness &&
    one.stiffnessMin === other.stiffnessMin
  );
}

/**
 * What is asked about mornings that were given: a day that holds other answers, and one that is still to come here. Days are
 * those of the place where each was told; of several of one day in what was given the last counts.
 */
export function givenMornings(
  given: readonly Morning[],
  kept: readonly KeptCheck[],
  today: string,
): readonly GivenMorning[] {
  const last = given.filter(({ day }, at) => given.slice(at + 1).every((later) => later.day !== day));
  return [...last]
    .sort((a, b) => (a.day < b.day ? -1 : 1))
    .map((morning): GivenMorning => {
      const there = kept.filter(({ body }) => body.on === morning.day);
      const isKnown = there.some(({ body }) => isSame(body, checkOf(morning)));
      const replaces = isKnown ? [] : there.map(({ id }) => id);
      const state = isKnown ? 'same' : morning.day > today ? 'future' : there.length > 0 ? 'other' : 'new';
      return { morning, state, replaces };
    });
}
