import { MemoryStore } from '@surae/storage';
import type { Page } from 'playwright-core';
import type { StudySession } from '../../../apps/dashboard/src/study/study-session.ts';
import { studyFolder } from '../../support/study-folder.ts';
import { assessedFolder, contentOfFolder, memoryShelf, SOFTWARE } from '../../support/study-session.ts';
import { putClinic } from './states/put-clinic.ts';

/**
 * Puts a study of eight assessed recordings, two raters and blinding into the store of the browser, beside what is there; gives its id.
 *
 * @param tell - what came of it before it is looked at
 * @param folder - its files, where it is another one
 */
export async function putStudy(
  page: Page,
  tell?: (session: StudySession) => Promise<unknown>,
  folder = studyFolder(),
): Promise<string> {
  const store = new MemoryStore();
  const shelf = memoryShelf(store);
  const { content, found } = contentOfFolder(folder);
  const id = await shelf.keep(content.declared.study.title, content.sources, found);
  await shelf.keepTrials(id, SOFTWARE, assessedFolder(folder));
  if (tell !== undefined) await tell((await shelf.open(id, SOFTWARE))!.session);
  await putClinic(page, store, '', 'beside');
  return id;
}
