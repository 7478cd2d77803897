import type { Choosable } from '@surae/casebook';
import { chosenFor, isBegun, type TestKind, type Visit } from '@surae/casebook';
import { CHOICE_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { goneOverLines } from '../journey/choice-lines.ts';
import { stepAskedFor } from '../journey/step-asked-for.ts';
import { base } from '../styles/base.ts';
import { entryWords } from '../words/entry-words.ts';

/** What was chosen for a test, which rules were gone over for it, and the way back while nothing was begun. */
@customElement('chosen-test')
export class ChosenTest extends LitElement {
  static override styles = [
    base,
    css`
      .title {
        font-size: var(--size-2);
        margin-block-end: 0;
      }
      button {
        padding-inline: 0;
        text-align: start;
      }
    `,
  ];

  @property({ attribute: false }) visit!: Visit;
  @property({ attribute: false }) test!: TestKind;
  @property({ attribute: false }) protocol!: Choosable;

  override render(): TemplateResult {
    const { visit, test, protocol } = this;
    const chosen = chosenFor(visit, test);
    const isOpen = !isBegun(visit, 'heel-raise') && !isBegun(visit, 'isometric');
    return html`<p class="title">${entryWords(protocol, 'title')}</p>
      ${
        chosen?.from === 'last-time' && chosen.protocolId === protocol.id
          ? html`<p class="quiet">${CHOICE_WORDS['last-time'].text}</p>`
          : nothing
      }
      ${chosen === undefined ? nothing : goneOverLines(chosen).map((line) => html`<p class="voice">${line}</p>`)}
      ${
        isOpen
          ? html`<button class="plain" type="button" @click=${() => this.dispatchEvent(stepAskedFor('choice'))}>
              ${CHOICE_WORDS.change.text}
            </button>`
          : nothing
      }`;
  }
}
