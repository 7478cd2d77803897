import { consume } from '@lit/context';
import type { Side } from '@surae/analysis';
import { html, LitElement, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { type BeatSound, clockContext, type HostClock, soundContext } from '../contexts/capabilities.ts';
import type { Person } from '../journey/person.ts';
import { mayTest } from '../journey/safety-gate.ts';
import type { SetChoice, Visit } from '../journey/visit.ts';
import { visitEvent } from '../journey/visit-event-request.ts';
import { setOf } from '../journey/visit-events.ts';
import type { StoppedSet } from '../live/live-set.ts';
import { beatsPerMinute, protocolOf } from '../live/protocol-choices.ts';
import type { SetPlan } from '../live/set-plan.ts';
import type { SetSession } from '../live/set-session.ts';
import { base } from '../styles/base.ts';
import '../parts/cut-off-set.ts';
import '../parts/running-set.ts';
import '../parts/unstored-set.ts';
import './set-ready.ts';

interface OverSet {
  readonly session: SetSession;
  readonly stopped: StoppedSet;
  readonly reason: string | null;
}

/** One set of one leg: ready, running, stopped. The visit goes on by itself once it is stored. */
@customElement('test-step')
export class TestStep extends LitElement {
  static override styles = [base];

  @property({ attribute: false }) visit!: Visit;
  @property({ attribute: false }) person!: Person;
  @property({ attribute: false }) side!: Side;
  @consume({ context: soundContext }) private readonly sound!: BeatSound;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @state() private plan: SetPlan | undefined;
  @state() private unstored: OverSet | undefined;
  @state() private problem = '';

  private begin(choice: SetChoice): void {
    const protocol = protocolOf(choice.protocolId);
    if (protocol === undefined || !mayTest(choice.origin, this.visit.safety).allowed) return;
    const beats = beatsPerMinute(protocol.parameters);
    // in the click itself: browsers let a page sound only then
    if (beats !== null && protocol.parameters.cue.value === 'metronome') this.sound.start(beats);
    this.problem = '';
    this.plan = { choice, protocol, beatsPerMinute: beats, beatFromMs: this.clock.nowMs() };
  }

  private notStarted(reason: string): void {
    this.plan = undefined;
    this.problem = reason;
  }

  private over(over: OverSet): void {
    if (over.stopped.sha256 === null) {
      this.unstored = over;
      return;
    }
    this.unstored = undefined;
    const { session, stopped } = over;
    this.dispatchEvent(visitEvent({ kind: 'set-stopped', setId: session.setId, liveCount: stopped.count }));
  }

  private async tryAgain({ session, reason }: OverSet): Promise<void> {
    this.over({ session, stopped: await session.live.stop(), reason });
  }

  override render(): TemplateResult {
    const { visit, person, side, plan, unstored } = this;
    if (unstored !== undefined && plan !== undefined) {
      return html`<unstored-set
        .session=${unstored.session}
        .choice=${plan.choice}
        .reason=${unstored.reason ?? ''}
        @try-again=${() => this.tryAgain(unstored)}
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
    return html`<set-ready
      .visit=${visit}
      .side=${side}
      .problem=${this.problem}
      @begin-set=${(event: CustomEvent<SetChoice>) => this.begin(event.detail)}
    ></set-ready>`;
  }
}
