import type { Side } from '@surae/analysis';
import { type SafetyAnswer, type VisitEvent, withRupture } from '@surae/casebook';
import { html, type LitElement, type TemplateResult } from 'lit';
import { visitEvent } from '../journey/visit-event-request.ts';
import './rupture-steps.ts';

/** That something gave way in a test, as the page of its end is told it: the steps then fill the screen until they are answered. */
export class PopTold {
  private readonly host: LitElement;
  /** the set or the pushes of which it was told */
  private of: string | undefined;

  constructor(host: LitElement) {
    this.host = host;
  }

  isToldOf(setId: string): boolean {
    return this.of === setId;
  }

  tell(setId: string | undefined): void {
    this.of = setId;
    const detail = setId !== undefined;
    this.host.dispatchEvent(new CustomEvent('bare-screen', { detail, bubbles: true, composed: true }));
    this.host.requestUpdate();
  }

  /** @param end - what is kept where it was a pop, behind the ticked line that keeps from a further test */
  steps(side: Side, safety: SafetyAnswer | null, end: VisitEvent): TemplateResult {
    return html`<rupture-steps
      side=${side}
      @pop-kept=${() => {
        this.tell(undefined);
        this.host.dispatchEvent(visitEvent({ kind: 'visit-safety', safety: withRupture(safety) }));
        this.host.dispatchEvent(visitEvent(end));
      }}
      @pop-undone=${() => this.tell(undefined)}
    ></rupture-steps>`;
  }
}
