import type { Side } from '@surae/analysis';
import type { Entry, PlanItem } from '@surae/casebook';
import { COURSE_WORDS, LOG_WORDS, type Sentence, TEST_CHOICE_WORDS } from '@surae/shared';
import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import {
  type DraftField,
  type DraftProblems,
  draftOfPlanned,
  draftOfRun,
  emptyDraft,
  entryFrom,
  type LogDraft,
} from '../course/log-draft.ts';
import type { LogEntry } from '../course/log-entry.ts';
import type { TakenRunFile } from '../runs/run-file-lines.ts';
import { base } from '../styles/base.ts';
import type { ChipChosen } from './chip-choice.ts';
import './chip-choice.ts';
import './day-choice.ts';
import { fieldStyle } from './field-style.ts';
import { logFormStyle } from './log-form-style.ts';
import type { ScaleChosen } from './number-scale.ts';
import './number-scale.ts';
import { reachFields } from './reach-fields.ts';
import type { RunFileRead } from './run-file.ts';
import './run-file.ts';
import { totalFields } from './total-fields.ts';

/** What was written down, to be kept. */
export type LogGiven = CustomEvent<LogEntry>;

const stiffness = (['none', 'under-10-minutes', '10-to-30-minutes', 'over-30-minutes'] as const).map((value) => ({
  value,
  text: COURSE_WORDS[`stiffness-${value}`].text,
}));
const legs = (['left', 'right', 'both'] as const).map((value) => ({ value, text: COURSE_WORDS[value].text }));
const tests = (['heel-raise', 'isometric'] as const).map((value) => ({ value, text: TEST_CHOICE_WORDS[value].text }));
const order: readonly (keyof DraftProblems)[] = [
  'on',
  'left',
  'minutes',
  'kilometres',
  'cadence',
  'hours',
  'what',
  'sets',
  'repetitions',
  'load',
  'text',
  'target',
  'questionnaire',
  'total',
  'languageVersion',
  'reachSide',
  'trials',
];

/** One thing is written down, or corrected: a morning, what was done, a run, a note. Tells `log-given` and `log-left`. */
@customElement('log-form')
export class LogForm extends LitElement {
  static override styles = [base, fieldStyle, logFormStyle];

