import { consume } from '@lit/context';
import type { Side } from '@surae/analysis';
import { mayTest, type Person, type PullChoice, type PullSet, pullSetOf, type Visit } from '@surae/casebook';
import { RESULT_WORDS, SAFETY_BLOCK_SENTENCES } from '@surae/shared';
import type { RecordStore } from '@surae/storage';
import { html, LitElement, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import {
  type Assessor,
  assessorContext,
  clockContext,
  type HostClock,
  storeContext,
} from '../contexts/capabilities.ts';
import { visitEvent } from '../journey/visit-event-request.ts';
import { lastKeptS } from '../live/kept-trial.ts';
import { pullProtocolOf } from '../live/pull-choices.ts';
import '../parts/aside-undo.ts';
import '../parts/pull-between.ts';
import type { SoFar } from '../parts/pull-between.ts';
import '../parts/pull-running.ts';
import '../parts/pull-warm-up.ts';
import { AssessmentError } from '../result/assessment.ts';
import { assessPullSet } from '../result/pull-assessment.ts';
import { base } from '../styles/base.ts';
import './pull-ready.ts';

/** The isometric trials of one leg: ready, warm-up, trials with their rests. Where one is follows from what was stored. */
@customElement('pull-step')
export class PullStep extends LitElement {
  static override styles = [base];

  @property({ attribute: false }) visit!: Visit;
  @property({ attribute: false }) person!: Person;
  @property({ attribute: false }) side!: Side;
  @consume({ context: storeContext }) private readonly store!: RecordStore;
  @consume({ context: assessorContext }) private readonly assessor!: Assessor;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  /** a trial runs on this page; it was begun with the leg as it then was */
  @state() private running: PullSet | undefined;
  @state() private soFar: SoFar = null;
  @state() private problem = '';
  private lookedAt = '';
  private isMending = false;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('visit')) return;
    const set = pullSetOf(this.visit, this.side);
    if (set === undefined || this.running !== undefined) return;
    const last = set.trials.at(-1);
    if (last === undefined) {
      // a recording is played as soon as it was chosen: there is nothing to warm up
      if (set.choice.origin !== 'replayed' || this.problem !== '') return;
      if (set.warmUp !== null) this.running = set;
      else queueMicrotask(() => this.tell({ kind: 'pull-warm-up', setId: set.id, how: 'left-out' }));
      return;
    }
    if (last.stoppedAt === null) void this.endCutOff(set);
    else if (this.lookedAt !== last.id) void this.look(set, last.id);
  }

  /** A trial that was running when the page was closed: what was written of it is kept, as far as it goes. */
  private async endCutOff(set: PullSet): Promise<void> {
    const trial = set.trials.at(-1);
    if (trial === undefined || this.isMending) return;
    this.isMending = true;
    const bytes = await this.store.bytes(trial.bytesId);
    const toS = lastKeptS(bytes?.pieces ?? []) ?? trial.fromS;
    this.isMending = false;
    const { id: setId } = set;
    this.tell({ kind: 'trial-stopped', setId, trialId: trial.id, toS, cutOff: true, suddenDrop: false });
  }

  private async look(set: PullSet, trialId: string): Promise<void> {
    this.lookedAt = trialId;
    this.soFar = 'looking';
    const read = (id: string): ReturnType<RecordStore['bytes']> => this.store.bytes(id);
    try {
      this.soFar = await assessPullSet(set, this.person, read, (trace, request) => this.assessor.pulls(trace, request));
    } catch (error) {
      const known = error instanceof AssessmentError ? error : new AssessmentError('unexpected', String(error));
      this.soFar = { why: RESULT_WORDS[known.code].text.replace('{what}', known.message) };
    }
  }

  private tell(...[event]: Parameters<typeof visitEvent>): void {
    this.dispatchEvent(visitEvent(event));
  }

  private begin(choice: PullChoice): void {
    const { allowed, why } = mayTest(choice.origin, this.visit.safety, this.clock.isoNow(), 'isometric');
    if (!allowed) {
      this.problem = why.map((code) => SAFETY_BLOCK_SENTENCES[code].text).join(' ');
      return;
    }
    this.problem = '';
    this.tell({ kind: 'pull-begun', choice });
  }

  private trialOver(): void {
    this.running = undefined;
    // the trial wrote its own events: the page that holds the visit reads them
    this.dispatchEvent(new CustomEvent('visit-moved', { bubbles: true, composed: true }));
  }

  private notStarted(reason: string): void {
    this.running = undefined;
    this.problem = reason;
    this.dispatchEvent(new CustomEvent('visit-moved', { bubbles: true, composed: true }));
  }

  private get best(): number | null {
    const { soFar } = this;
    if (soFar === null || soFar === 'looking' || !('efforts' in soFar)) return null;
    return soFar.trials?.bestMean?.net.value ?? null;
  }

  override render(): TemplateResult {
    const { visit, side, person, running } = this;
    const set = pullSetOf(visit, side);
    const protocol = set && pullProtocolOf(set.choice.protocolId);
    if (set === undefined || protocol === undefined) {
      return html`<aside-undo .sets=${visit.pulls ?? []} side=${side}></aside-undo>
        <pull-ready
        .visit=${visit}
        .side=${side}
        .problem=${this.problem}
        @begin-pull=${(event: CustomEvent<PullChoice>) => this.begin(event.detail)}
      ></pull-ready>`;
    }
    if (running !== undefined) {
      return html`<pull-running
        .visitId=${visit.id}
        .person=${person}
        .set=${running}
        .protocol=${protocol}
        .best=${this.best}
        @trial-over=${() => this.trialOver()}
        @trial-not-started=${(event: CustomEvent<string>) => this.notStarted(event.detail)}
      ></pull-running>`;
    }
    if (set.warmUp === null) {
      return html`<pull-warm-up
        .side=${side}
        @warm-up=${(event: CustomEvent<'done' | 'left-out'>) =>
          this.tell({ kind: 'pull-warm-up', setId: set.id, how: event.detail })}
      ></pull-warm-up>`;
    }
    return html`<pull-between
      .visitId=${visit.id}
      .set=${set}
      .protocol=${protocol}
      .soFar=${this.soFar}
      .problem=${this.problem}
      @begin-trial=${() => {
        this.problem = '';
        this.running = set;
      }}
      @end-leg=${() => this.tell({ kind: 'pull-stopped', setId: set.id })}
    ></pull-between>`;
  }
}
