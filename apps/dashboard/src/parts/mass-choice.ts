import { consume } from '@lit/context';
import type { Light } from '@surae/analysis';
import type { SensorAnswerEntry, Visit } from '@surae/casebook';
import { MASS_CHOICE_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { bookContext } from '../contexts/capabilities.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import { visitEvent } from '../journey/visit-event-request.ts';
import { type MassChoice, massChoice, massFigures } from '../live/mass-choice.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { uncertainty } from '../words/uncertainty.ts';

/** Which mass counts where plate and typing differ: one press, both are kept. Tells `mass-kept` once the person was corrected. */
@customElement('mass-choice')
export class MassChoiceElement extends LitElement {
  static override styles = [
    base,
    css`
      .answers {
        display: grid;
        gap: var(--gap-3);
        max-inline-size: 30rem;
      }
      button {
        text-align: start;
      }
    `,
  ];

  @property({ attribute: false }) visit!: Visit;
  @property({ attribute: false }) lights: readonly Light[] = [];
  @property({ attribute: false }) answers: readonly SensorAnswerEntry[] = [];
  /** see `sensorKey` */
  @property({ attribute: false }) sensor = '';
  @consume({ context: bookContext }) private readonly book!: VisitBook;
  @state() private notKept = false;
  private choice: MassChoice | null = null;

  protected override willUpdate(changed: PropertyValues<this>): void {
    const now = massChoice(this.lights, this.answers);
    // no button changes under a finger: a question stays as it was put until it is answered or over
    const isSame = now !== null && this.choice?.counts === null && now.counts === null && !changed.has('answers');
    if (!isSame || now.toldKg !== this.choice?.toldKg) this.choice = now;
  }

  private async take(choice: MassChoice, counts: 'plate' | 'typed'): Promise<void> {
    const { visit, sensor, book } = this;
    const { toldKg, shownKg } = choice;
    try {
      // what was typed stays readable; a mass that never counted is not written over itself
      if (counts === 'plate') await book.amendPerson(visit.personId, { bodyMassKg: shownKg }, null);
      else if (choice.counts === 'plate') await book.amendPerson(visit.personId, { bodyMassKg: toldKg }, null);
      this.notKept = false;
    } catch {
      this.notKept = true;
      return;
    }
    const seen = { answer: null, confidence: 0, evidence: 'mass-differs', figures: massFigures(choice) };
    const answer = { sensor, subject: 'mass', about: 'platform', answer: counts, seen } as const;
    this.dispatchEvent(visitEvent({ kind: 'sensor-answer', ...answer }));
    this.dispatchEvent(new CustomEvent('mass-kept'));
  }

  override render(): TemplateResult | typeof nothing {
    const { choice } = this;
    if (choice === null) return nothing;
    const { toldKg: told, shownKg: shown, uKg, counts } = choice;
    const say = (words: keyof typeof MASS_CHOICE_WORDS): string =>
      fill(MASS_CHOICE_WORDS[words], { told, shown, u: uncertainty(uKg) });
    const button = (one: 'plate' | 'typed'): TemplateResult =>
      html`<button type="button" @click=${() => void this.take(choice, one)}>${say(one)}</button>`;
    return html`${counts === null ? html`<p>${say('ask')}</p>` : html`<p role="status">${say(`counts-${counts}`)}</p>`}
      ${this.notKept ? html`<p class="voice" role="alert">${say('not-kept')}</p>` : nothing}
      <div class="answers">
        ${counts === 'plate' ? nothing : button('plate')} ${counts === 'typed' ? nothing : button('typed')}
      </div>`;
  }
}
