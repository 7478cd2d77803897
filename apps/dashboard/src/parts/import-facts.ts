import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Fact } from '../import/import-words.ts';
import { base } from '../styles/base.ts';

/** Facts about a file: a name, what is guessed with how sure it is, and why. */
@customElement('import-facts')
export class ImportFacts extends LitElement {
  static override styles = [
    base,
    css`
      dl {
        display: grid;
        gap: var(--gap-1) var(--gap-4);
        grid-template-columns: minmax(6rem, max-content) minmax(0, 1fr);
        margin: 0;
      }
      dt {
        color: var(--quiet-ink);
      }
      dd {
        margin: 0;
        overflow-wrap: anywhere;
      }
      dd span {
        color: var(--quiet-ink);
        display: block;
      }
    `,
  ];

  @property({ attribute: false }) facts: readonly Fact[] = [];

  override render(): TemplateResult {
    return html`<dl>
      ${this.facts.map(
        ({ name, value, because }) =>
          html`<dt>${name}</dt>
            <dd>${value}<span>${because}</span></dd>`,
      )}
    </dl>`;
  }
}
