import type { Json, NewDocument, RecordStore, StoredDocument } from '@surae/storage';
import { Vault } from '@surae/storage';
import { expect } from 'vitest';
import { KeptRecords } from '../../../packages/storage/src/kept-records.ts';
import { plainCodec } from '../../../packages/storage/src/plain-codec.ts';
import { cheapCost, passphrase } from '../cheap-vault.ts';
import { note } from '../store-laws.ts';
import { asked } from '../whose-laws.ts';
import { expectBackup, expectChanges, expectFound, expectSame, type OracleMark, pick } from './comparisons.ts';
import { FaultyRows, type WriteFault } from './faulty-rows.ts';
import { Oracle } from './oracle.ts';
import type { Place } from './places.ts';

/** One thing that is done; numbers choose among what there is. */
export type Operation =
  | { readonly do: 'add'; readonly kind: string; readonly about: number; readonly body: Json; readonly names: number }
  | { readonly do: 'open' | 'close' | 'alter-stream' | 'alter-document' | 'erase' | 'query'; readonly which: number }
  | { readonly do: 'append'; readonly which: number; readonly bytes: Uint8Array }
  | { readonly do: 'fault'; readonly what: WriteFault; readonly after: number }
  | { readonly do: 'clock'; readonly minutes: number }
  | { readonly do: 'reopen' | 'tear' | 'lock' | 'passphrase' | 'changes' | 'backup' };

const gone = { name: 'StorageError', code: 'erased' };
const time = (minutes: number): string => new Date(Date.UTC(2026, 2, 1) + minutes * 60_000).toISOString();

/** A store in a place, an oracle beside it, and everything that may happen to both. */
export class RandomStore {
  private readonly place: Place;
  private readonly isSealed: boolean;
  private readonly oracle = new Oracle();
  private readonly writers = new Map<string, Awaited<ReturnType<RecordStore['openBytes']>>>();
  private faulty!: FaultyRows;
  private vault: Vault | null = null;
  private store!: RecordStore;
  private secret = passphrase;
  private minutes = 0;
  private latest: number | null = null;
  private mark: OracleMark | null = null;

  private constructor(place: Place, isSealed: boolean) {
    this.place = place;
    this.isSealed = isSealed;
  }

  static async begin(place: Place, isSealed: boolean): Promise<RandomStore> {
    const random = new RandomStore(place, isSealed);
    await random.open();
    return random;
  }

  private async open(): Promise<void> {
    this.faulty = new FaultyRows(await this.place.open());
    this.writers.clear();
    const isoNow = (): string => time(this.minutes);
    if (!this.isSealed) {
      this.store = new KeptRecords(this.faulty.rows, plainCodec, { isoNow });
      return;
    }
    this.vault = new Vault(this.faulty.rows, { cost: cheapCost, isoNow });
    const isNew = (await this.vault.state()) === 'empty';
    this.store = isNew ? (await this.vault.create(this.secret)).store : await this.vault.open(this.secret);
  }

  end(): void {
    this.store.close();
  }

  async run(operation: Operation): Promise<void> {
    switch (operation.do) {
      case 'add':
        return this.add(operation);
      case 'open':
        return this.openStream(operation.which);
      case 'append':
        return this.append(operation.which, operation.bytes);
      case 'close':
        return this.closeStream(operation.which);
      case 'erase':
        return this.erase(operation.which);
      case 'query':
        return expectFound(this.store, this.oracle, operation.which);
      case 'alter-document':
        return this.alterDocument(operation.which);
      case 'alter-stream':
        return this.alterStream(operation.which);
      case 'fault':
        this.faulty.next(operation.what, operation.after);
        return;
      case 'clock':
        this.minutes += operation.minutes;
        return;
      case 'reopen':
        return this.reopen();
      case 'tear':
        this.store.close();
        await this.reopen(() => this.place.tear());
        return;
      case 'lock':
        return this.lock();
      case 'passphrase':
        return this.changePassphrase();
      case 'changes':
        this.mark = await expectChanges(this.store, this.oracle, this.mark);
        return;
      case 'backup':
        return this.backup();
      default:
        operation satisfies never;
    }
  }

  /** Everything there is, compared. */
  async check(): Promise<void> {
    this.faulty.takeBack();
    await expectSame(this.store, this.oracle, this.everDamaged);
  }

  private readonly everDamaged = new Set<string>();

