import { calibrated } from '@surae/analysis';
import type { Recording } from '@surae/records';
import type { SetUpKept } from '../journey/set-up.ts';

/** What was chosen before a recording, as far as it bears on how its forces are counted. */
export interface CountedBy {
  readonly setUp?: Pick<SetUpKept, 'certificate'>;
}

/** The recording with its forces counted by the calibration that it was taken with; the one that was handed over stays as it came. */
export function countedForces<Part extends Pick<Recording, 'groups'>>(recording: Part, { setUp }: CountedBy): Part {
  const line = setUp?.certificate?.line;
  if (line === undefined) return recording;
  // nothing but the numbers of force channels is another: the groups keep their shape
  return { ...recording, groups: calibrated(recording, line).groups as Recording['groups'] };
}

/** What a table of raw samples says of the calibration that its recording was taken with; nothing without one. */
export function calibrationNotes({ setUp }: CountedBy): readonly string[] {
  const certificate = setUp?.certificate ?? null;
  if (certificate === null) return [];
  const { id, at, hash, line } = certificate;
  const percent = (100 * line.slopeU) / Math.abs(line.slope);
  return [
    `calibration of ${at}, certificate ${id}, SHA-256 ${hash}`,
    `forces are as the sensor sent them; newtons = (force - ${line.offset}) / ${line.slope}`,
    `standard uncertainty: ${line.slopeU} of ${line.slope} (${Number(percent.toPrecision(3))} %), ${line.offsetU} of ${line.offset}`,
  ];
}
