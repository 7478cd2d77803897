import type { SavedFile } from './session-results.ts';

/** What the worker is asked that packs. */
export type PackAsk =
  | { readonly kind: 'pack'; readonly files: readonly SavedFile[] }
  | { readonly kind: 'unpack'; readonly name: string; readonly bytes: Uint8Array };

interface Unpacked {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** What it answers. */
export type PackAnswer =
  | { readonly kind: 'packed'; readonly bytes: Uint8Array<ArrayBuffer> }
  | { readonly kind: 'unpacked'; readonly files: readonly Unpacked[] }
  | { readonly kind: 'broken'; readonly reason: string };

/** A zip that cannot be packed or unpacked, in words. */
export class PackFault extends Error {
  override readonly name = 'PackFault';
}

function answered(asked: PackAsk): Promise<PackAnswer> {
  const worker = new Worker(new URL('./pack-worker.ts', import.meta.url), { type: 'module' });
  return new Promise<PackAnswer>((resolve, reject) => {
    worker.onmessage = ({ data }: MessageEvent<PackAnswer>) => resolve(data);
    worker.onerror = ({ message }) => reject(new PackFault(message));
    worker.postMessage(asked);
  }).finally(() => worker.terminate());
}

/** One zip of all files. @throws {@link PackFault} */
export async function packed(files: readonly SavedFile[]): Promise<Uint8Array<ArrayBuffer>> {
  const answer = await answered({ kind: 'pack', files });
  if (answer.kind !== 'packed') throw new PackFault(answer.kind === 'broken' ? answer.reason : '');
  return answer.bytes;
}

/** The files of a zip. @throws {@link PackFault} where it is none */
export async function unpacked(zip: File): Promise<readonly Unpacked[]> {
  const bytes = new Uint8Array(await zip.arrayBuffer());
  const answer = await answered({ kind: 'unpack', name: zip.name, bytes });
  if (answer.kind !== 'unpacked') throw new PackFault(answer.kind === 'broken' ? answer.reason : '');
  return answer.files;
}
