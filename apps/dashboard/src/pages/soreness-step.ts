import { consume } from '@lit/context';
import type { Side } from '@surae/analysis';
import {
  type CopiedSoreness,
  isSorenessTold,
  legsTested,
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
import type { ChipChosen } from '../parts/chip-choice.ts';
import '../parts/chip-choice.ts';
import { foldStyle } from '../parts/fold-style.ts';
import { base } from '../styles/base.ts';

const testedChips = (['both', 'left', 'right'] as const).map((value) => ({
  value,
  text: SORENESS_WORDS[`tested-${value}`].text,
}));
const answers: readonly Soreness[] = ['no', 'mid-portion', 'insertion', 'both-places'];

/** Which tendon is sore, and where. Left stands on the left, as people see their own legs. */
@customElement('soreness-step')
export class SorenessStep extends LitElement {
  static override styles = [
    base,
    foldStyle,
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
      .tested {
        margin-block: 0 var(--gap-6);
        max-inline-size: 44rem;
      }
      .tested p {
        margin-block-start: var(--gap-3);
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
  /** the one leg that is tested; undefined where both are */
  @state() private only: Side | undefined;
  /** what can be taken over with one press; null where nothing was told before */
  @state() private last: CopiedSoreness | null = null;
  /** what stood here before it was taken over; undefined where it was not */
  @state() private replaced: Pick<Visit, 'sore' | 'only'> | undefined;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('visit') || changed.get('visit') !== undefined) return;
    this.sore = this.visit.sore;
    this.only = this.visit.only;
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
    const asked = legsTested(this.told);
    const whole = isSorenessTold(this.told);
    return html`
      <h1>${SORENESS_WORDS.title.text}</h1>
      <p class="quiet">${SORENESS_WORDS.explain.text}</p>
      ${this.asBefore()}
      <div class="legs">${asked.map((side) => this.leg(side))}</div>
      ${this.tested()}
      ${whole ? null : html`<p class="quiet" id="missing">${SORENESS_WORDS[asked.length === 1 ? 'missing-one' : 'missing'].text}</p>`}
      <button class="main" type="button" ?disabled=${!whole} @click=${() => this.goOn()}>
        ${SORENESS_WORDS['go-on'].text}
      </button>
    `;
  }

  private get told(): Pick<Visit, 'sore' | 'only'> {
    return { sore: this.sore, ...(this.only === undefined ? {} : { only: this.only }) };
  }

  /** Of a leg that is not tested nothing is asked, and what was said of it before is not kept. */
  private tested(): TemplateResult {
    return html`<details class="tested" ?open=${this.only !== undefined}>
      <summary>${SORENESS_WORDS['tested-one'].text}</summary>
      <chip-choice
        legend=${SORENESS_WORDS.tested.text}
        .chips=${testedChips}
        .value=${this.only ?? 'both'}
        @chip-chosen=${({ detail }: ChipChosen<Side | 'both'>) => {
          this.only = detail === 'both' ? undefined : detail;
          if (this.only !== undefined) this.sore = { left: null, right: null, [this.only]: this.sore[this.only] };
        }}
      ></chip-choice>
      <p class="quiet">${SORENESS_WORDS['tested-why'].text}</p>
    </details>`;
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
    if (before !== undefined) this.replaced = this.told;
    const { sore, only } = before ?? this.replaced ?? this.told;
    this.sore = sore;
    this.only = only;
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
    this.dispatchEvent(visitEvent({ kind: 'visit-sore', ...this.told }));
  }
}
