import type { Entry } from './entry.ts';

/** A number of a protocol, with the range that a tester may choose from; `null` means the protocol sets none. */
export interface NumberParameter extends Entry {
  readonly value: number | null;
  readonly allowed: { readonly least: number; readonly most: number };
}

/** A choice of a protocol among named alternatives. */
export interface ChoiceParameter<Choice extends string = string> extends Entry {
  readonly value: Choice;
  readonly allowed: readonly Choice[];
}
