import { type PullPlacement, type PullReport, protocolFingerprint, type Report, type Side } from '@surae/analysis';
import {
  type IrritabilityTold,
  type LegHistory,
  noHistory,
  type Person,
  type SoreSides,
  type VisitHistory,
} from '@surae/casebook';
import { type EndReason, INCLINE_10, type Protocol, SAFETY_LIST_VERSION } from '@surae/shared';
import type { OwnedDocument, RecordStore } from '@surae/storage';
import { VisitBook } from '../../apps/dashboard/src/journey/visit-book.ts';
import { madeReport, sureCount } from './made-visit.ts';
import { testedPull } from './tested-pull.ts';

/** Everything that is asked before a test, answered so that nothing stands against a comparison. */
export const ALL_TOLD: VisitHistory = {
  legs: {
    left: { ...noHistory.legs.left, injury: 'none' },
    right: { ...noHistory.legs.right, injury: 'none' },
  },
  about: [],
};

/** Every question about how irritable a tendon is, answered by the moderate answer. */
export const MODERATE: IrritabilityTold = {
  provokedBy: 'single-raises-or-long-walk',
  peakPain: 4,
  settles: 'by-next-morning',
  stiffness: '10-to-30-minutes',
  restPain: 'none',
  trend: 'steady-or-better',
  flare: 'no',
  painNow: 1,
};

/** What was told of a leg, changed in a few answers. */
export function legTold(injury: LegHistory['injury'], irritability: Partial<IrritabilityTold> = {}): LegHistory {
  return { injury, confirmed: null, irritability: { ...noHistory.legs.left.irritability, ...irritability } };
}

/** What one leg did on a visit that is told. */
export interface ToldSet {
  readonly count: number;
  /** a simulated person, unless it is said that somebody was there */
  readonly origin?: 'simulated' | 'live';
  readonly reason?: EndReason;
  readonly pain?: number | null;
  readonly exertion?: number | null;
  readonly protocol?: Protocol;
  readonly changes?: Partial<Report>;
}

/** What one leg pushed on a visit that is told: three seated ramps over a resting leg of 85 N, the best of this net force. */
export interface ToldPush {
  readonly netN: number;
  readonly placement?: PullPlacement;
  readonly reason?: EndReason;
  readonly pain?: number | null;
  readonly changes?: Partial<PullReport>;
}

/** A visit that is told: what is left out is answered so that nothing stands against a comparison. */
export interface ToldVisit {
  readonly day: string;
  readonly sore?: SoreSides;
  /** null is not asked */
  readonly history?: VisitHistory | null;
  /** null is not gone through */
  readonly ticked?: readonly string[] | null;
  readonly restMinutes?: number;
  /** not closed */
  readonly open?: boolean;
  readonly left?: ToldSet;
  readonly right?: ToldSet;
  /** after the raises, where there are any */
  readonly pushes?: Readonly<Partial<Record<Side, ToldPush>>>;
}

/** A report of a set with this count, by the protocol, of an effort that showed capacity unless it ended otherwise. */
export function toldReport(side: Side, { count, reason = 'fatigue', protocol = INCLINE_10, changes }: ToldSet): Report {
  const made = madeReport(side, sureCount(count), reason);
  const rule = protocol.parameters.referenceRule.value;
  const { id, version } = protocol;
  return {
    ...made,
    protocol: { id, version, fingerprint: protocolFingerprint(protocol, 'heel', rule) },
    effort:
      made.end.class === 'capacity'
        ? { good: 'yes', signs: ['height-drop'], reason: 'signs-of-fatigue' }
        : { good: 'no', signs: [], reason: 'not-a-capacity-test' },
    measures: { ...made.measures, fatigue: { ...made.measures.fatigue, dropFraction: 0.2 } },
    ...changes,
  };
}

/** A clock that is set by hand, in minutes of one morning. */
class MorningClock {
  day = '2026-03-01';
  minute = 0;

  isoNow(): string {
    const minutes = Math.floor(this.minute);
    const seconds = Math.round((this.minute - minutes) * 60);
    return `${this.day}T09:${String(minutes).padStart(2, '0')}:${String(seconds).padStart(2, '0')}.000+01:00`;
  }
}

