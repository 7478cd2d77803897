import { Variant } from '@jellybrick/dbus-next';
import type { ObjectTree } from './object-tree.ts';

export type CharacteristicFlag = 'read' | 'write' | 'write-without-response' | 'notify' | 'indicate';

export interface MockCharacteristic {
  readonly uuid: string;
  readonly flags: readonly CharacteristicFlag[];
  /** what it holds when it is read */
  readonly value?: Uint8Array;
}

export interface MockService {
  readonly uuid: string;
  readonly characteristics: readonly MockCharacteristic[];
}

export interface PeripheralOptions {
  /** six pairs of hexadecimal digits with colons between */
  readonly address: string;
  readonly name: string;
  readonly services: readonly MockService[];
  /** services it says that it has; those that it has when left out */
  readonly advertised?: readonly string[];
}

export interface Written {
  readonly characteristic: string;
  readonly bytes: Uint8Array;
}

/** How a device answers to being connected to. */
type Connecting = 'connects' | 'refuses' | 'hangs';

const DEVICE = 'org.bluez.Device1';
const SERVICE = 'org.bluez.GattService1';
const CHARACTERISTIC = 'org.bluez.GattCharacteristic1';
const DESCRIPTOR = 'org.bluez.GattDescriptor1';

/** The descriptor that switches notifications on; without it a browser refuses to start them. */
const configuration = '00002902-0000-1000-8000-00805f9b34fb';

/** How long a command takes [ms]. */
const writeMs = 3;

function handle(number: number): string {
  return number.toString(16).padStart(4, '0');
}

/** One simulated device of Bluetooth Low Energy, as the service of the radio shows it on the bus. */
export class MockPeripheral {
  readonly path: string;
  /** what was written to it, in order */
  readonly writes: Written[] = [];
  /** the largest number of commands that were under way at once */
  mostAtOnce = 0;
  private writing = 0;
  private readonly options: PeripheralOptions;
  private readonly tree: ObjectTree;
  private readonly characteristics = new Map<string, string>();
  private readonly waiting = new Map<string, (() => void)[]>();
  private answers: Connecting[] = [];
  private isConnected = false;
  private goes = false;
  private dropsAt: string | undefined;

  constructor(tree: ObjectTree, adapter: string, options: PeripheralOptions) {
    this.tree = tree;
    this.options = options;
    this.path = `${adapter}/dev_${options.address.replaceAll(':', '_')}`;
    const { address, name, services, advertised = services.map(({ uuid }) => uuid) } = options;
    tree.add(this.path, {
      [DEVICE]: {
        Adapter: new Variant('o', adapter),
        Address: new Variant('s', address),
        AddressType: new Variant('s', 'random'),
        Alias: new Variant('s', name),
        Blocked: new Variant('b', false),
        Bonded: new Variant('b', false),
        Connected: new Variant('b', false),
        LegacyPairing: new Variant('b', false),
        Name: new Variant('s', name),
        Paired: new Variant('b', false),
        RSSI: new Variant('n', -50),
        ServicesResolved: new Variant('b', false),
        Trusted: new Variant('b', false),
        UUIDs: new Variant('as', [...advertised]),
      },
    });
  }

  get connected(): boolean {
    return this.isConnected;
  }

  /** The next connections fail, one after the other; after them it can be connected to again. */
  refuse(times: number): void {
    for (let time = 0; time < times; time += 1) this.answers.push('refuses');
  }

  /** The next connection is never answered. */
  hang(): void {
    this.answers.push('hangs');
  }

  /** The next command that is written to it switches it off before it answers. */
  goAtNextWrite(): void {
    this.goes = true;
  }

  /** The link breaks at the moment in which somebody listens to a characteristic, once. */
  dropAtListening(uuid: string): void {
    this.dropsAt = uuid;
  }

  /** How it answers to a connection that is asked for now. */
  answer(): Connecting {
    return this.answers.shift() ?? 'connects';
  }

  /** It is heard from: a scan sees its strength change. */
  advertise(strengthDbm: number): void {
    if (!this.isConnected) this.tree.change(this.path, DEVICE, { RSSI: new Variant('n', strengthDbm) });
  }

  /** The order in which the service of a radio tells of a connection: the link, then what is there, then that this is all. */
  connect(): void {
    this.isConnected = true;
    this.tree.change(this.path, DEVICE, { Connected: new Variant('b', true) });
    this.publish();
    this.tree.change(this.path, DEVICE, { ServicesResolved: new Variant('b', true) });
  }

