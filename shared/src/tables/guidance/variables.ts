/**
 * What a rule can be about. Of `lowest`, one rule is taken: the one of the lowest rank that holds; what stands against it ends the
 * choice. Of `next`, what stands against one leads to the next. Of `each`, every rule that holds is told. What is told `across` legs
 * is told together too: of the legs that govern, the lowest one.
 */
export const GUIDANCE_VARIABLES = {
  /** what stands against something */
  block: { choice: 'each', across: false },
  /** where a programme begins */
  'start-level': { choice: 'lowest', across: true },
  /** what happens to a dose: the most careful step first */
  step: { choice: 'lowest', across: true },
  /** which one variable goes up, in the given order */
  change: { choice: 'next', across: true },
  /** how a load is found from what was tested */
  load: { choice: 'lowest', across: false },
  /** week of a programme */
  week: { choice: 'lowest', across: false },
  /** programmes that fit beside the one that begins */
  option: { choice: 'each', across: false },
  /** pain up to which something is gone on with */
  'pain-limit': { choice: 'lowest', across: true },
  /** how far the heel goes down */
  range: { choice: 'lowest', across: true },
  /** where a leg stands on the tolerance ladder */
  rung: { choice: 'next', across: false },
  /** how much is run, and how work on the feet is done, by irritability */
  running: { choice: 'lowest', across: true },
  /** what is done in place of running while it is paused */
  'running-instead': { choice: 'lowest', across: true },
  standing: { choice: 'lowest', across: true },
  /** how long one run may be beside the longest of the days before */
  'run-cap': { choice: 'lowest', across: false },
  /** days before the next load on the tendon */
  recovery: { choice: 'lowest', across: true },
  /** a first run, and what is kept up in the end */
  'run-start': { choice: 'lowest', across: true },
  'full-return': { choice: 'lowest', across: true },
  /** what is asked or looked at */
  prompt: { choice: 'each', across: false },
} as const satisfies Readonly<
  Record<string, { readonly choice: 'lowest' | 'next' | 'each'; readonly across: boolean }>
>;

export type GuidanceVariable = keyof typeof GUIDANCE_VARIABLES;
