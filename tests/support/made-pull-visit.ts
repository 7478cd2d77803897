import { assessPulls, defaultSettings, type PullReport, pullFingerprint, type Side } from '@surae/analysis';
import type { PullChoice, PullSet, PullTrial, Visit } from '@surae/casebook';
import { encodeBlock } from '@surae/records';
import { SEATED_PULL } from '@surae/shared';
import { simulatePullTrial } from '@surae/simulation';
import type { StoredBytes } from '@surae/storage';
import { pullRecording, pullRequest } from '../../apps/dashboard/src/result/pull-assessment.ts';
import { madeVisit } from './made-visit.ts';

/** What a tester chooses for a leg of a simulated person. */
export function madeChoice(side: Side, changes: Partial<PullChoice> = {}): PullChoice {
  return {
    side,
    protocolId: SEATED_PULL.id,
    protocolFingerprint: pullFingerprint(SEATED_PULL, 'platform'),
    placement: 'platform',
    origin: 'simulated',
    forefootLeverM: null,
    seed: 4,
    ...changes,
  };
}

/** The bytes of a trial as a recording leaves them: blocks of half a second, its times from where it lies in the leg. */
export function trialBytes(choice: PullChoice, trial: number, fromS: number): StoredBytes {
  const request = { seed: choice.seed ?? 0, side: choice.side, placement: choice.placement, trial, bodyMassKg: 70 };
  const [{ timesS, channels }] = simulatePullTrial(request).groups;
  const pieces: Uint8Array[] = [];
  for (let at = 0; at < timesS.length; at += 100) {
    pieces.push(
      encodeBlock({
        firstIndex: at,
        hostTimeMs: 0,
        deviceTimesS: timesS.slice(at, at + 100).map((timeS) => timeS + fromS),
        channels: channels.map(({ quantity, axis, samples }) => ({
          quantity,
          axis,
          unit: 'N',
          samples: samples.slice(at, at + 100),
        })),
      }),
    );
  }
  return { id: `bytes-${choice.side}-${trial}`, pieces, sha256: null };
}

/** A trial that was recorded whole, a minute after the one before. */
export function madeTrial(side: Side, trial: number, changes: Partial<PullTrial> = {}): PullTrial {
  const fromS = 70 * trial;
  return {
    id: `trial-${side}-${trial}`,
    bytesId: `bytes-${side}-${trial}`,
    begunAt: '2026-03-01T09:30:12.000+01:00',
    restS: trial === 0 ? null : 60,
    fromS,
    toS: fromS + 11,
    stoppedAt: '2026-03-01T09:30:23.000+01:00',
    cutOff: false,
    suddenDrop: false,
    liftedAtS: [],
    ...changes,
  };
}

/** The trials of a leg as they stand after the leg was ended and its end was told. */
export function madePullSet(side: Side, trials: readonly PullTrial[], changes: Partial<PullSet> = {}): PullSet {
  return {
    id: `pull-${side}`,
    choice: madeChoice(side),
    begunAt: '2026-03-01T09:30:00.000+01:00',
    warmUp: 'done',
    trials,
    stoppedAt: '2026-03-01T09:34:00.000+01:00',
    end: { reason: 'trials-done', painPeak: 0, exertion: 9 },
    report: null,
    setAside: false,
    setAsideWhy: null,
    ...changes,
  };
}

/** Reads the bytes of the trials of a leg as a store would give them. */
export function bytesOf(set: PullSet): (bytesId: string) => StoredBytes | undefined {
  return (bytesId) => {
    const at = set.trials.findIndex((trial) => trial.bytesId === bytesId);
    return at < 0 ? undefined : trialBytes(set.choice, at, set.trials[at].fromS);
  };
}

/** The report of the trials of a leg, as the analysis gives it. */
export function pullReportOf(set: PullSet, bodyMassKg: number | null = 70): PullReport {
  const { groups } = pullRecording(set, bytesOf(set));
  return assessPulls({ groups }, pullRequest(set, { bodyMassKg }), defaultSettings());
}

/** A leg with three whole trials and its report. */
export function donePullSet(side: Side, changes: Partial<PullSet> = {}): PullSet {
  const set = madePullSet(
    side,
    [0, 1, 2].map((trial) => madeTrial(side, trial)),
    changes,
  );
  return { ...set, report: pullReportOf(set) };
}

/** A visit with these legs and nothing else told. */
export function madePullVisit(...pulls: PullSet[]): Visit {
  return { ...madeVisit(), tests: ['isometric'], pulls };
}
