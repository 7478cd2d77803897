import { consume } from '@lit/context';
import { AUDIT_PLACE, AUDIT_WORDS, CLINIC_PLACE, FRAME_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import type { AuditTrail } from '../clinic/audit-trail.ts';
import { type AuditLine, auditLine } from '../clinic/audit-words.ts';
import type { ClinicDoor } from '../clinic/clinic-door.ts';
import { auditContext, bookContext, doorContext } from '../contexts/capabilities.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import { hashOf } from '../route.ts';
import { base } from '../styles/base.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';

/** Lines that are shown: whoever needs more has the book. */
const most = 200;

/** Who opened, changed, exported and removed what, the newest first. */
@customElement('audit-page')
export class AuditPage extends LitElement {
  static override styles = [
    base,
    css`
      .back {
        align-items: center;
        display: inline-flex;
        min-block-size: var(--target);
      }
      table {
        border-collapse: collapse;
        font-variant-numeric: tabular-nums;
        inline-size: 100%;
      }
      th,
      td {
        border-block-end: 1px solid var(--hairline);
        padding: var(--gap-3) var(--gap-4) var(--gap-3) 0;
        text-align: start;
        vertical-align: baseline;
      }
      td {
        overflow-wrap: anywhere;
      }
    `,
  ];

  @consume({ context: auditContext }) private readonly audit!: AuditTrail;
  @consume({ context: bookContext }) private readonly book!: VisitBook;
  @consume({ context: doorContext }) private readonly door!: ClinicDoor;
  @state() private lines: readonly AuditLine[] | undefined;
  @state() private of = 0;

  override connectedCallback(): void {
    super.connectedCallback();
    void this.load();
  }

  private async load(): Promise<void> {
    const entries = await this.audit.entries();
    const names = new Map((await this.book.people()).map(({ id, name }) => [id, name]));
    this.of = entries.length;
    this.lines = entries.slice(0, most).map((one) => auditLine(one, names));
  }

  override render(): TemplateResult {
    const words = AUDIT_WORDS;
    const isDemo = this.door.open?.which === 'demo';
    return html`
      <a class="back" href=${hashOf({ page: 'clinic' })}>${CLINIC_PLACE.title.text}</a>
      <h1 tabindex="-1">${AUDIT_PLACE.title.text}</h1>
      <p>${words[isDemo ? 'demo' : 'explain'].text}</p>
      ${this.table()}
    `;
  }

  private table(): TemplateResult | typeof nothing {
    const words = AUDIT_WORDS;
    if (this.lines === undefined) return html`<p class="quiet" role="status">${FRAME_WORDS.loading.text}</p>`;
    if (this.lines.length === 0) return html`<p class="quiet">${words.none.text}</p>`;
    return html`<table>
          <thead>
            <tr>
              <th scope="col">${words.when.text}</th>
              <th scope="col">${words.who.text}</th>
              <th scope="col">${words.what.text}</th>
            </tr>
          </thead>
          <tbody>
            ${this.lines.map(
              ({ at, who, what }) => html`<tr>
                <td>${dayOf(at)}, ${at.slice(11, 16)}</td>
                <td>${who}</td>
                <td>${what}</td>
              </tr>`,
            )}
          </tbody>
      </table>
      ${this.of > most ? html`<p class="quiet">${fill(words.shown, { shown: most, of: this.of })}</p>` : nothing}`;
  }
}
