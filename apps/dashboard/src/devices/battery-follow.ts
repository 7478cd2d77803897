import { batteryLevel, batteryPercent, batteryService, type SensorClock } from '@surae/sensors';
import type { BluetoothLink } from './bluetooth-link.ts';
import { DeviceError } from './device-error.ts';
import type { HeldBattery } from './held-sensor.ts';

/** How often a device that does not tell its charge by itself is asked for it [ms]; ours: a percent lasts for minutes. */
const askEveryMs = 60_000;

export interface BatteryFollowOptions {
  readonly link: Pick<BluetoothLink, 'ask'>;
  readonly clock: Pick<SensorClock, 'every'>;
  /** what the device told when it was connected; null where it told nothing [%] */
  readonly firstPercent: number | null;
}

/**
 * Follows the battery of a device that is connected: told by the device itself where it notifies, else asked for again and again.
 * What cannot be read over a connection that stands is open again; one that is gone leaves what was told last.
 */
export class BatteryFollow implements HeldBattery {
  private readonly link: BatteryFollowOptions['link'];
  private readonly listeners: (() => void)[] = [];
  private readonly endAsking: () => void;
  private level: number | null;
  private deafen: () => void = () => {};
  private tellsItself = false;
  /** counts connections, so that an earlier one is not heard */
  private turn = 0;

  constructor({ link, clock, firstPercent }: BatteryFollowOptions) {
    this.link = link;
    this.level = firstPercent;
    this.endAsking = clock.every(askEveryMs, () => {
      if (!this.tellsItself) void this.ask(this.turn);
    });
  }

  get percent(): number | null {
    return this.level;
  }

  onChange(listener: () => void): void {
    this.listeners.push(listener);
  }

  /** Begins over a connection that was just made: what listened over an earlier one is dead. */
  async begin(): Promise<void> {
    this.forget();
    const { turn } = this;
    await this.listen(turn);
    await this.ask(turn);
  }

  end(): void {
    this.endAsking();
    this.forget();
  }

  private forget(): void {
    this.turn += 1;
    this.tellsItself = false;
    this.deafen();
    this.deafen = () => {};
  }

  private async listen(turn: number): Promise<void> {
    try {
      const characteristic = await this.characteristic();
      if (turn !== this.turn || !characteristic.properties.notify) return;
      const hear = (): void => {
        if (characteristic.value !== undefined) this.tell(bytesOf(characteristic.value));
      };
      characteristic.addEventListener('characteristicvaluechanged', hear);
      this.deafen = () => characteristic.removeEventListener('characteristicvaluechanged', hear);
      await this.link.ask(() => characteristic.startNotifications());
      this.tellsItself = turn === this.turn;
    } catch {
      // it is asked in its turn
    }
  }

  private async ask(turn: number): Promise<void> {
    try {
      const characteristic = await this.characteristic();
      const value = await this.link.ask(() => characteristic.readValue());
      if (turn === this.turn) this.tell(bytesOf(value));
    } catch (error) {
      const isGone = error instanceof DeviceError && (error.code === 'lost' || error.code === 'not-open');
      if (turn === this.turn && !isGone) this.tell(null);
    }
  }

  private characteristic(): Promise<BluetoothRemoteGATTCharacteristic> {
    return this.link.ask(async (server) =>
      (await server.getPrimaryService(batteryService)).getCharacteristic(batteryLevel),
    );
  }

  private tell(bytes: Uint8Array | null): void {
    const level = bytes === null ? null : batteryPercent(bytes);
    if (level === this.level) return;
    this.level = level;
    for (const listener of this.listeners) listener();
  }
}

function bytesOf({ buffer, byteOffset, byteLength }: DataView): Uint8Array {
  return new Uint8Array(buffer.slice(byteOffset, byteOffset + byteLength));
}
