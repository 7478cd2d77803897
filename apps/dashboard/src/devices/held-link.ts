import type { LinkBytes, LinkCommand, SensorLink, SensorLinkListener } from '@surae/sensors';
import type { Link } from './link.ts';

/** What makes a device begin and end to send. */
export interface HeldCommands {
  readonly startWith: readonly LinkCommand[];
  readonly stopWith: readonly LinkCommand[];
  /** called whenever a connection was made and the device told to send */
  readonly opened?: () => void;
}

/** One who listens to a held link. */
interface Ear {
  readonly stream: number;
  readonly listener: SensorLinkListener;
}

/**
 * A connection that outlasts the recordings made over it. Each recording gets a link of its own: opening it opens the device
 * only when that is not open, and closing it lets the device be. One listens at a time.
 */
export class HeldLink {
  private readonly link: Link;
  private readonly commands: HeldCommands;
  private ear: Ear | undefined;
  private readonly newest = new Map<number, Uint8Array>();
  private opening: Promise<void> | undefined;
  /** counts attempts that were given up, so that an old one sends nothing */
  private turn = 0;

  constructor(makeLink: (listener: SensorLinkListener) => Link, commands: HeldCommands) {
    this.commands = commands;
    this.link = makeLink({
      bytes: (arrived) => this.hear(arrived),
      disturbed: (reason) => this.ear?.listener.disturbed(reason),
      closed: (error) => {
        this.opening = undefined;
        this.ear?.listener.closed(error);
      },
    });
  }

  get name(): string {
    return this.link.name;
  }

  get isOpen(): boolean {
    return this.link.isOpen && this.opening !== undefined;
  }

  /** The bytes that came last from a stream; undefined before any did. */
  latest(stream: number): Uint8Array | undefined {
    return this.newest.get(stream);
  }

  /** Connects and makes the device send; does nothing when it does so already. */
  open(): Promise<void> {
    this.opening ??= this.begin();
    return this.opening;
  }

  /** A link for one recording of one stream, which that recording sees as stream 0. */
  linkFor(stream: number): (listener: SensorLinkListener) => SensorLink {
    return (listener) => {
      const ear = { stream, listener };
      return {
        open: () => {
          this.ear = ear;
          return this.open();
        },
        write: (target, bytes) => this.link.write(target, bytes),
        close: () => {
          if (this.ear !== ear) return;
          this.ear = undefined;
          // an attempt that hangs must not open behind the next one
          if (!this.link.isOpen) this.giveUp();
        },
      };
    };
  }

  /** Makes the device end to send and lets it go. */
  async release(): Promise<void> {
    this.ear = undefined;
    try {
      if (this.link.isOpen)
        for (const { target, bytes } of this.commands.stopWith) await this.link.write(target, bytes);
    } catch {
      // it is closed: that ends what it sends as well
    } finally {
      this.giveUp();
    }
  }

  private giveUp(): void {
    this.turn += 1;
    this.opening = undefined;
    this.link.close();
  }

  private async begin(): Promise<void> {
    this.turn += 1;
    const { turn } = this;
    try {
      await this.link.open();
      for (const { target, bytes } of this.commands.startWith) {
        if (turn !== this.turn) return;
        await this.link.write(target, bytes);
      }
      if (turn === this.turn) this.commands.opened?.();
    } catch (error) {
      if (turn === this.turn) this.giveUp();
      throw error;
    }
  }

  private hear(arrived: LinkBytes): void {
    const { ear } = this;
    this.newest.set(arrived.stream, arrived.bytes);
    if (ear?.stream === arrived.stream) ear.listener.bytes({ ...arrived, stream: 0 });
  }
}
