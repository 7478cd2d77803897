// The page of the scripted faults: sources as the dashboard streams them, the words it has for what happens, and the bytes it keeps.
import './page.ts';
import { encodeBlock } from '@surae/records';
import {
  alignmentNotes,
  type ClockMap,
  clockNotes,
  type Decoder,
  type DeviceSummary,
  decodedFeed,
  type GroupEvent,
  type LineLayout,
  LinkSensor,
  lineDecoder,
  linkSettings,
  type PacketLayout,
  packetDecoder,
  radioDelay,
  SensorGroup,
  type SensorLink,
  type SensorLinkListener,
} from '@surae/sensors';
import { askAbout } from '../../../../apps/dashboard/src/devices/bluetooth-about.ts';
import { chooseBluetooth } from '../../../../apps/dashboard/src/devices/bluetooth-choice.ts';
import { BluetoothLink } from '../../../../apps/dashboard/src/devices/bluetooth-link.ts';
import type { BluetoothPlan } from '../../../../apps/dashboard/src/devices/bluetooth-plan.ts';
import { PieceLink } from '../../../../apps/dashboard/src/devices/piece-link.ts';
import { SerialLink } from '../../../../apps/dashboard/src/devices/serial-link.ts';
import { linkWords } from '../../../../apps/dashboard/src/live/link-words.ts';
import { lossWords } from '../../../../apps/dashboard/src/live/loss-words.ts';
import { sourceWords } from '../../../../apps/dashboard/src/live/source-words.ts';

/** How the packets of a source are read. */
export interface FaultReading {
  readonly layout: PacketLayout;
  readonly nominalRateHz: number;
  readonly startWith?: readonly number[];
  /** a stretch without samples that ends the stream [ms] */
  readonly longestHoleMs?: number;
}

export interface FaultEnd {
  /** what is kept, as it is stored */
  readonly bytes: readonly number[];
  readonly summaries: readonly DeviceSummary[];
  /** what is said of the loss of each source */
  readonly loss: readonly string[];
  /** the second source on the clock of the first; null without one */
  readonly map: ClockMap | null;
  readonly withinMs: number | null;
  readonly notes: readonly string[];
}

const clock = {
  nowMs: () => performance.now(),
  every: (ms: number, call: () => void) => {
    const timer = setInterval(call, ms);
    return () => clearInterval(timer);
  },
};

const asError = (error: unknown): Error => (error instanceof Error ? error : new Error(String(error)));

type Decoded = Omit<FaultReading, 'layout'> & { readonly decoder: Decoder };
type MakeLink = (listener: SensorLinkListener) => SensorLink;

class FaultsOnPage {
  /** every sentence, in the order in which it was said */
  readonly said: string[] = [];
  /** samples that came so far, of each source */
  readonly counts: number[] = [];
  private readonly chosen: { readonly device: BluetoothDevice; readonly plan: BluetoothPlan }[] = [];
  private readonly bytes: number[] = [];
  private sensors: LinkSensor[] = [];
  private group: SensorGroup | undefined;

  /** Lets a device be chosen; it becomes the next source. */
  async choose(plan: BluetoothPlan): Promise<void> {
    await this.saying(async () => {
      this.chosen.push({ device: await chooseBluetooth(window, plan), plan });
    });
  }

  /** Streams from the chosen devices. */
  begin(readings: readonly FaultReading[]): Promise<void> {
    const links = this.chosen.map(
      ({ device, plan }): MakeLink =>
        (listener) =>
          new BluetoothLink(device, { plan, clock, limitMs: 2000, listener }),
    );
    return this.stream(
      readings.map((one) => ({ ...one, decoder: packetDecoder(one.layout) })),
      links,
    );
  }

  /** Streams from a serial port that is played in the page. */
  beginSerial(reading: Omit<FaultReading, 'layout'>, lines: LineLayout): Promise<void> {
    const port = { baudRate: 115_200, bufferSize: 65_536 };
    const make: MakeLink = (listener) =>
      new PieceLink(
        (inner) => new SerialLink(onPage.scripted, { port, clock, limitMs: 2000, listener: inner }),
        { kind: 'lines', lines },
        listener,
      );
    return this.stream([{ ...reading, decoder: lineDecoder(lines) }], [make]);
  }

  /** The charge of the battery of the first device [%]; null where it does not tell. */
  async battery(): Promise<number | null> {
    const [{ device, plan }] = this.chosen;
    const listener = { bytes: () => {}, disturbed: () => {}, closed: () => {} };
    const link = new BluetoothLink(device, { plan, clock, limitMs: 2000, listener });
    await link.open();
    const { batteryPercent } = await askAbout(link);
    link.close();
    return batteryPercent;
  }

  end(): FaultEnd {
    this.group!.stop();
    const answer = this.sensors.length > 1 ? this.group!.alignmentOf(1) : null;
    const alignment = answer?.kind === 'aligned' ? answer.alignment : null;
    const summaries = this.sensors.map(({ summary }) => summary);
    return {
      bytes: this.bytes,
      summaries,
      loss: summaries.map(lossWords),
      map: alignment?.map ?? null,
      withinMs: alignment?.withinMs ?? null,
      notes: [
        ...this.group!.fits.flatMap((fit, source) => clockNotes(source, fit)),
        ...(answer === null ? [] : alignmentNotes(1, answer)),
      ],
    };
  }

  private async stream(readings: readonly Decoded[], links: readonly MakeLink[]): Promise<void> {
    this.sensors = readings.map(
      ({ decoder, nominalRateHz, startWith, longestHoleMs = linkSettings.longestHoleMs }, n) =>
        new LinkSensor({
          description: { origin: 'live', placement: 'inline', nominalRateHz },
          clock,
          feed: decodedFeed(decoder, { nominalRateHz, samplesPerPacket: null }),
          makeLink: links[n],
          startWith: startWith === undefined ? [] : [{ target: 0, bytes: Uint8Array.from(startWith) }],
          settings: { ...linkSettings, longestHoleMs },
        }),
    );
    this.group = new SensorGroup(this.sensors.map((sensor) => ({ sensor, leastDelay: radioDelay })));
    await this.saying(() => this.group!.start((told) => this.hear(told)));
  }

  private hear({ source, event }: GroupEvent): void {
    if (event.kind === 'block') {
      this.counts[source] = (this.counts[source] ?? 0) + event.block.channels[0].samples.length;
      this.bytes.push(...encodeBlock({ ...event.block, source }));
    } else if (event.kind === 'link') {
      const words = linkWords(event.news);
      if (words !== undefined) this.said.push(words);
    } else if (event.kind === 'failed') this.said.push(sourceWords(event.error));
  }

  private async saying(work: () => Promise<void>): Promise<void> {
    try {
      await work();
    } catch (error) {
      const { name, cause } = asError(error);
      this.said.push(sourceWords(name === 'GroupStartError' ? asError(cause) : asError(error)));
    }
  }
}

declare global {
  var faultsOnPage: FaultsOnPage;
}

globalThis.faultsOnPage = new FaultsOnPage();
