// The small page whose browser is killed: it writes into stores as hard as it can and tells of everything that was acknowledged.
import {
  browserVault,
  freshLog,
  IndexedDbStore,
  type Json,
  type RecordStore,
  type StorageError,
  type Vault,
} from '@surae/storage';
import { hasPlaintext, makeOld } from './raw-database.ts';

/** What the page was told by its store, as it came. */
export type KillNews =
  | { readonly is: 'begun' }
  | { readonly is: 'document'; readonly id: string; readonly hash: string; readonly whose: string | null }
  | { readonly is: 'stream'; readonly id: string; readonly whose: string }
  /** samples that came from the source of a stream, all together */
  | { readonly is: 'generated'; readonly id: string; readonly count: number }
  /** samples of a stream that were acknowledged, all together */
  | { readonly is: 'written'; readonly id: string; readonly count: number }
  | { readonly is: 'closed'; readonly id: string; readonly sha256: string }
  | { readonly is: 'erasing' | 'erased'; readonly whose: string }
  | { readonly is: 'passphrase'; readonly asked: string }
  | { readonly is: 'changed'; readonly passphrase: string }
  | { readonly is: 'backup-begun' }
  | { readonly is: 'backup-part'; readonly base64: string }
  | { readonly is: 'backup-noted' }
  /** the documents of a database of version 1 that is about to be migrated */
  | { readonly is: 'old'; readonly name: string; readonly ids: readonly string[] }
  | { readonly is: 'migrated'; readonly name: string };

export type KillWork = 'streaming' | 'saving' | 'migrating' | 'backing-up' | 'erasing' | 'passphrase';

/** What a stream came to. */
export interface KeptStream {
  readonly samples: number;
  /** whether its samples are the first of the source, each at its place */
  readonly isSame: boolean;
  readonly sha256: string | null;
}

/** What is found after a restart. */
export interface KillFound {
  readonly passphrase: string;
  readonly documents: Readonly<Record<string, string>>;
  readonly people: readonly string[];
  readonly streams: Readonly<Record<string, KeptStream>>;
  readonly problems: readonly unknown[];
  readonly hasBackup: boolean;
  readonly old: Readonly<Record<string, readonly string[]>>;
  readonly plaintext: boolean;
}

declare global {
  /** tells the test; a function of the browser that the test hands in */
  var told: (news: KillNews) => Promise<void>;
  var killPage: {
    open(passphrases: readonly string[], streams: readonly string[], old: readonly string[]): Promise<KillFound>;
    work(work: KillWork, next: string): void;
    /** adds until there is no room; gives the code of the refusal and what was acknowledged */
    fillUp(): Promise<{ readonly code: string; readonly ids: readonly string[] }>;
    /** adds as much once more; gives what was acknowledged */
    addOne(): Promise<string>;
    /** opens a store that one window at a time writes into; tells whether it is this one */
    share(): Promise<boolean>;
    /** adds to the shared store; gives the code of the refusal, or nothing */
    addShared(): Promise<string | null>;
    check(
      base64: readonly string[],
    ): Promise<{ readonly isWhole: boolean; readonly missing: number; readonly whole: number }>;
  };
}

const options = { cost: { memoryKiB: 8, passes: 1, lanes: 1 } };
const sampleRateHz = 1000;
let vault: Vault;
let store: RecordStore;
let shared: IndexedDbStore;
let passphrase = '';

const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

async function add(kind: string, about: string | null, body: Json, whose: string | null = null): Promise<string> {
  const kept = await store.add({ kind, schema: 1, about, author: 'a tester', at: '2026-03-01T09:30:00+01:00', body });
  void told({ is: 'document', id: kept.id, hash: kept.hash, whose: kind === 'person' ? kept.id : whose });
  return kept.id;
}

/** A body of about the size of a report [bytes]. */
const report = (length: number): Json => ({ secret: 'Mirlund-Tarn', text: 'heel raise '.repeat(length / 11) });

async function stream(whose: string, ends: boolean): Promise<void> {
  const writer = await store.openBytes('set', whose);
  const { id } = writer;
  void told({ is: 'stream', id, whose });
  let generated = 0;
  let written = 0;
  let waiting: number[] = [];
  const generate = (): void => {
    const count = sampleRateHz / 50;
    for (let i = 0; i < count; i += 1) waiting.push(generated + i);
    generated += count;
    void told({ is: 'generated', id, count: generated });
  };
  const write = async (): Promise<void> => {
    const samples = Float64Array.from(waiting);
    waiting = [];
    await writer.append(new Uint8Array(samples.buffer));
    written += samples.length;
    void told({ is: 'written', id, count: written });
  };
  const source = setInterval(generate, 20);
  for (let i = 0; !ends || i < 2; i += 1) {
    await pause(200);
    await write();
  }
  clearInterval(source);
  void told({ is: 'closed', id, sha256: await writer.close() });
}

async function save(): Promise<void> {
  for (;;) {
    const person = await add('person', null, { secret: 'Mirlund-Tarn' });
    const visit = await add('visit', person, {}, person);
    await Promise.all([1, 2, 3, 4].map((n) => add('event', visit, { n }, person)));
    await add('report', visit, report(40_000), person);
  }
}

