import { consume } from '@lit/context';
import { type CasebookPerson, casebookOf } from '@surae/casebook';
import { type RecordDocument, TABLE_FORMS, type TableForm } from '@surae/exchange';
import { EXPORT_WORDS } from '@surae/shared';
import type { RecordStore } from '@surae/storage';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import type { AuditTrail } from '../clinic/audit-trail.ts';
import { auditContext, clockContext, type HostClock, storeContext } from '../contexts/capabilities.ts';
import { contentOf, type ExportChoice, type ExportContent, firstChoice } from '../export/export-choice.ts';
import { type ExportEnd, ExportSession } from '../export/export-session.ts';
import { chosenStudy } from '../export/make-export.ts';
import { fieldBox } from '../parts/field-style.ts';
import { saveBlob } from '../result/save-file.ts';
import { softwareName } from '../result/software.ts';
import { base } from '../styles/base.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';

type Flag = 'samples' | 'raw' | 'healthRecords' | 'letters' | 'withoutNames' | 'keepDevices';

/** A secret that nobody can guess and that is forgotten with the page. */
function drawnSecret(): string {
  return Array.from(crypto.getRandomValues(new Uint8Array(32)), (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** What leaves, in which form, with names or without; what is in it is shown before the file is made. */
@customElement('export-page')
export class ExportPage extends LitElement {
  static override styles = [
    base,
    css`
      section {
        margin-block-start: var(--gap-6);
      }
      .fields {
        display: grid;
        gap: var(--gap-4);
        grid-template-columns: minmax(0, 1fr);
        margin-block-start: var(--gap-6);
        max-inline-size: 44rem;
      }
      .field > label {
        display: block;
        font-weight: 600;
        margin-block-end: var(--gap-1);
      }
      select {
        ${fieldBox}
      }
      fieldset {
        border: 0;
        margin: 0;
        padding: 0;
      }
      legend {
        font-weight: 600;
        padding: 0;
      }
      fieldset label {
        align-items: center;
        display: flex;
        gap: var(--gap-3);
        min-block-size: var(--target);
      }
      input[type='checkbox'] {
        accent-color: var(--ink);
        block-size: 1.5rem;
        flex: none;
        inline-size: 1.5rem;
        margin: 0;
      }
      table {
        border-collapse: collapse;
        inline-size: 100%;
        max-inline-size: 44rem;
      }
      th,
      td {
        border-block-end: 1px solid var(--hairline);
        font-weight: 400;
        overflow-wrap: anywhere;
        padding-block: var(--gap-2);
        text-align: start;
      }
      th + th,
      td {
        padding-inline-start: var(--gap-3);
        text-align: end;
      }
      thead th {
        color: var(--ink-quiet);
        font-size: var(--size-1);
        overflow-wrap: break-word;
      }
      button {
        margin-block: var(--gap-6) var(--gap-3);
        max-inline-size: 44rem;
      }
    `,
  ];

  @consume({ context: storeContext }) private readonly store!: RecordStore;
  @consume({ context: auditContext }) private readonly audit!: AuditTrail;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @state() private people: readonly CasebookPerson[] = [];
  @state() private choice: ExportChoice = firstChoice;
  @state() private content: ExportContent | undefined;
  @state() private said = '';
  @state() private failed = '';
  @state() private working = false;
  private documents: readonly RecordDocument[] = [];
  private readonly session = new ExportSession(
    () => new Worker(new URL('../export/worker.ts', import.meta.url), { type: 'module' }) as ExportEnd,
  );

  override connectedCallback(): void {
    super.connectedCallback();
    void this.load();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.session.stop();
  }

  private async load(): Promise<void> {
    this.documents = await this.store.documents({});
    this.people = casebookOf(this.documents).people;
    await this.look();
  }

  /** What would leave now; an answer that comes after a newer choice is of no use. */
  private async look(): Promise<void> {
    const { choice } = this;
    const content = contentOf(await chosenStudy(this.documents, choice, softwareName(), null));
    if (choice === this.choice) this.content = content;
  }

  private choose(change: Partial<ExportChoice>): void {
    this.choice = { ...this.choice, ...change };
    this.said = '';
    this.failed = '';
    void this.look();
  }

  override render(): TemplateResult {
    const words = EXPORT_WORDS;
    return html`
      <h1 tabindex="-1">${words.title.text}</h1>
      <p>${words.explain.text}</p>
      <div class="fields">
        ${this.whose()} ${this.visits()}
        <fieldset>
          <legend>${words.forms.text}</legend>
          ${TABLE_FORMS.map((form) => this.form(form))}
        </fieldset>
        <fieldset>
          <legend>${words.more.text}</legend>
          ${this.flag('samples', words.samples.text)} ${this.flag('healthRecords', words['health-records'].text)}
          ${this.flag('letters', words.letters.text)}
          ${this.choice.withoutNames ? nothing : this.flag('raw', words.raw.text)}
        </fieldset>
        <fieldset>
          <legend>${words.names.text}</legend>
          ${this.flag('withoutNames', words['without-names'].text)}
          ${this.choice.withoutNames ? this.flag('keepDevices', words['keep-devices'].text) : nothing}
        </fieldset>
      </div>
      <p class=${this.choice.withoutNames ? 'quiet' : 'voice'}>
        ${this.choice.withoutNames ? words.unnamed.text : words.named.text}
      </p>
      ${this.inside()} ${this.saving()}
    `;
  }

  private whose(): TemplateResult {
    const { personId } = this.choice;
    const changed = (event: Event): void => {
      const { value } = event.target as HTMLSelectElement;
      this.choose({ personId: value === '' ? null : value, visitId: null });
    };
    return html`<div class="field">
      <label for="whose">${EXPORT_WORDS.whose.text}</label>
      <select id="whose" @change=${changed}>
        <option value="" ?selected=${personId === null}>${EXPORT_WORDS.everybody.text}</option>
        ${this.people.map(
          ({ person }) => html`<option value=${person.id} ?selected=${personId === person.id}>${person.name}</option>`,
        )}
      </select>
    </div>`;
  }

  private visits(): TemplateResult | typeof nothing {
    const { personId, visitId } = this.choice;
    const own = this.people.find(({ person }) => person.id === personId)?.visits ?? [];
    if (own.length === 0) return nothing;
    const changed = (event: Event): void => {
      const { value } = event.target as HTMLSelectElement;
      this.choose({ visitId: value === '' ? null : value });
    };
    return html`<div class="field">
      <label for="which">${EXPORT_WORDS.which.text}</label>
      <select id="which" @change=${changed}>
        <option value="" ?selected=${visitId === null}>${EXPORT_WORDS['all-visits'].text}</option>
        ${own.map(
          ({ visit }) =>
            html`<option value=${visit.id} ?selected=${visitId === visit.id}>
              ${fill(EXPORT_WORDS['visit-of'], { day: dayOf(visit.begunAt) })}
            </option>`,
        )}
      </select>
    </div>`;
  }

  private form(form: TableForm): TemplateResult {
    const { tables } = this.choice;
    const toggled = (): void =>
      this.choose({ tables: TABLE_FORMS.filter((one) => (one === form) !== tables.includes(one)) });
    return html`<label>
      <input type="checkbox" .checked=${tables.includes(form)} @change=${toggled} />
      ${EXPORT_WORDS[form].text}
    </label>`;
  }

  private flag(name: Flag, text: string): TemplateResult {
    return html`<label>
      <input
        type="checkbox"
        .checked=${this.choice[name]}
        @change=${() => this.choose({ [name]: !this.choice[name] })}
      />
      ${text}
    </label>`;
  }

  /** What is in the file, counted from the documents. */
  private inside(): TemplateResult | typeof nothing {
    const { content } = this;
    if (content === undefined) return nothing;
    const words = EXPORT_WORDS;
    return html`<section>
      <h2>${words.content.text}</h2>
      ${content.people === 0 ? html`<p class="voice">${words.nothing.text}</p>` : nothing}
      <p>${fill(words.counts, { people: content.people, visits: content.visits, trials: content.trials })}</p>
      <table>
        <thead>
          <tr>
            <th scope="col">${words.table.text}</th>
            <th scope="col">${words.rows.text}</th>
            <th scope="col">${words.columns.text}</th>
          </tr>
        </thead>
        <tbody>
          ${content.tables.map(
            ({ name, rows, columns }) =>
              html`<tr>
                <th scope="row">${name}</th>
                <td>${rows}</td>
                <td>${columns}</td>
              </tr>`,
          )}
        </tbody>
      </table>
    </section>`;
  }

  private saving(): TemplateResult {
    const words = EXPORT_WORDS;
    const noForm = this.choice.tables.length === 0;
    return html`
      <button
        class="main"
        type="button"
        ?disabled=${noForm || this.working}
        @click=${() => void this.save()}
      >
        ${words.save.text}
      </button>
      ${this.working ? html`<button type="button" @click=${() => this.session.stop()}>${words.stop.text}</button>` : nothing}
      <p class="voice" role="status">${noForm ? words['no-form'].text : this.said}</p>
      ${this.failed === '' ? nothing : html`<p class="voice" role="alert">${this.failed}</p>`}
    `;
  }

  private async save(): Promise<void> {
    const words = EXPORT_WORDS;
    this.working = true;
    this.failed = '';
    this.said = words.packing.text;
    try {
      const { choice, documents } = this;
      const told = { software: softwareName(), day: this.clock.isoNow().slice(0, 10), secret: drawnSecret() };
      const made = await this.session.make(
        { documents, choice, ...told },
        (id) => this.store.bytes(id),
        (done, of) => {
          this.said = fill(words.working, { done, of });
        },
      );
      if (made === undefined) {
        this.said = words.stopped.text;
        return;
      }
      const { people = 0, visits = 0, trials = 0 } = this.content ?? {};
      await this.audit.write('exported', choice.personId, { people, visits, trials });
      saveBlob(made.blob, made.name);
      const size = Math.max(1, Math.round(made.blob.size / 1000));
      const saved = fill(words.saved, { file: made.name, size, count: made.parts });
      this.said = made.out === null ? saved : `${saved} ${fill(words['taken-out'], { ...made.out })}`;
    } catch (error) {
      this.said = '';
      this.failed = fill(words.failed, { reason: error instanceof Error ? error.message : String(error) });
    } finally {
      this.working = false;
    }
  }
}
