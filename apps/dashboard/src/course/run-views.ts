import type { CasebookPerson } from '@surae/casebook';
import { type LoadViews, loadViews } from '@surae/guidance';

/** A run in the three views of its load. */
export interface RunViews {
  readonly on: string;
  readonly views: LoadViews;
}

/** Runs of some days in three views each, the oldest first. Steps a minute, time or way that were not told leave a view open. */
export function runViews({ runs }: Pick<CasebookPerson, 'runs'>, from: string, until: string): readonly RunViews[] {
  return runs
    .filter(({ body }) => body.on >= from && body.on <= until)
    .toSorted((one, other) => one.body.on.localeCompare(other.body.on))
    .map(({ body: { on, durationS, distanceM, cadencePerMin = null } }) => {
      const speedMps = durationS === null || distanceM === null ? null : distanceM / durationS;
      return { on, views: loadViews({ activity: 'running', cadencePerMin, speedMps, distanceM }) };
    });
}
