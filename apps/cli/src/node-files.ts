import { createReadStream, readFileSync } from 'node:fs';
import { stat } from 'node:fs/promises';
import type { Io } from './io.ts';
import { type ZipPlace, zipPlace } from './zip-path.ts';
import type { ZipReader } from './zip-reader.ts';

/** How bytes come in: what a worker has of the outside. */
export type Files = Pick<Io, 'readFile' | 'readChunks'>;

/** The zip that a path leads into; a folder whose name ends in .zip is a folder. */
async function placeInZip(path: string): Promise<ZipPlace | undefined> {
  const place = zipPlace(path);
  if (place === undefined) return undefined;
  const found = await stat(place.zip).catch(() => undefined);
  return found?.isFile() === true ? place : undefined;
}

/** The real files, those in zips among them. */
export function nodeFiles(): Files & Pick<Io, 'zipNames'> {
  let reader: Promise<ZipReader> | undefined;
  const zips = (): Promise<ZipReader> =>
    (reader ??= import('./zip-reader.ts').then((loaded) => new loaded.ZipReader()));
  return {
    zipNames: async (path) => (await zips()).names(path),
    readFile: async (path) => {
      const place = await placeInZip(path);
      // at once: step by step by way of other threads a worker stands still at every step
      return place === undefined ? readFileSync(path) : (await zips()).read(place.zip, place.entry);
    },
    readChunks: async function* (path) {
      const place = await placeInZip(path);
      if (place === undefined) yield* createReadStream(path, { highWaterMark: 1 << 20 }) as AsyncIterable<Uint8Array>;
      else yield* (await zips()).chunks(place.zip, place.entry);
    },
  };
}
