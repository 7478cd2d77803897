import { ContextProvider } from '@lit/context';
import { IndexedDbStore, MemoryStore, type RecordStore } from '@surae/storage';
import './app-shell.ts';
import { QueuedAssessor } from './assess/queued-assessor.ts';
import { browserClock } from './browser-clock.ts';
import {
  assessorContext,
  bookContext,
  clockContext,
  sensorContext,
  shelfContext,
  soundContext,
  storeContext,
} from './contexts/capabilities.ts';
import { fillDemoClinic } from './demo/clinic.ts';
import { SensorShelf } from './devices/sensor-shelf.ts';
import { VisitBook } from './journey/visit-book.ts';
import { BeatClicks } from './live/beat-clicks.ts';
import { SourceMaker } from './live/source-maker.ts';

// The only file that makes what the dashboard stands on; everything else is handed what it needs.

/** The store of the browser; without one, what is recorded lives as long as the page. */
async function openStore(): Promise<RecordStore> {
  try {
    return await IndexedDbStore.open('surae');
  } catch {
    document.documentElement.dataset['store'] = 'memory';
    return new MemoryStore();
  }
}

const query = new URLSearchParams(location.search);
const store = await openStore();
const book = new VisitBook(store, browserClock, 'this-device');
await fillDemoClinic(book);

const worker = new Worker(new URL('./assess/worker.ts', import.meta.url), { type: 'module' });
const shelf = new SensorShelf();
const sources = new SourceMaker({
  live: shelf,
  clock: browserClock,
  nextSeed: () => Number(query.get('seed') ?? crypto.getRandomValues(new Uint32Array(1))[0]),
  pace: Number(query.get('pace') ?? 1),
});

const host = document.body;
new ContextProvider(host, { context: bookContext, initialValue: book });
new ContextProvider(host, { context: storeContext, initialValue: store });
new ContextProvider(host, { context: clockContext, initialValue: browserClock });
new ContextProvider(host, { context: assessorContext, initialValue: new QueuedAssessor(worker) });
new ContextProvider(host, { context: sensorContext, initialValue: sources });
new ContextProvider(host, { context: shelfContext, initialValue: shelf });
new ContextProvider(host, { context: soundContext, initialValue: new BeatClicks() });
document.body.append(document.createElement('app-shell'));

if ('serviceWorker' in navigator && import.meta.env.PROD) void navigator.serviceWorker.register('./sw.js');
