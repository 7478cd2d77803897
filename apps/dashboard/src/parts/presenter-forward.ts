import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { belongsToFocus, presenterAct } from '../journey/presenter-keys.ts';

/** Share of the screen that a page is moved on by [-]; ours: some lines stay to be found again. */
const pageShare = 0.8;

type Host = ReactiveControllerHost & Element;

/** What has the focus, however deep it stands. */
function focused(): Element | null {
  let at = document.activeElement;
  while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
  return at;
}

/** The first main button of a page, however deep it stands. */
function mainButton(root: ParentNode): HTMLButtonElement | undefined {
  for (const element of root.querySelectorAll('*')) {
    if (element instanceof HTMLButtonElement && element.matches('.main') && element.checkVisibility()) return element;
    const inside = element.shadowRoot === null ? undefined : mainButton(element.shadowRoot);
    if (inside !== undefined) return inside;
  }
  return undefined;
}

function isInView(button: Element): boolean {
  const { top, bottom } = button.getBoundingClientRect();
  return top >= 0 && bottom <= innerHeight + 1;
}

/**
 * The forward key of a presenter on a page of a visit: it presses the main button where it is in view and can be pressed, and
 * else goes on a page, so that nothing is pressed that nobody sees.
 */
export class PresenterForward implements ReactiveController {
  private readonly host: Host;
  private readonly isOpen: () => boolean;

  constructor(host: Host, isOpen: () => boolean) {
    this.host = host;
    this.isOpen = isOpen;
    host.addController(this);
  }

  hostConnected(): void {
    document.addEventListener('keydown', this.onKey);
  }

  hostDisconnected(): void {
    document.removeEventListener('keydown', this.onKey);
  }

  private readonly onKey = (event: KeyboardEvent): void => {
    if (event.defaultPrevented || presenterAct(event) !== 'forward' || !this.isOpen()) return;
    const at = focused();
    const thing = at instanceof HTMLElement ? { ...told(at), isContentEditable: at.isContentEditable } : null;
    if (belongsToFocus(thing, event.key)) return;
    event.preventDefault();
    if (event.repeat) return;
    const button = mainButton(this.host.shadowRoot ?? this.host);
    if (button !== undefined && !button.disabled && isInView(button)) button.click();
    else scrollBy({ top: pageShare * innerHeight });
  };
}

function told(element: HTMLElement): { localName: string; type: string | undefined; role: string | null } {
  const type = element instanceof HTMLInputElement ? element.type : undefined;
  return { localName: element.localName, type, role: element.getAttribute('role') };
}
