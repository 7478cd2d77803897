import {
  type AmendedField,
  amended,
  amendedFields,
  amendmentOf,
  answerKinds,
  aroundKinds,
  type CalibrationKept,
  type CaseloadEntry,
  type Certificate,
  calibrationSchema,
  caseloadKinds,
  caseloadOf,
  certificatesOf,
  type DescriptionEntry,
  descriptionEntries,
  descriptionSchema,
  foldVisit,
  lastZeroOf,
  mayTest,
  type OwnErrorsEntry,
  type OwnErrorsKept,
  ownErrorsOf,
  ownErrorsSchema,
  type Person,
  type PersonAmendment,
  type PersonChange,
  personOf,
  personSchema,
  type SafetyBlock,
  type SensorZero,
  type Visit,
  type VisitEvent,
  type VisitLine,
  visitEventKinds,
  visitSchema,
  type ZeroEntry,
  zeroSchema,
} from '@surae/casebook';
import type { ByteWriter, DocumentQuery, Json, NewDocument, RecordStore, StoredDocument } from '@surae/storage';
import { OwnRulesDesk } from '../rules/own-rules-desk.ts';
import { acceptedPast, acceptedVisits } from './accepted-reads.ts';
import { keptCaseload } from './kept-caseload.ts';
import { PersonLog } from './person-log.ts';
import { PersonNotes } from './person-notes.ts';
import {
  personAtVisit,
  personAtVisitKinds,
  type VisitAndPast,
  visitAndPast,
  visitKinds,
  visitsIn,
} from './person-visits.ts';
import { type BookHand, TakenShelf, type UnsignedDocument } from './taken-shelf.ts';

/** The time as it is written into documents, with its offset from UTC. */
export interface WallClock {
  isoNow(): string;
}

/** Documents as they count: what cannot be read is passed over, amendments and removals are laid over the rest. */
export type BodiesRead = (documents: readonly StoredDocument[]) => Promise<readonly StoredDocument[]>;

/** What is laid over the document that it is about. */
const changeKinds = ['amendment', 'removal'] as const;

/** A set was asked for although the safety list keeps from testing. */
export class SafetyLockError extends Error {
  readonly why: readonly SafetyBlock[];

  constructor(why: readonly SafetyBlock[]) {
    super(`The safety list keeps from testing: ${why.join(', ')}.`);
    this.name = 'SafetyLockError';
    this.why = why;
  }
}

/** Everything that is known of people and their visits: reads and adds documents, changes none. */
export class VisitBook extends EventTarget {
  /** recordings of other programs that were taken in */
  readonly taken: TakenShelf;
  /** what is written down about people beside their visits */
  readonly log: PersonLog;
  /** what is kept of people beside their visits */
  readonly notes: PersonNotes;
  /** the clinic's own copy of the rules that proposals come from */
  readonly ownRules: OwnRulesDesk;
  /** how documents are read as they count, and added, for what has a desk of its own */
  readonly hand: BookHand;
  private readonly store: RecordStore;
  private readonly clock: WallClock;
  private readonly author: string;
  private readonly read: BodiesRead;

  /** @param read - as they are, when left out: for documents that were written a moment ago */
  constructor(
    store: RecordStore,
    clock: WallClock,
    author: string,
    read: BodiesRead = (documents) => Promise.resolve(documents),
  ) {
    super();
    this.store = store;
    this.clock = clock;
    this.author = author;
    this.read = read;
    this.hand = {
      read: (query) => this.documents(query),
      add: (document) => this.add(document),
      addAll: (documents) => this.store.addAll(documents.map((document) => this.signed(document))),
    };
    this.taken = new TakenShelf(store, this.hand);
    this.log = new PersonLog(this.hand);
    this.notes = new PersonNotes(this.hand);
    this.ownRules = new OwnRulesDesk(this.hand);
  }

  private async documents(query: DocumentQuery): Promise<readonly StoredDocument[]> {
    // there are few changes in a whole clinic, and what is read at once is there sooner
    const [found, changes] = await Promise.all([
      this.store.documents(query),
      this.store.documents({ kind: changeKinds }),
    ]);
    if (found.length === 0) return found;
    const ids = new Set<string | null>(found.map(({ id }) => id));
    return this.read([...found, ...changes.filter(({ about }) => ids.has(about))]);
  }

