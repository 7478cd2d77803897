import type { Report } from '@surae/analysis';
import type { RecordedChannel, Recording } from '@surae/records';
import type { TrialCourse } from './kept-trial.ts';

/** Stretches of a recording that are drawn, each by its least and its greatest value. */
const STRETCHES = 120;

function spread({ samples }: RecordedChannel): number {
  let [least, most] = [Infinity, -Infinity];
  for (const sample of samples) {
    if (sample < least) least = sample;
    if (sample > most) most = sample;
  }
  return most - least;
}

/** The channel that says most at a glance: a height, else the one of a turning foot, else the one that moves most of its kind. */
function drawnChannel(recording: Recording): { channel: RecordedChannel; timesS: Float64Array } | undefined {
  const all = recording.groups.flatMap(({ timesS, channels }) => channels.map((channel) => ({ channel, timesS })));
  for (const quantity of ['heel-height', 'force', 'torque', 'angular-velocity', 'acceleration'] as const) {
    const [first, ...others] = all.filter(({ channel }) => channel.quantity === quantity);
    if (first === undefined) continue;
    return others.reduce((most, one) => (spread(one.channel) > spread(most.channel) ? one : most), first);
  }
  return all[0];
}

/**
 * The course of a recording as it is drawn small: of each stretch its least and its greatest value, in the order in which they came.
 * A stretch without a sample is null.
 *
 * @param tops - of the repetitions that were found, on the clock of the recording [s]
 */
export function trialCourse(recording: Recording, tops: readonly number[]): TrialCourse | null {
  const drawn = drawnChannel(recording);
  if (drawn === undefined) return null;
  const { timesS, channel } = drawn;
  const count = timesS.length;
  if (count < 2) return null;
  const fromS = timesS[0]!;
  const durationS = timesS[count - 1]! - fromS;
  if (!(durationS > 0)) return null;
  const values: (number | null)[] = Array.from({ length: 2 * STRETCHES }, () => null);
  const short = (value: number): number => Number(value.toPrecision(4));
  let at = 0;
  for (let stretch = 0; stretch < STRETCHES; stretch += 1) {
    const endS = fromS + (durationS * (stretch + 1)) / STRETCHES;
    let [least, most] = [-1, -1];
    for (; at < count && (timesS[at]! < endS || stretch === STRETCHES - 1); at += 1) {
      const sample = channel.samples[at]!;
      if (!Number.isFinite(sample)) continue;
      if (least < 0 || sample < channel.samples[least]!) least = at;
      if (most < 0 || sample > channel.samples[most]!) most = at;
    }
    if (least < 0) continue;
    values[2 * stretch] = short(channel.samples[Math.min(least, most)]!);
    values[2 * stretch + 1] = short(channel.samples[Math.max(least, most)]!);
  }
  return {
    of: channel.quantity === 'heel-height' ? 'height' : 'signal',
    values,
    stepS: durationS / (2 * STRETCHES),
    topsS: tops.map((topS) => Number((topS - fromS).toFixed(2))),
  };
}

/** When the tops of the repetitions of a report are; none where it counts none. */
export function topsOf(report: Pick<Report, 'repetitions'> | null): number[] {
  return report === null ? [] : report.repetitions.map(({ topS }) => topS);
}
