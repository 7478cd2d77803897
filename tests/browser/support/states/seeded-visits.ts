import { counterInput, protocolFingerprint, pullFingerprint, type Side } from '@surae/analysis';
import { noHistory, type SoreSides, type VisitEvent } from '@surae/casebook';
import { type EndReason, INCLINE_10, SAFETY_LIST_VERSION, SEATED_PULL } from '@surae/shared';
import { simulatePullTrial, simulateSet } from '@surae/simulation';
import { recordedStream } from '../../../../apps/dashboard/src/demo/recorded-stream.ts';
import type { VisitBook } from '../../../../apps/dashboard/src/journey/visit-book.ts';
import { MODERATE, toldReport } from '../../../support/told-visit.ts';

const protocol = INCLINE_10;
const heel = {
  protocolId: protocol.id,
  protocolFingerprint: protocolFingerprint(protocol, 'heel', protocol.parameters.referenceRule.value),
  placement: 'heel',
  origin: 'simulated',
} as const;
const plate = {
  protocolId: SEATED_PULL.id,
  protocolFingerprint: pullFingerprint(SEATED_PULL, 'platform'),
  placement: 'platform',
  origin: 'simulated',
  forefootLeverM: null,
  seed: 2,
} as const;

/** A visit that is written event by event, as the dashboard writes it, up to the step that a page is to stand at. */
export class SeededVisit {
  private readonly book: VisitBook;
  readonly id: string;

  private constructor(book: VisitBook, id: string) {
    this.book = book;
    this.id = id;
  }

  /** A visit of somebody of the book that was begun. */
  static async begin(book: VisitBook, personId: string): Promise<SeededVisit> {
    return new SeededVisit(book, await book.beginVisit(personId));
  }

  record(event: VisitEvent): Promise<string> {
    return this.book.record(this.id, event);
  }

  async sore(sore: SoreSides = { left: 'no', right: 'mid-portion' }, only?: Side): Promise<this> {
    await this.record({ kind: 'visit-sore', sore, ...(only === undefined ? {} : { only }) });
    return this;
  }

  async told(): Promise<this> {
    await this.record({ kind: 'visit-history', history: noHistory });
    return this;
  }

  async safe(ticked: readonly string[] = [], seenWhole = true): Promise<this> {
    const safety = { listVersion: SAFETY_LIST_VERSION, seenWhole, ticked, overridden: [] };
    await this.record({ kind: 'visit-safety', safety });
    return this;
  }

  /** What is asked before hops, so that every condition is met where both legs did their raises before. */
  async hopsTold(): Promise<this> {
    const leg = { ...noHistory.legs.left, lastFlare: 'longer-ago-or-never' } as const;
    await this.record({ kind: 'visit-history', history: { legs: { left: leg, right: leg }, about: null } });
    const tried = { answers: [0, 0, 1, 1, 2], sudden: null };
    await this.record({ kind: 'visit-ladder', ladder: { left: tried, right: tried } });
    return this;
  }

  /** The test of the visit; the step that asks for it is passed. */
  async chose(): Promise<this> {
    await this.record({ kind: 'visit-choice', choice: { test: 'heel-raise', protocolId: protocol.id, from: 'other' } });
    return this;
  }

  /** Every question before a test. */
  async asked(sore?: SoreSides, only?: Side): Promise<this> {
    await this.sore(sore, only);
    await this.told();
    return this.safe();
  }

  /** A set that was recorded and stopped; how it ended is not told. Gives its id. */
  async stopped(side: Side, sourceLost?: string): Promise<string> {
    const setId = await this.record({ kind: 'set-begun', choice: { side, ...heel }, bytesId: `none-${side}` });
    const lost = sourceLost === undefined ? {} : { sourceLost };
    await this.record({ kind: 'set-stopped', setId, liveCount: 20, ...lost });
    return setId;
  }