  /** The document of an id, where it is of a kind and counts. */
  private async document(id: string, kind: string): Promise<StoredDocument | undefined> {
    const [found, changes] = await Promise.all([
      this.store.document(id),
      this.store.documents({ kind: changeKinds, about: id }),
    ]);
    if (found?.kind !== kind) return undefined;
    return (await this.read([found, ...changes]))[0];
  }

  async addPerson(person: Omit<Person, 'id'>): Promise<Person> {
    return personOf(await this.add({ kind: 'person', schema: personSchema, about: null, body: { ...person } }));
  }

  async people(): Promise<Person[]> {
    const documents = await this.documents({ kind: ['person', 'person-amended'] });
    return caseloadOf(documents).map(({ person }) => person);
  }

  /** Everybody with their visits, without what was measured in these. */
  caseload(): Promise<readonly CaseloadEntry[]> {
    return keptCaseload(this.store, (query) => this.documents(query));
  }

  /** Visits of somebody as the list of people shows them, the newest first. */
  async visitLines(personId: string): Promise<readonly VisitLine[]> {
    const documents = await this.documents({ whose: personId, kind: [...caseloadKinds, ...answerKinds] });
    return caseloadOf(documents)[0]?.visits ?? [];
  }

  async person(id: string): Promise<Person | undefined> {
    const begun = await this.document(id, 'person');
    return begun === undefined ? undefined : amended(personOf(begun), await this.amendments(id));
  }

  /** See {@link personAtVisit}. */
  async personOfVisit(visit: Visit): Promise<Person | undefined> {
    return personAtVisit(await this.documents({ whose: visit.personId, kind: personAtVisitKinds }), visit);
  }

  /** Corrects a person: what was told before stays readable. */
  async amendPerson(id: string, change: PersonChange, by: string | null): Promise<void> {
    const body = JSON.parse(JSON.stringify({ change, by })) as Json;
    await this.add({ kind: 'person-amended', schema: personSchema, about: id, body });
  }

  /** What was corrected of a person, field by field, the oldest first. */
  async amendedFields(id: string): Promise<readonly AmendedField[]> {
    const begun = await this.document(id, 'person');
    return begun === undefined ? [] : amendedFields(begun, await this.amendments(id));
  }

  private async amendments(id: string): Promise<readonly PersonAmendment[]> {
    return (await this.documents({ kind: 'person-amended', about: id })).map(amendmentOf);
  }

  /** Keeps an error of measurement that the clinic found itself; gives the id of its document. */
  async addOwnErrors(errors: OwnErrorsKept): Promise<string> {
    const body = JSON.parse(JSON.stringify(errors)) as Json;
    return (await this.add({ kind: 'own-error', schema: ownErrorsSchema, about: null, body })).id;
  }

  /** Says that an own error is not to be used any more; it stays readable. */
  async takeBackOwnErrors(id: string): Promise<void> {
    await this.add({ kind: 'own-error-back', schema: ownErrorsSchema, about: id, body: {} });
  }

  /** Errors of measurement of the clinic, the oldest first. */
  async ownErrors(): Promise<readonly OwnErrorsEntry[]> {
    const documents = await this.documents({ kind: ['own-error', 'own-error-back'] });
    const [kept, back] = ['own-error', 'own-error-back'].map((kind) => documents.filter((one) => one.kind === kind));
    return ownErrorsOf(kept ?? [], back ?? []);
  }

  /** Keeps the description of a sensor; gives the id of its document. One of the same name takes its place. */
  async addDescription(name: string, json: Json): Promise<string> {
    const body = { name, json };
    return (await this.add({ kind: 'sensor-description', schema: descriptionSchema, about: null, body })).id;
  }

  /** Says that a description is not to be used any more; it stays readable. */
  async takeBackDescription(id: string): Promise<void> {
    await this.add({ kind: 'sensor-description-back', schema: descriptionSchema, about: id, body: {} });
  }

  /** Descriptions of sensors, the oldest first. */
  async descriptions(): Promise<readonly DescriptionEntry[]> {
    const [kept, back] = await Promise.all(
      ['sensor-description', 'sensor-description-back'].map((kind) => this.documents({ kind })),
    );
    return descriptionEntries(kept ?? [], back ?? []);
  }

  /** Keeps a recipe by which files are read. */
  async addRecipe(name: string, json: Json): Promise<void> {
    await this.add({ kind: 'reading-recipe', schema: 1, about: null, body: { name, json } });
  }