/** Writes a person and their visits into a store, event by event, as a clinic would have; gives the ids of the visits. */
export async function tellVisits(
  store: RecordStore,
  person: Omit<Person, 'id' | 'demo'>,
  visits: readonly ToldVisit[],
): Promise<readonly string[]> {
  const clock = new MorningClock();
  const book = new VisitBook(store, clock, 'test');
  const { id: personId } = await book.addPerson({ ...person, demo: false });
  const ids: string[] = [];
  for (const visit of visits) {
    clock.day = visit.day;
    clock.minute = 0;
    const id = await book.beginVisit(personId);
    await book.record(id, { kind: 'visit-sore', sore: visit.sore ?? { left: 'no', right: 'mid-portion' } });
    if (visit.history !== null) {
      await book.record(id, { kind: 'visit-history', history: visit.history ?? ALL_TOLD });
    }
    if (visit.ticked !== null) {
      const ticked = visit.ticked ?? [];
      const safety = { listVersion: SAFETY_LIST_VERSION, seenWhole: true, ticked, overridden: [] };
      await book.record(id, { kind: 'visit-safety', safety });
    }
    await tellSet(book, clock, id, 'left', visit.left);
    clock.minute += visit.restMinutes ?? 3;
    await tellSet(book, clock, id, 'right', visit.right);
    await book.record(id, { kind: 'rest-over', restS: 180 });
    await tellPushes(book, clock, id, visit);
    if (visit.open !== true) await book.record(id, { kind: 'visit-closed' });
    ids.push(id);
  }
  return ids;
}

async function tellSet(
  book: VisitBook,
  clock: MorningClock,
  visitId: string,
  side: Side,
  told: ToldSet | undefined,
): Promise<void> {
  if (told === undefined) return;
  const report = toldReport(side, told);
  const { id: protocolId, fingerprint: protocolFingerprint } = report.protocol;
  const { origin = 'simulated' } = told;
  const choice = { side, protocolId, protocolFingerprint, placement: report.placement, origin };
  const setId = await book.record(visitId, { kind: 'set-begun', choice, bytesId: `none-${side}` });
  clock.minute += 1;
  await book.record(visitId, { kind: 'set-stopped', setId, liveCount: report.count.attempted });
  const { reason = 'fatigue', pain = 2, exertion = 9 } = told;
  await book.record(visitId, {
    kind: 'set-end',
    setId,
    end: { reason, painPeak: pain, exertion, painSharp: false },
  });
  await book.record(visitId, { kind: 'set-result', setId, report, settingsHash: 'made' });
}

async function tellPushes(
  book: VisitBook,
  clock: MorningClock,
  visitId: string,
  { pushes, restMinutes = 3 }: ToldVisit,
): Promise<void> {
  if (pushes === undefined) return;
  await book.record(visitId, { kind: 'visit-test', test: 'isometric' });
  clock.minute += 5;
  await tellPush(book, clock, visitId, 'left', pushes.left);
  clock.minute += restMinutes;
  await tellPush(book, clock, visitId, 'right', pushes.right);
  await book.record(visitId, { kind: 'pull-rest-over', restS: 60 * restMinutes });
}

async function tellPush(
  book: VisitBook,
  clock: MorningClock,
  visitId: string,
  side: Side,
  told: ToldPush | undefined,
): Promise<void> {
  if (told === undefined) return;
  const { netN, placement = 'platform', reason = 'trials-done', pain = 2, changes } = told;
  const report = { ...testedPull(side, netN, {}, { placement, context: { endReason: reason } }).report, ...changes };
  const { id: protocolId, fingerprint: protocolFingerprint } = report.protocol;
  const origin = { origin: 'simulated', forefootLeverM: 0.13, seed: 1 } as const;
  const choice = { side, protocolId, protocolFingerprint, placement, ...origin };
  const setId = await book.record(visitId, { kind: 'pull-begun', choice });
  clock.minute += 4;
  await book.record(visitId, { kind: 'pull-stopped', setId });
  const end = { reason, painPeak: pain, exertion: 9, painSharp: false };
  await book.record(visitId, { kind: 'pull-end', setId, end });
  await book.record(visitId, { kind: 'pull-report', setId, report, settingsHash: 'made', software: 'made' });
}

/** Every document of people and visits in a store, in order. */
export async function documentsOf(store: RecordStore): Promise<readonly OwnedDocument[]> {
  return (await store.changesSince(null, Number.MAX_SAFE_INTEGER)).documents;
}