  /** what it begins with: an empty draft, or what is to be corrected */
  @property({ attribute: false }) begin: LogDraft = emptyDraft('note', '');
  @property({ attribute: false }) today = '';
  @property({ attribute: false }) planItems: readonly Entry<PlanItem>[] = [];
  /** legs that are sore at the heel bone */
  @property({ attribute: false }) sore: readonly Side[] = [];
  /** files that runs were read from before */
  @property({ attribute: false }) runFiles: readonly TakenRunFile[] = [];
  @property({ type: Boolean }) correcting = false;
  @state() private draft: LogDraft = this.begin;
  @state() private problems: DraftProblems = {};

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('begin')) return;
    this.draft = this.begin;
    this.problems = {};
  }

  override render(): TemplateResult {
    return html`<form novalidate @submit=${this.send}>
      ${this.questions()}
      <div>
        <day-choice
          id="on"
          .today=${this.today}
          .day=${this.draft.on}
          @day-chosen=${({ detail }: CustomEvent<string>) => this.set({ on: detail })}
        ></day-choice>
        ${this.problem('on')}
      </div>
      <div class="end">
        <button class="main" type="submit">${LOG_WORDS[this.correcting ? 'keep-correction' : 'keep'].text}</button>
        <button type="button" @click=${() => this.dispatchEvent(new CustomEvent('log-left'))}>
          ${LOG_WORDS.cancel.text}
        </button>
      </div>
    </form>`;
  }

  private questions(): TemplateResult {
    const words = LOG_WORDS;
    switch (this.draft.kind) {
      case 'morning-check':
        return html`
          <div id="left" tabindex="-1">
            ${this.pain('left', words['pain-left'])} ${this.problem('left')}
          </div>
          ${this.pain('right', words['pain-right'])}
          <chip-choice
            legend=${words.stiffness.text}
            open=${words['not-told'].text}
            .chips=${stiffness}
            .value=${this.draft.stiffness}
            @chip-chosen=${({ detail }: ChipChosen<LogDraft['stiffness']>) => this.set({ stiffness: detail })}
          ></chip-choice>
        `;
      case 'run':
        return html`
          ${
            this.correcting
              ? nothing
              : html`<run-file
                  today=${this.today}
                  .taken=${this.runFiles}
                  @run-read=${({ detail }: RunFileRead) => this.set(draftOfRun(this.draft, detail))}
                ></run-file>`
          }
          <div class="numbers">
            ${this.field('minutes', words['minutes-field'])} ${this.field('kilometres', words['kilometres-field'])}
            ${this.field('cadence', words['cadence-field'])}
          </div>
          ${this.pain('left', words['pain-run-left'])} ${this.pain('right', words['pain-run-right'])}
        `;
      case 'on-feet':
        return html`<div class="numbers">${this.field('hours', words['hours-field'])}</div>
          <p class="quiet">${words['hours-help'].text}</p>`;
      case 'done-item':
        return this.done();
      case 'questionnaire-total':
        return totalFields(this.draft.total, this.problems, (change) =>
          this.set({ total: { ...this.draft.total, ...change } }),
        );
      case 'knee-to-wall':
        return reachFields(this.draft.reach, this.problems, this.sore, (reach) => this.set({ reach }));
      case 'target':
        return this.target();
      case 'note':
        return html`<div>
          <label for="text">${words['text-field'].text}</label>
          <textarea
            id="text"
            maxlength="2000"
            aria-describedby="text-problem"
            .value=${this.draft.text}
            @input=${(event: InputEvent) => this.set({ text: (event.target as HTMLTextAreaElement).value })}
          ></textarea>
          ${this.problem('text')}
        </div>`;
    }
  }

  private done(): TemplateResult {
    const words = LOG_WORDS;
    const { planItemId, side, painDuring, painAfter, exertion } = this.draft;
    const planned = this.planItems.filter(({ body }) => body.decision !== 'declined');
    const chips = planned.map(({ id, body }) => ({ value: id, text: body.what }));
    return html`
      ${
        planned.length === 0
          ? nothing
          : html`<chip-choice
              legend=${words.which.text}
              open=${words['none-planned'].text}
              .chips=${chips}
              .value=${planItemId}
              @chip-chosen=${({ detail }: ChipChosen<string | null>) => this.choosePlanned(detail)}
            ></chip-choice>`
      }
      <div class="what">${this.field('what', words['what-field'], 'text')}</div>
      ${this.legs(side)}
      <div class="numbers">
        ${this.field('sets', words['sets-field'], 'numeric')}
        ${this.field('repetitions', words['repetitions-field'], 'numeric')} ${this.field('load', words['load-field'])}
      </div>
      ${this.scale(words['pain-during'], ['low-pain', 'high-pain'], painDuring, (value) =>
        this.set({ painDuring: value }),
      )}
      ${this.scale(words['pain-after'], ['low-pain', 'high-pain'], painAfter, (value) => this.set({ painAfter: value }))}
      ${this.scale(words.exertion, ['low-effort', 'high-effort'], exertion, (value) => this.set({ exertion: value }))}
    `;
  }

  private target(): TemplateResult {
    const words = LOG_WORDS;
    const { test, side } = this.draft;
    const unit = test === 'heel-raise' ? 'repetitions' : 'times-body-weight';
    return html`
      <chip-choice
        legend=${words['which-test'].text}
        .chips=${tests}
        .value=${test}
        @chip-chosen=${({ detail }: ChipChosen) => this.set({ test: detail as LogDraft['test'] })}
      ></chip-choice>
      ${this.legs(side)}
      <div>
        ${this.field('target', words[`target-${unit}`])}
        <p class="quiet">${words['target-help'].text}</p>
      </div>
    `;
  }

  private legs(side: LogDraft['side']): TemplateResult {
    return html`<chip-choice
      legend=${LOG_WORDS.side.text}
      .chips=${legs}
      .value=${side}
      @chip-chosen=${({ detail }: ChipChosen) => this.set({ side: detail as LogDraft['side'] })}
    ></chip-choice>`;
  }

  private choosePlanned(id: string | null): void {
    const item = this.planItems.find((one) => one.id === id);
    this.set(item === undefined ? { planItemId: null } : draftOfPlanned(this.draft, item.id, item.body));
  }

  private pain(side: 'left' | 'right', legend: Sentence): TemplateResult {
    return this.scale(legend, ['low-pain', 'high-pain'], this.draft[side], (value) => this.set({ [side]: value }));
  }

  private scale(
    legend: Sentence,
    [low, high]: readonly ['low-pain', 'high-pain'] | readonly ['low-effort', 'high-effort'],
    value: number | null,
    told: (value: number | null) => void,
  ): TemplateResult {
    return html`<number-scale
      legend=${legend.text}
      low=${LOG_WORDS[low].text}
      high=${LOG_WORDS[high].text}
      open=${LOG_WORDS['not-told'].text}
      .value=${value}
      @scale-chosen=${({ detail }: ScaleChosen) => told(detail)}
    ></number-scale>`;
  }

  private field(
    name: 'minutes' | 'kilometres' | 'cadence' | 'hours' | 'what' | 'sets' | 'repetitions' | 'load' | 'target',
    label: Sentence,
    mode: 'decimal' | 'numeric' | 'text' = 'decimal',
  ): TemplateResult {
    return html`<div>
      <label for=${name}>${label.text}</label>
      <input
        id=${name}
        autocomplete="off"
        inputmode=${mode === 'text' ? nothing : mode}
        aria-describedby="${name}-problem"
        aria-invalid=${this.problems[name] === undefined ? nothing : 'true'}
        .value=${this.draft[name]}
        @input=${(event: InputEvent) => this.set({ [name]: (event.target as HTMLInputElement).value })}
      />
      ${this.problem(name)}
    </div>`;
  }

  private problem(name: DraftField): TemplateResult {
    const code = this.problems[name];
    return html`<p id="${name}-problem" class="voice problem" aria-live="polite">
      ${code === undefined ? '' : LOG_WORDS[code].text}
    </p>`;
  }

  private set(change: Partial<LogDraft>): void {
    this.draft = { ...this.draft, ...change };
  }

  private readonly send = (event: SubmitEvent): void => {
    event.preventDefault();
    const found = entryFrom(this.draft);
    this.problems = found.ok ? {} : found.problems;
    if (found.ok) {
      this.dispatchEvent(new CustomEvent('log-given', { detail: found.entry }));
      return;
    }
    const first = order.find((name) => this.problems[name] !== undefined);
    this.renderRoot.querySelector<HTMLElement>(`#${first}`)?.focus();
  };
}
