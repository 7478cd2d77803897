import type { AssessmentRequest, Report, Trace } from '@surae/analysis';
import { protocolFingerprint } from '@surae/analysis';
import type { Visit } from '@surae/casebook';
import { LEGS, type Leg } from '@surae/guidance';
import { FLOOR, SAFETY_LIST_VERSION } from '@surae/shared';
import type { RecordStore } from '@surae/storage';
import { assessSet } from '../../result/assessment.ts';
import { setResult } from '../../result/set-result.ts';
import { PastClock } from '../past-clock.ts';
import { recordedStream } from '../recorded-stream.ts';
import { CourseBook } from './course-book.ts';
import { COURSE_CAST, type CourseCast, courseDays, testEvery, visitEvery } from './course-cast.ts';
import { clinicianPlan, clinicianTold } from './course-clinician.ts';
import { CourseWeeks, type KeptLine } from './course-weeks.ts';
import { endTold, historyTold, type LegsToday, type LegToday, ladderTold, soreIn, soreTold } from './visit-told.ts';

/** What the courses are written into, and assessed by. */
export interface CoursesOptions {
  readonly store: RecordStore;
  readonly final: (trace: Trace, request: AssessmentRequest) => Promise<Report>;
  readonly now: Date;
  /** those to write; everybody of the demo when left out */
  readonly cast?: readonly CourseCast[];
  /** called after each person */
  readonly told: (done: number, of: number) => void;
}

const dayMs = 86_400_000;
const minuteMs = 60_000;

/** Writes the invented people with twelve weeks each, whoever of them is not there yet: the last visit is today, and stands at its plan. */
export async function addCourses({ store, final, now, told, cast = COURSE_CAST }: CoursesOptions): Promise<void> {
  const clock = new PastClock(-now.getTimezoneOffset());
  const book = new CourseBook(store, clock);
  const there = new Set((await book.book.people()).filter(({ demo }) => demo).map(({ name }) => name));
  const open = cast.filter(({ person }) => !there.has(person.name));
  told(0, open.length);
  for (const [done, one] of open.entries()) {
    await new Course(book, one, now.getTime(), final).write();
    told(done + 1, open.length);
  }
}

/** One course as it is written, day by day. */
class Course {
  private readonly book: CourseBook;
  private readonly cast: CourseCast;
  private readonly nowMs: number;
  private readonly final: CoursesOptions['final'];
  private readonly weeks: CourseWeeks;
  private personId = '';
  private plan: readonly KeptLine[] = [];

  constructor(book: CourseBook, cast: CourseCast, nowMs: number, final: CoursesOptions['final']) {
    this.book = book;
    this.cast = cast;
    this.nowMs = nowMs;
    this.final = final;
    this.weeks = new CourseWeeks(cast);
  }

  private readonly on = (day: number): string => {
    this.at(day);
    return this.book.clock.isoNow().slice(0, 10);
  };

  private at(day: number): void {
    this.book.clock.nowMs = this.nowMs - (courseDays - day) * dayMs;
  }

  async write(): Promise<void> {
    const { book, weeks, cast } = this;
    this.at(0);
    this.personId = await book.begin(cast.person);
    const first = weeks.runsBefore(this.on).map((one) => book.ofDay(this.personId, one));
    this.at(0);
    await book.add([...first, book.document('episode', this.personId, this.episode())]);
    let kept: Parameters<CourseBook['add']>[0] = [];
    for (let day = 0; day <= courseDays; day += 1) {
      const on = this.on(day);
      kept = [...kept, ...weeks.morning(day, on).map((one) => book.ofDay(this.personId, one))];
      if (day % visitEvery === 0 || cast.called?.includes(day) === true) {
        await book.add(kept);
        kept = [];
        await this.visit(day);
      }
      if (day === courseDays) break;
      // what is held back is not done
      const plan = weeks.isLocked(day) ? [] : this.plan;
      kept = [...kept, ...weeks.train(day, on, plan).map((one) => book.ofDay(this.personId, one))];
    }
  }

  private episode(): object {
    const { story, goal, goalDay } = this.cast;
    const { sore, began } = { sore: soreTold(this.weeks.person), began: this.on(-60).slice(0, 7) };
    const goalBy = goalDay === undefined ? {} : { goalBy: this.on(goalDay) };
    this.at(0);
    return { sore, onset: 'gradual', began, over: null, story, goal, loads: null, ...goalBy };
  }

