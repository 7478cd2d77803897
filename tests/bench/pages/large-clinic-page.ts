// The page that fills an encrypted clinic, in the browser in which the dashboard opens it.
import { browserVault, MemoryStore, type OwnedDocument, type RecordStore } from '@surae/storage';
import { seal } from '../../../packages/storage/src/seal.ts';
import { madeReport, sureCount } from '../../support/made-visit.ts';
import { documentsOf, tellVisits } from '../../support/told-visit.ts';

declare global {
  var largeClinic: {
    /** Adds people until the clinic holds so many trials; gives the numbers of people and documents. */
    fill(trials: number): Promise<{ readonly people: number; readonly documents: number; readonly megabytes: number }>;
  };
}

const passphrase = 'seven lamps in the old mill';
const visitsPerPerson = 5;
const trialsPerVisit = 2;
/** Repetitions of a report: as large as those of the tool [about 40 kB]. */
const repetitions = 24;
/** A minute of one channel at 100 Hz, as it lies in a stream [bytes]. */
const traceBytes = 24_000;

/** Documents of somebody with their visits, as the dashboard writes them. */
async function template(): Promise<readonly OwnedDocument[]> {
  const store = new MemoryStore();
  const [one] = madeReport('left', sureCount(1)).repetitions;
  const changes = { repetitions: Array.from({ length: repetitions }, (_, i) => ({ ...one, index: i + 1 })) };
  const legs = { left: { count: repetitions, changes }, right: { count: repetitions, changes } };
  const visits = Array.from({ length: visitsPerPerson }, (_, i) => ({ day: `2026-0${i + 1}-11`, ...legs }));
  await tellVisits(store, { name: 'Invented', bodyMassKg: 70, heelLeverM: 0.18 }, visits);
  return documentsOf(store);
}

function randomId(): string {
  return Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** The same for somebody else: every id is another one, wherever it stands. */
function personLike(given: readonly OwnedDocument[], name: string): { documents: OwnedDocument[]; streams: string[] } {
  const others = new Map(given.map(({ document }) => [document.id, randomId()]));
  const streams: string[] = [];
  const documents = given.map(({ document, whose }) => {
    const renamed = JSON.stringify({ ...document, whose })
      .replace(/"([0-9a-f]{32})"/g, (_, id: string) => `"${others.get(id) ?? id}"`)
      .replace('"Invented"', JSON.stringify(name))
      .replace(/"none-(?:left|right)"/, () => {
        streams.push(randomId());
        return `"${streams.at(-1)}"`;
      });
    const { id, sequence, ...rest } = JSON.parse(renamed) as OwnedDocument['document'] & { whose: string };
    return { document: { ...seal(rest, id), sequence }, whose: rest.whose };
  });
  return { documents, streams };
}

/** Bytes that do not compress away: a random walk, as sway is. */
function walk(): Uint8Array {
  let level = 128;
  return Uint8Array.from({ length: traceBytes }, () => {
    level += Math.round(4 * (Math.random() - 0.5));
    return level;
  });
}

let filled = 0;
let store: RecordStore | undefined;

globalThis.largeClinic = {
  async fill(trials) {
    if (store === undefined) {
      const vault = await browserVault('surae-own');
      store = (await vault.state()) === 'empty' ? (await vault.create(passphrase)).store : await vault.open(passphrase);
      filled = (await store.documents({ kind: 'person' })).length;
    }
    const given = await template();
    const trialsPerPerson = visitsPerPerson * trialsPerVisit;
    for (; filled < trials / trialsPerPerson; filled += 1) {
      const { documents, streams } = personLike(given, `Invented ${String(filled + 1).padStart(4, '0')}`);
      const taken = await store.adopt(documents);
      if (taken.some((one) => one !== 'added')) throw new Error(`Not taken: ${[...new Set(taken)].join(', ')}`);
      for (const id of streams) {
        const whole = new MemoryStore();
        const writer = await whole.openBytes();
        const pieces = [walk()];
        await writer.append(pieces[0]);
        const sha256 = await writer.close();
        await store.adoptStream({ id, label: 'set', whose: documents[0].whose, sha256, pieces });
      }
    }
    const megabytes = ((await navigator.storage.estimate()).usage ?? 0) / 1e6;
    return { people: filled, documents: filled * given.length, megabytes };
  },
};
