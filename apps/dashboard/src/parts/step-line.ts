import { consume } from '@lit/context';
import type { Visit } from '@surae/casebook';
import { STEP_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { clockContext, type HostClock } from '../contexts/capabilities.ts';
import { stepAskedFor } from '../journey/step-asked-for.ts';
import { stepName } from '../journey/step-names.ts';
import { besideSteps, mayAnswerAnew, type Step, stepsOf } from '../journey/steps.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';

/** Where in a visit one is, in words: which steps are done, which is now, which are to come. Tells `step-asked-for`. */
@customElement('step-line')
export class StepLine extends LitElement {
  static override styles = [
    base,
    css`
      nav {
        align-items: baseline;
        display: flex;
        flex-wrap: wrap;
        gap: 0 var(--gap-6);
      }
      p {
        margin: 0;
      }
      ol {
        display: none;
        flex-wrap: wrap;
        gap: 0 var(--gap-4);
        list-style: none;
        margin: 0;
        padding: 0;
      }
      li {
        color: var(--ink-quiet);
      }
      li[data-state='done'] {
        text-decoration: line-through;
        text-decoration-thickness: 1px;
      }
      li[aria-current] {
        color: inherit;
        font-weight: 600;
      }
      .anew {
        display: flex;
        flex-wrap: wrap;
        gap: 0 var(--gap-4);
      }
      .fold {
        display: none;
      }
      /* on a phone the ways back would fill the first screen: one press shows them */
      @media (max-width: 40rem) {
        nav {
          align-items: center;
        }
        .fold {
          display: inline-flex;
        }
        .anew:not([data-open]) {
          display: none;
        }
        .anew {
          flex-basis: 100%;
        }
      }
      button.plain {
        color: var(--ink-quiet);
        font-size: var(--size-1);
        padding-inline: 0;
      }
      @media (min-width: 60rem) {
        ol {
          display: flex;
        }
        .now {
          display: none;
        }
      }
    `,
  ];

  @property({ attribute: false }) visit!: Visit;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  /** id of the step on the page */
  @property() at = '';
  /** on a phone: the ways back are shown */
  @state() private isOpen = false;

  override render(): TemplateResult {
    const steps = stepsOf(this.visit);
    const place = steps.findIndex(({ id }) => id === this.at);
    const now = [...steps, ...besideSteps].find(({ id }) => id === this.at);
    return html`<nav aria-label=${STEP_WORDS.steps.text}>
      ${place < 0 ? null : html`<p class="quiet">${fill(STEP_WORDS.place, { at: place + 1, of: steps.length })}</p>`}
      ${now === undefined ? null : html`<p class="now">${stepName(now)}</p>`}
      <ol>
        ${steps.map((step) => this.entry(step))}
      </ol>
      ${this.anew([...steps, ...besideSteps])}
    </nav>`;
  }

  private entry(step: Step): TemplateResult {
    const state = step.id === this.at ? 'now' : step.isDone(this.visit) ? 'done' : 'to-come';
    return html`<li data-state=${state} aria-current=${state === 'now' ? 'step' : nothing}>
      ${stepName(step)}<span class="unseen">, ${STEP_WORDS[state].text}</span>
    </li>`;
  }

  private anew(steps: readonly Step[]): TemplateResult | null {
    const open = steps.filter((step) => step.id !== this.at && mayAnswerAnew(this.visit, step, this.clock.isoNow()));
    if (open.length === 0) return null;
    return html`<button
        class="plain fold"
        type="button"
        aria-expanded=${this.isOpen}
        aria-controls="anew"
        @click=${() => (this.isOpen = !this.isOpen)}
      >
        ${STEP_WORDS.back.text}
      </button>
      <div class="anew" id="anew" ?data-open=${this.isOpen}>
      ${open.map(
        (step) =>
          html`<button class="plain" type="button" @click=${() => this.ask(step)}>
            ${fill(STEP_WORDS[step.isDone(this.visit) ? 'change' : 'go-through'], { step: stepName(step) })}
          </button>`,
      )}
    </div>`;
  }

  private ask({ id }: Step): void {
    this.isOpen = false;
    this.dispatchEvent(stepAskedFor(id));
  }
}
