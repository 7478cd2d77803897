import { consume } from '@lit/context';
import type { Visit } from '@surae/casebook';
import { IMPORT_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { bookContext } from '../contexts/capabilities.ts';
import { offeredTo, type TakenEntry } from '../journey/taken-shelf.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import type { HandedRecording } from '../live/handed-recording.ts';
import { storeWords } from '../live/store-words.ts';
import { base } from '../styles/base.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';

export type TakenChosen = CustomEvent<HandedRecording>;

/** Recordings of other programs that were taken in before and that a visit may play. Tells `taken-chosen`. */
@customElement('taken-list')
export class TakenList extends LitElement {
  static override styles = [
    base,
    css`
      section {
        display: grid;
        gap: var(--gap-3);
        justify-items: start;
        margin-block: var(--gap-4);
      }
      p {
        margin: 0;
      }
      button {
        overflow-wrap: anywhere;
        text-align: start;
      }
    `,
  ];

  @property({ attribute: false }) visit!: Pick<Visit, 'id' | 'personId'>;
  @consume({ context: bookContext }) private readonly book!: VisitBook;
  @state() private entries: readonly TakenEntry[] = [];
  @state() private said = '';

  override connectedCallback(): void {
    super.connectedCallback();
    void this.load();
  }

  private async load(): Promise<void> {
    this.entries = offeredTo(await this.book.taken.entries(), this.visit);
  }

  override render(): TemplateResult | typeof nothing {
    if (this.entries.length === 0) return nothing;
    const words = IMPORT_WORDS;
    return html`<section aria-labelledby="taken">
      <p id="taken">${words['taken-offered'].text}</p>
      ${this.entries.map(
        (entry) =>
          html`<button type="button" @click=${() => void this.choose(entry)}>
            ${fill(words['taken-use'], { name: entry.mapping.name, date: dayOf(entry.at) })}
          </button>`,
      )}
      ${this.said === '' ? nothing : html`<p class="voice" role="alert">${this.said}</p>`}
    </section>`;
  }

  private async choose(entry: TakenEntry): Promise<void> {
    this.said = '';
    try {
      const file = await this.book.taken.file(entry);
      if (file === undefined) {
        this.said = IMPORT_WORDS['taken-damaged'].text;
        return;
      }
      // readers of files are only loaded when there is a file
      const [{ readTaken }, { importWorker }] = await Promise.all([
        import('../import/read-taken.ts'),
        import('../import/import-worker.ts'),
      ]);
      const recording = await readTaken(file, entry.mapping, importWorker);
      const detail: HandedRecording = { name: entry.mapping.name, recording, taken: entry };
      this.dispatchEvent(new CustomEvent('taken-chosen', { detail }));
    } catch (error) {
      this.said = storeWords(error);
    }
  }
}
