import type { Placement, Quantity, Trace } from '@surae/analysis';
import type { AnyPlacement } from './known-words.ts';

/** The placement of a recording, or the sentence that says why it is not known. */
export type Choice = { readonly placement: Placement } | { readonly refusal: string };

const OPTION = 'say where the sensor was with --placement, or in the column placement of the manifest';

/** What each placement cannot do without, and the columns that hold it. */
const NEEDED: Readonly<Record<Placement, { readonly quantity: Quantity; readonly columns: string }>> = {
  heel: { quantity: 'heel-height', columns: 'a column heel_height' },
  foot: { quantity: 'acceleration', columns: 'the columns acc_x, acc_y and acc_z' },
  trunk: { quantity: 'acceleration', columns: 'the columns acc_x, acc_y and acc_z' },
  platform: { quantity: 'force', columns: 'a column force' },
  hand: { quantity: 'tap', columns: 'a column tap' },
};

/**
 * The placement that was declared, if the columns that it needs are there; where none was, the one that the columns leave no doubt about. An accelerometer may sit
 * on the foot or at the trunk: that is asked, never guessed.
 */
export function choosePlacement(declared: AnyPlacement | undefined, trace: Trace): Choice {
  const channels = trace.groups.flatMap((group) => group.channels);
  const has = new Set(channels.map((channel) => channel.quantity));
  if (declared === 'inline') {
    return { refusal: 'the placement inline belongs to the test isometric: say --test isometric' };
  }
  if (declared !== undefined) {
    const { quantity, columns } = NEEDED[declared];
    const found = channels.filter((channel) => channel.quantity === quantity);
    const whole = quantity === 'acceleration' ? found.length === 3 : found.length > 0;
    if (whole) return { placement: declared };
    return { refusal: `the placement ${declared} needs ${columns}; the file holds ${namesOf(channels)}` };
  }
  if (has.has('heel-height') && has.has('force')) {
    return { refusal: `the file holds heel_height and force: ${OPTION} (heel or platform)` };
  }
  if (has.has('tap') && has.size === 1) return { placement: 'hand' };
  if (has.has('heel-height')) return { placement: 'heel' };
  if (has.has('force')) return { placement: 'platform' };
  if (has.has('acceleration')) {
    return { refusal: `an accelerometer may be on the foot or at the trunk: ${OPTION} (foot or trunk)` };
  }
  const other = has.has('torque') ? '; pushes and pulls are --test isometric' : '';
  return { refusal: `no heel raise can be found in ${namesOf(channels)}: heel_height, acc or force is needed${other}` };
}

function namesOf(channels: Trace['groups'][number]['channels']): string {
  const names = channels.map(({ quantity, axis }) => (axis === null ? quantity : `${quantity} ${axis}`));
  return names.join(', ') || 'nothing';
}
