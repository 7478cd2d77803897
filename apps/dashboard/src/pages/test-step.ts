import { consume } from '@lit/context';
import type { Side } from '@surae/analysis';
import { mayTest, type Person, practiceFor, type SetChoice, setOf, type Visit } from '@surae/casebook';
import { SAFETY_BLOCK_SENTENCES } from '@surae/shared';
import { html, LitElement, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { type BeatSound, clockContext, type HostClock, soundContext } from '../contexts/capabilities.ts';
import { visitEvent } from '../journey/visit-event-request.ts';
import type { OverSet } from '../live/over-set.ts';
import { beatsPerMinute, protocolOf } from '../live/protocol-choices.ts';
import type { SetPlan } from '../live/set-plan.ts';
import { base } from '../styles/base.ts';
import '../parts/aside-undo.ts';
import '../parts/cut-off-set.ts';
import '../parts/running-set.ts';
import '../parts/unstored-set.ts';
import './set-ready.ts';

/** One set of one leg: ready, running, stopped. The visit goes on by itself once it is stored. */
@customElement('test-step')
export class TestStep extends LitElement {
  static override styles = [base];

  @property({ attribute: false }) visit!: Visit;
  @property({ attribute: false }) person!: Person;
  @property({ attribute: false }) side!: Side;
  /** visits of the person before this one, the oldest first */
  @property({ attribute: false }) earlier: readonly Visit[] = [];
  @consume({ context: soundContext }) private readonly sound!: BeatSound;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @state() private plan: SetPlan | undefined;
  @state() private held: OverSet | undefined;
  @state() private problem = '';

  private begin(choice: SetChoice): void {
    const protocol = protocolOf(choice.protocolId);
    if (protocol === undefined) return;
    const { allowed, why } = mayTest(choice.origin, this.visit.safety, this.clock.isoNow());
    if (!allowed) return this.notStarted(why.map((code) => SAFETY_BLOCK_SENTENCES[code].text).join(' '));
    const beats = beatsPerMinute(protocol.parameters);
    // in the click itself: browsers let a page sound only then
    if (beats !== null && protocol.parameters.cue.value === 'metronome') this.sound.start(beats);
    this.problem = '';
    const practice = practiceFor(this.visit, choice)?.raises;
    const plan = { choice, protocol, beatsPerMinute: beats, beatFromMs: this.clock.nowMs() };
    this.plan = practice === undefined ? plan : { ...plan, practice };
  }

  private notStarted(reason: string): void {
    this.plan = undefined;
    this.problem = reason;
  }

  /** Held until the visit has moved on: what could not be stored is still here. */
  private over(over: OverSet): void {
    this.held = over;
    const { session, stopped, failure } = over;
    const isHeld = stopped.sha256 === null;
    // nothing on the page may lead away from a set that only this page holds
    this.dispatchEvent(new CustomEvent('bare-screen', { detail: isHeld, bubbles: true, composed: true }));
    if (isHeld) return;
    const lost = failure === null ? {} : { sourceLost: failure };
    this.dispatchEvent(visitEvent({ kind: 'set-stopped', setId: session.setId, liveCount: stopped.count, ...lost }));
  }

  private async tryAgain({ session, unsaved, failure }: OverSet): Promise<void> {
    this.over({ session, stopped: await session.live.stop(), unsaved, failure });
  }

  override render(): TemplateResult {
    const { visit, person, side, plan, held } = this;
    if (held !== undefined && plan !== undefined) {
      return html`<unstored-set
        .over=${held}
        .choice=${plan.choice}
        @try-again=${() => this.tryAgain(held)}
      ></unstored-set>`;
    }
    if (plan !== undefined) {
      return html`<running-set
        .visitId=${visit.id}
        .person=${person}
        .plan=${plan}
        @set-over=${(event: CustomEvent<OverSet>) => this.over(event.detail)}
        @set-not-started=${(event: CustomEvent<string>) => this.notStarted(event.detail)}
      ></running-set>`;
    }
    const open = setOf(visit, side);
    if (open !== undefined && open.stoppedAt === null) {
      return html`<cut-off-set .set=${open} .heelLeverM=${person.heelLeverM}></cut-off-set>`;
    }
    return html`<aside-undo .sets=${visit.sets} side=${side}></aside-undo>
      <set-ready
      .visit=${visit}
      .person=${person}
      .side=${side}
      .earlier=${this.earlier}
      .problem=${this.problem}
      @begin-set=${(event: CustomEvent<SetChoice>) => this.begin(event.detail)}
    ></set-ready>`;
  }
}
