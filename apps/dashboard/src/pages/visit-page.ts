import { consume } from '@lit/context';
import {
  isBegun,
  noOwnErrors,
  type OwnErrorsInUse,
  type Person,
  type Visit,
  type VisitEventKind,
} from '@surae/casebook';
import { FRAME_WORDS, STEP_WORDS } from '@surae/shared';
import { css, html, LitElement, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { ClinicDoor } from '../clinic/clinic-door.ts';
import { bookContext, doorContext } from '../contexts/capabilities.ts';
import { focusHeading } from '../heading-focus.ts';
import { openedVisit } from '../journey/opened-visit.ts';
import { ReadsInOrder } from '../journey/reads-in-order.ts';
import type { RemovalRequest } from '../journey/removal-request.ts';
import type { StepAskedFor } from '../journey/step-asked-for.ts';
import { besideSteps, currentStep, otherSide, type Step, stepsOf } from '../journey/steps.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import { type VisitEventRequest, visitEvent } from '../journey/visit-event-request.ts';
import { pageTitle, visitTitle } from '../page-title.ts';
import '../parts/hand-switch.ts';
import '../parts/safety-notes.ts';
import { PresenterForward } from '../parts/presenter-forward.ts';
import '../parts/step-line.ts';
import { hashOf } from '../route.ts';
import { base } from '../styles/base.ts';
import './ending-step.ts';
import './pull-ending-step.ts';
import './pull-rest-step.ts';
import './history-step.ts';
import { loadLaterSteps } from './later-steps.ts';
import './rest-step.ts';
import './safety-step.ts';
import './soreness-step.ts';

/** What is told beside a step and ends none. */
const besideKinds: readonly VisitEventKind[] = [
  'sensor-answer',
  'visit-ladder',
  'practice-stopped',
  'legs-swapped',
  'new-start',
  'proposal-declined',
];

/** A visit as it was read, and what is read once with it. */
interface VisitRead {
  readonly visit?: Visit;
  readonly person?: Person | undefined;
  readonly earlier?: readonly Visit[];
  readonly own?: OwnErrorsInUse;
}

/** A visit, one step at a time: which step it is follows from what was stored, so a reload goes on where it was. */
@customElement('visit-page')
export class VisitPage extends LitElement {
  static override styles = [
    base,
    css`
      .head {
        align-items: center;
        display: flex;
        flex-wrap: wrap;
        gap: 0 var(--gap-4);
        justify-content: space-between;
      }
      .who {
        font-size: var(--size-1);
        margin-block-end: 0;
      }
      step-line {
        border-block-end: 1px solid var(--hairline);
        margin-block-end: var(--gap-6);
        padding-block-end: var(--gap-3);
      }
      .around > button {
        padding-inline: 0;
        text-align: start;
      }
      :host([bare]) .around {
        display: none;
      }
    `,
  ];

  @property({ attribute: false }) visitId = '';
  /** one came here from another page of the dashboard, and did not open it here */
  @property({ attribute: false }) arrived = false;
  @consume({ context: bookContext }) @state() private book!: VisitBook;
  @consume({ context: doorContext }) private readonly door!: ClinicDoor;
  @state() private visit: Visit | undefined | null;
  @state() private person: Person | undefined;
  /** visits of this person before this one, the oldest first */
  @state() private earlier: readonly Visit[] = [];
  @state() private own: OwnErrorsInUse = noOwnErrors;
  /** a step that is answered anew, though it is done */
  @state() private anew: Step['id'] | undefined;
  @state() private notKept = false;
  private shown: Step['id'] | undefined;
  private readonly reads = new ReadsInOrder<VisitRead>();
  /** while a set runs, the keys belong to it */
  protected readonly presenter = new PresenterForward(this, () => !this.hasAttribute('bare'));

  override connectedCallback(): void {
    super.connectedCallback();
    this.addEventListener('bare-screen', this.makeBare);
    // the heavy steps come by themselves while the first questions are answered
    void loadLaterSteps();
  }

  override disconnectedCallback(): void {
    this.removeEventListener('bare-screen', this.makeBare);
    super.disconnectedCallback();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('visitId')) return;
    // what stands here, a step that was asked for and a screen that one step filled belong to the visit before: an answer to it would
    // be kept with this one
    this.visit = undefined;
    this.person = undefined;
    this.earlier = [];
    this.shown = undefined;
    this.notKept = false;
    this.anew = undefined;
    this.removeAttribute('bare');
    void this.load();
  }

  protected override updated(): void {
    if (this.visit === null) document.title = pageTitle('lost');
    if (!this.visit) return;
    const step = this.stepOf(this.visit);
    const { id } = step;
    document.title = visitTitle(this.visit, step);
    const moved = this.shown === undefined ? this.arrived : this.shown !== id;
    this.shown = id;
    if (moved) void this.focusStep();
  }

  /** A leg that is assessed writes its report beside what is pressed: two of these may overlap. */
  private load(): Promise<void> {
    const id = this.visitId;
    return this.reads.read(
      () => this.readVisit(id),
      ({ visit, person, earlier = this.earlier, own = this.own }) => {
        // one that was read on may have ended after the page went on to another
        if (id !== this.visitId) return;
        this.person = person;
        this.earlier = earlier;
        this.own = own;
        this.visit = visit ?? null;
      },
    );
  }

  private async readVisit(id: string): Promise<VisitRead> {
    if (this.visit?.id === id) {
      const visit = await this.book.visit(id);
      return visit === undefined ? {} : { visit, person: await this.book.personOfVisit(visit) };
    }
    return (await openedVisit(this.book, this.door.open?.audit, id)) ?? {};
  }

  private readonly keep = async (request: VisitEventRequest): Promise<void> => {
    request.stopPropagation();
    try {
      await this.book.record(this.visitId, request.detail);
      // an answer about the sensor is given beside a step, and one of a rung among several: they end none
      if (!besideKinds.includes(request.detail.kind)) this.anew = undefined;
      this.notKept = false;
    } catch {
      // the page stays as it is, with what was answered, so that it can be tried again
      this.notKept = true;
      return;
    }
    await this.load();
  };

  private readonly takeBack = async ({ detail: { ids, why } }: RemovalRequest): Promise<void> => {
    await this.book.notes.remove(ids, why).then(
      () => (this.notKept = false),
      () => (this.notKept = true),
    );
    await this.load();
  };

  private readonly makeBare = (event: Event): void => {
    this.toggleAttribute('bare', (event as CustomEvent<boolean>).detail);
  };

  /** Whoever reads with the ear, or goes by the keyboard, is taken to the head of the new step. */
  private async focusStep(): Promise<void> {
    scrollTo(0, 0);
    const step = this.renderRoot.querySelector('.step')?.firstElementChild;
    if (step) await focusHeading(step);
  }

  private stepOf(visit: Visit): Step {
    return [...stepsOf(visit), ...besideSteps].find(({ id }) => id === this.anew) ?? currentStep(visit);
  }

  override render(): TemplateResult {
    if (this.visit === undefined) return html`<p class="quiet" role="status">${FRAME_WORDS.loading.text}</p>`;
    if (this.visit === null || this.person === undefined) {
      return html`<h1>${FRAME_WORDS['lost-title'].text}</h1>
        <p>${FRAME_WORDS.lost.text}</p>
        <a class="button" href=${hashOf({ page: 'start' })}>${FRAME_WORDS.home.text}</a>`;
    }
    const step = this.stepOf(this.visit);
    const isTest = step.page === 'test' || step.page === 'pull';
    return html`<div
      @visit-event=${this.keep}
      @removal-asked=${this.takeBack}
      @visit-moved=${() => void this.load()}
      @step-asked-for=${(event: StepAskedFor) => (this.anew = event.detail)}
    >
      <div class="around">
        <div class="head">
          <p class="who quiet">${this.person.name}</p>
          <hand-switch></hand-switch>
        </div>
        <step-line .visit=${this.visit} at=${step.id}></step-line>
        ${this.notKept ? html`<p class="voice" role="alert">${STEP_WORDS['not-kept'].text}</p>` : null}
        ${isTest ? html`<safety-notes .visit=${this.visit}></safety-notes>` : null}
      </div>
      <div class="step">${this.step(step, this.visit, this.person)}</div>
      ${isTest ? html`<div class="around">${this.otherFirst(step, this.visit)}</div>` : null}
    </div>`;
  }

  private step({ page, side }: Step, visit: Visit, person: Person): TemplateResult {
    switch (page) {
      case 'soreness':
        return html`<soreness-step .visit=${visit} .earlier=${this.earlier}></soreness-step>`;
      case 'history':
        return html`<history-step .visit=${visit} .earlier=${this.earlier}></history-step>`;
      case 'safety':
        return html`<safety-step .visit=${visit}></safety-step>`;
      case 'choice':
        return html`<choice-step .visit=${visit} .earlier=${this.earlier}></choice-step>`;
      case 'ladder':
        return html`<ladder-step .visit=${visit}></ladder-step>`;
      case 'ending':
        return html`<ending-step .visit=${visit} .person=${person} .side=${side}></ending-step>`;
      case 'rest':
        return html`<rest-step .visit=${visit} .person=${person} .side=${side}></rest-step>`;
      case 'test':
        return html`<test-step
          .visit=${visit}
          .person=${person}
          .side=${side}
          .earlier=${this.earlier}
        ></test-step>`;
      case 'pull':
        return html`<pull-step .visit=${visit} .person=${person} .side=${side}></pull-step>`;
      case 'pull-ending':
        return html`<pull-ending-step .visit=${visit} .side=${side}></pull-ending-step>`;
      case 'pull-rest':
        return html`<pull-rest-step .visit=${visit} .person=${person} .side=${side}></pull-rest-step>`;
      case 'plan':
        return html`<plan-step .visit=${visit}></plan-step>`;
      case 'hand-over':
        return html`<hand-over-step .visit=${visit}></hand-over-step>`;
      case 'result':
        return html`<result-step
          .visit=${visit}
          .person=${person}
          .earlier=${this.earlier}
          .own=${this.own}
        ></result-step>`;
    }
  }

  /** The order of the sides is a proposal until a set was begun. */
  private otherFirst({ id, side }: Step, visit: Visit): TemplateResult | null {
    if ((id !== 'test-first' && id !== 'pull-first') || side === null || visit.only !== undefined) return null;
    if (isBegun(visit, id === 'pull-first' ? 'isometric' : 'heel-raise')) return null;
    const other = otherSide(side);
    return html`<button
      class="plain"
      type="button"
      @click=${(event: Event) => event.target?.dispatchEvent(visitEvent({ kind: 'visit-first', first: other }))}
    >
      ${STEP_WORDS[`begin-${other}`].text}
    </button>`;
  }
}
