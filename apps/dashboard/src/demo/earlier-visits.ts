import {
  type AssessmentRequest,
  counterInput,
  type PullReport,
  type PullTestRequest,
  protocolFingerprint,
  type Report,
  type Side,
  type Trace,
} from '@surae/analysis';
import {
  type IrritabilityTold,
  noHistory,
  type Person,
  type SoreSides,
  type VisitHistory,
  type VisitSet,
} from '@surae/casebook';
import { type EndReason, FLOOR, INCLINE_10, type Protocol, SAFETY_LIST_VERSION } from '@surae/shared';
import { simulateSet } from '@surae/simulation';
import type { RecordStore } from '@surae/storage';
import { VisitBook } from '../journey/visit-book.ts';
import { assessSet } from '../result/assessment.ts';
import { setResult } from '../result/set-result.ts';
import { addPushes, type DemoPushes } from './earlier-pushes.ts';
import { PastClock } from './past-clock.ts';
import { recordedStream } from './recorded-stream.ts';

/** What one leg of an invented person is to do: the raises are simulated, the answers after it are invented. */
interface DemoSet {
  readonly raises: number;
  readonly reason?: EndReason;
  readonly pain?: number;
  readonly exertion?: number;
}

interface DemoVisit {
  readonly weeksAgo: number;
  readonly protocol: Protocol;
  readonly placement: 'heel' | 'foot';
  readonly sore: SoreSides;
  readonly irritability?: Partial<Readonly<Record<Side, IrritabilityTold>>>;
  readonly left: DemoSet;
  readonly right: DemoSet;
  /** after the raises; left out where there are none */
  readonly pushes?: DemoPushes;
}

const moderate: IrritabilityTold = {
  provokedBy: 'single-raises-or-long-walk',
  peakPain: 4,
  settles: 'by-next-morning',
  stiffness: '10-to-30-minutes',
  restPain: 'none',
  trend: 'steady-or-better',
  flare: 'no',
  painNow: 1,
};
const oneSide: SoreSides = { left: 'no', right: 'mid-portion' };
const bothSides: SoreSides = { left: 'insertion', right: 'insertion' };
const noSide: SoreSides = { left: 'no', right: 'no' };

function onBoard(weeksAgo: number, left: number, right: number, pain: number): DemoVisit {
  const irritability = { right: { ...moderate, peakPain: pain } };
  const sets = { left: { raises: left, pain: 0 }, right: { raises: right, pain } };
  return { weeksAgo, protocol: INCLINE_10, placement: 'heel', sore: oneSide, irritability, ...sets };
}

/** Earlier visits by the name of the invented person; any likeness is chance. */
const demo: Readonly<Record<string, readonly DemoVisit[]>> = {
  'Ines Okafor-Lind': [
    onBoard(24, 27, 15, 4),
    onBoard(18, 26, 23, 3),
    onBoard(12, 28, 24, 3),
    onBoard(6, 27, 29, 2),
    onBoard(1, 28, 30, 1),
  ],
  'Tomasz Brelo': [
    {
      weeksAgo: 8,
      protocol: FLOOR,
      placement: 'heel',
      sore: bothSides,
      irritability: {
        left: { ...moderate, peakPain: 6, painNow: 2 },
        right: { ...moderate, provokedBy: 'single-raises-or-long-walk', peakPain: 3 },
      },
      left: { raises: 9, reason: 'pain', pain: 6, exertion: 6 },
      right: { raises: 16, pain: 3 },
    },
    {
      weeksAgo: 2,
      protocol: FLOOR,
      placement: 'heel',
      sore: bothSides,
      irritability: { left: moderate, right: { ...moderate, peakPain: 2, trend: 'worsening' } },
      left: { raises: 13, pain: 3 },
      right: { raises: 20, pain: 2 },
    },
  ],
  'Mirela Haddad': [
    {
      weeksAgo: 10,
      protocol: FLOOR,
      placement: 'foot',
      sore: noSide,
      left: { raises: 24 },
      right: { raises: 25 },
      pushes: { seed: 2, trials: [0, 1, 2, 3] },
    },
    {
      weeksAgo: 2,
      protocol: INCLINE_10,
      placement: 'heel',
      sore: noSide,
      left: { raises: 38 },
      right: { raises: 38 },
      pushes: { seed: 2, trials: [4, 5, 6, 7] },
    },
  ],
};

