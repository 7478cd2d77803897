import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { SensorShelf } from './sensor-shelf.ts';

const changes = ['shelf-changed', 'battery-changed'] as const;

/** Draws an element anew when another sensor is held or none, or its battery tells another charge. */
export class ShelfFollower implements ReactiveController {
  private readonly host: ReactiveControllerHost;
  private readonly shelf: () => SensorShelf;

  constructor(host: ReactiveControllerHost, shelf: () => SensorShelf) {
    this.host = host;
    this.shelf = shelf;
    host.addController(this);
  }

  hostConnected(): void {
    for (const change of changes) this.shelf().addEventListener(change, this.draw);
  }

  hostDisconnected(): void {
    for (const change of changes) this.shelf().removeEventListener(change, this.draw);
  }

  private readonly draw = (): void => this.host.requestUpdate();
}
