import { consume } from '@lit/context';
import type { Side } from '@surae/analysis';
import {
  type CopiedSoreness,
  openEpisodes,
  type Soreness,
  type SoreSides,
  sorenessBefore,
  type Visit,
} from '@surae/casebook';
import { SORENESS_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { bookContext } from '../contexts/capabilities.ts';
import { copiedSorenessWords, sameSorenessWords } from '../journey/copied-words.ts';
import type { VisitBook } from '../journey/visit-book.ts';
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
  /** visits of this person before this one, the oldest first */
  @property({ attribute: false }) earlier: readonly Visit[] = [];
  @consume({ context: bookContext }) private readonly book!: VisitBook;
  @state() private sore: SoreSides = { left: null, right: null };
  /** what can be taken over with one press; null where nothing was told before */
  @state() private last: CopiedSoreness | null = null;
  /** what stood here before it was taken over; undefined where it was not */
  @state() private replaced: SoreSides | undefined;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('visit') || changed.get('visit') !== undefined) return;
    this.sore = this.visit.sore;
    void this.lookBack();
  }

  /** An episode is read where no earlier visit tells. */
  private async lookBack(): Promise<void> {
    this.last = sorenessBefore(this.earlier, []);
    if (this.last !== null) return;
    const kept = await this.book.hand.read({ whose: this.visit.personId, kind: 'episode' });
    this.last = sorenessBefore(this.earlier, openEpisodes(kept));
  }

  override render(): TemplateResult {
    const whole = this.sore.left !== null && this.sore.right !== null;
    return html`
      <h1>${SORENESS_WORDS.title.text}</h1>
      <p class="quiet">${SORENESS_WORDS.explain.text}</p>
      ${this.asBefore()}
      <div class="legs">${this.leg('left')} ${this.leg('right')}</div>
      ${whole ? null : html`<p class="quiet" id="missing">${SORENESS_WORDS.missing.text}</p>`}
      <button class="main" type="button" ?disabled=${!whole} @click=${() => this.goOn()}>
        ${SORENESS_WORDS['go-on'].text}
      </button>
    `;
  }

  private asBefore(): TemplateResult | typeof nothing {
    const { last: before, replaced } = this;
    if (before === null) return nothing;
    if (replaced === undefined)
      return html`<button type="button" @click=${() => this.copy(before)}>${sameSorenessWords(before)}</button>`;
    return html`<p class="voice" role="status">${copiedSorenessWords(before)}</p>
      <button type="button" @click=${() => this.copy(undefined)}>${SORENESS_WORDS['copied-back'].text}</button>`;
  }

  /** Takes over what was told before, or takes that back; the button that was pressed is gone, and the other has the focus. */
  private async copy(before: CopiedSoreness | undefined): Promise<void> {
    if (before !== undefined) this.replaced = this.sore;
    this.sore = before?.sore ?? this.replaced ?? this.sore;
    if (before === undefined) this.replaced = undefined;
    await this.updateComplete;
    this.renderRoot.querySelector('button')?.focus();
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
