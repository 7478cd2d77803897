import { MemoryStore } from '@surae/storage';
import type { Page } from 'playwright-core';
import { studyFolder } from '../../support/study-folder.ts';
import { assessedFolder, contentOfFolder, memoryShelf, SOFTWARE } from '../../support/study-session.ts';
import { putClinic } from './states/put-clinic.ts';

/** Puts a study of eight assessed recordings, two raters and blinding into the store of the browser; gives its id. */
export async function putStudy(page: Page): Promise<string> {
  const folder = studyFolder();
  const store = new MemoryStore();
  const shelf = memoryShelf(store);
  const { content, found } = contentOfFolder(folder);
  const id = await shelf.keep(content.declared.study.title, content.sources, found);
  await shelf.keepTrials(id, SOFTWARE, assessedFolder(folder));
  await putClinic(page, store, '');
  return id;
}
