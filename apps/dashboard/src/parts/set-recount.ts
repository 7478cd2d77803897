import { consume } from '@lit/context';
import { defaultSettings, type Report } from '@surae/analysis';
import {
  type Entry,
  noOwnErrors,
  type OwnErrorsInUse,
  type Person,
  type Recount,
  type Visit,
  type VisitSet,
} from '@surae/casebook';
import { type Protocol, RECOUNT_WORDS, RESULT_WORDS } from '@surae/shared';
import type { RecordStore } from '@surae/storage';
import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { ClinicDoor } from '../clinic/clinic-door.ts';
import { type Assessor, assessorContext, bookContext, doorContext, storeContext } from '../contexts/capabilities.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import { AssessmentError, assessSet, type FinalPass } from '../result/assessment.ts';
import { practiceAgain } from '../result/practice-again.ts';
import {
  baseProtocol,
  cycleTolerances,
  heightFractions,
  offered,
  otherProtocols,
  type RecountChoice,
  recountProtocol,
} from '../result/recount-choice.ts';
import { besideSets, conclusionsOf, type RobustLine, robustLines } from '../result/recount-conclusion.ts';
import { type MadeBy, recountRows } from '../result/recount-view.ts';
import { keptProvenance } from '../result/set-result.ts';
import { settingsHash } from '../result/settings-hash.ts';
import { softwareName } from '../result/software.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import type { ChipChosen } from './chip-choice.ts';
import './chip-choice.ts';
import { fieldStyle } from './field-style.ts';
import { foldStyle } from './fold-style.ts';
import type { RecountChosen } from './recount-table.ts';
import './recount-table.ts';

/** What came of counting again. */
interface Counted {
  readonly report: Report;
  /** null while what it is held beside is counted again */
  readonly lines: readonly RobustLine[] | null;
}

/** A set is counted again from its stored samples by other criteria; whoever wants keeps that beside the first result. */
@customElement('set-recount')
export class SetRecount extends LitElement {
  static override styles = [
    base,
    fieldStyle,
    foldStyle,
    css`
      :host {
        display: grid;
        gap: var(--gap-4);
        grid-template-columns: minmax(0, 1fr);
      }
      .why {
        max-inline-size: 32rem;
      }
      .keep {
        display: grid;
        gap: var(--gap-3);
        max-inline-size: 44rem;
      }
    `,
  ];

