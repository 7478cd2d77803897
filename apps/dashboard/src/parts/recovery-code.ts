import { DOOR_WORDS } from '@surae/shared';
import { css, html, LitElement, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { groupsAskedBack, isGroup } from '../clinic/passphrase-form.ts';
import { base } from '../styles/base.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import { fieldStyle } from './field-style.ts';

/** A recovery code, shown this once: printed or written down, and two groups of it asked back. Tells `code-kept`. */
@customElement('recovery-code')
export class RecoveryCode extends LitElement {
  static override styles = [
    base,
    fieldStyle,
    css`
      ol {
        display: grid;
        gap: var(--gap-2) var(--gap-6);
        grid-template-columns: repeat(auto-fill, minmax(9rem, 1fr));
        list-style: none;
        margin-block: var(--gap-4);
        max-inline-size: 44rem;
        padding: 0;
      }
      li {
        border-block-start: 1px solid var(--hairline);
        font-variant-numeric: tabular-nums;
        padding-block: var(--gap-2);
      }
      li b {
        display: block;
        font-size: var(--size-3);
        letter-spacing: 0.12em;
      }
      form {
        display: grid;
        gap: var(--gap-3);
        margin-block-start: var(--gap-6);
        max-inline-size: 32rem;
      }
      form p {
        margin-block: var(--gap-2) 0;
      }
      .pair {
        display: flex;
        flex-wrap: wrap;
        gap: var(--gap-4);
      }
      .pair > div {
        flex: 1 1 12rem;
      }
      @media print {
        form,
        .print,
        .screen {
          display: none;
        }
        ol {
          grid-template-columns: repeat(4, 1fr);
        }
      }
    `,
  ];

  @property() code = '';
  /** when it was made, with offset */
  @property() madeAt = '';
  @state() private asked: readonly number[] = [];
  @state() private typed: readonly string[] = ['', ''];
  @state() private sent = false;

  override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('code') || this.code === '') return;
    const random = (below: number): number => (crypto.getRandomValues(new Uint32Array(1))[0] ?? 0) % below;
    this.asked = groupsAskedBack(this.code, random);
  }

  override render(): TemplateResult {
    const words = DOOR_WORDS;
    const groups = this.code.split('-');
    return html`
      <h1 tabindex="-1">${words['code-title'].text}</h1>
      <p>${words['code-explain'].text}</p>
      <p>${fill(words['code-for'], { date: dayOf(this.madeAt) })}</p>
      <ol>
        ${groups.map(
          (group, place) => html`<li>
            <span class="quiet">${fill(words['code-group'], { number: place + 1 })}</span>
            <b>${group}</b>
          </li>`,
        )}
      </ol>
      <button class="print" type="button" @click=${() => print()}>${words.print.text}</button>
      <form novalidate @submit=${this.send}>
        <p>${words['ask-back'].text}</p>
        <div class="pair">${this.asked.map((number, place) => this.field(number, place, groups.length))}</div>
        <button class="main" type="submit">${words['go-on'].text}</button>
      </form>
    `;
  }

  private field(number: number, place: number, of: number): TemplateResult {
    const isWrong = this.sent && !isGroup(this.code, number, this.typed[place] ?? '');
    return html`<div>
      <label for=${`group-${place}`}>${fill(DOOR_WORDS['ask-group'], { number, of })}</label>
      <input
        id=${`group-${place}`}
        autocomplete="off"
        autocapitalize="characters"
        spellcheck="false"
        aria-describedby=${`group-${place}-help`}
        .value=${this.typed[place] ?? ''}
        @input=${(event: InputEvent) => {
          const { value } = event.target as HTMLInputElement;
          this.typed = this.typed.map((one, at) => (at === place ? value : one));
        }}
      />
      <p id=${`group-${place}-help`} class="voice" aria-live="polite">
        ${isWrong ? fill(DOOR_WORDS['group-wrong'], { number }) : ''}
      </p>
    </div>`;
  }

  private readonly send = (event: SubmitEvent): void => {
    event.preventDefault();
    this.sent = true;
    const wrong = this.asked.findIndex((number, place) => !isGroup(this.code, number, this.typed[place] ?? ''));
    if (wrong >= 0) this.renderRoot.querySelector<HTMLInputElement>(`#group-${wrong}`)?.focus();
    else this.dispatchEvent(new CustomEvent('code-kept'));
  };
}
