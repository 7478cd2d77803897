import type { IrritabilityTold } from '@surae/casebook';
import { HISTORY_WORDS } from '@surae/shared';
import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { base } from '../styles/base.ts';
import type { ChipChosen } from './chip-choice.ts';
import './chip-choice.ts';
import type { ScaleChosen } from './number-scale.ts';
import './number-scale.ts';

/** An answer that was given or taken back. */
export type IrritabilityChanged = CustomEvent<Partial<IrritabilityTold>>;

/** The questions that are a choice among a few answers, with the answers in order. */
const questions = {
  provokedBy: ['fast-or-heavy-load', 'single-raises-or-long-walk', 'walking-or-standing'],
  settles: ['under-12-hours', 'by-next-morning', 'over-24-hours'],
  stiffness: ['under-10-minutes', '10-to-30-minutes', 'over-30-minutes'],
  restPain: ['none', 'occasional', 'present'],
  trend: ['steady-or-better', 'fluctuating', 'worsening'],
  flare: ['yes', 'no'],
} as const satisfies { readonly [Name in keyof IrritabilityTold]?: readonly NonNullable<IrritabilityTold[Name]>[] };

type Question = keyof typeof questions;

/** How irritable one tendon is, a tap a question, each of them optional. Tells `irritability-changed`. */
@customElement('irritability-form')
export class IrritabilityForm extends LitElement {
  static override styles = [
    base,
    css`
      :host {
        display: grid;
        gap: var(--gap-6);
        padding-block: var(--gap-3) var(--gap-8);
      }
    `,
  ];

  @property({ attribute: false }) told!: IrritabilityTold;

  override render(): TemplateResult {
    return html`
      ${this.choice('provokedBy')} ${this.scale('peakPain')} ${this.choice('settles')} ${this.choice('stiffness')}
      ${this.choice('restPain')} ${this.choice('trend')} ${this.choice('flare')} ${this.scale('painNow')}
    `;
  }

  private choice(question: Question): TemplateResult {
    const chips = questions[question].map((value) => ({ value, text: HISTORY_WORDS[value].text }));
    return html`<chip-choice
      legend=${HISTORY_WORDS[question].text}
      open=${HISTORY_WORDS['not-asked'].text}
      .chips=${chips}
      .value=${this.told[question]}
      @chip-chosen=${(event: ChipChosen<string | null>) => this.tell({ [question]: event.detail })}
    ></chip-choice>`;
  }

  private scale(question: 'peakPain' | 'painNow'): TemplateResult {
    return html`<number-scale
      legend=${HISTORY_WORDS[question].text}
      low=${HISTORY_WORDS['pain-low'].text}
      high=${HISTORY_WORDS['pain-high'].text}
      open=${HISTORY_WORDS['not-asked'].text}
      .value=${this.told[question]}
      @scale-chosen=${(event: ScaleChosen) => this.tell({ [question]: event.detail })}
    ></number-scale>`;
  }

  private tell(changes: Partial<IrritabilityTold>): void {
    this.dispatchEvent(new CustomEvent('irritability-changed', { detail: changes }));
  }
}
