import { consume } from '@lit/context';
import type { ClinicContact } from '@surae/casebook';
import { CONTACT_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { contactTyped } from '../clinic/contact-form.ts';
import { bookContext } from '../contexts/capabilities.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { fieldStyle } from './field-style.ts';

/** Whom somebody who was tested rings: typed by the clinic, and never made up. */
@customElement('contact-setting')
export class ContactSetting extends LitElement {
  static override styles = [
    base,
    fieldStyle,
    css`
      form {
        display: grid;
        gap: var(--gap-3);
        justify-items: start;
        max-inline-size: 30rem;
      }
      form > div {
        inline-size: 100%;
      }
    `,
  ];

  @consume({ context: bookContext }) private readonly book!: VisitBook;
  @state() private contact: ClinicContact | null = null;
  @state() private problem: 'wrong' | 'not-kept' | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    void this.read();
  }

  private async read(): Promise<void> {
    this.contact = await this.book.notes.contact();
  }

  override render(): TemplateResult {
    const words = CONTACT_WORDS;
    const { contact, problem } = this;
    return html`
      <p>${words.explain.text}</p>
      <p role="status">${contact === null ? words.none.text : fill(words.kept, { ...contact })}</p>
      <form novalidate @submit=${this.keep}>
        <div>
          <label for="name">${words.name.text}</label>
          <input id="name" maxlength="80" autocomplete="off" .value=${contact?.name ?? ''} />
        </div>
        <div>
          <label for="telephone">${words.telephone.text}</label>
          <input id="telephone" type="tel" maxlength="40" autocomplete="off" .value=${contact?.telephone ?? ''} />
        </div>
        ${problem === undefined ? nothing : html`<p class="voice" role="alert">${words[problem].text}</p>`}
        <button type="submit">${words.keep.text}</button>
      </form>
    `;
  }

  private readonly keep = (event: Event): void => {
    event.preventDefault();
    const [name = '', telephone = ''] = [...this.renderRoot.querySelectorAll('input')].map(({ value }) => value);
    const contact = contactTyped(name, telephone);
    this.problem = contact === undefined ? 'wrong' : undefined;
    if (contact !== undefined) void this.write(contact);
  };

  private async write(contact: ClinicContact): Promise<void> {
    try {
      await this.book.notes.keepContact(contact);
      await this.read();
    } catch {
      this.problem = 'not-kept';
    }
  }
}
