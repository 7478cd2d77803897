import {
  type CasebookPerson,
  casebookOf,
  type PlanItem,
  type Visit,
  type VisitEvent,
  visitSchema,
} from '@surae/casebook';
import type { Json, NewDocument, RecordStore, StoredDocument } from '@surae/storage';
import { VisitBook } from '../../journey/visit-book.ts';
import { PastClock } from '../past-clock.ts';
import type { DayBody } from './course-weeks.ts';

const author = 'demo';

function plain(body: object): Json {
  return JSON.parse(JSON.stringify(body)) as Json;
}

/** Documents of one invented person, each written at its hour of the past, and what they come to so far. */
export class CourseBook {
  readonly clock: PastClock;
  readonly book: VisitBook;
  private readonly store: RecordStore;
  private written: readonly StoredDocument[] = [];

  constructor(store: RecordStore, clock: PastClock) {
    this.store = store;
    this.clock = clock;
    this.book = new VisitBook(store, clock, author);
  }

  /** Begins with somebody who is not there yet; gives their id. */
  async begin(body: object): Promise<string> {
    this.written = [];
    const [person] = await this.add([this.document('person', null, { ...body, demo: true })]);
    return person!.id;
  }

  /** A document of now, not written yet. */
  document(kind: string, about: string | null, body: object): NewDocument {
    const schema = kind === 'plan-item' ? 2 : 1;
    return { kind, schema, about, body: plain(body), author, at: this.clock.isoNow() };
  }

  /** What somebody wrote down on a day, not written yet. */
  ofDay(personId: string, { kind, body }: DayBody): NewDocument {
    return this.document(kind, personId, body);
  }

  /** An event of a visit, not written yet. */
  event(visitId: string, { kind, ...body }: VisitEvent): NewDocument {
    return { ...this.document(kind, visitId, body), schema: visitSchema };
  }

  /** Writes what belongs together, all of it or none; gives what was written. */
  async add(documents: readonly NewDocument[]): Promise<readonly StoredDocument[]> {
    if (documents.length === 0) return [];
    const kept = await this.store.addAll(documents);
    this.written = [...this.written, ...kept];
    return kept;
  }

  /** Begins a set as a page does, past the same gate; gives its id. */
  async beginSet(visitId: string, event: Extract<VisitEvent, { readonly kind: 'set-begun' }>): Promise<string> {
    return this.taken(await this.book.record(visitId, event));
  }

  /** Keeps the lines of a plan as a page does, past the same rules; gives their ids. */
  async keepPlan(visit: Visit, items: readonly PlanItem[]): Promise<readonly string[]> {
    const ids = await this.book.notes.keepPlan(visit, items);
    for (const id of ids) await this.taken(id);
    return ids;
  }

  /** Bytes of a stream; undefined where there is none. */
  bytes(id: string): ReturnType<RecordStore['bytes']> {
    return this.store.bytes(id);
  }

  private async taken(id: string): Promise<string> {
    const document = await this.store.document(id);
    if (document !== undefined) this.written = [...this.written, document];
    return id;
  }

  /** Everything that is kept of them so far. */
  person(): CasebookPerson {
    return casebookOf(this.written).people[0]!;
  }
}
