// Recordings in their thousands, simulated and made once in the temporary folder.
import { closeSync, existsSync, mkdirSync, openSync, renameSync, rmSync, writeFileSync, writeSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { simulateSet } from '@surae/simulation';

export const place = join(tmpdir(), 'surae-bench-many');

/** The set of raises of a recording: what was simulated, with its truth. */
export function heelSet(seed, count) {
  return simulateSet({ placement: 'heel', level: 'typical', seed, count, cycleS: 2 });
}

/** A heel that is simulated, at an even rate for so long; after the set the person stands. */
export function heelRecording(seed, count, lengthS, rateHz) {
  const [{ timesS, channels }] = heelSet(seed, count).trace.groups;
  const heights = channels[0].samples;
  const last = timesS.length - 1;
  const lines = ['time [s],heel_height [mm]'];
  for (let row = 0, at = 0; row < lengthS * rateHz; row += 1) {
    const timeS = row / rateHz;
    while (at < last && timesS[at + 1] <= timeS) at += 1;
    // beyond its end a standing heel that wavers by a tenth of a millimetre
    const height =
      at < last
        ? heights[at] + ((timeS - timesS[at]) / (timesS[at + 1] - timesS[at])) * (heights[at + 1] - heights[at])
        : heights[last] + 1e-4 * Math.sin(row);
    lines.push(`${timeS.toFixed(3)},${(1000 * height).toFixed(4)}`);
  }
  return `${lines.join('\n')}\n`;
}

/** A folder of so many recordings, made once. */
export function folderOf(name, files, make) {
  const folder = join(place, `${name}-${files}`);
  if (existsSync(folder)) return folder;
  const part = `${folder}.part`;
  rmSync(part, { recursive: true, force: true });
  mkdirSync(part, { recursive: true });
  for (let at = 0; at < files; at += 1) writeFileSync(join(part, `${String(at).padStart(6, '0')}.csv`), make(at));
  renameSync(part, folder);
  return folder;
}

/** One recording of an hour at 2000 Hz, with a set of 25 raises in it: the six channels of a foot, and as many megabytes as asked. */
export function largeFile(megabytes) {
  const folder = join(place, `large-${megabytes}`);
  const path = join(folder, 'foot.csv');
  if (existsSync(path)) return folder;
  mkdirSync(folder, { recursive: true });
  const { groups } = simulateSet({ placement: 'foot', level: 'typical', seed: 3, count: 25, cycleS: 2 }).trace;
  const [{ timesS, channels }] = groups;
  const last = timesS.length - 1;
  const file = openSync(`${path}.part`, 'w');
  writeSync(file, 'time [s],acc_x [m/s2],acc_y [m/s2],acc_z [m/s2],gyro_x [rad/s],gyro_y [rad/s],gyro_z [rad/s]\n');
  let text = '';
  for (let row = 0, at = 0, size = 0; size < megabytes * 1e6 && row < 7_200_000; row += 1) {
    const timeS = row / 2000;
    while (at < last && timesS[at + 1] <= timeS) at += 1;
    const cells = channels.map(({ samples }, c) =>
      (at < last
        ? samples[at] + ((timeS - timesS[at]) / (timesS[at + 1] - timesS[at])) * (samples[at + 1] - samples[at])
        : samples[last] + 1e-3 * Math.sin(row * (c + 1))
      ).toFixed(7),
    );
    text += `${timeS.toFixed(4)},${cells.join(',')}\n`;
    if (text.length > 1 << 20) {
      size += writeSync(file, text);
      text = '';
    }
  }
  writeSync(file, text);
  closeSync(file);
  renameSync(`${path}.part`, path);
  return folder;
}
