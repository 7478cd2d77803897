// The small page on which the encrypted store of a large clinic is timed.
import { browserVault, type NewDocument, type OwnedDocument, type RecordStore } from '@surae/storage';
import { seal } from '../../../../packages/storage/src/seal.ts';

/** Times of one size of a clinic [ms]. */
export interface ClinicTimes {
  readonly trials: number;
  readonly people: number;
  readonly documents: number;
  /** opening by the passphrase at its full cost */
  readonly openMs: number;
  /** everybody with their visits, the first time, when no key is known yet */
  readonly listMs: number;
  /** everything of one person, the first time */
  readonly personMs: number;
}

declare global {
  var clinicPage: {
    fill(from: number, to: number): Promise<number>;
    time(trials: number): Promise<ClinicTimes>;
  };
}

const passphrase = 'seven lamps in the old mill';
const trialsPerPerson = 5;
const vaultName = 'clinic';
let store: RecordStore | undefined;

/** A report as large as those of the tool, which says much the same again and again [about 40 kB]. */
function report(n: number): { repetitions: object[] } {
  const repetitions = Array.from({ length: 90 }, (_, i) => ({
    startS: i * 1.987 + n / 7,
    topS: i * 1.987 + 0.613 + n / 11,
    endS: i * 1.987 + 1.302,
    heightM: { value: 0.081 + Math.sin(i + n) / 91, standardUncertainty: 0.0021 },
    verdict: { code: 'valid', probability: 0.97 - (i % 13) / 400 },
    criteria: ['knee', 'height', 'tempo', 'lean', 'support'].map((name) => ({
      name,
      finding: 'met',
      margin: Math.cos(i),
    })),
  }));
  return { repetitions };
}

const owned = (given: Omit<NewDocument, 'schema' | 'author' | 'at'>, whose: string, id?: string): OwnedDocument => {
  const plain = { schema: 1, author: 'this-device', at: '2026-03-01T09:30:00+01:00', ...given };
  return { document: { ...seal(plain, id), sequence: 0 }, whose };
};

function personOf(n: number): OwnedDocument {
  const id = n.toString(16).padStart(32, '0');
  return owned(
    { kind: 'person', about: null, body: { name: `Invented Person ${n}`, bodyMassKg: 60 + (n % 30) } },
    id,
    id,
  );
}

function visitOf(whose: string, n: number): OwnedDocument[] {
  const visit = owned({ kind: 'visit', about: whose, body: { personId: whose } }, whose);
  const about = visit.document.id;
  const events = Array.from({ length: 17 }, (_, i) =>
    owned({ kind: `event-${i}`, about, body: { answer: i, why: 'as asked' } }, whose),
  );
  const result = owned({ kind: 'set-result', about, body: report(n) as unknown as NewDocument['body'] }, whose);
  return [visit, ...events, result, owned({ kind: 'visit-closed', about, body: {} }, whose)];
}

async function opened(): Promise<RecordStore> {
  if (store !== undefined) return store;
  const vault = await browserVault(vaultName);
  store = (await vault.state()) === 'empty' ? (await vault.create(passphrase)).store : await vault.open(passphrase);
  return store;
}

globalThis.clinicPage = {
  async fill(from, to) {
    const into = await opened();
    for (let trial = from; trial < to; trial += 1) {
      const person = personOf(Math.floor(trial / trialsPerPerson));
      const isFirst = trial % trialsPerPerson === 0;
      await into.adopt([...(isFirst ? [person] : []), ...visitOf(person.whose!, trial)]);
    }
    return to;
  },
  async time(trials) {
    store?.close();
    store = undefined;
    const start = performance.now();
    const reading = await opened();
    const open = performance.now();
    const listed = await reading.documents({ kind: ['person', 'person-amended', 'visit', 'visit-closed'] });
    const list = performance.now();
    reading.close();
    store = undefined;
    const again = await opened();
    const before = performance.now();
    const id = Math.floor(trials / trialsPerPerson / 2)
      .toString(16)
      .padStart(32, '0');
    const all = await again.documents({ whose: id });
    const person = performance.now();
    if (all.length !== 1 + trialsPerPerson * 20) throw new Error(`${all.length} documents of one person`);
    const people = listed.filter(({ kind }) => kind === 'person').length;
    if (people !== trials / trialsPerPerson) throw new Error(`${people} people`);
    return {
      trials,
      people,
      documents: people + trials * 20,
      openMs: open - start,
      listMs: list - open,
      personMs: person - before,
    };
  },
};
