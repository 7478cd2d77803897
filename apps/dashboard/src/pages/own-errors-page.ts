import { consume } from '@lit/context';
import { choosablePulls, type OwnErrorsEntry, type OwnErrorsKept } from '@surae/casebook';
import { COMPARISON_RULES, OWN_ERROR_PLACE, OWN_ERROR_WORDS, PROTOCOLS, PULL_PROTOCOLS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { bookContext } from '../contexts/capabilities.ts';
import {
  type OwnErrorFields,
  type OwnErrorForm,
  OwnErrorRefusal,
  ownErrorFrom,
  ownErrorFromFile,
} from '../journey/own-errors-form.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import '../parts/chip-choice.ts';
import type { ChipChosen } from '../parts/chip-choice.ts';
import { fieldStyle } from '../parts/field-style.ts';
import '../parts/json-file.ts';
import type { FileRead } from '../parts/json-file.ts';
import { KeptEntries } from '../parts/kept-entries.ts';
import '../parts/own-error-list.ts';
import { protocolTitle, type TakenBack } from '../parts/own-error-list.ts';
import { ruledSectionStyle } from '../parts/ruled-section-style.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';

type Problems = Extract<OwnErrorForm, { readonly ok: false }>['problems'];
type TypedField = 'standardError' | 'people' | 'days' | 'source';

const empty: OwnErrorFields = {
  protocolId: null,
  unit: null,
  isShare: false,
  standardError: '',
  people: '',
  days: '',
  source: '',
};

/** Protocols whose results are held against an error; a rate of rise is not. */
const protocols: readonly { readonly id: string; readonly title: string }[] = [...PROTOCOLS, ...choosablePulls];

/** Units with and without `-share`, by what a protocol measures. */
const counted = ['1', '1-share'] as const;
const pushed = ['N', 'N-share', 'N.m', 'N.m-share'] as const;
const unitWords = {
  '1': OWN_ERROR_WORDS['unit-1'],
  '1-share': OWN_ERROR_WORDS['unit-share'],
  N: OWN_ERROR_WORDS['unit-N'],
  'N-share': OWN_ERROR_WORDS['unit-N-share'],
  'N.m': OWN_ERROR_WORDS['unit-N.m'],
  'N.m-share': OWN_ERROR_WORDS['unit-N.m-share'],
} as const;

/** The errors of measurement that a clinic found on its own people: what is kept, and how another one is handed over. */
@customElement('own-errors-page')
export class OwnErrorsPage extends LitElement {
  static override styles = [
    base,
    fieldStyle,
    ruledSectionStyle,
    css`
      .protocol {
        max-inline-size: 44rem;
      }
      form,
      .file {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: var(--gap-4);
        margin-block-start: var(--gap-6);
        max-inline-size: 44rem;
      }
      .help {
        margin-block: var(--gap-1) 0;
      }
    `,
  ];

  @consume({ context: bookContext }) private readonly book!: VisitBook;
  private readonly kept = new KeptEntries<OwnErrorsEntry>(
    this,
    () => this.book.ownErrors(),
    OWN_ERROR_WORDS['not-kept'].text,
  );
  @state() private fields: OwnErrorFields = empty;
  /** problems are told when the form was sent, not while somebody still types */
  @state() private sent = false;
  @state() private refused = '';

  override render(): TemplateResult {
    const words = OWN_ERROR_WORDS;
    const { ownPairsLeast, ownPairsPlain } = COMPARISON_RULES;
    const { entries, said } = this.kept;
    const [least, plain] = [ownPairsLeast.value, ownPairsPlain.value];
    return html`
      <h1 tabindex="-1">${OWN_ERROR_PLACE.title.text}</h1>
      <p>${words.explain.text}</p>
      <p class="quiet">${fill(words.rule, { least, below: plain - 1, plain })}</p>
      ${
        (entries ?? []).length === 0
          ? html`<p class="voice">${entries === undefined ? '' : words.none.text}</p>`
          : html`<section>
              <h2>${words.kept.text}</h2>
              <own-error-list
                .entries=${entries}
                @taken-back=${(event: TakenBack) => void this.kept.change(() => this.book.takeBackOwnErrors(event.detail))}
              ></own-error-list>
            </section>`
      }
      <p role="status" class="voice">${said}</p>
      ${this.add()}
    `;
  }

  private add(): TemplateResult {
    const words = OWN_ERROR_WORDS;
    const form = ownErrorFrom(this.fields);
    const problems: Problems = this.sent && !form.ok ? form.problems : {};
    return html`<section>
      <h2>${words.add.text}</h2>
      <div class="protocol">
        <label for="protocol">${words.protocol.text}</label>
        <select
          id="protocol"
          aria-invalid=${problems.protocolId === undefined ? nothing : 'true'}
          @change=${(event: Event) => this.choose((event.target as HTMLSelectElement).value)}
        >
          <option value="" ?selected=${this.fields.protocolId === null}>${words['not-chosen'].text}</option>
          ${protocols.map(
            ({ id, title }) => html`<option value=${id} ?selected=${this.fields.protocolId === id}>${title}</option>`,
          )}
        </select>
      </div>
      ${this.problem(problems.protocolId)}
      <div class="file">
        <h3>${words['by-file'].text}</h3>
        <p class="quiet help">${words['file-explain'].text}</p>
        <json-file
          label=${words.file.text}
          @file-read=${({ detail }: FileRead) => void this.read(detail)}
        ></json-file>
        ${this.refused === '' ? nothing : html`<p class="voice" role="alert">${this.refused}</p>`}
      </div>
      <form novalidate @submit=${(event: SubmitEvent) => void this.send(event)}>
        <h3>${words['by-hand'].text}</h3>
        ${this.units()} ${this.problem(problems.unit)}
        ${this.field('standardError', words.error.text, words['error-help'].text, problems)}
        ${this.field('people', words.people.text, '', problems)}
        ${this.field('days', words.days.text, '', problems)}
        ${this.field('source', words.who.text, words['who-help'].text, problems)}
        <button class="main" type="submit">${words.keep.text}</button>
      </form>
    </section>`;
  }

  private choose(id: string): void {
    this.fields = { ...this.fields, protocolId: id === '' ? null : id, unit: null, isShare: false };
  }

  private problem(code: Problems[TypedField | 'protocolId' | 'unit']): TemplateResult | typeof nothing {
    return code === undefined ? nothing : html`<p class="voice help" role="alert">${OWN_ERROR_WORDS[code].text}</p>`;
  }

  private units(): TemplateResult | typeof nothing {
    const { protocolId, unit, isShare } = this.fields;
    if (protocolId === null) return nothing;
    const codes = PULL_PROTOCOLS.some(({ id }) => id === protocolId) ? pushed : counted;
    const chosen = ({ detail }: ChipChosen): void => {
      const [code, share] = detail.split('-');
      this.fields = { ...this.fields, unit: code as OwnErrorFields['unit'], isShare: share !== undefined };
    };
    return html`<chip-choice
      legend=${OWN_ERROR_WORDS.unit.text}
      .chips=${codes.map((value) => ({ value, text: unitWords[value].text }))}
      .value=${unit === null ? null : `${unit}${isShare ? '-share' : ''}`}
      @chip-chosen=${chosen}
    ></chip-choice>`;
  }

  private field(name: TypedField, label: string, help: string, problems: Problems): TemplateResult {
    const problem = problems[name];
    return html`<div>
      <label for=${name}>${label}</label>
      <input
        id=${name}
        autocomplete="off"
        inputmode=${name === 'source' ? nothing : name === 'standardError' ? 'decimal' : 'numeric'}
        aria-describedby="${name}-help"
        aria-invalid=${problem === undefined ? nothing : 'true'}
        .value=${this.fields[name]}
        @input=${(event: InputEvent) =>
          (this.fields = { ...this.fields, [name]: (event.target as HTMLInputElement).value })}
      />
      <p id="${name}-help" aria-live="polite" class="help ${problem === undefined ? 'quiet' : 'voice'}">
        ${problem === undefined ? help : OWN_ERROR_WORDS[problem].text}
      </p>
    </div>`;
  }

  private async read({ name, text }: FileRead['detail']): Promise<void> {
    this.refused = '';
    try {
      await this.keep(ownErrorFromFile(name, text, this.fields.protocolId));
    } catch (error) {
      if (!(error instanceof OwnErrorRefusal)) throw error;
      this.refused = fill(OWN_ERROR_WORDS['file-refused'], { file: name, reason: error.message });
    }
  }

  private async send(event: SubmitEvent): Promise<void> {
    event.preventDefault();
    this.sent = true;
    const form = ownErrorFrom(this.fields);
    if (form.ok) {
      await this.keep(form.kept);
      return;
    }
    const first = (['standardError', 'people', 'days'] as const).find((name) => form.problems[name] !== undefined);
    if (first !== undefined) this.renderRoot.querySelector<HTMLInputElement>(`#${first}`)?.focus();
  }

  private async keep(own: OwnErrorsKept): Promise<void> {
    const said = fill(OWN_ERROR_WORDS['now-kept'], { protocol: protocolTitle(own.errors.protocolId) });
    if (!(await this.kept.change(() => this.book.addOwnErrors(own), said))) return;
    this.fields = empty;
    this.sent = false;
  }
}
