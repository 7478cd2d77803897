import type { Step } from './steps.ts';

/** A step that is to be answered anew. */
export type StepAskedFor = CustomEvent<Step['id']>;

/** The DOM event by which a step, or the line of steps, asks for one that is done. */
export function stepAskedFor(id: Step['id']): StepAskedFor {
  return new CustomEvent('step-asked-for', { detail: id, bubbles: true, composed: true });
}