  private async visit(day: number): Promise<void> {
    const { book, weeks } = this;
    const today = this.on(day);
    const legs = weeks.look(day);
    const isTested = day % (visitEvery * testEvery) === 0;
    const [begun] = await book.add([book.document('visit', this.personId, { personId: this.personId })]);
    const id = begun!.id;
    const isLocked = weeks.isLocked(day);
    const ticked = isLocked ? [weeks.person.line!.code] : [];
    const safety = { listVersion: SAFETY_LIST_VERSION, seenWhole: true, ticked, overridden: [] };
    await book.add([
      book.event(id, { kind: 'visit-sore', sore: soreTold(weeks.person) }),
      book.event(id, { kind: 'visit-history', history: historyTold(weeks.person, legs) }),
      book.event(id, { kind: 'visit-ladder', ladder: ladderTold(legs) }),
      book.event(id, { kind: 'visit-safety', safety }),
      ...(this.cast.notes ?? [])
        .filter((note) => note.day === day)
        .map(({ text }) => book.document('note', this.personId, { on: today, text })),
    ]);
    // nobody is tested while a line of the list keeps from it
    if (isTested && !isLocked) await this.test(id, legs);
    // why sessions were left out is still to be asked today
    const told = clinicianTold(book.person(), this.ofId(id), today).filter(
      ({ fact }) => day < courseDays || fact !== 'missed-asked',
    );
    const answers = told.map((one) => book.event(id, { kind: 'fact-told', ...one }));
    await book.add([...answers, book.event(id, { kind: 'result-seen' })]);
    if (day < courseDays) await this.planned(id, today);
  }

  private ofId(id: string): Visit {
    return this.book.person().visits.find(({ visit }) => visit.id === id)!.visit;
  }

  private async planned(id: string, today: string): Promise<void> {
    const { book } = this;
    const visit = this.ofId(id);
    const items = clinicianPlan(book.person(), visit, today);
    book.clock.nowMs += 10 * minuteMs;
    const ids = items === null ? [] : await book.keepPlan(visit, items);
    if (items !== null) this.plan = items.map((body, at) => ({ id: ids[at]!, body }));
    await book.add([
      book.event(id, { kind: 'visit-plan', planItemIds: ids }),
      book.event(id, { kind: 'visit-closed', how: 'print', lines: [] }),
    ]);
  }

  /** Raises of both legs on the floor: taps of a simulated person, the leg that is not sore first. */
  private async test(id: string, legs: LegsToday): Promise<void> {
    const sore = soreIn(this.weeks.person);
    const order = LEGS.toSorted((one, other) => Number(sore.includes(one)) - Number(sore.includes(other)));
    // what could not be done once is not tested
    const tested = order.filter((leg) => legs[leg].found.raises >= 1);
    for (const [at, leg] of tested.entries()) {
      if (at > 0) await this.book.add([this.book.event(id, { kind: 'rest-over', restS: 180 })]);
      await this.set(id, leg, legs[leg]);
    }
  }

  private async set(visitId: string, side: Leg, told: LegToday): Promise<void> {
    const { book } = this;
    const { raises } = told.found;
    const cycleS = FLOOR.parameters.cycleTarget.value ?? 2;
    const timesS = Float64Array.from({ length: raises + 2 }, (_, i) => cycleS * i);
    const samples = timesS.map((_, i) => (i === 0 || i === raises + 1 ? 0 : 1));
    const writer = await book.book.openBytes(visitId, 'set');
    const channels = [{ quantity: 'tap', axis: null, samples }] as const;
    const bytesId = await recordedStream(writer, { timesS, channels });
    const rule = FLOOR.parameters.referenceRule.value;
    const choice = {
      side,
      protocolId: FLOOR.id,
      protocolFingerprint: protocolFingerprint(FLOOR, 'hand', rule),
      placement: 'hand',
      origin: 'simulated',
    } as const;
    const setId = await book.beginSet(visitId, { kind: 'set-begun', choice, bytesId });
    book.clock.nowMs += minuteMs;
    const end = endTold(told);
    await book.add([
      book.event(visitId, { kind: 'set-stopped', setId, liveCount: raises }),
      book.event(visitId, { kind: 'set-end', setId, end }),
    ]);
    const person = book.person();
    const set = this.ofId(visitId).sets.find((one) => one.id === setId)!;
    const bytes = await book.bytes(bytesId);
    const report = await assessSet(set, person.person, bytes, this.final);
    await book.add([book.event(visitId, setResult(setId, report))]);
    book.clock.nowMs += 3 * minuteMs;
  }
}
