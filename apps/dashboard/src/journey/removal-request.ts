/** The documents that are taken out of what counts, and why. */
export interface Removal {
  readonly ids: readonly string[];
  readonly why: string;
}

/** The DOM event by which a step asks to take documents back; they stay readable. */
export type RemovalRequest = CustomEvent<Removal>;

/** Asks to undo what these documents told. */
export function undoing(ids: readonly string[]): RemovalRequest {
  return new CustomEvent('removal-asked', { detail: { ids, why: 'undone' }, bubbles: true, composed: true });
}
