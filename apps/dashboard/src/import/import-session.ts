import type { Answers, Recipe } from '@surae/records';
import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { ImportAnswer, ImportAsk } from './messages.ts';

/** Where one is with a file. */
export type ImportState =
  | { readonly at: 'nothing' }
  | { readonly at: 'working'; readonly what: 'look' | 'read'; readonly doneBytes: number; readonly totalBytes: number }
  | { readonly at: 'stopped' }
  | { readonly at: 'refused'; readonly reason: string }
  | Extract<ImportAnswer, { kind: 'looked' }>
  | Extract<ImportAnswer, { kind: 'read' }>;

/** One file after the other, looked at and read in a worker; to stop is to end the worker, which leaves nothing behind. */
export class ImportSession implements ReactiveController {
  state: ImportState = { at: 'nothing' };
  file: File | undefined;
  answers: Answers = {};
  /** the last look at the file, so that one can go back to it */
  looked: Extract<ImportAnswer, { kind: 'looked' }> | undefined;
  private readonly host: ReactiveControllerHost;
  private readonly makeWorker: () => Worker;
  private worker: Worker | undefined;

  constructor(host: ReactiveControllerHost, makeWorker: () => Worker) {
    this.host = host;
    this.makeWorker = makeWorker;
    host.addController(this);
  }

  hostDisconnected(): void {
    this.end();
  }

  look(file: File): void {
    this.end();
    this.file = file;
    this.answers = {};
    this.looked = undefined;
    this.ask({ kind: 'look', file, answers: {} }, 'look');
  }

  /** An answer beside those before. */
  answer(id: string, answer: string): void {
    this.answers = { ...this.answers, [id]: answer };
    // the page stays as it is until the answer has been followed: what is looked at does not flicker
    this.worker ??= this.started();
    this.worker.postMessage({ kind: 'answer', answers: this.answers } satisfies ImportAsk);
  }

  read(choice: Omit<Extract<ImportAsk, { kind: 'read' }>, 'kind' | 'file' | 'name'>, recipe?: Recipe): void {
    const { file } = this;
    if (file === undefined) return;
    const name = recipe?.name ?? file.name;
    this.ask({ kind: 'read', file, name, ...choice, ...(recipe === undefined ? {} : { recipe }) }, 'read');
  }

  stop(): void {
    this.end();
    this.set({ at: 'stopped' });
  }

  private ask(message: ImportAsk, what: 'look' | 'read'): void {
    this.worker ??= this.started();
    this.set({ at: 'working', what, doneBytes: 0, totalBytes: this.file?.size ?? 0 });
    this.worker.postMessage(message);
  }

  private started(): Worker {
    const worker = this.makeWorker();
    worker.onmessage = ({ data }: MessageEvent<ImportAnswer>) => this.take(data);
    worker.onerror = () => this.set({ at: 'refused', reason: '' });
    return worker;
  }

  private take(answer: ImportAnswer): void {
    switch (answer.kind) {
      case 'progress':
        if ('at' in this.state && this.state.at === 'working') this.set({ ...this.state, ...answer });
        return;
      case 'looked':
        this.looked = answer;
        this.set(answer);
        return;
      case 'read':
        this.set(answer);
        return;
      case 'refused':
        this.set({ at: 'refused', reason: answer.refusal.message });
        return;
      case 'broken':
        this.set({ at: 'refused', reason: answer.message });
    }
  }

  private set(state: ImportState): void {
    this.state = state;
    this.host.requestUpdate();
  }

  private end(): void {
    this.worker?.terminate();
    this.worker = undefined;
  }
}
