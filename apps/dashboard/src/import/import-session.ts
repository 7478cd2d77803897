import type { Answers, Recipe } from '@surae/records';
import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { ChosenFiles } from './chosen-files.ts';
import type { ImportAnswer, ImportAsk, ReadChoice } from './messages.ts';

/** Where one is with a file. */
export type ImportState =
  | { readonly at: 'nothing' }
  | {
      readonly at: 'working';
      readonly what: 'look' | 'read' | 'recipe';
      readonly doneBytes: number;
      readonly totalBytes: number;
    }
  | { readonly at: 'stopped' }
  | { readonly at: 'refused'; readonly reason: string }
  | Extract<ImportAnswer, { kind: 'looked' | 'choose' | 'read' }>;

/** One file after the other, looked at and read in a worker; to stop is to end the worker, which leaves nothing behind. */
export class ImportSession implements ReactiveController {
  state: ImportState = { at: 'nothing' };
  file: File | undefined;
  answers: Answers = {};
  /** out of a file: tables are read by it until it is put away */
  recipe: Recipe | undefined;
  /** whether it was a recipe by which the file was tried last */
  isByRecipe = false;
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
    this.begin(file);
    this.ask({ kind: 'look', file, answers: {} }, 'look');
  }

  /**
   * What was chosen at once. A table is read by the recipe that is loaded, without a question, and looked at where none is; a recipe
   * that comes after its table reads that one.
   */
  take({ table, recipe }: ChosenFiles): void {
    if (table !== undefined) this.begin(table);
    if (recipe !== undefined) {
      // one that is refused leaves none in its place: the one before was not meant
      this.recipe = undefined;
      this.isByRecipe = true;
      this.ask({ kind: 'recipe', file: recipe }, 'recipe');
    } else if (table !== undefined) {
      if (this.recipe === undefined) this.look(table);
      else this.read({}, this.recipe);
    }
  }

  /** Tables are looked at again; one that is there is looked at now. */
  putRecipeAway(): void {
    this.recipe = undefined;
    if (this.file === undefined) this.set({ at: 'nothing' });
    else this.look(this.file);
  }

  /** An answer beside those before. */
  answer(id: string, answer: string): void {
    this.answers = { ...this.answers, [id]: answer };
    // the page stays as it is until the answer has been followed: what is looked at does not flicker
    this.worker ??= this.started();
    this.worker.postMessage({ kind: 'answer', answers: this.answers } satisfies ImportAsk);
  }

  read(choice: ReadChoice, recipe?: Recipe): void {
    const { file } = this;
    if (file === undefined) return;
    const name = recipe?.name ?? file.name;
    this.isByRecipe = recipe !== undefined;
    this.ask({ kind: 'read', file, name, choice, ...(recipe === undefined ? {} : { recipe }) }, 'read');
  }

  /** A file that was taken in before. */
  readTaken(file: File, recipe: Recipe, choice: ReadChoice): void {
    this.begin(file);
    this.read(choice, recipe);
  }

  /** Nothing was taken of what was chosen. */
  refuse(reason: string): void {
    this.end();
    this.isByRecipe = false;
    this.set({ at: 'refused', reason });
  }

  stop(): void {
    this.end();
    this.set({ at: 'stopped' });
  }

  private begin(file: File): void {
    this.end();
    this.file = file;
    this.answers = {};
    this.looked = undefined;
    this.isByRecipe = false;
  }

  private ask(message: ImportAsk, what: 'look' | 'read' | 'recipe'): void {
    this.worker ??= this.started();
    this.set({ at: 'working', what, doneBytes: 0, totalBytes: this.file?.size ?? 0 });
    this.worker.postMessage(message);
  }

  private started(): Worker {
    const worker = this.makeWorker();
    worker.onmessage = ({ data }: MessageEvent<ImportAnswer>) => this.follow(data);
    worker.onerror = () => this.set({ at: 'refused', reason: '' });
    return worker;
  }

  private follow(answer: ImportAnswer): void {
    switch (answer.kind) {
      case 'progress': {
        const { doneBytes, totalBytes } = answer;
        if ('at' in this.state && this.state.at === 'working') this.set({ ...this.state, doneBytes, totalBytes });
        return;
      }
      case 'looked':
        this.looked = answer;
        this.set(answer);
        return;
      case 'choose':
      case 'read':
        this.set(answer);
        return;
      case 'recipe':
        this.recipe = answer.recipe;
        if (this.file === undefined) this.set({ at: 'nothing' });
        else this.read({}, answer.recipe);
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
