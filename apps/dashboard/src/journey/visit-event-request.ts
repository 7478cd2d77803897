import type { VisitEvent } from '@surae/casebook';

/** What a step asks the visit to keep. */
export type VisitEventRequest = CustomEvent<VisitEvent>;

/** The DOM event by which a step asks the visit to keep something. */
export function visitEvent(event: VisitEvent): VisitEventRequest {
  return new CustomEvent('visit-event', { detail: event, bubbles: true, composed: true });
}
