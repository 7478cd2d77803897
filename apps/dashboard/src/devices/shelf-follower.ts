import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { SensorShelf } from './sensor-shelf.ts';

/** Draws an element anew when another sensor is held or none. */
export class ShelfFollower implements ReactiveController {
  private readonly host: ReactiveControllerHost;
  private readonly shelf: () => SensorShelf;

  constructor(host: ReactiveControllerHost, shelf: () => SensorShelf) {
    this.host = host;
    this.shelf = shelf;
    host.addController(this);
  }

  hostConnected(): void {
    this.shelf().addEventListener('shelf-changed', this.draw);
  }

  hostDisconnected(): void {
    this.shelf().removeEventListener('shelf-changed', this.draw);
  }

  private readonly draw = (): void => this.host.requestUpdate();
}
