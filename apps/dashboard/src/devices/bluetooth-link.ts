import type { SensorClock, SensorLinkListener } from '@surae/sensors';
import type { BluetoothPlan, GattPlace } from './bluetooth-plan.ts';
import { DeviceError } from './device-error.ts';
import { deviceError } from './foreign-error.ts';
import type { Link } from './link.ts';
import { OperationQueue } from './operation-queue.ts';
import { withinTime } from './time-limit.ts';

export interface BluetoothLinkOptions {
  readonly plan: BluetoothPlan;
  readonly clock: Pick<SensorClock, 'nowMs'>;
  /** after this long a connection, or one thing that is asked of it, is given up: some systems never answer [ms] */
  readonly limitMs: number;
  readonly listener: SensorLinkListener;
}

/** Errors while it connects. */
const connecting = {
  NetworkError: 'refused',
  NotFoundError: 'not-found',
  AbortError: 'refused',
  SecurityError: 'not-allowed',
  NotAllowedError: 'not-allowed',
} as const;

/** Errors while it is asked for what it has. */
const asking = {
  NotFoundError: 'service-missing',
  NotSupportedError: 'service-missing',
  SecurityError: 'not-allowed',
  NotAllowedError: 'not-allowed',
  NetworkError: 'lost',
  InvalidStateError: 'lost',
} as const;

/** What one connection holds; the objects of an earlier one are dead. */
interface Opened {
  readonly server: BluetoothRemoteGATTServer;
  readonly targets: readonly BluetoothRemoteGATTCharacteristic[];
  /** Stops to listen to all that it listened to. */
  readonly deafen: () => void;
}

/** A connection to a device that was chosen once: notifications come in, commands go out, one operation at a time. */
export class BluetoothLink implements Link {
  private readonly device: BluetoothDevice;
  private readonly options: BluetoothLinkOptions;
  /** one for each connection: what hangs in an earlier one holds up nothing */
  private queue = new OperationQueue();
  private opened: Opened | undefined;
  /** counts connections, so that what an earlier one still says is not heard */
  private turn = 0;
  /** the page closed the last connection, and the end of it may reach the system only after the next one was asked for */
  private mayStillEnd = false;

  constructor(device: BluetoothDevice, options: BluetoothLinkOptions) {
    this.device = device;
    this.options = options;
    device.addEventListener('gattserverdisconnected', () => this.lose());
  }

  get name(): string {
    return this.device.name ?? this.device.id;
  }

  get isOpen(): boolean {
    return this.opened !== undefined;
  }

  async open(): Promise<void> {
    if (this.opened !== undefined) return;
    const { mayStillEnd } = this;
    this.mayStillEnd = false;
    try {
      await this.openOnce();
    } catch (error) {
      // the end of the connection before took this one with it
      if (!mayStillEnd || !(error instanceof DeviceError) || error.code !== 'lost') throw error;
      await this.openOnce();
    }
  }

  private async openOnce(): Promise<void> {
    this.turn += 1;
    const turn = this.turn;
    this.queue = new OperationQueue();
    const server = await this.connect(turn);
    const deafeners: (() => void)[] = [];
    try {
      const targets: BluetoothRemoteGATTCharacteristic[] = [];
      for (const place of this.options.plan.targets) targets.push(await this.find(server, place));
      for (const [stream, place] of this.options.plan.streams.entries()) {
        deafeners.push(await this.listen(await this.find(server, place), stream));
      }
      if (turn !== this.turn || !server.connected) {
        throw new DeviceError('lost', 'The connection broke while it was being opened.');
      }
      this.opened = { server, targets, deafen: () => deafeners.forEach((deafen) => deafen()) };
    } catch (error) {
      for (const deafen of deafeners) deafen();
      // an error of this kind may be the first to tell that the link is gone
      const wasLost = !server.connected;
      server.disconnect();
      throw wasLost
        ? deviceError(error, 'Asking the device', lost(error))
        : deviceError(error, 'Asking the device', asking);
    }
  }