async function migrate(name: string): Promise<void> {
  const ids = await makeOld(name);
  await told({ is: 'old', name, ids });
  void told({ is: 'begun' });
  const migrated = await IndexedDbStore.open(name);
  void told({ is: 'migrated', name });
  for (;;) {
    const kept = await migrated.add({ kind: 'note', schema: 1, about: null, author: 'a', at: 'b', body: 1 });
    await told({ is: 'old', name, ids: [...ids, kept.id] });
    ids.push(kept.id);
  }
}

function base64Of(bytes: Uint8Array): string {
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text);
}

/** A text that does not get smaller [bytes]. */
function noise(length: number): string {
  let text = '';
  while (text.length < length) text += crypto.randomUUID();
  return text;
}

const addFilling = (): Promise<string> => add('filling', null, noise(400_000));

async function backUp(): Promise<void> {
  for (;;) {
    void told({ is: 'backup-begun' });
    for await (const part of store.backup()) {
      // a file takes its time
      await told({ is: 'backup-part', base64: base64Of(part) });
    }
    await store.noteBackup({ at: '2026-03-01T09:30:00+01:00', documents: 1, streams: 1, bytes: 1 });
    void told({ is: 'backup-noted' });
  }
}

async function erase(): Promise<void> {
  const people = await store.documents({ kind: 'person' });
  for (const { id } of people) {
    await told({ is: 'erasing', whose: id });
    await store.erase(id, { author: 'a tester', at: '2026-03-01T09:30:00+01:00' });
    void told({ is: 'erased', whose: id });
  }
  await save();
}

async function changePassphrase(next: string): Promise<void> {
  for (let n = 0; ; n += 1) {
    const asked = `${next} ${n}`;
    await told({ is: 'passphrase', asked });
    await vault.changePassphrase(passphrase, asked);
    passphrase = asked;
    void told({ is: 'changed', passphrase: asked });
  }
}

async function streamsOf(ids: readonly string[]): Promise<Record<string, KeptStream>> {
  const found: Record<string, KeptStream> = {};
  for (const id of ids) {
    const kept = await store.bytes(id);
    if (kept === undefined) continue;
    const samples = kept.pieces.flatMap((piece) => [...new Float64Array(Uint8Array.from(piece).buffer)]);
    found[id] = { samples: samples.length, isSame: samples.every((value, n) => value === n), sha256: kept.sha256 };
  }
  return found;
}

async function openBy(passphrases: readonly string[]): Promise<void> {
  vault = await browserVault('clinic', options);
  if ((await vault.state()) === 'empty') {
    passphrase = passphrases[0];
    ({ store } = await vault.create(passphrase));
    return;
  }
  for (const one of passphrases) {
    try {
      store = await vault.open(one);
      passphrase = one;
      return;
    } catch (error) {
      if ((error as StorageError).code !== 'wrong-passphrase') throw error;
    }
  }
  throw new Error('None of the passphrases opens the store.');
}

// as the dashboard does
void freshLog();

globalThis.killPage = {
  async open(passphrases, streams, old) {
    await openBy(passphrases);
    const documents = await store.documents({});
    const olds: Record<string, string[]> = {};
    for (const name of old) {
      const migrated = await IndexedDbStore.open(name);
      olds[name] = (await migrated.documents({})).map(({ id }) => id);
      if ((await migrated.documents({ kind: 'visit' })).length !== 30) olds[name] = [];
      migrated.close();
    }
    return {
      passphrase,
      documents: Object.fromEntries(documents.map(({ id, hash }) => [id, hash])),
      people: documents.filter(({ kind }) => kind === 'person').map(({ id }) => id),
      streams: await streamsOf(streams),
      problems: await store.problems(),
      hasBackup: (await store.lastBackup()) !== null,
      old: olds,
      plaintext: await hasPlaintext('clinic'),
    };
  },
  work(work, next) {
    const begun = (): void => void told({ is: 'begun' });
    const run = async (): Promise<void> => {
      if (work === 'migrating') return migrate(next);
      if (work === 'streaming') {
        const person = await add('person', null, { secret: 'Mirlund-Tarn' });
        await stream(person, true);
        begun();
        return stream(person, false);
      }
      begun();
      if (work === 'saving') return save();
      if (work === 'backing-up') return backUp();
      if (work === 'erasing') return erase();
      return changePassphrase(next);
    };
    void run();
  },
  async fillUp() {
    const ids: string[] = [];
    try {
      for (;;) ids.push(await addFilling());
    } catch (error) {
      return { code: (error as StorageError).code, ids };
    }
  },
  addOne: addFilling,
  async share() {
    shared = await IndexedDbStore.open('shared', { oneWriter: true });
    return shared.access.writes;
  },
  async addShared() {
    try {
      await shared.add({ kind: 'note', schema: 1, about: null, author: 'a', at: 'b', body: 1 });
      return null;
    } catch (error) {
      return (error as StorageError).code;
    }
  },
  async check(base64) {
    async function* source(): AsyncGenerator<Uint8Array> {
      for (const part of base64) yield await Promise.resolve(Uint8Array.from(atob(part), (sign) => sign.charCodeAt(0)));
    }
    try {
      const { isWhole, documents, streams } = await store.checkBackup(source);
      return {
        isWhole,
        missing: documents.missing.length + streams.missing.length,
        whole: documents.whole + streams.whole,
      };
    } catch (error) {
      if ((error as StorageError).code !== 'no-backup') throw error;
      return { isWhole: false, missing: 0, whole: 0 };
    }
  },
};
