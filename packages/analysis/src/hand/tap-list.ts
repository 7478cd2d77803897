import { requireIncreasing, requireRange, requireSameLength } from '../check.ts';
import { InputError } from '../errors.ts';
import type { ChannelGroup } from '../trace.ts';

/** One raise that somebody counted by tap. */
export interface Tap {
  readonly atS: number;
  /** when it was taken back; null where it stands [s] */
  readonly takenBackAtS: number | null;
}

/** Takes taps one after the other: a change of 1 adds one, -1 takes back the last that stands, 0 says only that somebody counts. */
export class TapList {
  private readonly all: Tap[] = [];

  /** Every tap in order, those that were taken back among them. */
  get taps(): readonly Tap[] {
    return this.all;
  }

  /** Taps that stand. */
  get count(): number {
    return this.standing.length;
  }

  /** Taps that stand, in order. */
  get standing(): readonly Tap[] {
    return this.all.filter(({ takenBackAtS }) => takenBackAtS === null);
  }

  /** Takes the next change; throws an {@link InputError} `out-of-range` for one that is not 1, 0 or -1, or that takes back nothing. */
  add(atS: number, change: number): void {
    requireRange(change, change === 1 || change === 0 || change === -1, 'tap', '1, 0 or -1');
    if (change === 1) this.all.push({ atS, takenBackAtS: null });
    if (change !== -1) return;
    const last = this.all.findLastIndex(({ takenBackAtS }) => takenBackAtS === null);
    requireRange(change, last >= 0, 'tap', 'a tap before it that stands');
    this.all[last] = { ...this.all[last], takenBackAtS: atS };
  }
}

/**
 * The taps of a recording that somebody counted.
 *
 * @param group - instants and the change of the count at each [s, -]
 * @returns every tap, those that were taken back among them [s]
 * @throws {@link InputError} `missing-channel` without taps; `length-mismatch`, `not-increasing` for a group that breaks its contract; `out-of-range` for a change that cannot be
 *
 * Source: definition
 */
export function tapsOf(group: ChannelGroup): TapList {
  const list = new TapList();
  takeTaps(list, group);
  return list;
}

/**
 * Adds the taps of a block to those before it.
 *
 * @param list - what came before; it takes the taps [s]
 * @param group - the block [s, -]
 * @returns nothing [-]
 * @throws {@link InputError} as {@link tapsOf} does
 *
 * Source: definition
 */
export function takeTaps(list: TapList, { timesS, channels }: ChannelGroup): void {
  const changes = channels.find(({ quantity }) => quantity === 'tap')?.samples;
  if (changes === undefined) {
    throw new InputError('missing-channel', { argument: 'trace', expected: 'tap', actual: 'no such channel' });
  }
  requireSameLength(timesS, changes, 'trace.groups');
  requireIncreasing(timesS, 'timesS');
  changes.forEach((change, i) => list.add(timesS[i], change));
}
