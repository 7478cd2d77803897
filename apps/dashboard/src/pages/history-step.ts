import type { Side } from '@surae/analysis';
import {
  type AboutPerson,
  type CopiedHistory,
  historyBefore,
  type IrritabilityTold,
  isTold,
  type LegHistory,
  legsTested,
  noHistory,
  soreLegs,
  type Visit,
  type VisitHistory,
  withFlareNow,
  withLastFlare,
} from '@surae/casebook';
import { HISTORY_WORDS, HOPS_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { sameHistoryWords } from '../journey/copied-words.ts';
import { visitEvent } from '../journey/visit-event-request.ts';
import type { ChipChosen } from '../parts/chip-choice.ts';
import '../parts/chip-choice.ts';
import '../parts/irritability-form.ts';
import type { IrritabilityChanged } from '../parts/irritability-form.ts';
import type { LastFlareTold } from '../parts/last-flare-form.ts';
import '../parts/last-flare-form.ts';
import { base } from '../styles/base.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';

const abouts: readonly AboutPerson[] = [
  'pregnant',
  'amputation',
  'nerve-condition',
  'nerve-weakness',
  'one-sided-sport',
  'leg-length-raise',
];
const injuries = (['none', 'within-a-year', 'over-a-year', 'when-unknown'] as const).map((value) => ({
  value,
  text: HISTORY_WORDS[`injury-${value}`].text,
}));
const confirmations = (['yes', 'no'] as const).map((value) => ({
  value,
  text: HISTORY_WORDS[`confirm-${value}`].text,
}));

/** What a comparison needs to know and no sensor tells. All of it is optional; what is left open stays not asked. */
@customElement('history-step')
export class HistoryStep extends LitElement {
  static override styles = [
    base,
    css`
      .legs {
        direction: ltr;
        display: grid;
        gap: var(--gap-8);
        grid-template-columns: repeat(auto-fit, minmax(min(20rem, 100%), 1fr));
        margin-block: var(--gap-6);
      }
      .leg {
        direction: var(--reading);
        display: grid;
        gap: var(--gap-4);
        grid-auto-rows: max-content;
      }
      h2 {
        font-size: var(--size-2);
        margin: 0;
      }
      .about {
        margin-block: var(--gap-8);
      }
      .about h2 {
        margin-block-end: var(--gap-3);
      }
      .about button,
      .as {
        text-align: start;
      }
      details {
        border-block-start: 1px solid var(--hairline);
      }
      summary {
        align-items: center;
        cursor: pointer;
        display: flex;
        font-size: var(--size-2);
        gap: var(--gap-2);
        min-block-size: var(--target);
        padding-block: var(--gap-2);
      }
      summary::before {
        content: '+' / '';
        inline-size: 1ch;
      }
      details[open] > summary::before {
        content: '–' / '';
      }
      .go {
        border-block-start: 1px solid var(--hairline);
        padding-block-start: var(--gap-6);
      }
    `,
  ];

  @property({ attribute: false }) visit!: Visit;
  @property({ attribute: false }) earlier: readonly Visit[] = [];
  @state() private history: VisitHistory = noHistory;
  /** what can be taken over with one press; null where nothing that lasts was told before */
  private last: CopiedHistory | null = null;
  /** what stood here before it was taken over; undefined where it was not */
  @state() private replaced: VisitHistory | undefined;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('visit') || changed.get('visit') !== undefined) return;
    this.last = historyBefore(this.earlier);
    this.history = this.visit.history ?? noHistory;
  }

  override render(): TemplateResult {
    const words = HISTORY_WORDS;
    return html`
      <h1>${words.title.text}</h1>
      <p class="quiet">${words.explain.text}</p>
      ${this.asBefore()}
      <div class="legs">${legsTested(this.visit).map((side) => this.leg(side))}</div>
      ${this.about()}
      ${soreLegs(this.visit.sore).map((side) => this.irritability(side))} ${this.lastFlare()}
      <div class="go">
        <button class="main" type="button" @click=${() => this.goOn()}>
          ${words[isTold(this.history) ? 'go-on' : 'go-on-open'].text}
        </button>
      </div>
    `;
  }

  private asBefore(): TemplateResult | typeof nothing {
    const { last: before, replaced } = this;
    if (before === null) return nothing;
    if (replaced === undefined)
      return html`<button class="as" type="button" @click=${() => this.copy(before)}>${sameHistoryWords(before)}</button>
        <p class="quiet">${HISTORY_WORDS['copied-not'].text}</p>`;
    return html`<p class="voice" role="status">
        ${fill(HISTORY_WORDS['copied-visit'], { date: dayOf(before.begunAt) })} ${HISTORY_WORDS['copied-not'].text}
      </p>
      <button class="as" type="button" @click=${() => this.copy(undefined)}>${HISTORY_WORDS['copied-back'].text}</button>`;
  }

  /** Takes over what lasts, or takes that back; what was told of today stays as it is. */
  private async copy(before: CopiedHistory | undefined): Promise<void> {
    if (before !== undefined) this.replaced = this.history;
    const { legs, about } = before?.history ?? this.replaced ?? this.history;
    if (before === undefined) this.replaced = undefined;
    const leg = (side: Side): LegHistory => {
      const { injury, confirmed } = legs[side];
      return { ...this.history.legs[side], injury, confirmed };
    };
    this.history = { legs: { left: leg('left'), right: leg('right') }, about };
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>('.as')?.focus();
  }

  private leg(side: Side): TemplateResult {
    const { injury, confirmed } = this.history.legs[side];
    const isOld = injury === 'over-a-year';
    return html`<section class="leg" aria-label=${HISTORY_WORDS[side].text}>
      <h2><span class="side" data-side=${side}>${HISTORY_WORDS[side].text}</span></h2>
      <chip-choice
        legend=${HISTORY_WORDS.injury.text}
        open=${HISTORY_WORDS['not-asked'].text}
        .chips=${injuries}
        .value=${injury}
        @chip-chosen=${(event: ChipChosen<LegHistory['injury'] & string>) =>
          this.change(side, { injury: event.detail, confirmed: null })}
      ></chip-choice>
      ${
        isOld
          ? html`<chip-choice
              legend=${HISTORY_WORDS.confirm.text}
              .chips=${confirmations}
              .value=${confirmed === null ? null : confirmed ? 'yes' : 'no'}
              @chip-chosen=${(event: ChipChosen) => this.change(side, { confirmed: event.detail === 'yes' })}
            ></chip-choice>`
          : nothing
      }
    </section>`;
  }

  private about(): TemplateResult {
    const { about } = this.history;
    return html`<section class="about" aria-labelledby="about">
      <h2 id="about">${HISTORY_WORDS.about.text}</h2>
      <div class="choices" role="group" aria-labelledby="about">
        ${abouts.map(
          (what) =>
            html`<button type="button" aria-pressed=${about?.includes(what) ?? false} @click=${() => this.toggle(what)}>
              ${HISTORY_WORDS[what].text}
            </button>`,
        )}
        <button type="button" aria-pressed=${about?.length === 0} @click=${() => this.none()}>
          ${HISTORY_WORDS['about-none'].text}
        </button>
      </div>
    </section>`;
  }

  private irritability(side: Side): TemplateResult {
    const told = this.history.legs[side].irritability;
    return html`<details>
      <summary><span class="side" data-side=${side}></span>${HISTORY_WORDS[`irritable-${side}`].text}</summary>
      <irritability-form
        .told=${told}
        @irritability-changed=${(event: IrritabilityChanged) => this.changeIrritability(side, event.detail)}
      ></irritability-form>
    </details>`;
  }

  /** Asked where hops are thought of: out of the way of a visit that does not, open where one came back to it. */
  private lastFlare(): TemplateResult {
    const { visit, history } = this;
    return html`<details ?open=${visit.history !== undefined}>
      <summary>${HOPS_WORDS.fold.text}</summary>
      <last-flare-form
        .visit=${visit}
        .legs=${history.legs}
        @last-flare-told=${({ detail: { side, answer } }: LastFlareTold) =>
          this.changeTo(side, withLastFlare(history.legs[side], answer, soreLegs(visit.sore).includes(side)))}
      ></last-flare-form>
    </details>`;
  }

  private change(side: Side, changes: Partial<LegHistory>): void {
    this.changeTo(side, { ...this.history.legs[side], ...changes });
  }

  private changeTo(side: Side, leg: LegHistory): void {
    this.history = { ...this.history, legs: { ...this.history.legs, [side]: leg } };
  }

  private changeIrritability(side: Side, changes: Partial<IrritabilityTold>): void {
    const leg = this.history.legs[side];
    const told = { ...leg, irritability: { ...leg.irritability, ...changes } };
    this.changeTo(side, changes.flare === undefined ? told : withFlareNow(told, changes.flare));
  }

  /** A second press takes the answer back; the last one taken back leaves the question open. */
  private toggle(what: AboutPerson): void {
    const before = this.history.about ?? [];
    const about = before.includes(what) ? before.filter((one) => one !== what) : [...before, what];
    this.history = { ...this.history, about: about.length === 0 ? null : about };
  }

  private none(): void {
    this.history = { ...this.history, about: this.history.about?.length === 0 ? null : [] };
  }

  private goOn(): void {
    this.dispatchEvent(visitEvent({ kind: 'visit-history', history: this.history }));
  }
}
