import type { Json, NewDocument, RecordStore } from '@surae/storage';
import { type Person, personOf, personSchema } from './person.ts';
import type { Visit } from './visit.ts';
import { foldVisit, type VisitEvent, visitEventKinds, visitSchema } from './visit-events.ts';

/** The time as it is written into documents, with its offset from UTC. */
export interface WallClock {
  isoNow(): string;
}

/** Everything that is known of people and their visits: reads and adds documents, changes none. */
export class VisitBook extends EventTarget {
  private readonly store: RecordStore;
  private readonly clock: WallClock;
  private readonly author: string;

  constructor(store: RecordStore, clock: WallClock, author: string) {
    super();
    this.store = store;
    this.clock = clock;
    this.author = author;
  }

  async addPerson(person: Omit<Person, 'id'>): Promise<Person> {
    return personOf(await this.add({ kind: 'person', schema: personSchema, about: null, body: { ...person } }));
  }

  async people(): Promise<Person[]> {
    return (await this.store.documents({ kind: 'person' })).map(personOf);
  }

  async person(id: string): Promise<Person | undefined> {
    const document = await this.store.document(id);
    return document?.kind === 'person' ? personOf(document) : undefined;
  }

  /** Begins a visit; gives its id. */
  async beginVisit(personId: string): Promise<string> {
    const body = { personId };
    return (await this.add({ kind: 'visit', schema: visitSchema, about: personId, body })).id;
  }

  async visit(id: string): Promise<Visit | undefined> {
    const begun = await this.store.document(id);
    if (begun?.kind !== 'visit') return undefined;
    const kinds = await Promise.all(visitEventKinds.map((kind) => this.store.documents({ kind, about: id })));
    const documents = kinds.flat().sort((a, b) => a.sequence - b.sequence);
    return foldVisit(begun, documents);
  }

  /** Visits of a person, the newest first. */
  async visitsOf(personId: string): Promise<Visit[]> {
    const begun = await this.store.documents({ kind: 'visit', about: personId });
    const visits = await Promise.all(begun.map(({ id }) => this.visit(id)));
    return visits.filter((visit) => visit !== undefined).reverse();
  }

  /** Adds an event to a visit; gives the id of its document. */
  async record(visitId: string, event: VisitEvent): Promise<string> {
    const { kind, ...body } = event;
    // events hold plain JSON; the round trip says so to the compiler and drops what is undefined
    const plain = JSON.parse(JSON.stringify(body)) as Json;
    const { id } = await this.add({ kind, schema: visitSchema, about: visitId, body: plain });
    this.dispatchEvent(new Event('visit-changed'));
    return id;
  }

  private add(document: Omit<NewDocument, 'author' | 'at'>): ReturnType<RecordStore['add']> {
    return this.store.add({ ...document, author: this.author, at: this.clock.isoNow() });
  }
}
