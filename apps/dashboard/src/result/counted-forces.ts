import { calibrated } from '@surae/analysis';
import type { SetUpKept } from '@surae/casebook';
import type { Recording } from '@surae/records';
import { groupsReadAs } from '../live/read-as.ts';

/** What was chosen before a recording, as far as it bears on how its samples are counted. */
export interface CountedBy {
  readonly setUp?: Pick<SetUpKept, 'certificate' | 'readAs' | 'answers'>;
}

/**
 * The recording with its samples read by what was answered about the sensor, and its forces counted by the calibration that
 * it was taken with; the one that was handed over stays as it came.
 */
export function countedForces<Part extends Pick<Recording, 'groups'>>(recording: Part, { setUp }: CountedBy): Part {
  const read =
    setUp?.readAs === undefined ? recording : { ...recording, groups: groupsReadAs(recording.groups, setUp.readAs) };
  const line = setUp?.certificate?.line;
  if (line === undefined) return read;
  // nothing but the numbers of force channels is another: the groups keep their shape
  return { ...read, groups: calibrated(read, line).groups as Recording['groups'] };
}

/** What a table of raw samples says of the answers and the calibration that its recording was taken with; nothing without. */
export function calibrationNotes({ setUp }: CountedBy): readonly string[] {
  const read = Object.entries(setUp?.readAs ?? {}).map(
    ([quantity, factor]) =>
      `${quantity} is as the sensor sent it; as was answered about the sensor it is read times ${factor}`,
  );
  const certificate = setUp?.certificate ?? null;
  if (certificate === null) return read;
  const { id, at, hash, line } = certificate;
  const percent = (100 * line.slopeU) / Math.abs(line.slope);
  return [
    ...read,
    `calibration of ${at}, certificate ${id}, SHA-256 ${hash}`,
    `forces are as the sensor sent them; newtons = (force - ${line.offset}) / ${line.slope}`,
    `standard uncertainty: ${line.slopeU} of ${line.slope} (${Number(percent.toPrecision(3))} %), ${line.offsetU} of ${line.offset}`,
  ];
}
