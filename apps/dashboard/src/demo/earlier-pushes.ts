import { type PullReport, type PullTestRequest, pullFingerprint, type Side, type Trace } from '@surae/analysis';
import { type Person, pullSetOf } from '@surae/casebook';
import { SEATED_PULL } from '@surae/shared';
import { simulatePullTrial } from '@surae/simulation';
import type { RecordStore } from '@surae/storage';
import type { VisitBook } from '../journey/visit-book.ts';
import { assessPullSet } from '../result/pull-assessment.ts';
import { pullResult } from '../result/pull-kept.ts';
import type { PastClock } from './past-clock.ts';
import { recordedStream } from './recorded-stream.ts';

/** Pushes of an invented person on one visit: which person of the simulation, and which of the trials that it has in store. */
export interface DemoPushes {
  readonly seed: number;
  readonly trials: readonly number[];
}

/** What the pushes are kept in, and assessed by. */
export interface PushesKept {
  readonly book: VisitBook;
  readonly store: RecordStore;
  readonly clock: PastClock;
  readonly pulls: (trace: Trace, request: PullTestRequest) => Promise<PullReport>;
}

const restS = 60;
const betweenLegsS = 180;
const placement = 'platform';

/** Simulates, records and assesses the pushes of both legs, event by event as a visit does. */
export async function addPushes(kept: PushesKept, visitId: string, person: Person, pushes: DemoPushes): Promise<void> {
  const { book, clock } = kept;
  await book.record(visitId, { kind: 'visit-test', test: 'isometric' });
  for (const side of ['left', 'right'] as const) {
    clock.nowMs += betweenLegsS * 1000;
    if (side === 'right') await book.record(visitId, { kind: 'pull-rest-over', restS: betweenLegsS });
    await addLeg(kept, visitId, person, side, pushes);
  }
}

async function addLeg(
  { book, store, clock, pulls }: PushesKept,
  visitId: string,
  person: Person,
  side: Side,
  { seed, trials }: DemoPushes,
): Promise<void> {
  const choice = {
    side,
    protocolId: SEATED_PULL.id,
    protocolFingerprint: pullFingerprint(SEATED_PULL, placement),
    placement,
    origin: 'simulated',
    forefootLeverM: null,
    seed,
  } as const;
  const setId = await book.record(visitId, { kind: 'pull-begun', choice });
  await book.record(visitId, { kind: 'pull-warm-up', setId, how: 'done' });
  const body = person.bodyMassKg === null ? {} : { bodyMassKg: person.bodyMassKg };
  let fromS = 0;
  for (const [place, trial] of trials.entries()) {
    const { groups } = simulatePullTrial({ seed, side, placement, trial, ...body });
    const samples = groups[0]!;
    const bytesId = await recordedStream(await book.openBytes(visitId, 'trial'), samples, fromS);
    const rest = place === 0 ? null : restS;
    const trialId = await book.record(visitId, { kind: 'trial-begun', setId, bytesId, fromS, restS: rest });
    const lastS = samples.timesS[samples.timesS.length - 1] ?? 0;
    const toS = fromS + lastS;
    clock.nowMs += 1000 * lastS;
    await book.record(visitId, { kind: 'trial-stopped', setId, trialId, toS, cutOff: false, suddenDrop: false });
    clock.nowMs += 1000 * restS;
    fromS = toS + restS;
  }
  await book.record(visitId, { kind: 'pull-stopped', setId });
  const end = { reason: 'trials-done', painPeak: 0, exertion: 9, painSharp: false } as const;
  await book.record(visitId, { kind: 'pull-end', setId, end });
  const set = pullSetOf((await book.visit(visitId))!, side)!;
  const report = await assessPullSet(set, person, (id) => store.bytes(id), pulls);
  await book.record(visitId, pullResult(setId, report));
}
