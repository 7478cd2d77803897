import type { SensedPlacement, Trace } from '@surae/analysis';
import type { Recording } from '@surae/records';
import { AXIS_WORDS, RECOUNT_STUDY_WORDS } from '@surae/shared';
import { heightTrace } from '../result/height-trace.ts';

/** What is shown of one recording: a line over time that tells neither whose nor when nor which leg it is. */
export interface ItemTrace {
  readonly label: string;
  readonly unit: string;
  /** rising, from the begin of the recording [s] */
  readonly timesS: Float64Array;
  readonly values: Float64Array;
  /** digits behind the point that are read out */
  readonly decimals: number;
}

/** When a recording begins by its own clock [s]: times of marks are counted from there. */
export function beginS({ groups }: Trace): number {
  return Math.min(...groups.map(({ timesS }) => timesS[0] ?? Infinity));
}

/** The first column as it was recorded, where there is no height to be followed. */
function firstColumn({ groups }: Recording): Omit<ItemTrace, 'timesS'> & { readonly timesS: Float64Array } {
  const [group] = groups;
  const channel = group?.channels[0];
  return {
    label: RECOUNT_STUDY_WORDS['trace-column'].text,
    unit: channel?.unit.si ?? '1',
    timesS: group?.timesS ?? new Float64Array(),
    values: channel?.samples ?? new Float64Array(),
    decimals: 2,
  };
}

/**
 * The line of a recording that somebody counts: the height as its place sees it, from the begin on. The leg is no matter of the line:
 * both are drawn alike.
 *
 * @param placement - null or `hand` where no height is followed: then the first column stands as it was recorded
 */
export function itemTrace(
  recording: Recording,
  placement: SensedPlacement | 'hand' | null,
  heelLeverM: number | null,
  stringRestLengthM?: number,
): ItemTrace {
  const origin = beginS(recording);
  const moved = (timesS: Float64Array): Float64Array => timesS.map((timeS) => timeS - origin);
  if (placement === null || placement === 'hand') {
    const column = firstColumn(recording);
    return { ...column, timesS: moved(column.timesS) };
  }
  const [line] = heightTrace(recording, { placement, side: 'left', stringRestLengthM }, heelLeverM, null).series;
  const isBody = placement === 'trunk' || placement === 'platform';
  return {
    label: isBody ? AXIS_WORDS['trace-rise'].text : (line?.label ?? ''),
    unit: line?.unit ?? '1',
    timesS: moved(line?.times ?? new Float64Array()),
    values: line?.values ?? new Float64Array(),
    decimals: line?.decimals ?? 1,
  };
}
