import { HELD_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { SetUpLight } from '../live/set-up-light.ts';
import { base } from '../styles/base.ts';
import { ruledListStyle } from './ruled-list-style.ts';

/** Told with the code of a fix that was pressed. */
export type FixAskedFor = CustomEvent<string>;

const signs = { yes: '|', no: '\u00d7', 'cannot-tell': '?' } as const;
const words = { yes: HELD_WORDS['light-yes'], no: HELD_WORDS['light-no'], 'cannot-tell': HELD_WORDS['light-open'] };

/** What is looked at before a test: each in a word, and where it is not in order one sentence and one fix. Tells `fix-asked-for`. */
@customElement('light-list')
export class LightList extends LitElement {
  static override styles = [
    base,
    ruledListStyle,
    css`
      li {
        display: grid;
        gap: 0 var(--gap-3);
        grid-template-columns: 1.5em minmax(0, 1fr);
        padding-block: var(--gap-2);
      }
      li > :not(.sign) {
        grid-column: 2;
      }
      .sign {
        font-size: var(--size-2);
        grid-row: 1 / span 3;
      }
      p {
        margin: 0;
      }
      button {
        justify-self: start;
        margin-block-start: var(--gap-2);
      }
    `,
  ];

  @property({ attribute: false }) lights: readonly SetUpLight[] = [];

  override render(): TemplateResult {
    return html`<ul aria-label=${HELD_WORDS.lights.text}>
      ${this.lights.map(
        ({ name, answer, sentence, fix }) =>
          html`<li>
            <span class="sign" aria-hidden="true">${signs[answer]}</span>
            <span>${name}: ${words[answer].text}</span>
            ${answer === 'yes' ? nothing : html`<p class="voice">${sentence}</p>`}
            ${answer === 'yes' || fix === null ? nothing : this.fix(fix)}
          </li>`,
      )}
    </ul>`;
  }

  private fix({ code, text }: NonNullable<SetUpLight['fix']>): TemplateResult {
    return html`<button
      type="button"
      @click=${() =>
        this.dispatchEvent(new CustomEvent('fix-asked-for', { detail: code, bubbles: true, composed: true }))}
    >
      ${text}
    </button>`;
  }
}