  /** A set with its end and a report. */
  async done(side: Side, reason: EndReason = 'fatigue', painPeak = 2): Promise<this> {
    const setId = await this.stopped(side);
    await this.record({ kind: 'set-end', setId, end: { reason, painPeak, exertion: 9, painSharp: false } });
    const report = toldReport(side, { count: 20, reason, protocol });
    await this.record({ kind: 'set-result', setId, report, settingsHash: 'made' });
    return this;
  }

  /** A set as `done` makes it, of a sensor on the foot that saw up there when it began. */
  async doneWorn(side: Side, up: readonly [number, number, number]): Promise<this> {
    const sensor = { route: 'serial', kindName: 'Invented', deviceName: 'port 1' } as const;
    const choice = { ...heel, side, placement: 'foot', origin: 'live' } as const;
    const setUp = { lights: [], zero: null, certificate: null, up };
    const told = { ...sensor, descriptionId: 'none', batteryPercent: null, names: {} };
    const begun = { kind: 'set-begun', choice: { ...choice, sensor: told, setUp }, bytesId: `none-${side}` } as const;
    const setId = await this.record(begun);
    await this.record({ kind: 'set-stopped', setId, liveCount: 20 });
    await this.record({
      kind: 'set-end',
      setId,
      end: { reason: 'fatigue', painPeak: 2, exertion: 9, painSharp: false },
    });
    const report = toldReport(side, { count: 20, reason: 'fatigue', protocol });
    await this.record({ kind: 'set-result', setId, report, settingsHash: 'made' });
    return this;
  }

  /** A set with its samples that was stopped; how it ended is not told. Gives its id. */
  async stoppedRecorded(side: Side, raises = 8): Promise<string> {
    const { trace } = simulateSet({ placement: 'heel', level: 'clean', seed: raises, count: raises });
    const bytesId = await recordedStream(
      await this.book.openBytes(this.id, 'set'),
      counterInput({ groups: trace.groups }, 'heel'),
    );
    const setId = await this.record({ kind: 'set-begun', choice: { side, ...heel }, bytesId });
    await this.record({ kind: 'set-stopped', setId, liveCount: raises });
    return setId;
  }

  /** The same with a verdict by hand about a movement that has another number in the report. */
  async judgedElsewhere(side: Side): Promise<this> {
    const setId = await this.stoppedRecorded(side);
    const verdict = { repetition: 2, topS: 0.5, criterion: null, verdict: 'no', why: 'other-fault' } as const;
    await this.record({ kind: 'verdict-by-hand', setId, ...verdict });
    return this;
  }

  /** A set with its samples and its end, which the page still has to assess. */
  async recorded(side: Side, raises = 8): Promise<this> {
    const setId = await this.stoppedRecorded(side, raises);
    await this.record({
      kind: 'set-end',
      setId,
      end: { reason: 'fatigue', painPeak: 1, exertion: 9, painSharp: false },
    });
    return this;
  }

  /** A set that was begun and never stopped, with its samples: the page was closed while it ran. Gives the id of its stream. */
  async cutOff(side: Side): Promise<string> {
    const { trace } = simulateSet({ placement: 'heel', level: 'clean', seed: 3, count: 4 });
    const samples = counterInput({ groups: trace.groups }, 'heel');
    const bytesId = await recordedStream(await this.book.openBytes(this.id, 'set'), samples);
    await this.record({ kind: 'set-begun', choice: { side, ...heel }, bytesId });
    return bytesId;
  }

  /** Practice raises of a leg that were begun and never stopped, with their samples. */
  async practiceCutOff(side: Side): Promise<this> {
    const { trace } = simulateSet({ placement: 'heel', level: 'clean', seed: 5, count: 2 });
    const samples = counterInput({ groups: trace.groups }, 'heel');
    const bytesId = await recordedStream(await this.book.openBytes(this.id, 'practice'), samples);
    await this.record({ kind: 'practice-begun', choice: { side, ...heel }, bytesId });
    return this;
  }

