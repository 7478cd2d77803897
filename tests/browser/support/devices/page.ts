// What runs in the page of the tests of devices: the edge of the dashboard, and nothing around it.
import {
  type DeviceSummary,
  decodedFeed,
  type LinkBytes,
  LinkSensor,
  type LinkSettings,
  linkSettings,
  type PacketLayout,
  packetDecoder,
  type SensorEvent,
  type SensorLinkListener,
} from '@surae/sensors';
import { askAbout, type DeviceAbout } from '../../../../apps/dashboard/src/devices/bluetooth-about.ts';
import { chooseBluetooth } from '../../../../apps/dashboard/src/devices/bluetooth-choice.ts';
import { BluetoothLink } from '../../../../apps/dashboard/src/devices/bluetooth-link.ts';
import type { BluetoothPlan } from '../../../../apps/dashboard/src/devices/bluetooth-plan.ts';
import { DeviceError, type DeviceErrorCode } from '../../../../apps/dashboard/src/devices/device-error.ts';
import type { Link } from '../../../../apps/dashboard/src/devices/link.ts';
import { allowMotion } from '../../../../apps/dashboard/src/devices/motion-access.ts';
import type { MotionQuality } from '../../../../apps/dashboard/src/devices/motion-quality.ts';
import { expectedSign } from '../../../../apps/dashboard/src/devices/motion-sign.ts';
import { PhoneMotion } from '../../../../apps/dashboard/src/devices/phone-motion.ts';
import { choosePort, knownPorts } from '../../../../apps/dashboard/src/devices/serial-choice.ts';
import { SerialLink } from '../../../../apps/dashboard/src/devices/serial-link.ts';
import { ScriptedPort } from '../../../support/scripted-port.ts';

/** One device, what came from it and what was told of it. */
class DeviceOnPage implements SensorLinkListener {
  readonly arrived: LinkBytes[] = [];
  readonly told: string[] = [];
  link!: Link;

  bytes(arrived: LinkBytes): void {
    this.arrived.push(arrived);
  }

  disturbed(reason: string): void {
    this.told.push(`disturbed: ${reason}`);
  }

  closed(error: Error): void {
    this.told.push((error as DeviceError).code);
  }
}

export type Outcome = 'done' | DeviceErrorCode | `unknown: ${string}`;

async function outcomeOf(work: () => Promise<unknown>): Promise<Outcome> {
  try {
    await work();
    return 'done';
  } catch (error) {
    return error instanceof DeviceError ? error.code : `unknown: ${String(error)}`;
  }
}

const clock = {
  nowMs: () => performance.now(),
  every: (ms: number, call: () => void) => {
    const timer = setInterval(call, ms);
    return () => clearInterval(timer);
  },
};

/** A run of samples of the first channel. */
export interface Run {
  readonly firstIndex: number;
  readonly timesS: readonly number[] | null;
  readonly values: readonly number[];
}

/** How packets of a device are to be read. */
export interface Reading {
  readonly layout: PacketLayout;
  readonly nominalRateHz: number | null;
  readonly samplesPerPacket: number | null;
  readonly settings?: Partial<LinkSettings>;
}

class DevicesOnPage {
  readonly devices: DeviceOnPage[] = [];
  readonly scripted = new ScriptedPort();
  /** samples of the motion of this device, by quantity and axis */
  readonly motion: Record<string, number[]> = {};
  /** samples that were streamed, and what was told of the connection and the end */
  readonly runs: Run[] = [];
  readonly news: string[] = [];
  private sensor: LinkSensor | undefined;
  private phone: PhoneMotion | undefined;

  /** Asks for a device; it becomes the last of the list. */
  chooseBluetooth(plan: BluetoothPlan, limitMs = 5000): Promise<Outcome> {
    return outcomeOf(async () => {
      const device = await chooseBluetooth(window, plan);
      const listener = new DeviceOnPage();
      listener.link = new BluetoothLink(device, { plan, clock, limitMs, listener });
      this.devices.push(listener);
    });
  }

  /** Takes the first port that is allowed already; it becomes the last of the list. */
  knownPort(baudRate: number, limitMs = 5000): Promise<Outcome> {
    return outcomeOf(async () => {
      const [port] = await knownPorts(window);
      if (port === undefined) throw new DeviceError('not-found', 'No port is known.');
      const listener = new DeviceOnPage();
      const options = { baudRate, bufferSize: 65_536 };
      listener.link = new SerialLink(port, { port: options, clock, limitMs, listener });
      this.devices.push(listener);
    });
  }

