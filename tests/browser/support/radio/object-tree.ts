import { Message, type MessageBus, type Variant } from '@jellybrick/dbus-next';

/** Properties of one interface of one object. */
export type Properties = Record<string, Variant>;

/** Objects of a service on the bus: by path, then by interface. Whoever listens is told of each change. */
export class ObjectTree {
  private readonly objects = new Map<string, Record<string, Properties>>();
  private readonly bus: MessageBus;

  constructor(bus: MessageBus) {
    this.bus = bus;
  }

  add(path: string, interfaces: Record<string, Properties>): void {
    this.objects.set(path, interfaces);
    this.signal('/', 'org.freedesktop.DBus.ObjectManager', 'InterfacesAdded', 'oa{sa{sv}}', [path, interfaces]);
  }

  /** Takes an object away with all that is under it, the deepest first. */
  remove(path: string): void {
    const paths = [...this.objects.keys()].filter((one) => one === path || one.startsWith(`${path}/`));
    for (const one of paths.sort().reverse()) {
      const names = Object.keys(this.objects.get(one) ?? {});
      this.objects.delete(one);
      this.signal('/', 'org.freedesktop.DBus.ObjectManager', 'InterfacesRemoved', 'oas', [one, names]);
    }
  }

  /** Takes away all that is under an object, and leaves the object. */
  removeUnder(path: string): void {
    const direct = [...this.objects.keys()].filter((one) => one.startsWith(`${path}/`));
    for (const one of direct) if (this.objects.has(one)) this.remove(one);
  }

  interfaces(path: string): Record<string, Properties> | undefined {
    return this.objects.get(path);
  }

  all(): Record<string, Record<string, Properties>> {
    return Object.fromEntries(this.objects);
  }

  /** Keeps new values and tells of them. */
  change(path: string, name: string, changes: Properties): void {
    const properties = this.objects.get(path)?.[name];
    if (properties === undefined) throw new Error(`${path} has no ${name}`);
    Object.assign(properties, changes);
    this.tell(path, name, changes);
  }

  /** Tells of values without keeping them. */
  tell(path: string, name: string, changes: Properties): void {
    this.signal(path, 'org.freedesktop.DBus.Properties', 'PropertiesChanged', 'sa{sv}as', [name, changes, []]);
  }

  private signal(path: string, name: string, member: string, signature: string, body: unknown[]): void {
    this.bus.send(Message.newSignal(path, name, member, signature, body));
  }
}