  /** The link breaks, or is given up. */
  dropLink(): void {
    if (!this.isConnected) return;
    this.isConnected = false;
    this.tree.change(this.path, DEVICE, {
      Connected: new Variant('b', false),
      ServicesResolved: new Variant('b', false),
    });
    this.tree.removeUnder(this.path);
    this.characteristics.clear();
  }

  /** Whether somebody listens to a characteristic. */
  notifies(uuid: string): boolean {
    return this.properties(uuid)?.Notifying.value === true;
  }

  /** Waits until somebody listens to a characteristic. */
  async listened(uuid: string): Promise<void> {
    if (this.notifies(uuid)) return;
    await new Promise<void>((resolve) => this.waiting.set(uuid, [...(this.waiting.get(uuid) ?? []), resolve]));
  }

  /** Sends one notification; false when nobody listens, and then it is lost as on the air. */
  notify(uuid: string, bytes: Uint8Array): boolean {
    if (!this.notifies(uuid)) return false;
    const value = new Variant('ay', Buffer.from(bytes));
    this.tree.tell(this.characteristics.get(uuid)!, CHARACTERISTIC, { Value: value });
    return true;
  }

  /** A value that it holds is another one from now on, until it is connected to again: whoever listens is told, whoever reads gets it. */
  change(uuid: string, bytes: Uint8Array): void {
    this.tree.change(this.characteristics.get(uuid)!, CHARACTERISTIC, { Value: new Variant('ay', Buffer.from(bytes)) });
  }

  setNotifying(path: string, on: boolean): void {
    this.tree.change(path, CHARACTERISTIC, { Notifying: new Variant('b', on) });
    const uuid = this.tree.interfaces(path)![CHARACTERISTIC].UUID.value as string;
    if (!on) return;
    for (const resolve of this.waiting.get(uuid) ?? []) resolve();
    this.waiting.delete(uuid);
    if (uuid !== this.dropsAt) return;
    this.dropsAt = undefined;
    this.dropLink();
  }

  /** Keeps what was written; a device takes its time, and a real one refuses a second command meanwhile. */
  async keepWritten(path: string, bytes: Uint8Array): Promise<void> {
    const characteristic = this.tree.interfaces(path)![CHARACTERISTIC].UUID.value as string;
    this.writes.push({ characteristic, bytes: Uint8Array.from(bytes) });
    if (this.goes) {
      this.goes = false;
      this.dropLink();
      this.refuse(100);
    }
    this.writing += 1;
    this.mostAtOnce = Math.max(this.mostAtOnce, this.writing);
    await new Promise((resolve) => setTimeout(resolve, writeMs));
    this.writing -= 1;
  }

  private properties(uuid: string): Record<string, Variant> | undefined {
    const path = this.characteristics.get(uuid);
    return path === undefined ? undefined : this.tree.interfaces(path)?.[CHARACTERISTIC];
  }

  private publish(): void {
    let next = 1;
    for (const { uuid, characteristics } of this.options.services) {
      const service = `${this.path}/service${handle(next)}`;
      next += 1;
      this.tree.add(service, {
        [SERVICE]: {
          Device: new Variant('o', this.path),
          Includes: new Variant('ao', []),
          Primary: new Variant('b', true),
          UUID: new Variant('s', uuid),
        },
      });
      for (const one of characteristics) {
        const path = `${service}/char${handle(next)}`;
        this.publishCharacteristic(service, path, one, `${path}/desc${handle(next + 2)}`);
        next += 3;
      }
    }
  }

  private publishCharacteristic(service: string, path: string, one: MockCharacteristic, descriptor: string): void {
    const { uuid, flags, value = new Uint8Array(0) } = one;
    this.characteristics.set(uuid, path);
    this.tree.add(path, {
      [CHARACTERISTIC]: {
        Flags: new Variant('as', [...flags]),
        MTU: new Variant('q', 247),
        Notifying: new Variant('b', false),
        Service: new Variant('o', service),
        UUID: new Variant('s', uuid),
        Value: new Variant('ay', Buffer.from(value)),
      },
    });
    if (!flags.includes('notify') && !flags.includes('indicate')) return;
    this.tree.add(descriptor, {
      [DESCRIPTOR]: {
        Characteristic: new Variant('o', path),
        UUID: new Variant('s', configuration),
        Value: new Variant('ay', Buffer.alloc(2)),
      },
    });
  }
}
