import type { ShownPart } from './study-parts.ts';

/** The parts that there are: a new one is a line here. */
export const shownParts: readonly ShownPart[] = [];
