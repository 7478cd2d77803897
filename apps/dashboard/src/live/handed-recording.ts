import type { Placement, Side, Trace } from '@surae/analysis';
import type { TakenRecording } from '@surae/casebook';
import type { Recording } from '@surae/records';

/** A recording that was read on another page, to be played in a visit. */
export interface HandedRecording {
  readonly name: string;
  readonly recording: Recording;
  /** as it is kept; absent where it could not be */
  readonly taken?: TakenRecording;
}

/** What of it is played for one leg. */
export interface HandedLeg {
  readonly name: string;
  readonly trace: Trace;
  readonly side: Side | null;
  readonly placement: Placement | null;
  /** as it is kept; absent where it is not */
  readonly taken?: TakenRecording;
}

/** The channels of a leg, where the recording holds both; else all of it, with the leg that it says it is of. */
export function handedLeg({ name, recording, taken }: HandedRecording, side: Side): HandedLeg {
  const channels = recording.groups.flatMap((group) => group.channels);
  const sides = new Set(channels.flatMap((channel) => channel.side ?? []));
  const groups = recording.groups.flatMap((group) => {
    const own = group.channels.filter(
      (channel) => sides.size < 2 || channel.side === undefined || channel.side === side,
    );
    return own.length === 0 ? [] : [{ timesS: group.timesS, channels: own }];
  });
  const places = new Set(groups.flatMap((group) => group.channels.map(({ placementDeclared }) => placementDeclared)));
  const [place] = places;
  return {
    name,
    trace: { groups },
    side: sides.size === 2 ? side : ([...sides][0] ?? null),
    placement: places.size === 1 ? (place ?? null) : null,
    ...(taken === undefined ? {} : { taken }),
  };
}
