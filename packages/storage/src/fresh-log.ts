import { deleteDB, openDB } from 'idb';

/**
 * More than an engine gathers in its log before it lays that aside as a table and begins another: at most 4 MiB in LevelDB, the
 * engine of Chromium, from memory [bytes].
 */
const enough = 4.5 * 2 ** 20;
/** Below what Chromium keeps in a file of its own, from memory, and what a browser gives of randomness at once: 64 KiB each [bytes]. */
const partBytes = 60_000;

/** A database beside the records; all databases of a page share one log. */
const place = 'surae log';

/**
 * Makes the engine under the databases of the browser lay its log aside. A crash or a power cut may leave a torn record at the end of
 * that log. LevelDB passes it over and writes on behind it, takes the log for damaged at the opening after that, and the browser then
 * throws away everything that the page ever stored (issue 1287 of google/leveldb; the test in a browser shows it). So this comes
 * before anything else is written. It leaves nothing behind; where there is no room for it, the log stays as it is.
 */
export async function freshLog(): Promise<void> {
  try {
    const database = await openDB(place, 1, { upgrade: (made) => void made.createObjectStore('parts') });
    try {
      const filling = database.transaction('parts', 'readwrite', { durability: 'relaxed' });
      // noise, because what repeats would be packed
      const noise = new Uint8Array(partBytes);
      for (let n = 0; n * partBytes < enough; n += 1) {
        filling.store.put(crypto.getRandomValues(noise), n).catch(() => {});
      }
      await filling.done;
    } finally {
      database.close();
      // the first that is written after it begins the next log
      await deleteDB(place);
    }
  } catch {
    // no room, or no store at all: the records say so themselves
  }
}
