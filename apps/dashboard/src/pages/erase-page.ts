import { consume } from '@lit/context';
import type { Person } from '@surae/casebook';
import { ERASE_PLACE, ERASE_WORDS, FRAME_WORDS } from '@surae/shared';
import type { ErasureReceipt, RecordStore } from '@surae/storage';
import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { ClinicDoor } from '../clinic/clinic-door.ts';
import { receiptFile } from '../clinic/erase-receipt.ts';
import { sizeWords } from '../clinic/size-words.ts';
import { bookContext, clockContext, doorContext, type HostClock, storeContext } from '../contexts/capabilities.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import { storeWords } from '../live/store-words.ts';
import { fieldStyle } from '../parts/field-style.ts';
import { saveFile } from '../result/save-file.ts';
import { hashOf } from '../route.ts';
import { base } from '../styles/base.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';

/** A person is erased for good: the duty to keep records first, then the name typed, then a receipt. */
@customElement('erase-page')
export class ErasePage extends LitElement {
  static override styles = [
    base,
    fieldStyle,
    css`
      form {
        display: grid;
        gap: var(--gap-3);
        margin-block-start: var(--gap-6);
        max-inline-size: 32rem;
      }
      .duty {
        border-block: 1px solid var(--hairline);
        margin-block-end: var(--gap-4);
        padding-block: var(--gap-4);
      }
      .duty p {
        font-size: var(--size-2);
        margin: 0;
      }
      .read {
        align-items: center;
        display: flex;
        font-weight: 400;
        gap: var(--gap-3);
        min-block-size: var(--target);
      }
      .read input {
        accent-color: var(--ink);
        block-size: 1.5rem;
        flex: none;
        inline-size: 1.5rem;
        min-block-size: 0;
      }
      form p {
        margin-block: var(--gap-2) 0;
      }
    `,
  ];

  @property({ attribute: false }) personId = '';
  @consume({ context: bookContext }) private readonly book!: VisitBook;
  @consume({ context: storeContext }) private readonly store!: RecordStore;
  @consume({ context: doorContext }) private readonly door!: ClinicDoor;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @state() private person: Person | null | undefined;
  @state() private visits = 0;
  @state() private typed = '';
  @state() private isRead = false;
  @state() private sent = false;
  @state() private busy = false;
  @state() private refusal = '';
  @state() private receipt: ErasureReceipt | undefined;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('personId')) void this.load();
  }

  private async load(): Promise<void> {
    const person = await this.book.person(this.personId);
    this.visits = person === undefined ? 0 : (await this.book.visitsOf(this.personId)).length;
    this.person = person ?? null;
  }

  private readonly send = (event: SubmitEvent): void => {
    event.preventDefault();
    this.sent = true;
    if (this.person == null || this.typed !== this.person.name || !this.isRead) {
      this.renderRoot.querySelector<HTMLInputElement>(this.isRead ? '#name' : '#read')?.focus();
      return;
    }
    void this.erase();
  };

  private async erase(): Promise<void> {
    this.busy = true;
    this.refusal = '';
    try {
      const by = { author: this.door.author ?? 'this-device', at: this.clock.isoNow() };
      const receipt = await this.store.erase(this.personId, by);
      const { documents, streams } = receipt;
      await this.door.open?.audit.write('removed', this.personId, { entries: documents, recordings: streams });
      this.receipt = receipt;
    } catch (error) {
      this.refusal = fill(ERASE_WORDS.failed, { why: storeWords(error) });
    }
    this.busy = false;
    await this.updateComplete;
    if (this.receipt !== undefined) this.renderRoot.querySelector<HTMLElement>('h1')?.focus();
  }

  override render(): TemplateResult {
    const words = ERASE_WORDS;
    if (this.receipt !== undefined) return this.receiptPart(this.receipt);
    if (this.person === undefined) {
      return html`<h1 tabindex="-1">${ERASE_PLACE.title.text}</h1>
        <p class="quiet" role="status">${FRAME_WORDS.loading.text}</p>`;
    }
    if (this.person === null) {
      return html`<h1 tabindex="-1">${ERASE_PLACE.title.text}</h1>
        <p>${words.nobody.text}</p>
        <a class="button" href=${hashOf({ page: 'start' })}>${FRAME_WORDS.home.text}</a>`;
    }
    return this.asking(this.person);
  }

  private asking({ name }: Person): TemplateResult {
    const words = ERASE_WORDS;
    const differs = this.sent && this.typed !== name;
    return html`
      <h1 tabindex="-1">${ERASE_PLACE.title.text}</h1>
      <div class="duty"><p class="voice">${words.duty.text}</p></div>
      <p>${fill(words.what, { name, visits: this.visits })}</p>
      <p>${words.left.text}</p>
      <form novalidate @submit=${this.send}>
        <label class="read">
          <input
            id="read"
            type="checkbox"
            .checked=${this.isRead}
            aria-invalid=${this.sent && !this.isRead ? 'true' : nothing}
            @change=${(event: Event) => (this.isRead = (event.target as HTMLInputElement).checked)}
          />
          ${words['duty-read'].text}
        </label>
        <div>
          <label for="name">${fill(words.confirm, { name })}</label>
          <input
            id="name"
            autocomplete="off"
            spellcheck="false"
            aria-describedby="name-help"
            aria-invalid=${differs ? 'true' : nothing}
            .value=${this.typed}
            @input=${(event: InputEvent) => (this.typed = (event.target as HTMLInputElement).value)}
          />
          <p id="name-help" class="voice" aria-live="polite">${differs ? words.differs.text : ''}</p>
        </div>
        <p role="alert" class="voice">${this.refusal}</p>
        <button type="submit" ?disabled=${this.busy}>${words[this.busy ? 'working' : 'erase'].text}</button>
        <a class="button" href=${hashOf({ page: 'start' })}>${FRAME_WORDS.home.text}</a>
      </form>
    `;
  }

  private receiptPart(receipt: ErasureReceipt): TemplateResult {
    const words = ERASE_WORDS;
    const { documents, streams, bytes, tombstone } = receipt;
    return html`
      <h1 tabindex="-1">${ERASE_PLACE.title.text}</h1>
      <p role="status">
        ${fill(words.receipt, { date: dayOf(tombstone.at), documents, streams, size: sizeWords(bytes) })}
      </p>
      <p>${words.left.text}</p>
      <p class="choices">
        <button type="button" @click=${() => saveFile(receiptFile(receipt))}>${words.save.text}</button>
        <a class="button" href=${hashOf({ page: 'start' })}>${FRAME_WORDS.home.text}</a>
      </p>
    `;
  }
}
