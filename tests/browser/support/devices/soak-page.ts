// The page of the soak: a live set from a Bluetooth sensor as the dashboard runs it, with a picture of all channels, for long.
import './page.ts';
import {
  type DeviceSummary,
  decodedFeed,
  LinkSensor,
  packetDecoder,
  type SampleBlock,
  type SensorClock,
} from '@surae/sensors';
import { IndexedDbStore } from '@surae/storage';
import { SignalChart } from '../../../../apps/dashboard/src/charts/signal-chart.ts';
import { chooseBluetooth } from '../../../../apps/dashboard/src/devices/bluetooth-choice.ts';
import { BluetoothLink } from '../../../../apps/dashboard/src/devices/bluetooth-link.ts';
import type { BluetoothPlan } from '../../../../apps/dashboard/src/devices/bluetooth-plan.ts';
import { HeightHistory } from '../../../../apps/dashboard/src/live/height-history.ts';
import { LiveSet } from '../../../../apps/dashboard/src/live/live-set.ts';
import { sixLayout, sixRateHz, sixValue } from '../radio/six-channels.ts';

/** What the page knows of the soak so far. */
export interface SoakState {
  readonly samples: number;
  /** samples that are not those that were sent */
  readonly wrong: number;
  /** pictures that were shown, and those that a display of 60 Hz would have shown besides [-] */
  readonly frames: number;
  readonly missedFrames: number;
  readonly longestFrameMs: number;
  readonly raises: number;
  /** what the page keeps of the samples in arrays, as a set does until it is saved [bytes] */
  readonly keptBytes: number;
}

export interface SoakEnd {
  readonly state: SoakState;
  readonly summary: DeviceSummary;
  readonly sha256: string | null;
  readonly storedBytes: number;
}

const frameMs = 1000 / 60;
const pictureS = 8;
const none = new Float64Array(0);

class Soak {
  private readonly sensor: LinkSensor;
  private readonly live: LiveSet;
  private readonly store: IndexedDbStore;
  private readonly bytesId: string;
  private readonly histories = Array.from({ length: 6 }, () => new HeightHistory(pictureS));
  private readonly counts = { samples: 0, wrong: 0, frames: 0, missedFrames: 0, longestFrameMs: 0, raises: 0 };
  private lastFrameMs: number | undefined;
  private isOver = false;

  private constructor(sensor: LinkSensor, store: IndexedDbStore, live: LiveSet, bytesId: string) {
    this.sensor = sensor;
    this.store = store;
    this.live = live;
    this.bytesId = bytesId;
  }

  /** Chooses a device and begins. */
  static async begin(plan: BluetoothPlan): Promise<Soak> {
    const clock: SensorClock = {
      nowMs: () => performance.now(),
      every: (ms, call) => {
        const timer = setInterval(call, ms);
        return () => clearInterval(timer);
      },
    };
    const device = await chooseBluetooth(window, plan);
    const sensor = new LinkSensor({
      description: { origin: 'live', placement: 'foot', nominalRateHz: sixRateHz },
      clock,
      feed: decodedFeed(packetDecoder(sixLayout), { nominalRateHz: sixRateHz, samplesPerPacket: null }),
      makeLink: (listener) => new BluetoothLink(device, { plan, clock, limitMs: 5000, listener }),
    });
    const store = await IndexedDbStore.open('soak');
    const writer = await store.openBytes('soak');
    const live = new LiveSet(
      { sensor, writer, clock, heelLeverM: 0.13, writeEveryMs: 200 },
      {
        onSamples: (_state, block) => soak.check(block),
        onRaise: (_raise, count) => {
          soak.counts.raises = count;
        },
      },
    );
    const soak = new Soak(sensor, store, live, writer.id);
    await live.start();
    const chart = new SignalChart();
    chart.live = true;
    chart.series = soak.histories.map((_, k) => ({
      label: `channel ${k + 1}`,
      unit: '1',
      times: none,
      values: none,
      decimals: 1,
      dash: [],
      side: null,
    }));
    document.body.append(chart);
    requestAnimationFrame((atMs) => soak.draw(chart, atMs));
    return soak;
  }

  get state(): SoakState {
    return { ...this.counts, keptBytes: this.live.log.length * 7 * 8 };
  }

  async end(): Promise<SoakEnd> {
    this.isOver = true;
    const { sha256 } = await this.live.stop();
    const stored = await this.store.bytes(this.bytesId);
    const storedBytes = stored?.pieces.reduce((sum, { length }) => sum + length, 0) ?? 0;
    return { state: this.state, summary: this.sensor.summary, sha256, storedBytes };
  }

  private check({ firstIndex, channels, deviceTimesS }: SampleBlock): void {
    const count = channels[0].samples.length;
    this.counts.samples += count;
    for (const [k, { samples }] of channels.entries()) {
      const history = this.histories[k];
      for (const [i, value] of samples.entries()) {
        if (Math.abs(value - sixValue(k, firstIndex + i)) > 1e-9) this.counts.wrong += 1;
        // a picture needs no more: about four samples to a point
        if ((firstIndex + i) % 4 === 0) history.add(deviceTimesS![i], value);
      }
    }
  }

  private draw(chart: SignalChart, atMs: number): void {
    const { counts, lastFrameMs } = this;
    if (lastFrameMs !== undefined) {
      const gapMs = atMs - lastFrameMs;
      counts.frames += 1;
      counts.missedFrames += Math.max(0, Math.round(gapMs / frameMs) - 1);
      counts.longestFrameMs = Math.max(counts.longestFrameMs, gapMs);
    }
    this.lastFrameMs = atMs;
    if (!chart.isUpdatePending) {
      chart.show(
        this.histories.map(({ line }) => line),
        this.histories[0].window,
      );
    }
    if (!this.isOver) requestAnimationFrame((nextMs) => this.draw(chart, nextMs));
  }
}

class SoakOnPage {
  private soak: Soak | undefined;

  async begin(plan: BluetoothPlan): Promise<void> {
    this.soak = await Soak.begin(plan);
  }

  state(): SoakState {
    return this.soak!.state;
  }

  end(): Promise<SoakEnd> {
    return this.soak!.end();
  }
}

declare global {
  var soakOnPage: SoakOnPage;
}

globalThis.soakOnPage = new SoakOnPage();
