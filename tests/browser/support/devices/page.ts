// What runs in the page of the tests of devices: the edge of the dashboard, and nothing around it.
import { askAbout, type DeviceAbout } from '../../../../apps/dashboard/src/devices/bluetooth-about.ts';
import { chooseBluetooth } from '../../../../apps/dashboard/src/devices/bluetooth-choice.ts';
import { BluetoothLink } from '../../../../apps/dashboard/src/devices/bluetooth-link.ts';
import type { BluetoothPlan } from '../../../../apps/dashboard/src/devices/bluetooth-plan.ts';
import { DeviceError, type DeviceErrorCode } from '../../../../apps/dashboard/src/devices/device-error.ts';
import type { ArrivedBytes, LinkListener } from '../../../../apps/dashboard/src/devices/link.ts';

/** One device, what came from it and what was told of it. */
class DeviceOnPage implements LinkListener {
  readonly arrived: ArrivedBytes[] = [];
  readonly told: string[] = [];
  link!: BluetoothLink;

  bytes(arrived: ArrivedBytes): void {
    this.arrived.push(arrived);
  }

  disturbed(reason: string): void {
    this.told.push(`disturbed: ${reason}`);
  }

  closed(error: DeviceError): void {
    this.told.push(error.code);
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

const clock = { nowMs: () => performance.now() };

class DevicesOnPage {
  readonly devices: DeviceOnPage[] = [];

  /** Asks for a device; it becomes the last of the list. */
  chooseBluetooth(plan: BluetoothPlan, limitMs = 5000): Promise<Outcome> {
    return outcomeOf(async () => {
      const device = await chooseBluetooth(window, plan);
      const listener = new DeviceOnPage();
      listener.link = new BluetoothLink(device, { plan, clock, limitMs, listener });
      this.devices.push(listener);
    });
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
    return askAbout(this.devices[device].link);
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
