/** Whether something holds. */
export type Held = 'yes' | 'no' | 'cannot-tell';

/**
 * Whether all of several hold, by the strong logic of three values.
 *
 * @param held - none at all hold together [-]
 * @returns no as soon as one does not, yes where every one does [-]
 *
 * Source: Kleene 1952, Introduction to Metamathematics, section 64
 */
export function allHold(held: readonly Held[]): Held {
  if (held.includes('no')) return 'no';
  return held.includes('cannot-tell') ? 'cannot-tell' : 'yes';
}

/** Whether any of several holds: no where every one does not, none at all included. Source: as above. */
export function anyHolds(held: readonly Held[]): Held {
  if (held.includes('yes')) return 'yes';
  return held.includes('cannot-tell') ? 'cannot-tell' : 'no';
}

/** Whether something does not hold; what cannot be told cannot be told the other way round either. Source: as above. */
export function doesNotHold(held: Held): Held {
  if (held === 'cannot-tell') return held;
  return held === 'yes' ? 'no' : 'yes';
}
