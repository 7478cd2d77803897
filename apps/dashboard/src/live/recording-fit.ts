import { counterInput, InputError, type Placement, type Trace } from '@surae/analysis';

/** Whether a recording holds what a sensor at this place gives. */
export function fits(trace: Trace, placement: Placement): boolean {
  try {
    counterInput(trace, placement);
    return true;
  } catch (error) {
    if (error instanceof InputError) return false;
    throw error;
  }
}
