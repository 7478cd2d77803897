import type { Side } from '@surae/analysis';
import type { Soreness, SoreSides, Visit } from '@surae/casebook';
import { SORENESS_WORDS } from '@surae/shared';
import { css, html, LitElement, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { visitEvent } from '../journey/visit-event-request.ts';
import { base } from '../styles/base.ts';

const answers: readonly Soreness[] = ['no', 'mid-portion', 'insertion', 'both-places'];

/** Which tendon is sore, and where. Left stands on the left, as people see their own legs. */
@customElement('soreness-step')
export class SorenessStep extends LitElement {
  static override styles = [
    base,
    css`
      .legs {
        direction: ltr;
        display: grid;
        gap: var(--gap-8);
        grid-template-columns: repeat(auto-fit, minmax(min(18rem, 100%), 1fr));
        margin-block: var(--gap-6);
      }
      fieldset {
        border: 0;
        direction: var(--reading);
        display: grid;
        gap: var(--gap-3);
        margin: 0;
        padding: 0;
      }
      legend {
        font-size: var(--size-2);
        font-weight: 600;
        margin-block-end: var(--gap-3);
        padding: 0;
      }
    `,
  ];

  @property({ attribute: false }) visit!: Visit;
  @state() private sore: SoreSides = { left: null, right: null };

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('visit') && changed.get('visit') === undefined) this.sore = this.visit.sore;
  }

  override render(): TemplateResult {
    const whole = this.sore.left !== null && this.sore.right !== null;
    return html`
      <h1>${SORENESS_WORDS.title.text}</h1>
      <p class="quiet">${SORENESS_WORDS.explain.text}</p>
      <div class="legs">${this.leg('left')} ${this.leg('right')}</div>
      ${whole ? null : html`<p class="quiet" id="missing">${SORENESS_WORDS.missing.text}</p>`}
      <button class="main" type="button" ?disabled=${!whole} @click=${() => this.goOn()}>
        ${SORENESS_WORDS['go-on'].text}
      </button>
    `;
  }

  private leg(side: Side): TemplateResult {
    return html`<fieldset>
      <legend><span class="side" data-side=${side}>${SORENESS_WORDS[side].text}</span></legend>
      <div class="choices">
        ${answers.map(
          (answer) =>
            html`<button
              type="button"
              aria-pressed=${this.sore[side] === answer}
              @click=${() => (this.sore = { ...this.sore, [side]: answer })}
            >
              ${SORENESS_WORDS[answer].text}
            </button>`,
        )}
      </div>
    </fieldset>`;
  }

  private goOn(): void {
    this.dispatchEvent(visitEvent({ kind: 'visit-sore', sore: this.sore }));
  }
}