  /** Recipes by which files are read, the newest first; of those of one name the newest. */
  async recipes(): Promise<readonly { readonly name: string; readonly json: Json }[]> {
    const kept = await this.store.documents({ kind: 'reading-recipe' });
    const told = kept.map(({ body }) => body as { name: string; json: Json }).reverse();
    return told.filter(({ name }, i) => told.findIndex((one) => one.name === name) === i);
  }

  /** Keeps the zero of a sensor, by its key. */
  async addZero(sensor: string, zero: SensorZero): Promise<void> {
    await this.add({ kind: 'sensor-zero', schema: zeroSchema, about: sensor, body: { ...zero } });
  }

  /** The newest zero of a sensor; null without one. */
  async lastZero(sensor: string): Promise<ZeroEntry | null> {
    return lastZeroOf(await this.documents({ kind: 'sensor-zero', about: sensor }));
  }

  /** Keeps a calibration; gives the id of its document, which is its certificate. */
  async addCalibration(calibration: CalibrationKept): Promise<string> {
    const body = JSON.parse(JSON.stringify(calibration)) as Json;
    return (await this.add({ kind: 'calibration', schema: calibrationSchema, about: calibration.sensor, body })).id;
  }

  /** Certificates of all calibrations, the oldest first. */
  async certificates(): Promise<readonly Certificate[]> {
    return certificatesOf(await this.documents({ kind: 'calibration' }));
  }

  /** Begins a visit; gives its id. */
  async beginVisit(personId: string): Promise<string> {
    const body = { personId };
    return (await this.add({ kind: 'visit', schema: visitSchema, about: personId, body })).id;
  }

  async visit(id: string): Promise<Visit | undefined> {
    const begun = await this.document(id, 'visit');
    if (begun === undefined) return undefined;
    return (await acceptedVisits([foldVisit(begun, await this.documents({ about: id, kind: visitEventKinds }))]))[0];
  }

  /** A visit with its person and the visits before it, as its page shows them: one look at everything of the person. */
  async visitAndPast(id: string): Promise<VisitAndPast | undefined> {
    const begun = await this.store.document(id);
    if (begun?.kind !== 'visit' || begun.about === null) return undefined;
    const kind = [...personAtVisitKinds, ...visitKinds, ...aroundKinds];
    return acceptedPast(visitAndPast(await this.documents({ whose: begun.about, kind }), id));
  }

  /** Visits of a person, the newest first. */
  async visitsOf(personId: string): Promise<readonly Visit[]> {
    const visits = visitsIn(await this.documents({ whose: personId, kind: visitKinds }));
    return (await acceptedVisits(visits)).toReversed();
  }

  /** Adds an event to a visit; gives the id of its document. Refuses a set that the safety list keeps from beginning. */
  async record(visitId: string, event: VisitEvent): Promise<string> {
    await this.refuseLocked(visitId, event);
    const { kind, ...body } = event;
    // events hold plain JSON; the round trip says so to the compiler and drops what is undefined
    const plain = JSON.parse(JSON.stringify(body)) as Json;
    const { id } = await this.add({ kind, schema: visitSchema, about: visitId, body: plain });
    this.dispatchEvent(new Event('visit-changed'));
    return id;
  }

  /** Opens a stream of bytes that is kept with the person of a visit. */
  async openBytes(visitId: string, label: string): Promise<ByteWriter> {
    const begun = await this.store.document(visitId);
    return this.store.openBytes(label, begun?.about ?? null);
  }

  /** The last gate before a set or a trial exists; the pages ask the same question earlier and say why. */
  private async refuseLocked(visitId: string, event: VisitEvent): Promise<void> {
    const { kind } = event;
    if (kind !== 'set-begun' && kind !== 'practice-begun' && kind !== 'pull-begun' && kind !== 'trial-begun') return;
    const visit = await this.visit(visitId);
    const origin =
      event.kind === 'trial-begun'
        ? visit?.pulls?.find(({ id }) => id === event.setId)?.choice.origin
        : event.choice.origin;
    const test = event.kind === 'set-begun' || event.kind === 'practice-begun' ? 'heel-raise' : 'isometric';
    // a trial of no known leg is held to be one of a person
    const { allowed, why } = mayTest(origin ?? 'live', visit?.safety ?? null, this.clock.isoNow(), test);
    if (!allowed) throw new SafetyLockError(why);
  }

  private add(document: UnsignedDocument): ReturnType<RecordStore['add']> {
    return this.store.add(this.signed(document));
  }

  private signed(document: UnsignedDocument): NewDocument {
    return { ...document, author: this.author, at: this.clock.isoNow() };
  }
}
