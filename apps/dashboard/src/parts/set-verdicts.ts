import type { Report, Verdict } from '@surae/analysis';
import { acceptedSet, type VisitSet } from '@surae/casebook';
import { HAND_VERDICT_WORDS, REPETITION_WORDS } from '@surae/shared';
import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { undoing } from '../journey/removal-request.ts';
import { visitEvent } from '../journey/visit-event-request.ts';
import {
  handReasons,
  handSentences,
  handWords,
  isSaid,
  judgedByHand,
  type StripMark,
  stripMarks,
} from '../result/hand-verdicts.ts';
import { stripSentence } from '../result/repetition-rows.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { roved } from './roving.ts';
import { setVerdictsStyle } from './set-verdicts-style.ts';
import { verdictMark } from './verdict-mark.ts';

const verdicts = ['yes', 'no', 'cannot_tell'] as const satisfies readonly Verdict[];

/**
 * The repetitions of a set as a row of pencil marks, told apart by shape; a line where the test ended. A press on one opens
 * why it was judged so, and lets a person judge otherwise: both stay.
 */
@customElement('set-verdicts')
export class SetVerdicts extends LitElement {
  static override styles = [base, setVerdictsStyle];

  @property({ attribute: false }) set!: VisitSet;
  /** made before the end was told, where none is stored yet */
  @property({ attribute: false }) early: Report | null = null;
  /** number of the repetition that is looked at */
  @state() private opened: number | undefined;
  /** where the keyboard stands */
  @state() private at = 0;

  private counting(): VisitSet {
    return this.set.report === null ? acceptedSet({ ...this.set, report: this.early }) : this.set;
  }

  override render(): TemplateResult {
    const set = this.counting();
    // a set that was counted by hand holds what a person saw already, its faults marked while it ran
    if (set.report === null || set.choice.placement === 'hand') return html``;
    const marks = stripMarks(set);
    if (marks.length === 0) return html`<p>${REPETITION_WORDS.none.text}</p>`;
    const opened = marks.find(({ index }) => index === this.opened);
    return html`
      <p class="legend" id="legend">${HAND_VERDICT_WORDS.title.text}</p>
      <p class="unseen" id="counts">${stripSentence(set.report)}</p>
      <div class="row" role="toolbar" aria-labelledby="legend" aria-describedby="counts" @keydown=${this.rove}>
        ${marks.map((mark, place) => this.mark(mark, place))}
      </div>
      <p class="key quiet" aria-hidden="true">
        ${verdicts.map((verdict) => html`<span>${verdictMark(verdict)} ${REPETITION_WORDS[verdict].text}</span>`)}
      </p>
      <p class="both" role="status">${handSentences(set).join(' ')}</p>
      ${opened === undefined ? nothing : this.panel(set, opened)}
    `;
  }

  private mark({ index, valid, automatic, label, isFirstAfterEnd }: StripMark, place: number): TemplateResult {
    return html`<button
      type="button"
      class=${isFirstAfterEnd ? 'mark ended' : 'mark'}
      aria-label=${label}
      aria-expanded=${this.opened === index}
      tabindex=${place === this.at ? 0 : -1}
      @click=${() => this.look(index, place)}
    >
      ${automatic === null ? nothing : html`<span class="before">${verdictMark(automatic)}</span>`}
      ${verdictMark(valid)}<span class="number">${index}</span>
    </button>`;
  }

  private panel(set: VisitSet, { index, measured, byHand, ids }: StripMark): TemplateResult {
    const words = HAND_VERDICT_WORDS;
    return html`<section class="panel" aria-label=${fill(words.opened, { index })} @keydown=${this.leave}>
      <p class="legend">${fill(words.opened, { index })}</p>
      <p>${measured}</p>
      ${
        byHand === null
          ? nothing
          : html`<p>${byHand}</p>
              <button type="button" @click=${() => this.undo(ids)}>${words.undo.text}</button>`
      }
      ${handWords.map(
        (verdict) => html`<div role="group" aria-label=${words[`group-${verdict}`].text}>
          <p class="quiet group">${words[`group-${verdict}`].text}</p>
          <div class="choices">
            ${handReasons(verdict).map(
              (reason) => html`<button
                type="button"
                aria-pressed=${isSaid(set, index, reason)}
                @click=${() => this.judge(index, reason)}
              >
                ${reason.text}
              </button>`,
            )}
          </div>
        </div>`,
      )}
      <button class="plain" type="button" @click=${() => this.close()}>${words.close.text}</button>
    </section>`;
  }

  private look(index: number, place: number): void {
    this.at = place;
    this.opened = this.opened === index ? undefined : index;
  }

  private judge(index: number, reason: Parameters<typeof judgedByHand>[2]): void {
    this.dispatchEvent(visitEvent(judgedByHand(this.counting(), index, reason)));
    this.close();
  }

  private undo(ids: readonly string[]): void {
    this.dispatchEvent(undoing(ids));
    this.close();
  }

  /** Back to the mark that was pressed. */
  private close(): void {
    this.opened = undefined;
    this.marks()[this.at]?.focus();
  }

  private marks(): HTMLButtonElement[] {
    return [...this.renderRoot.querySelectorAll<HTMLButtonElement>('.mark')];
  }

  private readonly leave = (event: KeyboardEvent): void => {
    if (event.key === 'Escape') this.close();
  };

  private readonly rove = (event: KeyboardEvent): void => {
    const marks = this.marks();
    const to = roved(event.key, marks.indexOf(event.target as HTMLButtonElement), marks.length);
    if (to === undefined) return;
    event.preventDefault();
    this.at = to;
    marks[to]?.focus();
  };
}
