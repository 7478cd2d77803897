import { StorageError } from '@surae/storage';
import type { Rows } from '../../../packages/storage/src/rows.ts';

/** What goes wrong with a call that writes: no room for it, or the program is killed before or after it. */
export type WriteFault = 'full' | 'killed-before' | 'killed-after';

const writes: readonly (string | symbol)[] = [
  'addDocuments',
  'addStream',
  'addPieces',
  'closeStream',
  'addKey',
  'keepSetting',
  'erase',
];

/** Rows of which one call that writes goes wrong when asked; after a kill none is answered any more. */
export class FaultyRows {
  readonly rows: Rows;
  isKilled = false;
  private fault: { readonly what: WriteFault; left: number } | null = null;

  constructor(inner: Rows) {
    this.rows = new Proxy(inner, {
      get: (target, name) => {
        const found = Reflect.get(target, name, target) as unknown;
        if (typeof found !== 'function' || name === 'close') return bound(found, target);
        return (...given: unknown[]): unknown => {
          if (this.isKilled) return Promise.reject(new StorageError('failed', 'The program was killed.'));
          const call = (): unknown => Reflect.apply(found, target, given);
          return writes.includes(name) ? this.write(call) : call();
        };
      },
    });
  }

  /** Lets the n-th of the next calls that write go wrong, counted from 0. */
  next(what: WriteFault, n: number): void {
    this.fault = { what, left: n };
  }

  /** Whether the fault has not been met yet; takes it back. */
  takeBack(): boolean {
    const isWaiting = this.fault !== null;
    this.fault = null;
    return isWaiting;
  }

  private async write(call: () => unknown): Promise<unknown> {
    if (this.fault === null || this.fault.left-- > 0) return call();
    const { what } = this.fault;
    this.fault = null;
    if (what === 'full') throw new StorageError('full', 'There is no room.');
    if (what === 'killed-after') await call();
    this.isKilled = true;
    throw new StorageError('failed', 'The program was killed.');
  }
}

function bound(value: unknown, target: object): unknown {
  return typeof value === 'function' ? (value as (...given: unknown[]) => unknown).bind(target) : value;
}
