import { consume } from '@lit/context';
import { ISSUE_SENTENCES, STUDY_QUALITY_WORDS } from '@surae/shared';
import { StudyError } from '@surae/study';
import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { clockContext, type HostClock } from '../contexts/capabilities.ts';
import { storeWords } from '../live/store-words.ts';
import { saveFile } from '../result/save-file.ts';
import {
  type BoardAsk,
  type BoardPage,
  type BoardRow,
  boardPage,
  boardRows,
  hidesNames,
  ORDERS,
  SHOWN,
} from '../study/quality-view.ts';
import { flagsTold, standsTold, trialName, trialWhose } from '../study/quality-words.ts';
import { DECISIONS_FILE } from '../study/session-results.ts';
import { STUDY_CHANGED, type StudySession } from '../study/study-session.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { fieldStyle } from './field-style.ts';
import './quality-decision.ts';
import type { DecisionGiven } from './quality-decision.ts';
import { qualityStyle } from './quality-style.ts';
import './trial-spark.ts';

/** The recordings of a study, a row each: what is to be looked at, where it stands, and what somebody decides about it. */
@customElement('study-quality')
export class StudyQuality extends LitElement {
  static override styles = [base, fieldStyle, qualityStyle];

  @property({ attribute: false }) session!: StudySession;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @state() private ask: BoardAsk = { shown: 'all', order: 'manifest', search: '', page: 0 };
  /** the recording that is decided about */
  @state() private opened: string | undefined;
  @state() private by = '';
  @state() private refused = '';
  /** what came of a list of decisions */
  @state() private said = '';
  private heard: StudySession | undefined;

  override disconnectedCallback(): void {
    this.heard?.removeEventListener(STUDY_CHANGED, this.renew);
    this.heard = undefined;
    super.disconnectedCallback();
  }

  private readonly renew = (): void => this.requestUpdate();

  protected override willUpdate(): void {
    if (this.heard === this.session) return;
    this.heard?.removeEventListener(STUDY_CHANGED, this.renew);
    this.heard = this.session;
    this.heard.addEventListener(STUDY_CHANGED, this.renew);
  }

  override render(): TemplateResult {
    const words = STUDY_QUALITY_WORDS;
    const { study } = this.session.content.declared;
    const isHidden = hidesNames(this.session);
    const { rows } = this.session;
    const count = (status: string): number => rows.filter((row) => row.status === status).length;
    const open = count('to-decide');
    const page = boardPage(boardRows(rows), this.ask, study, isHidden);
    return html`
      <h2>${words.title.text}</h2>
      <p class="open" role="status">
        ${
          open === 0
            ? words['to-decide-none'].text
            : open === 1
              ? words['to-decide-one'].text
              : fill(words['to-decide'], { count: open })
        }
      </p>
      <p>${fill(words.counts, { include: count('include'), exclude: count('exclude'), open })}</p>
      ${isHidden ? html`<p class="voice">${words.hidden.text}</p>` : nothing} ${this.asks(isHidden)}
      ${page.of === 0 ? html`<p class="quiet" role="status">${words.none.text}</p>` : this.table(page, isHidden)}
      ${this.pages(page)} ${this.saved()}
    `;
  }

  private asks(isHidden: boolean): TemplateResult {
    const words = STUDY_QUALITY_WORDS;
    const { shown, order, search } = this.ask;
    const orders = ORDERS.filter((one) => one !== 'name' || !isHidden);
    return html`<div class="asks">
      <div class="choices" role="group" aria-label=${words.show.text}>
        ${SHOWN.map(
          (one) =>
            html`<button type="button" aria-pressed=${one === shown} @click=${() => this.look({ shown: one })}>
              ${words[`show-${one}`].text}
            </button>`,
        )}
      </div>
      <div>
        <label for="order">${words.sort.text}</label>
        <select
          id="order"
          @change=${(event: Event) =>
            this.look({ order: (event.target as HTMLSelectElement).value as BoardAsk['order'] })}
        >
          ${orders.map(
            (one) =>
              html`<option value=${one} ?selected=${one === order}>
                ${(one === 'manifest' && isHidden ? words['sort-neutral'] : words[`sort-${one}`]).text}
              </option>`,
          )}
        </select>
      </div>
      ${
        isHidden
          ? nothing
          : html`<div>
              <label for="search">${words.search.text}</label>
              <input
                id="search"
                type="search"
                autocomplete="off"
                .value=${search}
                @input=${(event: Event) => this.look({ search: (event.target as HTMLInputElement).value })}
              />
            </div>`
      }
    </div>`;
  }

  private look(change: Partial<BoardAsk>): void {
    this.ask = { ...this.ask, page: 0, ...change };
  }

  private table({ rows }: BoardPage, isHidden: boolean): TemplateResult {
    const words = STUDY_QUALITY_WORDS;
    return html`<div class="table" role="table" aria-label=${words.title.text}>
      <div class="row head" role="row">
        ${(['recording', 'course', 'flags', 'stands', 'act'] as const).map(
          (one) => html`<span role="columnheader">${words[one].text}</span>`,
        )}
      </div>
      ${rows.map((row) => this.row(row, isHidden))}
    </div>`;
  }

