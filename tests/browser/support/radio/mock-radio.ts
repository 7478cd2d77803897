import { Message, type MessageBus, sessionBus, Variant } from '@jellybrick/dbus-next';
import { ObjectTree } from './object-tree.ts';
import { MockPeripheral, type PeripheralOptions } from './peripheral.ts';

const ADAPTER = 'org.bluez.Adapter1';
const adapterPath = '/org/bluez/hci0';

/** How often a device that is not connected is heard from while a scan runs [ms]. */
const advertisingMs = 100;

const adapterProperties = {
  Address: new Variant('s', '00:11:22:33:44:55'),
  AddressType: new Variant('s', 'public'),
  Alias: new Variant('s', 'mock radio'),
  Class: new Variant('u', 0),
  Discoverable: new Variant('b', false),
  DiscoverableTimeout: new Variant('u', 0),
  Discovering: new Variant('b', false),
  Modalias: new Variant('s', 'usb:v1D6Bp0246d0540'),
  Name: new Variant('s', 'mock radio'),
  Pairable: new Variant('b', true),
  PairableTimeout: new Variant('u', 0),
  Powered: new Variant('b', true),
  Roles: new Variant('as', ['central']),
  UUIDs: new Variant('as', []),
};

const advertisingProperties = {
  ActiveInstances: new Variant('y', 0),
  SupportedIncludes: new Variant('as', []),
  SupportedInstances: new Variant('y', 0),
};

/**
 * The service of the radio of a Linux system, played on a bus of our own: what the browser hears is what the real one would
 * say, so that everything above the bus is the browser itself. It plays no pairing, no radio and no packets of a link layer.
 */
export class MockRadio {
  private readonly bus: MessageBus;
  private readonly tree: ObjectTree;
  private readonly peripherals = new Map<string, MockPeripheral>();
  private heard: ReturnType<typeof setInterval> | undefined;
  private heardTimes = 0;

  private constructor(bus: MessageBus, hasAdapter: boolean) {
    this.bus = bus;
    this.tree = new ObjectTree(bus);
    this.tree.add('/org/bluez', { 'org.bluez.AgentManager1': {}, 'org.bluez.ProfileManager1': {} });
    if (hasAdapter) this.plugIn();
  }

  private plugIn(): void {
    this.tree.add(adapterPath, {
      [ADAPTER]: { ...adapterProperties },
      'org.bluez.GattManager1': {},
      'org.bluez.LEAdvertisingManager1': { ...advertisingProperties },
    });
  }

  /** Takes the name of the service on a bus; without an adapter it is a system that has no radio. */
  static async start(address: string, { hasAdapter = true } = {}): Promise<MockRadio> {
    const bus = sessionBus({ busAddress: address });
    await new Promise<void>((resolve, reject) => {
      bus.once('connect', () => resolve());
      bus.once('error' as 'connect', reject);
    });
    const radio = new MockRadio(bus, hasAdapter);
    bus.addMethodHandler((call: Message) => radio.handle(call));
    await bus.requestName('org.bluez', 0);
    return radio;
  }

  add(options: PeripheralOptions): MockPeripheral {
    const peripheral = new MockPeripheral(this.tree, adapterPath, options);
    this.peripherals.set(peripheral.path, peripheral);
    return peripheral;
  }

  /** A device goes out of reach and is forgotten. */
  remove(peripheral: MockPeripheral): void {
    peripheral.dropLink();
    this.peripherals.delete(peripheral.path);
    this.tree.remove(peripheral.path);
  }

  /** All devices go out of reach. */
  clear(): void {
    for (const one of this.peripherals.values()) this.remove(one);
  }

  /** The radio itself is switched off and gone, and every device with it. */
  takeAway(): void {
    this.clear();
    clearInterval(this.heard);
    this.tree.remove(adapterPath);
  }

  stop(): void {
    clearInterval(this.heard);
    this.bus.disconnect();
  }

  private handle(call: Message): boolean {
    const { interface: name, member, path } = call;
    if (name === 'org.freedesktop.DBus.Introspectable' || name === 'org.freedesktop.DBus.Peer') return false;
    if (name === 'org.freedesktop.DBus.ObjectManager') return this.reply(call, 'a{oa{sa{sv}}}', [this.tree.all()]);
    const interfaces = this.tree.interfaces(path);
    if (interfaces === undefined) return this.refuse(call, 'org.freedesktop.DBus.Error.UnknownObject');
    if (name === 'org.freedesktop.DBus.Properties') return this.handleProperties(call, interfaces);
    if (interfaces[name] === undefined) return this.refuse(call, 'org.freedesktop.DBus.Error.UnknownMethod');
    const done = this.act(call, `${name.split('.').at(-1)}.${member}`);
    return done === 'answered' || this.reply(call);
  }

  private handleProperties(call: Message, interfaces: Record<string, Record<string, Variant>>): boolean {
    const [name, property, value] = call.body as [string, string, Variant];
    const found = interfaces[name]?.[property];
    if (call.member === 'GetAll') return this.reply(call, 'a{sv}', [interfaces[name] ?? {}]);
    if (found === undefined) return this.refuse(call, 'org.freedesktop.DBus.Error.InvalidArgs');
    if (call.member === 'Get') return this.reply(call, 'v', [found]);
    this.tree.change(call.path, name, { [property]: value });
    return this.reply(call);
  }

  /** What a call does; `answered` when it has its answer, or must never get one. */
  private act(call: Message, what: string): 'answered' | 'to-answer' {
    const device = [...this.peripherals.values()].find(({ path }) => `${call.path}/`.startsWith(`${path}/`));
    switch (what) {
      case 'Adapter1.StartDiscovery':
        this.scan(true);
        break;
      case 'Adapter1.StopDiscovery':
        this.scan(false);
        break;
      case 'Device1.Connect': {
        const answer = device?.answer();
        if (answer === 'hangs') return 'answered';
        if (answer === 'refuses') {
          this.refuse(call, 'org.bluez.Error.Failed');
          return 'answered';
        }
        device?.connect();
        break;
      }
      case 'Device1.Disconnect':
        device?.dropLink();
        break;
      case 'GattCharacteristic1.StartNotify':
        // the browser is told that it listens before anything can be heard
        this.reply(call);
        device?.setNotifying(call.path, true);
        return 'answered';
      case 'GattCharacteristic1.StopNotify':
        device?.setNotifying(call.path, false);
        break;
      case 'GattCharacteristic1.ReadValue': {
        const { Value } = this.tree.interfaces(call.path)!['org.bluez.GattCharacteristic1'];
        this.reply(call, 'ay', [Value.value]);
        return 'answered';
      }
      case 'GattCharacteristic1.WriteValue':
        void device?.keepWritten(call.path, call.body[0] as Buffer).then(() => this.reply(call));
        return 'answered';
      default:
    }
    return 'to-answer';
  }

  private scan(on: boolean): void {
    this.tree.change(adapterPath, ADAPTER, { Discovering: new Variant('b', on) });
    clearInterval(this.heard);
    if (!on) return;
    this.heard = setInterval(() => {
      this.heardTimes += 1;
      for (const one of this.peripherals.values()) one.advertise(-50 - (this.heardTimes % 5));
    }, advertisingMs);
    this.heard.unref();
  }

  private reply(call: Message, signature = '', body: unknown[] = []): true {
    this.bus.send(Message.newMethodReturn(call, signature, body));
    return true;
  }

  private refuse(call: Message, name: string): true {
    this.bus.send(Message.newError(call, name, `${call.path} ${call.interface}.${call.member}`));
    return true;
  }
}
