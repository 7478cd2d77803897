import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import type { Codec } from './codec.ts';
import { StorageError } from './errors.ts';
import { InTurn } from './in-turn.ts';
import type { ByteWriter } from './record-store.ts';
import type { Rows } from './rows.ts';

/** Begins a stream; its pieces are written one after the other. */
export async function openWriter(
  rows: Rows,
  codec: Codec,
  stream: { readonly id: string; readonly label: string; readonly whose: string | null },
): Promise<ByteWriter> {
  const sealer = await codec.sealStream(stream);
  await rows.addStream(sealer.opened);
  const { id } = stream;
  const turn = new InTurn();
  const hash = sha256.create();
  let next = 0;
  let closed = false;
  const open = (): void => {
    if (closed) throw new StorageError('already-closed', 'This recording was closed before.');
    rows.access.check();
  };
  return {
    id,
    append: (piece) => {
      // a copy in any case: the slice of a Buffer of Node is none
      const bytes = Uint8Array.from(piece);
      return turn.take(async () => {
        open();
        await rows.addPieces(id, next, [await sealer.piece(next, bytes)]);
        next += 1;
        hash.update(bytes);
      });
    },
    close: () =>
      turn.take(async () => {
        open();
        const whole = bytesToHex(hash.clone().digest());
        await rows.closeStream(await sealer.closed(whole, next));
        closed = true;
        return whole;
      }),
  };
}
