import { STUDY_WORDS } from '@surae/shared';
import { RECORD, type StudyOrigin, type StudyOutput } from '@surae/study';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { sha256Text } from '../study/sha256-text.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';

/** How a table or a figure of a study is made again, to the byte: command, version, hashes of what was read, settings. */
@customElement('reproduce-this')
export class ReproduceThis extends LitElement {
  static override styles = [
    base,
    css`
      summary {
        align-items: center;
        cursor: pointer;
        display: flex;
        min-block-size: var(--target);
      }
      summary::before {
        content: '+';
        inline-size: 1.2em;
      }
      details[open] summary::before {
        content: '−';
      }
      dl {
        margin: 0;
      }
      dt {
        font-weight: 600;
      }
      dd {
        margin: 0 0 var(--gap-3);
        overflow-wrap: anywhere;
      }
      code {
        direction: ltr;
        unicode-bidi: isolate;
      }
    `,
  ];

  @property({ attribute: false }) origin!: StudyOrigin;
  /** the file that is shown; null for all of them */
  @property({ attribute: false }) file: StudyOutput | null = null;
  @state() private said = '';

  override render(): TemplateResult {
    const words = STUDY_WORDS;
    const { command, software, study, inputs, recordings, assessed } = this.origin;
    const hash = assessed[0]?.settings_hashes[0] ?? '';
    const line = (term: string, told: TemplateResult | string): TemplateResult =>
      html`<dt>${term}</dt>
        <dd>${told}</dd>`;
    return html`<details>
      <summary>${words.reproduce.text}</summary>
      <p class="quiet">${words['reproduce-explain'].text}</p>
      <dl>
        ${line(words['reproduce-command'].text, html`<code>${command}</code>`)}
        ${line(words['reproduce-software'].text, software)}
        ${line(words['reproduce-study'].text, html`<code>${study}</code>`)}
        <dt>${words['reproduce-inputs'].text}</dt>
        ${inputs.map(({ file, sha256 }) => html`<dd>${file} <code>${sha256}</code></dd>`)}
        ${line(
          words['reproduce-recordings'].text,
          fill(words['reproduce-recordings-line'], { count: recordings.length, record: RECORD }),
        )}
        ${line(words['reproduce-settings'].text, fill(words['reproduce-settings-line'], { record: RECORD, hash }))}
        ${
          this.file === null
            ? nothing
            : line(words['reproduce-file'].text, html`${this.file.name} <code>${sha256Text(this.file.text)}</code>`)
        }
      </dl>
      <button type="button" @click=${() => void this.copy(command)}>${words.copy.text}</button>
      <span role="status">${this.said}</span>
    </details>`;
  }

  private async copy(command: string): Promise<void> {
    await navigator.clipboard.writeText(command);
    this.said = STUDY_WORDS.copied.text;
  }
}
