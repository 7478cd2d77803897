import { consume } from '@lit/context';
import { FRAME_WORDS } from '@surae/shared';
import { css, html, LitElement, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { bookContext } from '../contexts/capabilities.ts';
import type { Person } from '../journey/person.ts';
import { currentStep, type Step } from '../journey/steps.ts';
import type { Visit } from '../journey/visit.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import type { VisitEventRequest } from '../journey/visit-event-request.ts';
import { hashOf } from '../route.ts';
import { base } from '../styles/base.ts';
import './soreness-step.ts';

/** A visit, one step at a time: which step it is follows from what was stored, so a reload goes on where it was. */
@customElement('visit-page')
export class VisitPage extends LitElement {
  static override styles = [
    base,
    css`
      .who {
        font-size: var(--size-1);
        margin-block-end: var(--gap-4);
      }
    `,
  ];

  @property({ attribute: false }) visitId = '';
  @consume({ context: bookContext }) @state() private book!: VisitBook;
  @state() private visit: Visit | undefined | null;
  @state() private person: Person | undefined;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('visitId')) void this.load();
  }

  private async load(): Promise<void> {
    const visit = await this.book.visit(this.visitId);
    this.person = visit && (await this.book.person(visit.personId));
    this.visit = visit ?? null;
  }

  private readonly keep = async (request: VisitEventRequest): Promise<void> => {
    request.stopPropagation();
    await this.book.record(this.visitId, request.detail);
    await this.load();
  };

  override render(): TemplateResult {
    if (this.visit === undefined) return html`<p class="quiet" role="status">${FRAME_WORDS.loading.text}</p>`;
    if (this.visit === null || this.person === undefined) {
      return html`<p>${FRAME_WORDS.lost.text}</p>
        <a class="button" href=${hashOf({ page: 'start' })}>${FRAME_WORDS.home.text}</a>`;
    }
    const step = currentStep(this.visit);
    return html`<div @visit-event=${this.keep}>
      <p class="who quiet">${this.person.name}</p>
      ${this.step(step, this.visit, this.person)}
    </div>`;
  }

  private step(step: Step, visit: Visit, person: Person): TemplateResult {
    switch (step.page) {
      case 'soreness':
        return html`<soreness-step .visit=${visit}></soreness-step>`;
      default:
        return html`<p>${step.id} ${person.name}</p>`;
    }
  }
}
