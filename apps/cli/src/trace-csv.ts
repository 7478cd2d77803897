import { sampleText } from '@surae/records';
import type { SimulatedChannel, SimulatedTrace } from '@surae/simulation';

/** How one quantity is written: column, factor from SI, digits behind the point (far below any sensor's noise). */
const COLUMNS: Readonly<
  Record<SimulatedChannel['quantity'], { name: string; unit: string; perSi: number; digits: number }>
> = {
  force: { name: 'force', unit: 'N', perSi: 1, digits: 3 },
  'heel-height': { name: 'heel_height', unit: 'mm', perSi: 1000, digits: 4 },
  acceleration: { name: 'acc', unit: 'm/s2', perSi: 1, digits: 5 },
  'angular-velocity': { name: 'gyro', unit: 'rad/s', perSi: 1, digits: 6 },
};

function header(channel: SimulatedChannel): string {
  const { name, unit } = COLUMNS[channel.quantity];
  return `${name}${channel.axis === null ? '' : `_${channel.axis}`} [${unit}]`;
}

/** A simulated recording as text under the documented header, one row per sample. */
export function traceCsv(trace: SimulatedTrace, notes: readonly string[]): string {
  const [group, ...others] = trace.groups;
  if (group === undefined || others.length > 0)
    throw new RangeError(`a table holds one clock, the trace has ${trace.groups.length}`);
  const rows = Array.from(group.timesS, (timeS, index) => [
    timeS.toFixed(6),
    ...group.channels.map(({ quantity, samples }) => {
      const { perSi, digits } = COLUMNS[quantity];
      return (samples[index]! * perSi).toFixed(digits);
    }),
  ]);
  return sampleText(notes, ['time [s]', ...group.channels.map(header)], rows);
}