  /** Does something that a fault may spoil; what is left of it then is found out after opening again. */
  private async attempt<T>(work: () => Promise<T>): Promise<T | undefined> {
    try {
      return await work();
    } catch (error) {
      const { code } = error as { code?: string };
      if (!this.faulty.isKilled && code !== 'full') throw error;
      await this.settle();
      return undefined;
    }
  }

  /** After a fault: everything that was acknowledged is there; what was under way has happened or not. */
  private async settle(): Promise<void> {
    if (this.faulty.isKilled) await this.reopen();
    const found = await this.store.documents({});
    const hasErased = found.some(({ kind, about }) => kind === 'person-erased' && about === this.attemptedErase);
    if (this.attemptedErase !== null && hasErased) this.oracle.erase(this.attemptedErase);
    this.attemptedErase = null;
    const known = new Set(this.oracle.documents.map(({ document }) => document.id));
    const ids = new Set(found.map(({ id }) => id));
    for (const one of this.oracle.whole()) expect(ids.has(one.id)).toBe(true);
    for (const document of found) if (!known.has(document.id)) this.takeUnacknowledged(document);
    this.oracle.documents.sort((a, b) => a.document.sequence - b.document.sequence);
    await this.settleStreams();
    const kept = await this.store.documents({ kind: 'clock-set-back' });
    // the time that it went on from is known from outside only by what follows
    if (kept.length > 0 || this.latest !== null) this.latest = await this.latestKept();
  }

  private readonly attempted: NewDocument[] = [];

  private takeUnacknowledged(document: StoredDocument): void {
    if (document.kind === 'clock-set-back' || document.kind === 'person-erased') {
      this.oracle.add(document, { ...document, whose: null });
      return;
    }
    const given = this.attempted.at(-1)!;
    expect(document).toMatchObject({ kind: given.kind, about: given.about, body: given.body });
    this.oracle.add(document, given);
  }

  private async settleStreams(): Promise<void> {
    const open = new Set(await this.store.openStreams());
    for (const stream of this.oracle.streams) {
      const kept = (await this.store.bytes(stream.id))!;
      if (stream.damaged) continue;
      expect(kept.pieces.slice(0, stream.pieces.length)).toEqual(stream.pieces);
      // one piece at a time is under way
      expect(kept.pieces.length - stream.pieces.length).toBeLessThanOrEqual(1);
      stream.pieces.splice(0, stream.pieces.length, ...kept.pieces);
      if (stream.sha256 === null && kept.sha256 !== null) expect(this.oracle.close(stream.id)).toBe(kept.sha256);
    }
    const known = new Set(this.oracle.streams.map(({ id }) => id));
    for (const id of open) {
      if (known.has(id)) continue;
      this.oracle.streams.push({ id, whose: this.attemptedWhose, pieces: [], sha256: null, damaged: false });
    }
  }

  private attemptedWhose: string | null = null;
  private attemptedErase: string | null = null;

  private async latestKept(): Promise<number | null> {
    const { codec } = this.store as unknown as { codec: typeof plainCodec };
    const value = await this.faulty.rows.setting('clock');
    if (value === undefined) return null;
    const opened = await codec.openSetting('clock', value);
    return (Date.parse((opened as { value: string }).value) - Date.UTC(2026, 2, 1)) / 60_000;
  }

  private async add({ kind, about, body, names }: Extract<Operation, { do: 'add' }>): Promise<void> {
    const subject = pick(this.oracle.documents, about);
    // what was altered is known by its id to some stores, and to none after it was opened again in files
    const isPerson = kind === 'person';
    const aboutId = isPerson || subject === undefined || subject.damaged ? null : subject.document.id;
    const named = pick(this.oracle.streams, names)?.id ?? null;
    const given = note({ body, named }, { kind, about: aboutId, at: time(this.minutes) });
    this.attempted.push(given);
    if (this.oracle.isRefused(given)) {
      this.faulty.takeBack();
      await expect(this.store.add(given)).rejects.toMatchObject(gone);
      return;
    }
    const before = this.latest;
    const kept = await this.attempt(() => this.store.add(given));
    if (kept === undefined) return;
    await this.expectClock(before, kept);
    this.oracle.add(kept, given);
  }

  /** A note stands before the document where the clock was set back by more than a minute, and nowhere else. */
  private async expectClock(before: number | null, kept: StoredDocument): Promise<void> {
    const isBack = before !== null && before - this.minutes > 1;
    if (before === null || Math.abs(before - this.minutes) > 1) this.latest = this.minutes;
    if (!isBack) return;
    const setBack = (await this.store.documents({ kind: 'clock-set-back' })).at(-1)!;
    expect(setBack.body).toEqual({ wasAt: time(before), isAt: time(this.minutes) });
    expect(setBack.sequence).toBeLessThan(kept.sequence);
    this.oracle.add(setBack, setBack);
  }

