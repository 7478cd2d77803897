import { LowerLine } from '../time/lower-line.ts';
import type { PacketNumbering, StreamPacket } from './packet.ts';

function forward(from: number | null, to: number | null, modulus: number): number | undefined {
  if (from === null || to === null) return undefined;
  return to - from - modulus * Math.floor((to - from) / modulus);
}

/**
 * Samples a second, from the first packets of a stream of which nobody says it [Hz]: by the clock of the device where it has one,
 * else by the line below the arrivals. Undefined when they span no time.
 */
export function measureRateHz(
  packets: readonly StreamPacket[],
  { counter, ticks }: PacketNumbering,
): number | undefined {
  const countOf = ({ channels }: StreamPacket): number => channels[0]?.samples.length ?? 0;
  const arrivals = new LowerLine();
  const intervals: number[] = [];
  let place = 0;
  packets.forEach((packet, i) => {
    const before = packets[i - 1];
    if (before !== undefined) {
      const steps = counter === null ? undefined : forward(before.counter, packet.counter, counter.modulus);
      const passed = ticks === null ? undefined : forward(before.deviceTicks, packet.deviceTicks, ticks.modulus);
      let samples = countOf(before);
      // a packet that was overtaken or came twice tells nothing
      if (counter !== null && steps !== undefined) {
        if (steps === 0 || steps > counter.modulus / 2) return;
        samples = counter.counts === 'samples' ? steps : steps * samples;
      }
      place += samples;
      if (ticks !== null && passed !== undefined && passed > 0) intervals.push((passed * ticks.tickS) / samples);
    }
    arrivals.add(place, packet.hostTimeMs / 1000);
  });
  if (intervals.length > 0) {
    intervals.sort((a, b) => a - b);
    return 1 / intervals[intervals.length >> 1]!;
  }
  const slope = arrivals.line?.slope;
  return slope === undefined || slope <= 0 ? undefined : 1 / slope;
}
