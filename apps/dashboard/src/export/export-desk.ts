import type { RecordBytes } from '@surae/exchange';
import { makeExport } from './make-export.ts';
import type { ExportAnswer, ExportAsk, ExportWork } from './messages.ts';

interface Waiting {
  readonly resolve: (bytes: RecordBytes | undefined) => void;
  readonly reject: (error: Error) => void;
}

/** Makes a file and tells of it; asks for the bytes of recordings, one after the other. */
export class ExportDesk {
  private readonly tell: (answer: ExportAnswer) => void;
  private readonly waiting = new Map<number, Waiting>();
  private lastQuestion = 0;

  constructor(tell: (answer: ExportAnswer) => void) {
    this.tell = tell;
  }

  async take(asked: ExportAsk): Promise<void> {
    if (asked.kind === 'make') return this.make(asked.work);
    const one = this.waiting.get(asked.question);
    this.waiting.delete(asked.question);
    if (asked.kind === 'bytes') one?.resolve(asked.bytes);
    else one?.reject(new Error(asked.reason));
  }

  private async make(work: ExportWork): Promise<void> {
    try {
      const made = await makeExport(work, (bytesId) => this.read(bytesId), {
        progress: (done, of) => this.tell({ kind: 'progress', done, of }),
        piece: (bytes) => this.tell({ kind: 'piece', bytes }),
      });
      this.tell({ kind: 'made', made });
    } catch (error) {
      this.tell({ kind: 'broken', reason: error instanceof Error ? error.message : String(error) });
    }
  }

  private read(bytesId: string): Promise<RecordBytes | undefined> {
    return new Promise((resolve, reject) => {
      this.lastQuestion += 1;
      this.waiting.set(this.lastQuestion, { resolve, reject });
      this.tell({ kind: 'read', question: this.lastQuestion, bytesId });
    });
  }
}