  /** Asks for a device and streams its packets, as the dashboard does. */
  stream(plan: BluetoothPlan, { layout, nominalRateHz, samplesPerPacket, settings = {} }: Reading): Promise<Outcome> {
    return outcomeOf(async () => {
      const device = await chooseBluetooth(window, plan);
      this.sensor = new LinkSensor({
        description: { origin: 'live', placement: 'inline', nominalRateHz },
        clock,
        feed: decodedFeed(packetDecoder(layout), { nominalRateHz, samplesPerPacket }),
        makeLink: (listener) => new BluetoothLink(device, { plan, clock, limitMs: 5000, listener }),
        settings: { ...linkSettings, ...settings },
      });
      await this.sensor.start((event) => this.hear(event));
    });
  }

  endStream(): DeviceSummary {
    this.sensor!.stop();
    return this.sensor!.summary;
  }

  private hear(event: SensorEvent): void {
    if (event.kind === 'failed') this.news.push(`failed: ${event.error.code}`);
    else if (event.kind === 'ended') this.news.push('ended');
    else if (event.kind === 'link') this.news.push(event.news.state);
    else {
      const { firstIndex, deviceTimesS, channels } = event.block;
      this.runs.push({ firstIndex, timesS: deviceTimesS && [...deviceTimesS], values: [...channels[0].samples] });
    }
  }

  choosePort(): Promise<Outcome> {
    return outcomeOf(() => choosePort(window));
  }

  /** Puts a port that is played in the page in the place of those of the system. */
  playPort(): void {
    const serial = { getPorts: () => Promise.resolve([this.scripted]) };
    Object.defineProperty(navigator, 'serial', { value: serial });
  }

  /** All bytes that came, as text. */
  text(device: number): string {
    const decoder = new TextDecoder();
    return this.devices[device].arrived.map(({ bytes }) => decoder.decode(bytes, { stream: true })).join('');
  }

  open(device: number): Promise<Outcome> {
    return outcomeOf(() => this.devices[device].link.open());
  }

  close(device: number): void {
    this.devices[device].link.close();
  }

  write(device: number, target: number, bytes: readonly number[]): Promise<Outcome> {
    return outcomeOf(() => this.devices[device].link.write(target, Uint8Array.from(bytes)));
  }

  about(device: number): Promise<DeviceAbout> {
    return askAbout(this.devices[device].link as BluetoothLink);
  }

  told(device: number): readonly string[] {
    return this.devices[device].told;
  }

  /** The first four bytes of each piece as a number, and when it came. */
  counters(device: number): { readonly numbers: number[]; readonly timesMs: number[]; readonly streams: number[] } {
    const { arrived } = this.devices[device];
    return {
      numbers: arrived.map(({ bytes }) => new DataView(bytes.buffer).getUint32(0, true)),
      timesMs: arrived.map(({ hostTimeMs }) => hostTimeMs),
      streams: arrived.map(({ stream }) => stream),
    };
  }

  /** Begins to follow the motion of this device. */
  followMotion(firstReadingMs: number): Promise<Outcome> {
    return outcomeOf(async () => {
      await allowMotion(window);
      const sign = expectedSign(navigator.vendor);
      this.phone = new PhoneMotion({ placement: 'trunk', clock, events: window, sign, firstReadingMs });
      await this.phone.start((event) => {
        if (event.kind !== 'block') return;
        for (const { quantity, axis, samples } of event.block.channels) {
          (this.motion[`${quantity} ${axis}`] ??= []).push(...samples);
        }
      });
    });
  }

  motionQuality(): MotionQuality {
    return this.phone!.quality;
  }

  stopMotion(): void {
    this.phone!.stop();
  }

  /** Keeps the page busy, as a long piece of work would. */
  stall(ms: number): void {
    const untilMs = performance.now() + ms;
    while (performance.now() < untilMs);
  }
}

declare global {
  var onPage: DevicesOnPage;
}

globalThis.onPage = new DevicesOnPage();

// nobody has pressed anything while a page is being opened
if (location.hash !== '') {
  const plan: BluetoothPlan = { advertised: [location.hash.slice(1)], namePrefix: null, streams: [], targets: [] };
  document.title = await onPage.chooseBluetooth(plan);
}
