import { STEP_WORDS } from '@surae/shared';
import type { Step } from './steps.ts';

/** What a step is called in the line of steps. */
export function stepName({ page, side }: Pick<Step, 'page' | 'side'>): string {
  if (page === 'test' || page === 'ending' || page === 'pull' || page === 'pull-ending')
    return STEP_WORDS[`${page}-${side ?? 'left'}`].text;
  return STEP_WORDS[page === 'pull-rest' ? 'rest' : page].text;
}
