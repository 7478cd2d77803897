import { defaultSettings } from '@surae/analysis';
import { type RecordDocument, recordStudy, type Study, studyFiles, type TakenOut, zipped } from '@surae/exchange';
import type { RecordStore } from '@surae/storage';
import { type ExportChoice, exportName, extentOf, requestOf } from './export-choice.ts';

/** A file that was made, and what was taken out before. */
export interface MadeExport {
  readonly name: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly parts: number;
  readonly out: TakenOut | null;
}

/** Lets the page draw before it goes on. */
function breath(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 0));
}

/** The study that was chosen, from the documents alone or with the bytes of a store. */
export function chosenStudy(
  documents: readonly RecordDocument[],
  choice: ExportChoice,
  software: string,
  store: Pick<RecordStore, 'bytes'> | null,
): Promise<Study> {
  const read =
    store === null
      ? null
      : async (id: string) => {
          await breath();
          return store.bytes(id);
        };
  return recordStudy(documents, { extent: extentOf(choice), settings: defaultSettings(), software, read });
}

/** Makes the file that was chosen; tells how far it has come. */
export async function makeExport(
  store: Pick<RecordStore, 'bytes' | 'documents'>,
  choice: ExportChoice,
  { software, day, secret }: { readonly software: string; readonly day: string; readonly secret: string },
  progress: (done: number, of: number) => void,
): Promise<MadeExport> {
  const study = await chosenStudy(await store.documents({}), choice, software, store);
  const { files, out } = await studyFiles(study, { ...requestOf(choice, secret, day), progress });
  await breath();
  return { name: exportName(choice, day), bytes: zipped(files), parts: files.length, out };
}
