import { defaultSettings } from '@surae/analysis';
import { type ReadBytes, type RecordDocument, recordStudy, type Study, studyParts, ZipPacker } from '@surae/exchange';
import { joinPieces } from '@surae/records';
import { type ExportChoice, exportName, extentOf, requestOf } from './export-choice.ts';
import type { ExportWork, MadeExport } from './messages.ts';

/** Packed bytes are handed over in pieces of about this size [bytes] */
const PIECE = 1 << 20;

/** The study that was chosen, from the documents alone or with the bytes of a store. */
export function chosenStudy(
  documents: readonly RecordDocument[],
  choice: ExportChoice,
  software: string,
  read: ReadBytes | null,
): Promise<Study> {
  return recordStudy(documents, { extent: extentOf(choice), settings: defaultSettings(), software, read });
}

/** Makes the file that was chosen and hands it over piece by piece; only one recording and one piece are kept at a time. */
export async function makeExport(
  { documents, choice, software, day, secret }: ExportWork,
  read: ReadBytes,
  tell: {
    readonly progress: (done: number, of: number) => void;
    readonly piece: (bytes: Uint8Array<ArrayBuffer>) => void;
  },
): Promise<MadeExport> {
  const study = await chosenStudy(documents, choice, software, read);
  const { files, out } = studyParts(study, { ...requestOf(choice, secret, day), progress: tell.progress });
  let waiting: Uint8Array[] = [];
  let length = 0;
  const handOver = (): void => {
    tell.piece(joinPieces(waiting));
    waiting = [];
    length = 0;
  };
  const packer = new ZipPacker((piece) => {
    waiting.push(piece);
    length += piece.length;
    if (length >= PIECE) handOver();
  });
  let parts = 0;
  for await (const file of files) {
    packer.add(file);
    parts += 1;
  }
  packer.end();
  handOver();
  return { name: exportName(choice, day), parts, out };
}
