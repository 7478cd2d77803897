import { consume } from '@lit/context';
import type { Person } from '@surae/casebook';
import { IMPORT_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { bookContext } from '../contexts/capabilities.ts';
import { takenState } from '../import/import-words.ts';
import type { TakenEntry } from '../journey/taken-shelf.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import { storeWords } from '../live/store-words.ts';
import { base } from '../styles/base.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import { ruledSectionStyle } from './ruled-section-style.ts';

export type TakenOpened = CustomEvent<TakenEntry>;

/** Every recording that was taken in and not put aside, the newest first. Tells `taken-opened` and `taken-put-aside`. */
@customElement('taken-before')
export class TakenBefore extends LitElement {
  static override styles = [
    base,
    ruledSectionStyle,
    css`
      ul {
        display: grid;
        gap: var(--gap-6);
        grid-template-columns: minmax(0, 1fr);
        list-style: none;
        margin: 0;
        padding: 0;
      }
      li p {
        margin-block: 0 var(--gap-2);
        overflow-wrap: anywhere;
      }
      .choices .plain {
        padding-inline: 0;
      }
      .quiet {
        display: block;
      }
    `,
  ];

  @property({ attribute: false }) entries: readonly TakenEntry[] = [];
  @property({ attribute: false }) people: readonly Person[] = [];
  @consume({ context: bookContext }) private readonly book!: VisitBook;
  @state() private said = '';

  override render(): TemplateResult {
    const words = IMPORT_WORDS;
    const said = this.said === '' ? nothing : html`<p class="voice" role="status">${this.said}</p>`;
    if (this.entries.length === 0) return html`${said}`;
    return html`<section>
      <h2>${words['taken-title'].text}</h2>
      <p class="quiet">${words['taken-explain'].text}</p>
      ${said}
      <ul>
        ${[...this.entries].reverse().map(
          (entry) =>
            html`<li>
              <p>
                ${fill(words['taken-line'], { name: entry.mapping.name, date: dayOf(entry.at) })}
                <span class="quiet">${takenState(entry, this.people)}</span>
              </p>
              <div class="choices">
                <button
                  type="button"
                  @click=${() => this.dispatchEvent(new CustomEvent('taken-opened', { detail: entry }))}
                >
                  ${words['taken-open'].text}
                </button>
                <button class="plain" type="button" @click=${() => void this.putAside(entry)}>
                  ${words['taken-aside'].text}
                </button>
              </div>
            </li>`,
        )}
      </ul>
    </section>`;
  }

  private async putAside(entry: TakenEntry): Promise<void> {
    try {
      await this.book.taken.putAside(entry, IMPORT_WORDS['taken-aside-why'].text);
      this.said = fill(IMPORT_WORDS['taken-was-put-aside'], { name: entry.mapping.name });
      this.dispatchEvent(new CustomEvent('taken-put-aside'));
    } catch (error) {
      this.said = storeWords(error);
    }
  }
}