  private row(board: BoardRow, isHidden: boolean): TemplateResult {
    const words = STUDY_QUALITY_WORDS;
    const { row } = board;
    const { study } = this.session.content.declared;
    const name = trialName(board, isHidden);
    const isOpen = this.opened === row.trial.trial;
    const flags = flagsTold(row, isHidden, name);
    const [status, ...by] = standsTold(row, study);
    return html`<div class="row" role="row" data-status=${row.status}>
        <div role="cell" class="name">
          <strong>${name}</strong>${isHidden ? nothing : html`<span class="quiet">${trialWhose(row.trial, study)}</span>`}
        </div>
        <div role="cell"><trial-spark .course=${this.session.courseOf(row.trial.trial)} ?isLineOnly=${isHidden}></trial-spark></div>
        <div role="cell" class="flags">
          ${
            flags.length === 0
              ? html`<span class="quiet">${words['flags-none'].text}</span>`
              : html`<ul>
                  ${flags.map((one) => html`<li>${one}</li>`)}
                  ${row.issues.map((code) => html`<li class="quiet">${ISSUE_SENTENCES[code as keyof typeof ISSUE_SENTENCES]?.text ?? code}</li>`)}
                  ${row.gapS > 0 ? html`<li class="quiet">${fill(words.gaps, { seconds: row.gapS.toFixed(1) })}</li>` : nothing}
                </ul>`
          }
        </div>
        <div role="cell" class="stands">
          <span class="status">${status}</span>${by.map((one) => html`<span class="quiet">${one}</span>`)}
        </div>
        <div role="cell" class="act">
          <button
            type="button"
            aria-expanded=${isOpen}
            aria-label=${fill(isOpen ? words['close-on'] : words['act-on'], { name })}
            @click=${() => this.toggle(row.trial.trial)}
          >
            ${words.act.text}
          </button>
        </div>
      </div>
      ${
        isOpen
          ? html`<div class="row form" role="row">
              <div role="cell">
                <quality-decision
                  .row=${row}
                  .study=${study}
                  .by=${this.by}
                  .refused=${this.refused}
                  @decision-given=${(event: DecisionGiven) => void this.decide(event)}
                ></quality-decision>
              </div>
            </div>`
          : nothing
      }`;
  }

  private toggle(trial: string): void {
    this.opened = this.opened === trial ? undefined : trial;
    this.refused = '';
  }

  private async decide({ detail }: DecisionGiven): Promise<void> {
    this.by = detail.by;
    this.refused = '';
    try {
      await this.session.decide({ ...detail, at: this.clock.isoNow() });
      this.opened = undefined;
    } catch (error) {
      this.refused = fill(STUDY_QUALITY_WORDS['not-kept'], { reason: storeWords(error) });
    }
  }

  private pages({ page, pages, from, of, rows }: BoardPage): TemplateResult | typeof nothing {
    const words = STUDY_QUALITY_WORDS;
    if (pages === 1) return nothing;
    return html`<nav class="pages" aria-label=${words.pages.text}>
      <button type="button" ?disabled=${page === 0} @click=${() => this.look({ page: page - 1 })}>${words.before.text}</button>
      <span role="status">${fill(words['page-line'], { from: from + 1, to: from + rows.length, of })}</span>
      <button type="button" ?disabled=${page === pages - 1} @click=${() => this.look({ page: page + 1 })}>
        ${words.after.text}
      </button>
    </nav>`;
  }

  /** The list of decisions as a file: to be saved, and gone on with where somebody added to it elsewhere. */
  private saved(): TemplateResult {
    const last = this.session.decisions.at(-1);
    const words = STUDY_QUALITY_WORDS;
    return html`<section>
      ${
        last === undefined
          ? nothing
          : html`<button
                type="button"
                @click=${() =>
                  saveFile({ name: DECISIONS_FILE, type: 'text/plain', content: this.session.decisionsText })}
              >
                ${words['save-decisions'].text}
              </button>
              <p class="quiet">${fill(words['save-decisions-explain'], { hash: last.hash.slice(0, 16) })}</p>`
      }
      <label for="list">${words['take-decisions'].text}</label>
      <input
        id="list"
        type="file"
        @change=${(event: Event) => {
          const input = event.target as HTMLInputElement;
          const [file] = [...(input.files ?? [])];
          input.value = '';
          if (file !== undefined) void this.takeIn(file);
        }}
      />
      <p class="voice" role="status">${this.said}</p>
    </section>`;
  }

  private async takeIn(file: File): Promise<void> {
    const words = STUDY_QUALITY_WORDS;
    try {
      this.said = fill(words['taken-decisions'], {
        count: await this.session.takeDecisions(await file.text(), file.name),
      });
    } catch (error) {
      const reason = error instanceof StudyError ? error.message : storeWords(error);
      this.said = fill(words['decisions-refused'], { reason });
    }
  }
}
