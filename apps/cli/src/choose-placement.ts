import type { Placement, Trace } from '@surae/analysis';

/** The placement of a recording, or the sentence that says why it is not known. */
export type Choice = { readonly placement: Placement } | { readonly refusal: string };

const OPTION = 'say where the sensor was with --placement, or in the column placement of the manifest';

/**
 * The placement that was declared; where none was, the one that the columns leave no doubt about. An accelerometer may sit
 * on the foot or at the trunk: that is asked, never guessed.
 */
export function choosePlacement(declared: Placement | undefined, trace: Trace): Choice {
  if (declared !== undefined) return { placement: declared };
  const has = new Set(trace.groups.flatMap((group) => group.channels.map((channel) => channel.quantity)));
  if (has.has('heel-height') && has.has('force')) {
    return { refusal: `the file holds heel_height and force: ${OPTION} (heel or platform)` };
  }
  if (has.has('heel-height')) return { placement: 'heel' };
  if (has.has('force')) return { placement: 'platform' };
  if (has.has('acceleration')) {
    return { refusal: `an accelerometer may be on the foot or at the trunk: ${OPTION} (foot or trunk)` };
  }
  const there = [...has].join(', ') || 'nothing';
  return { refusal: `no heel raise can be found in ${there}: heel_height, acc or force is needed` };
}