  @property({ attribute: false }) set!: VisitSet;
  @property({ attribute: false }) visit!: Visit;
  @property({ attribute: false }) person!: Person;
  /** visits of this person before this one, the oldest first */
  @property({ attribute: false }) earlier: readonly Visit[] = [];
  @property({ attribute: false }) own: OwnErrorsInUse = noOwnErrors;
  @consume({ context: storeContext }) private readonly store!: RecordStore;
  @consume({ context: assessorContext }) private readonly assessor!: Assessor;
  @consume({ context: bookContext }) private readonly book!: VisitBook;
  @consume({ context: doorContext }) private readonly door!: ClinicDoor;
  @state() private choice: RecountChoice = {};
  @state() private counted: Counted | 'running' | AssessmentError | undefined;
  @state() private kept: readonly Entry<Recount>[] = [];
  @state() private made: MadeBy = keptProvenance([], '');
  @state() private why = '';
  @state() private told = '';

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('set') && changed.get('set')?.id !== this.set.id) void this.load();
  }

  private async load(): Promise<void> {
    const results = await this.store.documents({ kind: 'set-result', about: this.visit.id });
    const bodies = results.map(({ body }) => body);
    this.made = keptProvenance(bodies, this.set.id);
    const all = await this.book.log.recounts(this.visit.id);
    this.kept = all.filter(({ body }) => body.setId === this.set.id);
  }

  private async choose(choice: RecountChoice): Promise<void> {
    this.choice = choice;
    this.told = '';
    const first = this.set.report;
    const protocol = first === null ? undefined : recountProtocol(first, choice);
    this.counted = protocol === undefined ? undefined : 'running';
    if (protocol === undefined) return;
    // what was asked for before another choice comes too late
    const isChosen = (): boolean => this.choice === choice;
    let report: Report;
    try {
      report = await this.count(this.set, protocol);
    } catch (error) {
      if (isChosen()) this.counted = asError(error);
      return;
    }
    if (!isChosen()) return;
    this.counted = { report, lines: null };
    const lines = await this.conclude(report, protocol);
    if (isChosen()) this.counted = { report, lines };
  }

  private async count(set: VisitSet, protocol: Protocol): Promise<Report> {
    const bytes = await this.store.bytes(set.bytesId);
    const final: FinalPass = (trace, request) => this.assessor.final(trace, request);
    const visit = [this.visit, ...this.earlier].find(({ sets }) => sets.some(({ id }) => id === set.id)) ?? this.visit;
    const practice = await practiceAgain(visit, set, this.person, (id) => this.store.bytes(id), final);
    return assessSet(set, this.person, bytes, final, { protocol, practice });
  }

  /** What the set is held beside is counted by the same criteria, so that like stands beside like; none of that is kept. */
  private async conclude(again: Report, protocol: Protocol): Promise<readonly RobustLine[]> {
    const of = { visit: this.visit, person: this.person, earlier: this.earlier, own: this.own };
    const { other, before } = besideSets(this.set, of);
    const reports = new Map([[this.set.id, again]]);
    const missing: ('other-leg' | 'visit-before')[] = [];
    for (const [what, set] of [
      ['other-leg', other],
      ['visit-before', before],
    ] as const) {
      if (set === null) continue;
      try {
        reports.set(set.id, await this.count(set, protocol));
      } catch {
        missing.push(what);
      }
    }
    return robustLines(conclusionsOf(this.set, of, new Map()), conclusionsOf(this.set, of, reports), missing);
  }

  private async keep(report: Report): Promise<void> {
    const why = this.why.trim() === '' ? null : this.why.trim();
    const made = { settingsHash: settingsHash(defaultSettings(), report), software: softwareName() };
    try {
      await this.book.log.addRecount(this.visit.id, { setId: this.set.id, report, ...made, why });
      await this.door.open?.audit.write('changed', this.visit.personId);
    } catch {
      this.told = RECOUNT_WORDS['not-kept'].text;
      return;
    }
    void this.choose({});
    this.why = '';
    await this.load();
    this.told = RECOUNT_WORDS.kept.text;
    this.dispatchEvent(new CustomEvent('recount-kept', { bubbles: true, composed: true }));
  }

  private async takeOut(id: string): Promise<void> {
    try {
      await this.book.log.takeOut(id, RECOUNT_WORDS['why-taken-out'].text);
      await this.door.open?.audit.write('changed', this.visit.personId);
    } catch {
      this.told = RECOUNT_WORDS['not-kept'].text;
      return;
    }
    await this.load();
    this.told = RECOUNT_WORDS['taken-out'].text;
    this.dispatchEvent(new CustomEvent('recount-kept', { bubbles: true, composed: true }));
  }

  override render(): TemplateResult | typeof nothing {
    const first = this.set.report;
    if (first === null) return nothing;
    const { counted } = this;
    const now =
      counted !== undefined && counted !== 'running' && !(counted instanceof AssessmentError) ? counted : null;
    return html`
      <p class="quiet">${RECOUNT_WORDS.explain.text}</p>
      ${this.choices(first)}
      <div role="status">${this.state(counted)}</div>
      ${
        now === null && this.kept.length === 0
          ? nothing
          : html`<recount-table
              .rows=${recountRows(first, this.made, this.kept, now?.report ?? null)}
              @recount-take-out=${({ detail }: RecountChosen) => void this.takeOut(detail)}
            ></recount-table>`
      }
      ${now === null ? nothing : this.keeping(now)}
      <p role="status">${this.told}</p>
    `;
  }

  private state(counted: SetRecount['counted']): string {
    const words = RECOUNT_WORDS;
    if (counted === undefined) return words['no-choice'].text;
    if (counted === 'running') return words.counting.text;
    if (!(counted instanceof AssessmentError)) return '';
    return fill(words.failed, { why: fill(RESULT_WORDS[counted.code], { what: counted.message }) });
  }

  private choices(first: Report): TemplateResult {
    const words = RECOUNT_WORDS;
    const { choice } = this;
    const own = baseProtocol(first, choice)?.parameters;
    const protocols = otherProtocols(first).map(({ id, title }) => ({
      value: id,
      text: title,
    }));
    return html`
      ${this.shares('heightFraction', words.height.text, heightFractions, own?.heightFraction.value ?? null)}
      ${this.shares('cycleTolerance', words.tempo.text, cycleTolerances, own?.cycleTolerance.value ?? null)}
      <details>
        <summary>${words['other-protocol'].text}</summary>
      <chip-choice
        legend=${words.protocol.text}
        open=${words['same-protocol'].text}
        .chips=${protocols}
        .value=${choice.protocolId ?? null}
        @chip-chosen=${({ detail }: ChipChosen<string | null>) =>
          void this.choose(detail === null ? {} : { protocolId: detail })}
      ></chip-choice>
      </details>
    `;
  }

  private shares(
    name: 'heightFraction' | 'cycleTolerance',
    legend: string,
    values: readonly number[],
    own: number | null,
  ): TemplateResult | typeof nothing {
    const all = offered(values, own);
    if (all.length === 0) return nothing;
    const chips = all.map((value) => {
      const text = fill(RECOUNT_WORDS.percent, { value: Math.round(100 * value) });
      return { value: String(value), text: value === own ? fill(RECOUNT_WORDS.first, { value: text }) : text };
    });
    return html`<chip-choice
      legend=${legend}
      .chips=${chips}
      .value=${String(this.choice[name] ?? own)}
      @chip-chosen=${({ detail }: ChipChosen) => void this.choose({ ...this.choice, [name]: Number(detail) })}
    ></chip-choice>`;
  }

  private keeping({ report, lines }: Counted): TemplateResult {
    const words = RECOUNT_WORDS;
    return html`
      <section aria-live="polite">
        <h3>${words.hangs.text}</h3>
        ${
          lines === null
            ? html`<p class="quiet">${words['hangs-running'].text}</p>`
            : lines.length === 0
              ? html`<p>${words['hangs-nothing'].text}</p>`
              : lines.map(({ text }) => html`<p>${text}</p>`)
        }
      </section>
      <div class="why">
        <label for="why">${words.why.text}</label>
        <input
          id="why"
          autocomplete="off"
          maxlength="2000"
          .value=${this.why}
          @input=${(event: InputEvent) => (this.why = (event.target as HTMLInputElement).value)}
        />
      </div>
      <div class="keep">
        <button type="button" @click=${() => void this.keep(report)}>${words.keep.text}</button>
      </div>
    `;
  }
}

function asError(error: unknown): AssessmentError {
  return error instanceof AssessmentError ? error : new AssessmentError('unexpected', String(error));
}
