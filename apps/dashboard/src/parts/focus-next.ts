import type { LitElement, ReactiveController } from 'lit';

/**
 * Where the focus goes once an answer is shown: what was pressed is not there any more. It waits through every update until what it
 * looks for is there, and then goes there once.
 */
export class FocusNext implements ReactiveController {
  private readonly host: LitElement;
  private selector: string | null = null;

  constructor(host: LitElement) {
    this.host = host;
    host.addController(this);
  }

  /** Looks for what a selector finds in the element, from its next update on. */
  to(selector: string): void {
    this.selector = selector;
  }

  hostUpdated(): void {
    const target = this.selector === null ? null : this.host.renderRoot.querySelector<HTMLElement>(this.selector);
    if (target === null) return;
    this.selector = null;
    target.focus();
  }
}
