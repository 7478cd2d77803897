import { DESIGN_WORDS, START_WORDS } from '@surae/shared';
import {
  type DesignAnswer,
  type DesignFaultCode,
  type DesignId,
  type DesignInput,
  designAnswer,
  type InputKey,
} from '@surae/study';
import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import {
  addressOf,
  askedQuestion,
  type DesignFields,
  designIds,
  faultsOf,
  fieldsAt,
  firstFields,
  isMain,
  nothingTyped,
  readFields,
  waysOf,
  withTyped,
} from '../design/design-form.ts';
import { neededWords } from '../design/design-lines.ts';
import '../parts/chip-choice.ts';
import type { ChipChosen } from '../parts/chip-choice.ts';
import '../parts/design-input.ts';
import type { DesignInputFields, DesignTyped } from '../parts/design-input.ts';
import '../parts/design-result.ts';
import { fieldBox } from '../parts/field-style.ts';
import { foldStyle } from '../parts/fold-style.ts';
import { hashOf } from '../route.ts';
import { base } from '../styles/base.ts';

/** How many people a study needs: what it wants to know, what is known, and how far the answer moves. */
@customElement('design-page')
export class DesignPage extends LitElement {
  static override styles = [
    base,
    foldStyle,
    css`
      form {
        display: grid;
        gap: var(--gap-6);
        grid-template-columns: minmax(0, 1fr);
        margin-block-end: var(--gap-8);
        max-inline-size: 44rem;
      }
      label {
        display: block;
        font-weight: 600;
        margin-block-end: var(--gap-1);
      }
      select {
        ${fieldBox}
      }
      .more {
        display: grid;
        gap: var(--gap-6);
        grid-template-columns: minmax(0, 1fr);
        margin-block-start: var(--gap-4);
      }
    `,
  ];

  /** what was typed, as the address has it; null for nothing */
  @property({ attribute: false }) asked: string | null = null;
  @state() private fields: DesignFields = firstFields;
  /** problems are told once an answer was asked for, not while somebody still types */
  @state() private faults: ReadonlyMap<InputKey, DesignFaultCode> = new Map();
  @state() private answer: DesignAnswer | undefined;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('asked') || this.asked === null) return;
    this.fields = fieldsAt(this.asked);
    this.faults = new Map();
    const reading = readFields(this.fields);
    this.answer = reading.ok ? designAnswer(reading.request) : undefined;
  }

  override render(): TemplateResult {
    const words = DESIGN_WORDS;
    const { fields, answer } = this;
    const question = askedQuestion(fields);
    const ways = waysOf(fields.id);
    const more = question.inputs.filter((input) => !isMain(input));
    return html`
      <h1 tabindex="-1">${START_WORDS['design-link'].text}</h1>
      <p>${words.explain.text}</p>
      <form novalidate @submit=${(event: SubmitEvent) => this.work(event)}>
        <div>
          <label for="question">${words.question.text}</label>
          <select
            id="question"
            @change=${(event: Event) => this.ask((event.target as HTMLSelectElement).value as DesignId)}
          >
            ${designIds.map((id) => html`<option value=${id} ?selected=${id === fields.id}>${words[id].text}</option>`)}
          </select>
        </div>
        ${
          ways.length < 2
            ? nothing
            : html`<chip-choice
                legend=${words.way.text}
                .chips=${ways.map(({ way }) => ({ value: way, text: way === '' ? '' : words[`way-${way}`].text }))}
                .value=${question.way}
                @chip-chosen=${({ detail }: ChipChosen<DesignFields['way']>) => this.take({ ...fields, way: detail })}
              ></chip-choice>`
        }
        ${question.inputs.filter(isMain).map((input) => this.input(input))}
        ${question.inputs.some(({ isUncertain }) => isUncertain) ? html`<p class="quiet">${words['range-help'].text}</p>` : nothing}
        <details ?open=${more.some(({ key }) => this.faults.has(key))}>
          <summary>${words[question.attains === 'power' ? 'usual' : 'usual-width'].text}</summary>
          <div class="more">${more.map((input) => this.input(input))}</div>
        </details>
        <button class="main" type="submit">${words.work.text}</button>
      </form>
      <p class="unseen" role="status">${answer === undefined ? '' : neededWords(answer.cases.expected, answer)}</p>
      ${answer === undefined ? html`<p class="quiet">${words['not-yet'].text}</p>` : html`<design-result .answer=${answer}></design-result>`}
    `;
  }

  private input(input: DesignInput): TemplateResult {
    const { key } = input;
    return html`<design-input
      id=${key}
      .input=${input}
      .typed=${this.fields.typed.get(key) ?? nothingTyped}
      .fault=${this.faults.get(key)}
      @design-typed=${({ detail: { part, text } }: DesignTyped) => this.take(withTyped(this.fields, key, part, text))}
    ></design-input>`;
  }

  private ask(id: DesignId): void {
    this.faults = new Map();
    this.take({ ...this.fields, id, way: waysOf(id)[0]!.way });
  }

  /** What was answered before is no answer to what stands there now. */
  private take(fields: DesignFields): void {
    this.fields = fields;
    this.answer = undefined;
    // the place stays the same, so that no page is entered anew
    history.replaceState(history.state, '', hashOf({ page: 'design', asked: addressOf(fields) }));
  }

  private work(event: SubmitEvent): void {
    event.preventDefault();
    const reading = readFields(this.fields);
    this.faults = faultsOf(reading);
    if (reading.ok) {
      this.answer = designAnswer(reading.request);
      return;
    }
    const [first] = this.faults.keys();
    void this.updateComplete.then(() => this.renderRoot.querySelector<DesignInputFields>(`#${first}`)?.focus());
  }
}
