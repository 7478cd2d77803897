import { RecordError } from './errors.ts';
import type { Axis, Quantity } from './quantities.ts';
import type { RecordedGroup, Recording } from './recording.ts';
import { sampleText } from './sample-text.ts';

const columnNames: Readonly<Record<Quantity, string>> = {
  force: 'force',
  'heel-height': 'heel_height',
  acceleration: 'acc',
  'angular-velocity': 'gyro',
  torque: 'torque',
  angle: 'angle',
  tap: 'tap',
};

/** The name of a channel in our documented header, with its SI unit. */
export function headerName(quantity: Quantity, axis: Axis, ucumUnit: string): string {
  return `${columnNames[quantity]}${axis === null ? '' : `_${axis}`} [${ucumUnit}]`;
}

/**
 * A recording as tables under our documented header, one text for each group of channels. Numbers are in SI, written
 * with the digits that give the same double again. Sides, placements and the hash of the source are not in it: they
 * are not the table's to say.
 *
 * @throws {@link RecordError} `duplicate-column` when a group holds two channels that the header cannot tell apart
 */
export function writeRecordingCsv({ groups, deviceNotes }: Recording): string[] {
  return groups.map((group) => sampleText(deviceNotes, namesOf(group), rowsOf(group)));
}

function namesOf({ channels }: RecordedGroup): string[] {
  const names = channels.map(({ quantity, axis, unit }) => headerName(quantity, axis, unit.si));
  const repeated = names.find((name, index) => names.indexOf(name) < index);
  if (repeated !== undefined) {
    const expected = 'one channel of each quantity and axis in a table';
    throw new RecordError('duplicate-column', { column: repeated, expected, actual: 'two' });
  }
  return ['time [s]', ...names];
}

function* rowsOf({ timesS, channels }: RecordedGroup): Generator<string[]> {
  for (let i = 0; i < timesS.length; i += 1) {
    yield [decimal(timesS[i]!), ...channels.map(({ samples }) => decimal(samples[i]!))];
  }
}

/** The shortest decimal that reads as the same double; the sign of -0 is kept. */
function decimal(value: number): string {
  return Object.is(value, -0) ? '-0' : String(value);
}
