import { RECOUNT_STUDY_WORDS } from '@surae/shared';
import { StudyError } from '@surae/study';
import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { fileFieldStyle } from '../parts/field-style.ts';
import { foldStyle } from '../parts/fold-style.ts';
import { saveFile } from '../result/save-file.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import type { RaterState, RecountDesk } from './recount-desk.ts';

/** The files of the raters, so that a count goes on between here and the command line. Tells `files-taken` after something came in. */
@customElement('recount-files')
export class RecountFiles extends LitElement {
  static override styles = [
    base,
    foldStyle,
    fileFieldStyle,
    css`
      .rater {
        border-block-start: 1px solid var(--hairline);
        margin-block-start: var(--gap-4);
        padding-block-start: var(--gap-4);
      }
      label {
        display: block;
        font-weight: 600;
        margin-block-start: var(--gap-3);
      }
    `,
  ];

  @property({ attribute: false }) desk!: RecountDesk;
  @property({ attribute: false }) states: readonly RaterState[] = [];
  @state() private said = '';

  override render(): TemplateResult {
    const words = RECOUNT_STUDY_WORDS;
    return html`<details>
      <summary>${words.files.text}</summary>
      <p>${words['files-note'].text}</p>
      <p role="status" class="voice">${this.said}</p>
      ${this.field('key', words['take-in-key'].text, '.json', (text, name) => this.takeKey(text, name))}
      ${this.states.map(
        ({ rater }, at) => html`<div class="rater">
          <div class="choices">
            <button type="button" @click=${() => saveFile({ name: `${rater}.jsonl`, type: 'text/plain', content: this.desk.verdictsText(rater) })}>
              ${fill(words['save-verdicts'], { rater })}
            </button>
            <button type="button" @click=${() => saveFile({ name: `${rater}.key.json`, type: 'application/json', content: this.desk.keyText(rater) })}>
              ${fill(words['save-key'], { rater })}
            </button>
          </div>
          ${this.field(`verdicts-${at}`, fill(words['take-in'], { rater }), '.jsonl', (text, name) => this.takeVerdicts(rater, text, name))}
        </div>`,
      )}
    </details>`;
  }

  private field(
    id: string,
    label: string,
    accept: string,
    take: (text: string, name: string) => Promise<void>,
  ): TemplateResult {
    const read = async (input: HTMLInputElement): Promise<void> => {
      const [file] = input.files ?? [];
      if (file === undefined) return;
      await take(await file.text(), file.name);
      // the same file, mended, can be chosen again
      input.value = '';
    };
    return html`<label for=${id}>${label}</label>
      <input id=${id} type="file" accept=${accept} @change=${(event: Event) => void read(event.currentTarget as HTMLInputElement)} />`;
  }

  private async takeVerdicts(rater: string, text: string, name: string): Promise<void> {
    const words = RECOUNT_STUDY_WORDS;
    await this.taken(async () => fill(words['taken-in'], { count: await this.desk.takeInVerdicts(rater, text, name) }));
  }

  private async takeKey(text: string, name: string): Promise<void> {
    const words = RECOUNT_STUDY_WORDS;
    await this.taken(async () => fill(words['key-taken-in'], { rater: await this.desk.takeInKey(text, name) }));
  }

  private async taken(take: () => Promise<string>): Promise<void> {
    const words = RECOUNT_STUDY_WORDS;
    try {
      this.said = await take();
      this.dispatchEvent(new Event('files-taken'));
    } catch (error) {
      const why = error instanceof StudyError ? error.message : words['not-saved'].text;
      this.said = fill(words['not-taken-in'], { why });
    }
  }
}
