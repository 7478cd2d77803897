import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** The space bar for the main action of a page, whatever has the focus; a field that is typed into keeps its spaces. */
export class SpaceKey implements ReactiveController {
  private readonly act: () => void;
  private readonly isOpen: () => boolean;

  constructor(host: ReactiveControllerHost, act: () => void, isOpen: () => boolean = () => true) {
    this.act = act;
    this.isOpen = isOpen;
    host.addController(this);
  }

  hostConnected(): void {
    document.addEventListener('keydown', this.onKey, { capture: true });
  }

  hostDisconnected(): void {
    document.removeEventListener('keydown', this.onKey, { capture: true });
  }

  private readonly onKey = (event: KeyboardEvent): void => {
    if (event.key !== ' ' || !this.isOpen()) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    if (!event.repeat) this.act();
  };
}
