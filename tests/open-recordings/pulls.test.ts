import { findEfforts } from '@surae/analysis';
import { describe, expect, test } from 'vitest';
import { strengthSettings } from '../support/effort-settings.ts';
import { openRecording } from '../support/open-recordings.ts';

/** Tecchio et al. (2024), J Appl Physiol: an ankle dynamometer, torque with its passive part, one contraction in an active trial. */
function effortsOf(name: string) {
  return findEfforts(openRecording(`ankle-torque/${name}.csv`), { polarity: 'find' }, strengthSettings);
}

function torqueOf(name: string): Float64Array {
  return openRecording(`ankle-torque/${name}.csv`).groups[0].channels.find(({ quantity }) => quantity === 'torque')!
    .samples;
}

describe('an ankle dynamometer', () => {
  test('a passive hold and a passive turn of the plate hold no effort', () => {
    for (const name of ['passive', 'passive-turn']) expect(effortsOf(name).efforts).toEqual([]);
  });

  test('a hold is one ramped effort; its torque stays a torque', () => {
    const { efforts, unit } = effortsOf('hold');
    expect(unit).toBe('N.m');
    expect(efforts).toHaveLength(1);
    const [effort] = efforts;
    expect(effort.kind).toBe('ramp');
    // the excerpt ends before the muscle rests again, so that a change of the resting torque cannot be told
    const open = effort.acceptance.findings.filter(({ met }) => met !== 'yes').map(({ code }) => code);
    expect([effort.acceptance.accepted, open]).toEqual(['cannot_tell', ['tare-error', 'lifted']]);
    expect(effort.rates.every(({ rate, reason }) => rate === null && reason === 'ramped')).toBe(true);
    // plain script: highest of the torque over 50 ms means, less the mean of the first two seconds
    const torque = torqueOf('hold');
    const mean = (from: number, to: number): number =>
      torque.subarray(from, to).reduce((sum, value) => sum + value, 0) / (to - from);
    const rest = mean(0, 1000);
    let best = -Infinity;
    for (let i = 0; i + 25 <= torque.length; i++) best = Math.max(best, mean(i, i + 25));
    expect(Math.abs(effort.peak.net.value - (best - rest))).toBeLessThan(0.3);
    expect(Math.abs(effort.rest.value - rest)).toBeLessThan(0.3);
  });

  test('a hold while the plate turns is one effort: the wild sample at -40 N.m is no peak, and the moved rest is said', () => {
    expect(Math.min(...torqueOf('turned-hold'))).toBeLessThan(-40);
    const { efforts, polarity } = effortsOf('turned-hold');
    expect(polarity).toEqual({ sign: 1, clear: true });
    expect(efforts).toHaveLength(1);
    const [{ peak, acceptance }] = efforts;
    expect(peak.gross.value).toBeGreaterThan(25);
    expect(peak.gross.value).toBeLessThan(33);
    expect(acceptance.findings.find(({ code }) => code === 'tare-error')!.met).toBe('no');
  });
});