  async rested(): Promise<this> {
    await this.record({ kind: 'rest-over', restS: 180 });
    return this;
  }

  async pushes(): Promise<this> {
    await this.record({
      kind: 'visit-choice',
      choice: { test: 'isometric', protocolId: SEATED_PULL.id, from: 'other' },
    });
    return this;
  }

  /** A leg of pushes that was begun; gives its id. */
  pushesBegun(side: Side): Promise<string> {
    return this.record({ kind: 'pull-begun', choice: { side, ...plate } });
  }

  /** A leg of pushes with its warm-up and so many trials, each recorded whole; gives its id. */
  async trials(side: Side, count: number): Promise<string> {
    const setId = await this.pushesBegun(side);
    await this.record({ kind: 'pull-warm-up', setId, how: 'done' });
    let fromS = 0;
    for (let trial = 0; trial < count; trial += 1) {
      const { groups } = simulatePullTrial({ seed: 2, side, placement: 'platform', trial, bodyMassKg: 70 });
      const bytesId = await recordedStream(await this.book.openBytes(this.id, 'trial'), groups[0], fromS);
      const restS = trial === 0 ? null : 60;
      const trialId = await this.record({ kind: 'trial-begun', setId, bytesId, fromS, restS });
      const toS = fromS + (groups[0].timesS.at(-1) ?? 0);
      await this.record({ kind: 'trial-stopped', setId, trialId, toS, cutOff: false, suddenDrop: false });
      fromS = toS + 60;
    }
    return setId;
  }

  /** A leg of pushes from its warm-up to its end, which the page still has to assess. */
  async pushed(side: Side, reason: EndReason = 'trials-done', painPeak = 1): Promise<this> {
    const setId = await this.trials(side, 4);
    await this.record({ kind: 'pull-stopped', setId });
    await this.record({ kind: 'pull-end', setId, end: { reason, painPeak, exertion: 9, painSharp: false } });
    return this;
  }

  async pushesRested(): Promise<this> {
    await this.record({ kind: 'pull-rest-over', restS: 180 });
    return this;
  }

  /** What is asked of two legs that were there: the history of the sore ones, and tries before the test. */
  async examined(sore: SoreSides = { left: 'no', right: 'mid-portion' }, isGraded = true): Promise<this> {
    await this.sore(sore);
    const leg = (side: Side) => {
      const untold = noHistory.legs[side];
      return isGraded && sore[side] !== 'no' ? { ...untold, irritability: MODERATE } : untold;
    };
    const legs = { left: leg('left'), right: leg('right') };
    await this.record({ kind: 'visit-history', history: { legs, about: null } });
    const tried = { answers: [1, 1, 2, 3], sudden: null };
    await this.record({ kind: 'visit-ladder', ladder: { left: tried, right: tried } });
    return this.safe();
  }

  /** A set of somebody who was there, counted by a sensor on the heel. */
  async counted(side: Side, count: number): Promise<this> {
    const choice = { side, ...heel, origin: 'live' } as const;
    const setId = await this.record({ kind: 'set-begun', choice, bytesId: `none-${side}` });
    await this.record({ kind: 'set-stopped', setId, liveCount: count });
    const end = { reason: 'fatigue', painPeak: 3, exertion: 9, painSharp: false } as const;
    await this.record({ kind: 'set-end', setId, end });
    const report = toldReport(side, { count, reason: 'fatigue', protocol });
    await this.record({ kind: 'set-result', setId, report, settingsHash: 'made' });
    return this;
  }

  /** The result was looked at; the plan is asked. */
  async resultSeen(): Promise<this> {
    await this.record({ kind: 'result-seen' });
    return this;
  }

  /** No plan was noted; the visit is to be handed over. */
  async planned(): Promise<this> {
    await this.record({ kind: 'visit-plan', planItemIds: [] });
    return this;
  }

  async closed(): Promise<this> {
    await this.record({ kind: 'visit-closed' });
    return this;
  }
}
