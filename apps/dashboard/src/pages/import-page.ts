import { consume } from '@lit/context';
import type { Person } from '@surae/casebook';
import type { Recipe } from '@surae/records';
import { IMPORT_PLACE, IMPORT_WORDS } from '@surae/shared';
import type { Json } from '@surae/storage';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { bookContext, type SensorMaker, sensorContext } from '../contexts/capabilities.ts';
import { sortChosen } from '../import/chosen-files.ts';
import { ImportSession } from '../import/import-session.ts';
import { importWorker } from '../import/import-worker.ts';
import type { ImportAnswer } from '../import/messages.ts';
import { sortedVisits } from '../journey/people-list.ts';
import type { TakenEntry } from '../journey/taken-shelf.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import type { HandedRecording } from '../live/handed-recording.ts';
import { playsRecordings } from '../live/recording-chooser.ts';
import { storeWords } from '../live/store-words.ts';
import { fieldStyle } from '../parts/field-style.ts';
import '../parts/import-choices.ts';
import type { ReadChosen } from '../parts/import-choices.ts';
import '../parts/import-looked.ts';
import type { QuestionAnswered } from '../parts/import-questions.ts';
import '../parts/import-read.ts';
import type { OpenVisit } from '../parts/import-read.ts';
import '../parts/taken-before.ts';
import type { TakenOpened } from '../parts/taken-before.ts';
import { saveFile } from '../result/save-file.ts';
import { base } from '../styles/base.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';

type Read = Extract<ImportAnswer, { kind: 'read' }>;

const megabytes = (bytes: number): string => (bytes / 1e6).toFixed(1);

/** A table that another program wrote: looked at, asked about, read, and taken into a visit. */
@customElement('import-page')
export class ImportPage extends LitElement {
  static override styles = [
    base,
    fieldStyle,
    css`
      .file {
        margin-block: var(--gap-6);
        max-inline-size: 44rem;
      }
      .file p {
        margin-block-start: var(--gap-2);
      }
      .over {
        outline: 3px dashed var(--voice);
        outline-offset: 4px;
      }
      .recipes {
        display: grid;
        gap: var(--gap-3);
        justify-items: start;
        margin-block-end: var(--gap-6);
      }
    `,
  ];

