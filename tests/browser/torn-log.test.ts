import { readdirSync, statSync, truncateSync } from 'node:fs';
import { join } from 'node:path';
import { expect } from 'vitest';
import { addPerson } from '../support/clinic-walk.ts';
import { killBrowser } from './support/browser.mjs';
import { profileTest } from './support/browser-test.ts';
import { openStart } from './support/journey.mjs';
import { storedBodies } from './support/stored.ts';

/** The last log of the engine under the databases of a page. */
function lastLog(profile: string): string {
  const root = join(profile, 'Default', 'IndexedDB');
  const folder = join(root, readdirSync(root).find((name) => name.endsWith('.indexeddb.leveldb'))!);
  const logs = readdirSync(folder).filter((name) => name.endsWith('.log'));
  return join(folder, logs.toSorted().at(-1)!);
}

profileTest(
  'a power cut in the middle of a write costs that write, and nothing at the second start after it',
  async (given) => {
    const { profile, origin, reopen } = given;
    let { page, context } = given;
    const names = async (): Promise<string[]> =>
      (await storedBodies<{ name: string }>(page, 'person')).map(({ name }) => name);
    for (const name of ['Before', 'Torn', 'After']) {
      await openStart(page, origin);
      await addPerson(page, name);
      await killBrowser(profile, context);
      // what was written last is there but for its last bytes, as when the power fails
      if (name === 'Torn') truncateSync(lastLog(profile), statSync(lastLog(profile)).size - 5);
      page = await reopen();
      context = page.context();
    }
    await openStart(page, origin);
    const found = await names();
    expect(found).toEqual(expect.arrayContaining(['Before', 'After']));
  },
);
