import { consume } from '@lit/context';
import { FRAME_WORDS, REPORT_PLACE, REPORT_WORDS } from '@surae/shared';
import { css, html, LitElement, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { ClinicDoor } from '../clinic/clinic-door.ts';
import { bookContext, doorContext } from '../contexts/capabilities.ts';
import { focusHeading } from '../heading-focus.ts';
import { openedVisit } from '../journey/opened-visit.ts';
import { ReadsInOrder } from '../journey/reads-in-order.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import { legsStyle } from '../legs/legs-style.ts';
import { sheetElements } from '../parts/sheet-elements.ts';
import { planAfterVisit } from '../plan/plan-so-far.ts';
import { planLineText } from '../plan/plan-words.ts';
import { reportFile } from '../report/report-file.ts';
import { type Reported, reportSheet } from '../report/report-sheet.ts';
import { reportStyle } from '../report/report-style.ts';
import { saveFile } from '../result/save-file.ts';
import { softwareName } from '../result/software.ts';
import { hashOf } from '../route.ts';
import { base } from '../styles/base.ts';

type Shown = Reported | 'open' | 'lost';

/** One page about a visit for the record of the clinic: to be looked at, printed, and saved as a file. */
@customElement('report-page')
export class ReportPage extends LitElement {
  static override styles = [
    base,
    legsStyle,
    reportStyle,
    css`
      :host {
        display: block;
        margin-inline: auto;
        max-inline-size: 52rem;
        padding: var(--gap-4);
      }
      .end {
        display: grid;
        gap: var(--gap-3);
        margin-block-start: var(--gap-8);
      }
      @media print {
        :host {
          max-inline-size: none;
          padding: 0;
        }
        .end {
          display: none;
        }
      }
    `,
  ];

  @property({ attribute: false }) visitId = '';
  @consume({ context: bookContext }) private readonly book!: VisitBook;
  @consume({ context: doorContext }) private readonly door!: ClinicDoor;
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
        const read = await openedVisit(this.book, this.door.open?.audit, this.visitId);
        if (read?.person === undefined) return 'lost';
        const { visit, person, earlier, own } = read;
        if (!visit.closed) return 'open';
        const items = planAfterVisit(await this.book.log.documents(visit.personId), visit);
        const plan = items.map(({ body }) => planLineText(body));
        return { visit, person, earlier, own, plan, software: softwareName() };
      },
      (shown) => (this.shown = shown),
    );
  }

  protected override firstUpdated(): void {
    // the head of the clinic belongs to the screen and not to the sheet
    this.dispatchEvent(new CustomEvent('bare-screen', { detail: true, bubbles: true, composed: true }));
  }

  protected override updated(): void {
    if (this.shown !== undefined) void focusHeading(this);
  }

  override render(): TemplateResult {
    const { shown } = this;
    if (shown === undefined) return html`<p class="quiet" role="status">${FRAME_WORDS.loading.text}</p>`;
    if (shown === 'lost') {
      return html`<h1>${FRAME_WORDS['lost-title'].text}</h1>
        <p>${FRAME_WORDS.lost.text}</p>
        <a class="button" href=${hashOf({ page: 'start' })}>${FRAME_WORDS.home.text}</a>`;
    }
    const back = html`<a class="button" href=${hashOf({ page: 'visit', visitId: this.visitId })}
      >${REPORT_WORDS.back.text}</a
    >`;
    if (shown === 'open') {
      return html`<h1>${REPORT_PLACE.title.text}</h1>
        <p>${REPORT_WORDS.open.text}</p>
        <div class="end">${back}</div>`;
    }
    return html`${sheetElements(reportSheet(shown))}
      <div class="end">
        <button type="button" @click=${() => print()}>${REPORT_WORDS.print.text}</button>
        <button type="button" @click=${() => saveFile(reportFile(shown))}>${REPORT_WORDS.save.text}</button>
        ${back}
      </div>`;
  }
}
