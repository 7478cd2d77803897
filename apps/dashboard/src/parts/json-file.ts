import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { base } from '../styles/base.ts';
import { fieldStyle } from './field-style.ts';

/** A file that was chosen, with what stands in it. */
export type FileRead = CustomEvent<{ readonly name: string; readonly text: string }>;

/** A field in which a JSON file is chosen; it is read here, and nothing is sent. Tells `file-read`. */
@customElement('json-file')
export class JsonFile extends LitElement {
  static override styles = [
    base,
    fieldStyle,
    css`
      p {
        margin-block: var(--gap-1) 0;
      }
    `,
  ];

  @property() label = '';
  /** said below the field; empty for nothing */
  @property() help = '';

  override render(): TemplateResult {
    return html`
      <label for="file">${this.label}</label>
      <input
        id="file"
        type="file"
        accept=".json,application/json"
        aria-describedby=${this.help === '' ? nothing : 'file-help'}
        @change=${(event: Event) => void this.read(event.currentTarget as HTMLInputElement)}
      />
      ${this.help === '' ? nothing : html`<p id="file-help" class="quiet">${this.help}</p>`}
    `;
  }

  private async read(input: HTMLInputElement): Promise<void> {
    const [file] = input.files ?? [];
    if (file === undefined) return;
    const detail = { name: file.name, text: await file.text() };
    // the same file, mended, can be chosen again
    input.value = '';
    this.dispatchEvent(new CustomEvent('file-read', { detail }));
  }
}
