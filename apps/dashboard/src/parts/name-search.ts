import { START_WORDS } from '@surae/shared';
import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { fieldStyle } from './field-style.ts';

/** Event of {@link NameSearch}: what is typed now. */
export type NameSought = CustomEvent<string>;

/** A field that finds somebody in a long list, and how many were found. */
@customElement('name-search')
export class NameSearch extends LitElement {
  static override styles = [
    base,
    fieldStyle,
    css`
      :host {
        display: block;
        margin-block: var(--gap-4);
        max-inline-size: 28rem;
      }
      input[inputmode] {
        inline-size: 100%;
        margin-block-end: var(--gap-2);
      }
    `,
  ];

  @property({ type: Number }) found = 0;
  @property({ type: Number }) all = 0;

  override render(): TemplateResult {
    return html`
      <label for="name">${START_WORDS.seek.text}</label>
      <input
        id="name"
        type="search"
        inputmode="search"
        autocomplete="off"
        @input=${(event: Event) => this.tell((event.target as HTMLInputElement).value)}
      />
      <p class="quiet" role="status">${fill(START_WORDS.found, { found: this.found, all: this.all })}</p>
    `;
  }

  private tell(typed: string): void {
    this.dispatchEvent(new CustomEvent('name-sought', { detail: typed }));
  }
}