  private async openStream(which: number): Promise<void> {
    const people = this.oracle.whole({ kind: 'person' }).map(({ id }) => id);
    const whose = pick([...people, null], which) ?? null;
    this.attemptedWhose = whose;
    const writer = await this.attempt(() => this.store.openBytes('set', whose));
    if (writer === undefined) return;
    this.writers.set(writer.id, writer);
    this.oracle.streams.push({ id: writer.id, whose, pieces: [], sha256: null, damaged: false });
  }

  private async append(which: number, bytes: Uint8Array): Promise<void> {
    const writer = pick([...this.writers.values()], which);
    if (writer === undefined) return;
    if (!this.oracle.streams.some(({ id }) => id === writer.id)) {
      this.faulty.takeBack();
      await expect(writer.append(bytes)).rejects.toMatchObject(gone);
      return;
    }
    const isWritten = await this.attempt(async () => {
      await writer.append(bytes);
      return true;
    });
    if (isWritten === true) this.oracle.append(writer.id, bytes);
  }

  private async closeStream(which: number): Promise<void> {
    const writer = pick([...this.writers.values()], which);
    if (writer === undefined || !this.oracle.streams.some(({ id }) => id === writer.id)) return;
    const sha256 = await this.attempt(() => writer.close());
    if (sha256 === undefined) return;
    expect(sha256).toBe(this.oracle.close(writer.id));
    this.writers.delete(writer.id);
    await expect(writer.append(Uint8Array.of(1))).rejects.toMatchObject({ code: 'already-closed' });
  }

  private async erase(which: number): Promise<void> {
    const person = pick(this.oracle.whole({ kind: 'person' }), which);
    if (person === undefined) return;
    this.attemptedErase = person.id;
    const receipt = await this.attempt(() => this.store.erase(person.id, asked));
    if (receipt === undefined) return;
    this.attemptedErase = null;
    this.faulty.takeBack();
    const counts = this.oracle.erase(person.id);
    // a file that was opened again no longer knows whose it was that was altered
    expect(receipt.documents).toBeLessThanOrEqual(counts.documents);
    expect(receipt.streams).toBe(counts.streams);
    this.oracle.documents.push({ document: receipt.tombstone, whose: null, damaged: false });
    await expect(this.store.erase(person.id, asked)).rejects.toMatchObject(gone);
  }

  private async alterDocument(which: number): Promise<void> {
    const subject = pick(this.oracle.documents, which);
    // a person that cannot be read is not erased by this harness, and a tombstone is one of several rows
    if (subject === undefined || subject.damaged || ['person', 'person-erased'].includes(subject.document.kind)) return;
    await this.place.alterDocument(subject.document.id);
    subject.damaged = true;
    this.everDamaged.add(subject.document.id);
  }

  private async alterStream(which: number): Promise<void> {
    const stream = pick(
      // an empty piece has no byte to turn
      this.oracle.streams.filter(({ sha256, pieces, damaged }) => sha256 !== null && pieces[0]?.length > 0 && !damaged),
      which,
    );
    if (stream === undefined) return;
    await this.place.alterPiece(stream.id);
    stream.damaged = true;
    this.everDamaged.add(stream.id);
  }

  private async reopen(between: () => Promise<void> = () => Promise.resolve()): Promise<void> {
    this.faulty.takeBack();
    this.faulty.isKilled = false;
    this.store.close();
    // a store that is let go of in files is so a moment later
    await new Promise((resolve) => setTimeout(resolve, 0));
    await between();
    await this.open();
  }

  private async lock(): Promise<void> {
    if (this.vault === null) return;
    this.vault.lock();
    await expect(Promise.resolve().then(() => this.store.documents({}))).rejects.toMatchObject({ code: 'locked' });
    this.store = await this.vault.open(this.secret);
  }

  private async changePassphrase(): Promise<void> {
    if (this.vault === null) return;
    this.faulty.takeBack();
    const next = `${passphrase} ${this.secret.length}`;
    await this.vault.changePassphrase(this.secret, next);
    this.secret = next;
  }

  private async backup(): Promise<void> {
    this.faulty.takeBack();
    await expectBackup(this.store, this.oracle, this.isSealed ? this.secret : null);
  }
}
