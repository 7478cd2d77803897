import type { ChannelGroup } from '@surae/analysis';
import { heelRecording } from './blocks.ts';

/** Quiet stance, then raises of 8 cm every two seconds with a pause at the bottom. */
export function heelSet(raises: number): ChannelGroup {
  const stanceS = 2;
  const heightAt = (timeS: number): number => {
    const sinceS = timeS - stanceS;
    const inCycleS = sinceS % 2;
    if (sinceS < 0 || sinceS >= 2 * raises || inCycleS >= 1.6) return 0;
    return 0.08 * Math.sin((Math.PI * inCycleS) / 1.6) ** 2;
  };
  return heelRecording(heightAt, stanceS + 2 * raises + 1, 100);
}
