import type { TestKind, Visit } from '@surae/casebook';
import { SAME_LEG_RULES, SAME_LEG_WORDS, SUMMARY_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { undoing } from '../journey/removal-request.ts';
import { type SameLegView, sameLegView } from '../journey/same-leg-view.ts';
import { otherSide } from '../journey/steps.ts';
import { visitEvent } from '../journey/visit-event-request.ts';
import { base } from '../styles/base.ts';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';
import { foldStyle } from './fold-style.ts';

type Words = keyof typeof SAME_LEG_WORDS;

/** Whether one leg was tested twice: asked openly where the sensor says so, and else kept ready; both tests are kept. */
@customElement('same-leg')
export class SameLeg extends LitElement {
  static override styles = [
    base,
    foldStyle,
    css`
      .asked {
        border-block: 1px solid var(--hairline);
        margin-block: var(--gap-4);
        padding-block: var(--gap-3);
      }
      .answers {
        display: grid;
        gap: var(--gap-3);
        max-inline-size: 44rem;
      }
      .answers button {
        text-align: start;
      }
    `,
  ];

  @property({ attribute: false }) visit!: Visit;
  @property() test: TestKind = 'heel-raise';

  override render(): TemplateResult | typeof nothing {
    const view = sameLegView(this.visit, this.test);
    if (view === null) return nothing;
    if (view.kind === 'told') return this.told(view);
    const { signs } = view;
    if (signs.verdict === 'cannot-tell' || signs.turnedDeg === null)
      return html`<details>
        <summary>${this.say('title', view)}</summary>
        <p>${SAME_LEG_WORDS['cannot-tell'].text}</p>
        ${this.answers(view)}
      </details>`;
    const turned = decimal(signs.turnedDeg, 1);
    return html`<section class="asked" aria-labelledby="asked">
      <h2 id="asked">${this.say('likely-title', view)}</h2>
      <p class="voice">${this.say('likely', view, { turned })}</p>
      ${
        signs.heightShare === null
          ? nothing
          : html`<p>${fill(SAME_LEG_WORDS['heights-too'], { share: decimal(100 * SAME_LEG_RULES.heightShareMost.value, 0) })}</p>`
      }
      ${this.answers(view)}
    </section>`;
  }

  private say(words: Words, { kind, side }: SameLegView, more: Readonly<Record<string, string>> = {}): string {
    // `other` is the leg that may have been, or was, tested twice
    const twice = kind === 'told' ? side : otherSide(side);
    const names = { leg: SUMMARY_WORDS[otherSide(twice)].text, other: SUMMARY_WORDS[twice].text };
    return fill(SAME_LEG_WORDS[words], { ...names, ...more });
  }

  private answer(setId: string, counts: 'first' | 'second' | null): void {
    this.dispatchEvent(visitEvent({ kind: 'same-leg', test: this.test, setId, counts }));
  }

  private answers(view: SameLegView): TemplateResult {
    const { setId } = view;
    return html`<p class="quiet">${SAME_LEG_WORDS.tired.text}</p>
      <div class="answers">
        <button type="button" @click=${() => this.answer(setId, null)}>${this.say('was-other', view)}</button>
        <button type="button" @click=${() => this.answer(setId, 'first')}>${this.say('first-counts', view)}</button>
        <button type="button" @click=${() => this.answer(setId, 'second')}>${this.say('second-counts', view)}</button>
      </div>`;
  }

  private told(view: SameLegView & { readonly kind: 'told' }): TemplateResult {
    const { counts, setId, undo, isOtherDone } = view;
    const other = counts === 'first' ? 'second' : 'first';
    return html`<section class="asked">
      <p class="voice" role="status">${this.say(`told-${counts}${isOtherDone ? '-done' : ''}`, view)}</p>
      <div class="answers">
        <button type="button" @click=${() => this.answer(setId, other)}>${SAME_LEG_WORDS[`count-${other}`].text}</button>
        ${
          undo === undefined || isOtherDone
            ? nothing
            : html`<button class="plain" type="button" @click=${() => this.dispatchEvent(undoing([undo]))}>
                ${SAME_LEG_WORDS.undo.text}
              </button>`
        }
      </div>
    </section>`;
  }
}
