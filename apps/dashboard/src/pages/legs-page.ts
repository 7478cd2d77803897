import { consume } from '@lit/context';
import type { ClinicContact, Visit } from '@surae/casebook';
import { handoutCode } from '@surae/exchange';
import { FRAME_WORDS, HOME_WORDS, LEGS_PLACE, LEGS_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { ClinicDoor } from '../clinic/clinic-door.ts';
import { bookContext, doorContext } from '../contexts/capabilities.ts';
import { focusHeading } from '../heading-focus.ts';
import { handoutOf } from '../home/handout-of.ts';
import { openedVisit } from '../journey/opened-visit.ts';
import type { PlanEntry } from '../journey/person-notes.ts';
import { ReadsInOrder } from '../journey/reads-in-order.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import { legsFile } from '../legs/legs-file.ts';
import { flagPart, legsSheet } from '../legs/legs-sheet.ts';
import { legsStyle } from '../legs/legs-style.ts';
import { type LegsView, legsView } from '../legs/legs-view.ts';
import '../parts/data-code.ts';
import { sheetElements } from '../parts/sheet-elements.ts';
import '../parts/read-aloud.ts';
import { planAfterVisit } from '../plan/plan-so-far.ts';
import { saveFile } from '../result/save-file.ts';
import { type GivenAs, hashOf } from '../route.ts';
import type { SheetPart } from '../sheet/sheet.ts';
import { base } from '../styles/base.ts';

/** What came of reading: a view, or why there is none. */
type Shown = LegsView | 'open' | 'lost';

/** The address at which somebody opens their own pages: everything that they show stands in it. */
function addressOf(
  visit: Visit,
  contact: ClinicContact | null,
  plan: readonly PlanEntry[],
  tests: LegsView['tests'],
): string {
  return `${location.origin}${location.pathname}#/mine/${handoutCode(handoutOf(visit, contact, plan, tests))}`;
}

/** What somebody is shown of a visit of their own: nothing else is on the screen, and no name. */
@customElement('legs-page')
export class LegsPage extends LitElement {
  static override styles = [
    base,
    legsStyle,
    css`
      :host {
        margin-inline: auto;
        max-inline-size: 44rem;
        padding: var(--gap-4);
      }
      .address {
        display: inline-block;
        padding-block: var(--gap-4);
      }
      .paper-code {
        display: none;
      }
      .end {
        display: grid;
        gap: var(--gap-3);
        margin-block-start: var(--gap-8);
      }
      @media print {
        :host {
          padding: 0;
        }
        .end,
        .code {
          display: none;
        }
        .paper-code {
          display: block;
          float: inline-end;
          inline-size: 3cm;
          margin-inline-start: 10pt;
        }
      }
    `,
  ];

  @property({ attribute: false }) visitId = '';
  /** how it is given as soon as it is there, once */
  @property({ attribute: false }) at: GivenAs | undefined;
  @consume({ context: bookContext }) private readonly book!: VisitBook;
  @consume({ context: doorContext }) private readonly door!: ClinicDoor;
  @state() private homeAddress = '';
  @state() private contact: ClinicContact | null = null;
  @state() private shown: Shown | undefined;
  private readonly reads = new ReadsInOrder<Shown>();

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('visitId')) return;
    this.shown = undefined;
    void this.load();
  }

  private load(): Promise<void> {
    return this.reads.read(
      async () => {
        const [read, contact] = await Promise.all([
          openedVisit(this.book, this.door.open?.audit, this.visitId),
          this.book.notes.contact(),
        ]);
        this.contact = contact;
        const plan = read === undefined ? [] : await this.planOf(read.visit);
        if (read?.person === undefined) {
          this.homeAddress = '';
          return 'lost';
        }
        const { visit, person, earlier, own } = read;
        const items = plan.map(({ body }) => body);
        const view = legsView(visit, person, earlier, own, contact, items);
        this.homeAddress = addressOf(visit, contact, plan, view.tests);
        return visit.closed ? view : 'open';
      },
      (shown) => (this.shown = shown),
    );
  }

  /** What somebody leaves the visit with. */
  private async planOf(visit: Visit): Promise<readonly PlanEntry[]> {
    return planAfterVisit(await this.book.log.documents(visit.personId), visit);
  }

  protected override firstUpdated(): void {
    // one thing is shown, and nothing of the clinic around it
    this.dispatchEvent(new CustomEvent('bare-screen', { detail: true, bubbles: true, composed: true }));
  }

  protected override updated(): void {
    if (this.shown !== undefined) void focusHeading(this);
    this.give();
  }

  /** What the last step of the visit asked for; a reload does not ask again. */
  private give(): void {
    const { at, shown } = this;
    if (at === undefined || shown === undefined || typeof shown === 'string') return;
    this.at = undefined;
    history.replaceState(null, '', hashOf({ page: 'legs', visitId: this.visitId }));
    if (at === 'print') print();
    else if (at === 'file') saveFile(legsFile(shown, this.homeAddress));
    else this.renderRoot.querySelector<HTMLElement>('#code')?.focus();
  }

  override render(): TemplateResult {
    const { shown } = this;
    if (shown === undefined) return html`<p class="quiet" role="status">${FRAME_WORDS.loading.text}</p>`;
    if (shown === 'lost') {
      return html`<h1>${FRAME_WORDS['lost-title'].text}</h1>
        <p>${FRAME_WORDS.lost.text}</p>
        <a class="button" href=${hashOf({ page: 'start' })}>${FRAME_WORDS.home.text}</a>`;
    }
    const sheet = shown === 'open' ? this.openParts() : legsSheet(shown, this.homeAddress);
    const head = sheet.findIndex(({ kind }) => kind === 'title') + 1;
    return html`
      ${sheetElements(sheet.slice(0, head))}
      <read-aloud of=${this.visitId}></read-aloud>
      ${sheetElements(sheet.slice(head))}
      ${shown === 'open' || this.homeAddress === '' ? nothing : this.codeFor()}
      <div class="end">
        ${
          shown === 'open'
            ? nothing
            : html`<button type="button" @click=${() => print()}>${LEGS_WORDS.print.text}</button>
                <button type="button" @click=${() => saveFile(legsFile(shown, this.homeAddress))}>${LEGS_WORDS.save.text}</button>
                <p class="quiet">${LEGS_WORDS['no-name'].text}</p>`
        }
        <a class="button" href=${hashOf({ page: 'visit', visitId: this.visitId })}>${LEGS_WORDS.back.text}</a>
      </div>
    `;
  }

  private openParts(): readonly SheetPart[] {
    return [
      flagPart(this.contact),
      { kind: 'title', text: LEGS_PLACE.title.text, describedBy: 'flags' },
      { kind: 'text', text: LEGS_WORDS.open.text },
    ];
  }

  /** The same for a phone of their own: the code holds what it shows. */
  private codeFor(): TemplateResult {
    return html`<section class="code" id="code" tabindex="-1">
      <h2>${HOME_WORDS['code-title'].text}</h2>
      <p>${HOME_WORDS['code-explain'].text}</p>
      ${this.drawnCode()}
      <a class="address" href=${this.homeAddress} target="_blank" rel="noopener">${HOME_WORDS.title.text}</a>
    </section>`;
  }

  private drawnCode(): TemplateResult {
    return html`<data-code
      .text=${this.homeAddress}
      label=${HOME_WORDS['code-label'].text}
      too-long=${HOME_WORDS['code-long'].text}
    ></data-code>`;
  }
}