export interface EarlierVisitsOptions {
  readonly store: RecordStore;
  readonly final: (trace: Trace, request: AssessmentRequest) => Promise<Report>;
  readonly pulls: (trace: Trace, request: PullTestRequest) => Promise<PullReport>;
  readonly now: Date;
  /** called after each visit */
  readonly told: (done: number, of: number) => void;
}

const weekMs = 7 * 24 * 3_600_000;
const minuteMs = 60_000;

function historyOf({ irritability }: DemoVisit): VisitHistory {
  const leg = (side: Side): VisitHistory['legs'][Side] => ({
    injury: 'none',
    confirmed: null,
    irritability: irritability?.[side] ?? noHistory.legs[side].irritability,
  });
  return { legs: { left: leg('left'), right: leg('right') }, about: [] };
}

/** Simulates and assesses earlier visits of the invented people who have none, each set as if it had been recorded then. */
export async function addEarlierVisits({ store, final, pulls, now, told }: EarlierVisitsOptions): Promise<void> {
  const clock = new PastClock(-now.getTimezoneOffset());
  const book = new VisitBook(store, clock, 'demo');
  const people = (await book.people()).filter((person) => person.demo && Object.hasOwn(demo, person.name));
  const visits = people.flatMap((person) => demo[person.name]!.map((visit) => ({ person, visit })));
  told(0, visits.length);
  let seed = 1;
  for (const [done, { person, visit }] of visits.entries()) {
    clock.nowMs = now.getTime() - visit.weeksAgo * weekMs;
    const id = await book.beginVisit(person.id);
    await book.record(id, { kind: 'visit-sore', sore: visit.sore });
    await book.record(id, { kind: 'visit-history', history: historyOf(visit) });
    const safety = { listVersion: SAFETY_LIST_VERSION, seenWhole: true, ticked: [], overridden: [] };
    await book.record(id, { kind: 'visit-safety', safety });
    for (const side of ['left', 'right'] as const) {
      if (side === 'right') await book.record(id, { kind: 'rest-over', restS: 180 });
      await addSet(book, store, clock, { id, person, visit, side, seed: (seed += 1) }, final);
    }
    if (visit.pushes !== undefined) await addPushes({ book, store, clock, pulls }, id, person, visit.pushes);
    await book.record(id, { kind: 'visit-closed' });
    told(done + 1, visits.length);
  }
}

interface SetPlan {
  readonly id: string;
  readonly person: Person;
  readonly visit: DemoVisit;
  readonly side: Side;
  readonly seed: number;
}

async function addSet(
  book: VisitBook,
  store: RecordStore,
  clock: PastClock,
  { id, person, visit, side, seed }: SetPlan,
  final: EarlierVisitsOptions['final'],
): Promise<void> {
  const { raises, reason = 'fatigue', pain = 0, exertion = 9 } = visit[side];
  const { placement, protocol } = visit;
  const { trace } = simulateSet({
    placement,
    level: 'clean',
    seed,
    count: raises,
    cycleS: protocol.parameters.cycleTarget.value ?? 2,
    faults: { fatigueLoss: 0.2, ownTempoChance: 0, longHoldChance: 0 },
    ...(person.heelLeverM === null ? {} : { heelLeverM: person.heelLeverM }),
    // one person has one height on both legs, more or less
    person: { topPitchRad: 0.6, ...(person.bodyMassKg === null ? {} : { bodyMassKg: person.bodyMassKg }) },
  });
  const bytesId = await recordedStream(
    await book.openBytes(id, 'set'),
    counterInput({ groups: trace.groups }, placement),
  );
  const rule = protocol.parameters.referenceRule.value;
  const choice = {
    side,
    protocolId: protocol.id,
    protocolFingerprint: protocolFingerprint(protocol, placement, rule),
    placement,
    origin: 'simulated',
  } as const;
  const setId = await book.record(id, { kind: 'set-begun', choice, bytesId });
  clock.nowMs += minuteMs;
  const end = { reason, painPeak: pain, exertion, painSharp: false };
  const begun = (await book.visit(id))!.sets.find((set) => set.id === setId)!;
  const set: VisitSet = { ...begun, stoppedAt: clock.isoNow(), end };
  const report = await assessSet(set, person, await store.bytes(bytesId), final);
  await book.record(id, { kind: 'set-stopped', setId, liveCount: report.count.attempted });
  await book.record(id, { kind: 'set-end', setId, end });
  await book.record(id, setResult(setId, report));
  clock.nowMs += 3 * minuteMs;
}
