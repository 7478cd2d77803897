import './checks-without-eval.ts';
import { ContextProvider } from '@lit/context';
import { HOME_WORDS } from '@surae/shared';
import { freshLog, IndexedDbStore, MemoryStore, type RecordStore } from '@surae/storage';
import './app-shell.ts';
import { QueuedAssessor } from './assess/queued-assessor.ts';
import { browserClock } from './browser-clock.ts';
import { ClinicDoor, type OpenClinic } from './clinic/clinic-door.ts';
import { keptSettings } from './clinic/device-settings.ts';
import { IdleLock } from './clinic/idle-lock.ts';
import { letLockedReadsGo } from './clinic/locked-reads.ts';
import { ownOpened } from './clinic/own-opened.ts';
import {
  assessorContext,
  auditContext,
  bookContext,
  clockContext,
  doorContext,
  sensorContext,
  shelfContext,
  soundContext,
  storeContext,
} from './contexts/capabilities.ts';
import { fillDemoClinic } from './demo/clinic.ts';
import { SensorShelf } from './devices/sensor-shelf.ts';
import { BeatClicks } from './live/beat-clicks.ts';
import { SourceMaker } from './live/source-maker.ts';

// The only file that makes what the dashboard stands on; everything else is handed what it needs.

/** Of which database a clinic of one's own is; asked of the browser, so that nothing is made by asking. */
const ownDatabase = 'surae-own';

/** The tab goes on with the demo clinic when it is loaded anew. */
const demoChosen = 'surae.demo';

const isoNow = (): string => browserClock.isoNow();

/** The store of the demo clinic; where the browser gives none, what is recorded lives as long as the page. */
async function demoStore(): Promise<RecordStore> {
  try {
    return await IndexedDbStore.open('surae', { oneWriter: true, isoNow });
  } catch {
    document.documentElement.dataset['store'] = 'memory';
    return new MemoryStore();
  }
}

async function hasOwnDatabase(): Promise<boolean> {
  try {
    return (await indexedDB.databases()).some(({ name }) => name === ownDatabase);
  } catch {
    // no store at all, or a browser that does not tell: the demo clinic is shown, and one's own can be opened from there
    return false;
  }
}

const query = new URLSearchParams(location.search);
const door = new ClinicDoor({
  clock: browserClock,
  memory: localStorage,
  demoStore,
  vault: async () => (await import('./clinic/own-vault.ts')).ownVault(isoNow),
  // the schemas of all kinds come when the book is opened, and not with the first page
  read: async (documents) => (await import('./journey/counting.ts')).countingDocuments(documents),
});

const worker = new Worker(new URL('./assess/worker.ts', import.meta.url), { type: 'module' });
const shelf = new SensorShelf();
const sources = new SourceMaker({
  live: shelf,
  clock: browserClock,
  nextSeed: () => Number(query.get('seed') ?? crypto.getRandomValues(new Uint32Array(1))[0]),
  pace: Number(query.get('pace') ?? 1),
});

letLockedReadsGo(globalThis);

const host = document.body;
new ContextProvider(host, { context: doorContext, initialValue: door });
new ContextProvider(host, { context: clockContext, initialValue: browserClock });
new ContextProvider(host, { context: assessorContext, initialValue: new QueuedAssessor(worker) });
new ContextProvider(host, { context: sensorContext, initialValue: sources });
new ContextProvider(host, { context: shelfContext, initialValue: shelf });
new ContextProvider(host, { context: soundContext, initialValue: new BeatClicks() });
const books = new ContextProvider(host, { context: bookContext });
const stores = new ContextProvider(host, { context: storeContext });
const audits = new ContextProvider(host, { context: auditContext });

let idle: IdleLock | undefined;
/** the clinic that was open before */
let before: OpenClinic['which'] | undefined;
const touches = ['pointerdown', 'pointermove', 'keydown', 'wheel', 'touchstart'] as const;
for (const touch of touches) addEventListener(touch, () => idle?.touched(), { capture: true, passive: true });
host.addEventListener('bare-screen', (event) => idle?.setRuns((event as CustomEvent<boolean>).detail));

/** Shows a clinic, or the door. Everything that knew the one before is gone with its elements. */
async function show(clinic: OpenClinic | null): Promise<void> {
  idle?.stop();
  idle = undefined;
  host.replaceChildren();
  if (clinic === null) {
    await import('./pages/clinic-door.ts');
    host.append(document.createElement('clinic-door'));
    // while the passphrase is typed
    void import('./journey/counting.ts');
    return;
  }
  const { which, store, book, audit } = clinic;
  // one comes back to the same place, but not to that of another clinic
  if (before !== undefined && before !== which) history.replaceState(null, '', '#/');
  before = which;
  if (which === 'demo' && store.access.writes) await fillDemoClinic(book);
  books.setValue(book);
  stores.setValue(store);
  audits.setValue(audit);
  host.append(document.createElement('app-shell'));
  if (which === 'own') {
    const afterMs = (): number | null => {
      const { lockMinutes } = keptSettings(localStorage);
      return lockMinutes === null ? null : lockMinutes * 60_000;
    };
    idle = new IdleLock(browserClock, afterMs, () => void door.lock());
  }
  if (which === 'demo') sessionStorage.setItem(demoChosen, 'yes');
  else sessionStorage.removeItem(demoChosen);
}

door.addEventListener('clinic-changed', () => {
  sources.forget();
  // one that was left is not gone on with
  if (door.open === null) sessionStorage.removeItem(demoChosen);
  void show(door.open);
});

// before anything else is written; what is read need not wait for it
void freshLog();

/** What the address of somebody who was tested holds; undefined in a clinic. */
const codeNow = (): string | undefined => /^#\/mine\/(.+)$/.exec(location.hash)?.[1];
const homeCode = codeNow();

/** The pages that somebody takes home: no clinic is opened, and no store is looked at. */
async function showHome(code: string): Promise<void> {
  await import('./home/home-page.ts');
  const page = document.createElement('home-page') as HTMLElement & {
    code: string;
    memory: Storage;
    today: () => string;
  };
  Object.assign(page, { code, memory: localStorage, today: () => isoNow().slice(0, 10) });
  document.title = HOME_WORDS.title.text;
  host.replaceChildren(page);
}

const goesOnWithDemo = sessionStorage.getItem(demoChosen) !== null;
// one that was here and is gone is missed at the door
const hasOwn = async (): Promise<boolean> => ownOpened(localStorage) !== null || (await hasOwnDatabase());
addEventListener('hashchange', () => {
  // from a page of somebody's own to a clinic, or back, nothing is taken along; a newer code is another plan
  if (codeNow() !== homeCode) location.reload();
});
if (homeCode !== undefined) await showHome(homeCode);
else if (goesOnWithDemo || !(await hasOwn())) await door.openDemo();
else await show(null);

if ('serviceWorker' in navigator && import.meta.env.PROD) void navigator.serviceWorker.register('./sw.js');