  async write(target: number, bytes: Uint8Array): Promise<void> {
    const characteristic = this.opened?.targets[target];
    if (characteristic === undefined) throw new DeviceError('not-open', `There is no open target ${target}.`);
    const { writeWithoutResponse, write } = characteristic.properties;
    const copy = Uint8Array.from(bytes);
    try {
      await this.operate(() =>
        write || !writeWithoutResponse
          ? characteristic.writeValueWithResponse(copy)
          : characteristic.writeValueWithoutResponse(copy),
      );
    } catch (error) {
      throw deviceError(error, 'Writing to the device', asking);
    }
  }

  /** Runs one more operation on the open connection, in its turn. */
  async ask<T>(operation: (server: BluetoothRemoteGATTServer) => Promise<T>): Promise<T> {
    const { server } = this.opened ?? {};
    if (server === undefined) throw new DeviceError('not-open', 'The device is not connected.');
    try {
      return await this.operate(() => operation(server));
    } catch (error) {
      throw deviceError(error, 'Asking the device', asking);
    }
  }

  close(): void {
    const { opened } = this;
    this.opened = undefined;
    this.turn += 1;
    this.mayStillEnd = opened !== undefined;
    opened?.deafen();
    this.device.gatt?.disconnect();
  }

  /** One thing asked of the device, in its turn and within its time. */
  private operate<T>(operation: () => Promise<T>): Promise<T> {
    return withinTime(this.queue.run(operation), this.options.limitMs, 'Asking the device');
  }

  private async connect(turn: number): Promise<BluetoothRemoteGATTServer> {
    const { gatt } = this.device;
    if (gatt === undefined) throw new DeviceError('not-allowed', 'The page may not connect to this device.');
    try {
      return await withinTime(gatt.connect(), this.options.limitMs, 'Connecting', (server) => {
        // nobody waits for it any more
        if (turn === this.turn) server.disconnect();
      });
    } catch (error) {
      // this ends an attempt that is under way, where the system can
      gatt.disconnect();
      throw deviceError(error, 'Connecting', isOutOfReach(error) ? { NetworkError: 'not-found' } : connecting);
    }
  }

  private async find(server: BluetoothRemoteGATTServer, place: GattPlace): Promise<BluetoothRemoteGATTCharacteristic> {
    const service = await this.operate(() => server.getPrimaryService(place.service));
    return this.operate(() => service.getCharacteristic(place.characteristic));
  }

  /** Listens to a characteristic; gives what ends it. */
  private async listen(characteristic: BluetoothRemoteGATTCharacteristic, stream: number): Promise<() => void> {
    const { clock, listener } = this.options;
    const hear = (): void => {
      const hostTimeMs = clock.nowMs();
      const { value } = characteristic;
      if (value === undefined) return;
      // the browser may reuse what the value lies in as soon as this event is over
      const bytes = new Uint8Array(value.buffer.slice(value.byteOffset, value.byteOffset + value.byteLength));
      listener.bytes({ stream, bytes, hostTimeMs });
    };
    characteristic.addEventListener('characteristicvaluechanged', hear);
    const deafen = (): void => characteristic.removeEventListener('characteristicvaluechanged', hear);
    try {
      await this.operate(() => characteristic.startNotifications());
    } catch (error) {
      deafen();
      throw error;
    }
    return deafen;
  }

  private lose(): void {
    this.turn += 1;
    const { opened } = this;
    if (opened === undefined) return;
    this.opened = undefined;
    opened.deafen();
    this.options.listener.closed(new DeviceError('lost', 'The connection to the device broke.'));
  }
}

/** Chromium words it so; another browser's word is told as refused, which is true as well. */
function isOutOfReach(error: unknown): boolean {
  return error instanceof Error && /no longer in range/i.test(error.message);
}

/** Whatever the browser called it: the link was gone. */
function lost(error: unknown): Record<string, 'lost'> {
  return error instanceof Error ? { [error.name]: 'lost' } : {};
}
