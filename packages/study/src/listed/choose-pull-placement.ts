import type { PullPlacement, Trace } from '@surae/analysis';
import { type AnyPlacement, isPullPlacement } from './known-words.ts';

/** The placement of an isometric test, or the sentence that says why it is not known. */
export type PullChoice = { readonly placement: PullPlacement } | { readonly refusal: string };

/**
 * Where an isometric effort was measured. A torque comes from a dynamometer, in line with the push; a force may come from a cell
 * or from a plate, which read different things of the resting leg: that is asked, never guessed.
 */
export function choosePullPlacement(declared: AnyPlacement | undefined, trace: Trace): PullChoice {
  const has = new Set(trace.groups.flatMap((group) => group.channels.map(({ quantity }) => quantity)));
  if (declared !== undefined && !isPullPlacement(declared)) {
    return { refusal: `the test isometric is measured inline or on a platform, not at the placement ${declared}` };
  }
  if (!has.has('force') && !has.has('torque')) {
    return { refusal: `the test isometric needs a column force or torque; the file holds ${[...has].join(', ')}` };
  }
  if (has.has('force')) {
    if (declared !== undefined) return { placement: declared };
    return {
      refusal:
        'a force may come from a cell in line or from a plate under the forefoot: say which with --placement inline or ' +
        'platform, or in the column placement of the manifest',
    };
  }
  if (declared === 'platform') {
    return { refusal: 'a plate under the forefoot gives a force; the file holds a torque: its placement is inline' };
  }
  return { placement: 'inline' };
}
