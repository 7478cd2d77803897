import {
  type Answers,
  findingsOf,
  formTopics,
  makeRecipe,
  parseRecipe,
  RecipeReader,
  RecordError,
  recipeOf,
  type SurveyedTable,
  TableSurvey,
} from '@surae/records';
import type { ImportAnswer, ImportAsk } from './messages.ts';
import { thinned } from './thinned.ts';

/** Progress is told no more often than this [bytes]. */
const TOLD_EVERY = 1 << 20;

/** No recipe is longer: ten thousand columns fit [bytes]. */
const RECIPE_BYTES = 16 << 20;

type Read = Extract<ImportAsk, { kind: 'read' }>;

/** Looks at files and reads them, a piece at a time; holds the numbers of the one that is looked at. */
export class ImportDesk {
  private readonly tell: (answer: ImportAnswer) => void;
  private table: SurveyedTable | undefined;
  private file: File | undefined;
  private answers: Answers = {};

  constructor(tell: (answer: ImportAnswer) => void) {
    this.tell = tell;
  }

  async take(asked: ImportAsk): Promise<void> {
    try {
      if (asked.kind === 'look') await this.look(asked.file, asked.answers);
      else if (asked.kind === 'answer') await this.answer(asked.answers);
      else if (asked.kind === 'recipe') await this.recipe(asked.file);
      else await this.read(asked);
    } catch (error) {
      if (error instanceof RecordError) {
        this.tell({ kind: 'refused', refusal: { code: error.code, message: error.message } });
      } else this.tell({ kind: 'broken', message: error instanceof Error ? error.message : String(error) });
    }
  }

  private async look(file: File, answers: Answers): Promise<void> {
    const survey = new TableSurvey({ file: file.name, answers });
    await this.pieces(file, (piece) => survey.push(piece));
    this.table = survey.end();
    this.file = file;
    this.answers = answers;
    this.show();
  }

  /** An answer about the form of the text needs the file again; of any other the numbers stay. */
  private async answer(answers: Answers): Promise<void> {
    const { table, file } = this;
    if (table === undefined || file === undefined) return;
    if (formTopics.some((topic) => answers[topic] !== this.answers[topic])) return this.look(file, answers);
    this.table = table.withAnswers(answers);
    this.answers = answers;
    this.show();
  }

  private show(): void {
    const { proposal, times, columns } = this.table!;
    const pictures = proposal.columns.map(({ index }) => [index, thinned(times, columns.get(index)!)] as const);
    this.tell({ kind: 'looked', proposal, findings: findingsOf(proposal), pictures });
  }

  /** A recipe out of a file, checked in every part before anything is read by it. */
  private async recipe(file: File): Promise<void> {
    const { name, size } = file;
    if (size > RECIPE_BYTES) {
      const expected = `a recipe of at most ${RECIPE_BYTES} bytes`;
      throw new RecordError('invalid-document', { file: name, expected, actual: `${size} bytes` });
    }
    let text: string;
    try {
      text = new TextDecoder('utf-8', { fatal: true }).decode(await file.arrayBuffer());
    } catch (cause) {
      throw new RecordError(
        'not-utf-8',
        { file: name, expected: 'a recipe as text in UTF-8', actual: 'other bytes' },
        { cause },
      );
    }
    this.tell({ kind: 'recipe', recipe: parseRecipe(text, name) });
  }

  private async read({ file, recipe: kept, name, choice }: Read): Promise<void> {
    const recipe = kept === undefined ? makeRecipe(this.table!.proposal, name, file.name) : recipeOf(kept, name);
    const reader = new RecipeReader(recipe, { file: file.name, ...choice });
    await this.pieces(file, (piece) => reader.push(piece));
    try {
      const { recording, passedOver } = reader.end();
      this.tell({ kind: 'read', recording, recipe, choice, passedOver });
    } catch (error) {
      const { choices } = reader;
      if (choices === undefined) throw error;
      this.tell({ kind: 'choose', recipe, choice, choices });
    }
  }

  private async pieces(file: File, take: (piece: Uint8Array) => void): Promise<void> {
    const reader = file.stream().getReader();
    let done = 0;
    let told = 0;
    for (;;) {
      const next = await reader.read();
      if (next.done) return;
      take(next.value);
      done += next.value.length;
      if (done - told < TOLD_EVERY) continue;
      told = done;
      this.tell({ kind: 'progress', doneBytes: done, totalBytes: file.size });
    }
  }
}
