import { STUDY_QUALITY_WORDS } from '@surae/shared';
import type { Decision, QualityRow, StudyFile } from '@surae/study';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { base } from '../styles/base.ts';
import { fieldStyle } from './field-style.ts';

/** What was decided; who writes it down adds the hash of the bytes and the day. */
export type DecisionGiven = CustomEvent<Pick<Decision, 'trial' | 'decision' | 'reason' | 'by' | 'why'>>;

/** Asks what is decided about a recording, by whom and why. Tells `decision-given`. */
@customElement('quality-decision')
export class QualityDecision extends LitElement {
  static override styles = [
    base,
    fieldStyle,
    css`
      form {
        display: grid;
        gap: var(--gap-4);
        max-inline-size: 44rem;
        padding-block: var(--gap-3);
      }
      fieldset {
        border: 0;
        display: grid;
        margin: 0;
        min-inline-size: 0;
        padding: 0;
      }
      legend {
        font-weight: 600;
        padding: 0;
      }
      .radio {
        align-items: center;
        display: flex;
        font-weight: 400;
        gap: var(--gap-3);
        margin: 0;
        min-block-size: var(--target);
      }
      .radio input {
        accent-color: var(--ink);
        block-size: 1.5rem;
        flex: none;
        inline-size: 1.5rem;
        min-block-size: 0;
      }
      p {
        margin: 0;
      }
    `,
  ];

  @property({ attribute: false }) row!: QualityRow;
  @property({ attribute: false }) study!: StudyFile;
  /** who decided last: mostly it is the same person */
  @property({ attribute: false }) by = '';
  /** what could not be kept */
  @property({ attribute: false }) refused = '';
  @state() private decision: Decision['decision'] | undefined;
  @state() private said = '';

  override render(): TemplateResult {
    const words = STUDY_QUALITY_WORDS;
    const reasons = this.study.exclusions.filter(({ rule }) => rule === null);
    const choices = (['include', 'exclude', 'open'] as const).filter((one) => one !== 'exclude' || reasons.length > 0);
    return html`<form novalidate @submit=${this.give}>
      ${this.row.decidedBy === 'rule' ? html`<p class="quiet">${words['rule-stands'].text}</p>` : nothing}
      <fieldset>
        <legend>${words.decision.text}</legend>
        ${choices.map(
          (one) =>
            html`<label class="radio"
              ><input type="radio" name="decision" value=${one} @change=${() => (this.decision = one)} />${words[one].text}</label
            >`,
        )}
      </fieldset>
      ${reasons.length === 0 ? html`<p class="quiet">${words['reason-none'].text}</p>` : nothing}
      ${
        this.decision === 'exclude'
          ? html`<fieldset>
              <legend>${words.reason.text}</legend>
              ${reasons.map(
                ({ code, words: told }) =>
                  html`<label class="radio"><input type="radio" name="reason" value=${code} />${told}</label>`,
              )}
            </fieldset>`
          : nothing
      }
      <div><label for="by">${words.who.text}</label><input id="by" name="by" autocomplete="off" .value=${this.by} /></div>
      <div><label for="why">${words.why.text}</label><input id="why" name="why" autocomplete="off" /></div>
      <p class="voice" role="alert">${this.said || this.refused}</p>
      <button type="submit">${words.keep.text}</button>
    </form>`;
  }

  private readonly give = (event: SubmitEvent): void => {
    event.preventDefault();
    const told = new FormData(event.target as HTMLFormElement);
    const text = (name: string): string => ((told.get(name) as string | null) ?? '').trim();
    const { decision } = this;
    const [by, why] = [text('by'), text('why')];
    const reason = decision === 'exclude' ? text('reason') : null;
    const words = STUDY_QUALITY_WORDS;
    this.said =
      decision === undefined
        ? words['choose-first'].text
        : reason === ''
          ? words['reason-first'].text
          : by === ''
            ? words['who-first'].text
            : why === ''
              ? words['why-first'].text
              : '';
    if (this.said !== '' || decision === undefined) return;
    const detail = { trial: this.row.trial.trial, decision, reason, by, why };
    this.dispatchEvent(new CustomEvent('decision-given', { detail }));
  };
}