  @consume({ context: bookContext }) private readonly book!: VisitBook;
  @consume({ context: sensorContext }) private readonly sensors!: SensorMaker;
  private readonly session = new ImportSession(this, importWorker);
  @state() private recipes: readonly { readonly name: string; readonly json: Json }[] = [];
  @state() private visits: readonly OpenVisit[] = [];
  @state() private people: readonly Person[] = [];
  @state() private taken: readonly TakenEntry[] = [];
  /** whose the recording is; null while that is open */
  @state() private personId: string | null = null;
  @state() private said = '';
  /** what became of keeping the recording */
  @state() private takenSaid = '';
  @state() private isOver = false;
  /** the recording that stands ready for a visit */
  private handed: Read | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    void this.load();
  }

  private async load(): Promise<void> {
    this.recipes = await this.book.recipes();
    const caseload = await this.book.caseload();
    this.people = caseload.map(({ person }) => person);
    this.visits = caseload.flatMap(({ person: { id: personId, name }, visits }) => {
      const { open } = sortedVisits(visits);
      return open === undefined ? [] : [{ id: open.id, personId, person: name, date: dayOf(open.begunAt) }];
    });
    this.taken = await this.book.taken.entries();
  }

  protected override updated(): void {
    const { state, file } = this.session;
    // what was read stands ready wherever a recording can be played
    if ('kind' in state && state.kind === 'read' && state !== this.handed) {
      this.handed = state;
      this.said = '';
      this.takenSaid = '';
      if (file !== undefined) void this.takeIn(file, state);
    }
  }

  /** Keeps the file as it came, from the moment it is read. */
  private async takeIn(file: File, { recording, recipe, choice }: Read): Promise<void> {
    const handed = { name: file.name, recording };
    this.hand(handed);
    try {
      const { personId } = this;
      const mapping = { name: file.name, recipe, choice };
      const taken = await this.book.taken.keep(file, mapping, recording.source.sha256, personId);
      // whoever opens it again may put it to another visit of its person
      this.hand({ ...handed, taken: { ...taken, usedIn: [] } });
      this.takenSaid = IMPORT_WORDS['taken-kept'].text;
      this.taken = await this.book.taken.entries();
    } catch (error) {
      this.takenSaid = fill(IMPORT_WORDS['taken-not-kept'], { reason: storeWords(error) });
    }
  }

  private hand(handed: HandedRecording): void {
    if (playsRecordings(this.sensors)) this.sensors.handOver(handed);
  }

  private async choose(files: Iterable<File>): Promise<void> {
    const chosen = await sortChosen([...files]);
    if (typeof chosen === 'string') this.session.refuse(IMPORT_WORDS[chosen].text);
    else this.session.take(chosen);
  }

  override render(): TemplateResult {
    const words = IMPORT_WORDS;
    return html`
      <div
        class=${this.isOver ? 'over' : ''}
        @dragover=${(event: DragEvent) => {
          event.preventDefault();
          this.isOver = true;
        }}
        @dragleave=${() => (this.isOver = false)}
        @drop=${(event: DragEvent) => {
          event.preventDefault();
          this.isOver = false;
          void this.choose(event.dataTransfer?.files ?? []);
        }}
      >
        <h1 tabindex="-1">${IMPORT_PLACE.title.text}</h1>
        <p>${words.explain.text}</p>
        <div class="file">
          <label for="file">${words.file.text}</label>
          <input
            id="file"
            type="file"
            multiple
            accept=".csv,.tsv,.txt,.dat,.json,text/csv,text/plain,text/tab-separated-values,application/json"
            aria-describedby="drop"
            @change=${(event: Event) => {
              const input = event.target as HTMLInputElement;
              void this.choose([...(input.files ?? [])]);
              input.value = '';
            }}
          />
          <p id="drop" class="quiet">${words.drop.text}</p>
        </div>
        ${this.whose()} ${this.loaded()} ${this.stage()}
        <taken-before
          .entries=${this.taken}
          .people=${this.people}
          @taken-opened=${({ detail }: TakenOpened) => void this.open(detail)}
          @taken-put-aside=${() => void this.load()}
        ></taken-before>
      </div>
    `;
  }

  /** Whose the file is, asked as long as it is not read. */
  private whose(): TemplateResult | typeof nothing {
    const { state } = this.session;
    if (this.people.length === 0 || ('kind' in state && state.kind === 'read')) return nothing;
    const words = IMPORT_WORDS;
    return html`<div class="file">
      <label for="whose">${words.whose.text}</label>
      <select
        id="whose"
        @change=${(event: Event) => (this.personId = (event.target as HTMLSelectElement).value || null)}
      >
        <option value="" ?selected=${this.personId === null}>${words['whose-open'].text}</option>
        ${this.people.map(
          ({ id, name }) => html`<option value=${id} ?selected=${this.personId === id}>${name}</option>`,
        )}
      </select>
    </div>`;
  }

  /** Reads what was taken in before, as it was read then. */
  private async open(entry: TakenEntry): Promise<void> {
    const file = await this.book.taken.file(entry);
    if (file === undefined) {
      this.session.refuse(IMPORT_WORDS['taken-damaged'].text);
      return;
    }
    const { recipe, choice } = entry.mapping;
    this.personId = entry.personId;
    this.session.readTaken(file, recipe, choice);
  }

  /** The recipe that is loaded, which reads whatever table comes. */
  private loaded(): TemplateResult | typeof nothing {
    const { recipe, state } = this.session;
    if (recipe === undefined) return nothing;
    const words = IMPORT_WORDS;
    const waits = 'at' in state && state.at === 'nothing';
    return html`<p role="status">${fill(waits ? words['recipe-ready'] : words['recipe-in-use'], { name: recipe.name })}</p>
      <button type="button" @click=${() => this.session.putRecipeAway()}>${words['recipe-away'].text}</button>`;
  }

  private stage(): TemplateResult | typeof nothing {
    const words = IMPORT_WORDS;
    const { state, file } = this.session;
    const name = file?.name ?? '';
    if ('kind' in state) {
      if (state.kind === 'read') {
        return html`<import-read
          .result=${state}
          .visits=${this.visits.filter(({ personId }) => this.personId === null || personId === this.personId)}
          .said=${this.said}
          .takenSaid=${this.takenSaid}
          @recipe-kept=${() => void this.keep(state.recipe)}
          @recipe-saved=${() => this.save(state.recipe)}
        ></import-read>`;
      }
      if (state.kind === 'choose') {
        const { recipe, choice, choices } = state;
        return html`<h2>${name}</h2>
          <p>${fill(words['choose-first'], { name: recipe.name })}</p>
          <import-choices
            .parts=${choices.parts}
            .isLong=${choices.isLong}
            .windows=${choices.windows}
            .asksRate=${choices.rate}
            @read-chosen=${({ detail }: ReadChosen) => this.session.read({ ...choice, ...detail }, recipe)}
          ></import-choices>`;
      }
      return html`<h2>${name}</h2>
        ${this.kept()}
        <import-looked
          .looked=${state}
          @question-answered=${({ detail }: QuestionAnswered) => this.session.answer(detail.id, detail.answer)}
          @read-chosen=${({ detail }: ReadChosen) => this.session.read(detail)}
        ></import-looked>`;
    }
    switch (state.at) {
      case 'nothing':
        return nothing;
      case 'stopped':
        return html`<p class="voice" role="status">${words.cancelled.text}</p>`;
      case 'refused':
        return html`<p class="voice" role="alert">${fill(words.refused, { reason: state.reason })}</p>
          ${this.lookAnyway()}`;
      case 'working': {
        if (state.what === 'recipe') return html`<p role="status">${words['recipe-looking'].text}</p>`;
        const figures = { name, done: megabytes(state.doneBytes), total: megabytes(state.totalBytes) };
        return html`<p role="status">${fill(words[state.what === 'look' ? 'looking' : 'reading'], figures)}</p>
          <button type="button" @click=${() => this.session.stop()}>${words.cancel.text}</button>`;
      }
    }
  }

  /** A table that no recipe read, or beside which a recipe was refused, is still there to be looked at. */
  private lookAnyway(): TemplateResult | typeof nothing {
    const { file, recipe, isByRecipe } = this.session;
    if (file === undefined || recipe !== undefined || !isByRecipe) return nothing;
    return html`<button type="button" @click=${() => this.session.look(file)}>${IMPORT_WORDS['look-anyway'].text}</button>`;
  }

  /** The recipes that may fit: a file that differs is refused with what differs. */
  private kept(): TemplateResult | typeof nothing {
    if (this.recipes.length === 0) return nothing;
    return html`<p class="quiet">${IMPORT_WORDS['recipes-explain'].text}</p>
      <div class="recipes">
        ${this.recipes.map(
          ({ name, json }) =>
            html`<button type="button" @click=${() => this.session.read({}, json as unknown as Recipe)}>
              ${fill(IMPORT_WORDS['by-recipe'], { name })}
            </button>`,
        )}
      </div>`;
  }

  private async keep(recipe: Recipe): Promise<void> {
    try {
      await this.book.addRecipe(recipe.name, recipe);
      this.said = fill(IMPORT_WORDS.kept, { name: recipe.name });
      this.recipes = await this.book.recipes();
    } catch {
      this.said = IMPORT_WORDS['not-kept'].text;
    }
  }

  private save(recipe: Recipe): void {
    const name = `${recipe.name.replace(/\.[^.]*$/, '').replace(/[^\p{L}\p{N}._-]+/gu, '-')}.recipe.json`;
    saveFile({ name, type: 'application/json', content: `${JSON.stringify(recipe, null, 2)}\n` });
  }
}
