import {
  bytesOfHex,
  type OpenSensor,
  openAbout,
  openService,
  problemText,
  readOpenAbout,
  type SensorClock,
  type SensorDocument,
} from '@surae/sensors';
import { SENSOR_KIND_WORDS } from '@surae/shared';
import { fill } from '../words/fill.ts';
import { BatteryFollow } from './battery-follow.ts';
import { askAbout } from './bluetooth-about.ts';
import { type BluetoothPage, chooseBluetooth } from './bluetooth-choice.ts';
import { BluetoothLink } from './bluetooth-link.ts';
import { adoptedPlan, type DescribedPlan, describedPlan, openPlan } from './described-plan.ts';
import { DeviceError } from './device-error.ts';
import { HeldLink } from './held-link.ts';
import { HeldMotion } from './held-motion.ts';
import type { HeldSensor } from './held-sensor.ts';
import { LinkedSensor } from './linked-sensor.ts';
import { allowMotion, type MotionNavigator, type MotionPage } from './motion-access.ts';
import { expectedSign } from './motion-sign.ts';
import { PhoneMotion } from './phone-motion.ts';
import { PieceLink } from './piece-link.ts';
import { adoptedReading, describedReadings, openReading, type SampleReading, streamReading } from './sample-reading.ts';
import type { KeptDescription, SensorKind } from './sensor-kind.ts';
import type { SerialPort } from './serial-interface.ts';
import { SerialLink } from './serial-link.ts';
import { withinTime } from './time-limit.ts';

/** How long one thing that is asked of a device may take [ms]; ours. */
const limitMs = 8000;
/** How long a serial sensor may take until it has told what it sends, and a motion sensor until its first reading [ms]; ours. */
const firstMs = 5000;
/** What the browser keeps of a serial port while the page is busy [bytes]; ours: a second of 64 kB. */
const bufferSize = 65_536;

/** The name that a kind of sensor has on the page. */
export function kindName(kind: SensorKind): string {
  if (kind.kind === 'described') return kind.description.sensor.name;
  return kind.kind === 'open'
    ? SENSOR_KIND_WORDS.open.text
    : fill(SENSOR_KIND_WORDS.adopted, { name: kind.adopted.name });
}

/** Asks for a Bluetooth sensor of a kind and connects it; to be called while a press of a button is handled. */
export async function connectBluetooth(page: BluetoothPage, kind: SensorKind, clock: SensorClock): Promise<HeldSensor> {
  const { plan, startWith, stopWith } = planOf(kind);
  const device = await chooseBluetooth(page, plan);
  let own: BluetoothLink | undefined;
  let battery: BatteryFollow | undefined;
  const link = new HeldLink((listener) => (own = new BluetoothLink(device, { plan, clock, limitMs, listener })), {
    startWith,
    stopWith,
    opened: () => void battery?.begin(),
  });
  try {
    await link.open();
    const readings = await readingsOf(kind, own!);
    const about = await askAbout(own!);
    battery = new BatteryFollow({ link: own!, clock, firstPercent: about.batteryPercent });
    void battery.begin();
    const { id = null, sensor } = kind.kind === 'described' ? kind.description : {};
    const placement = sensor?.placement ?? null;
    return new LinkedSensor({
      route: 'bluetooth',
      kindName: kindName(kind),
      link,
      readings,
      about,
      battery,
      descriptionId: id,
      placement,
      clock,
    });
  } catch (error) {
    battery?.end();
    await link.release();
    throw error;
  }
}

function planOf(kind: SensorKind): DescribedPlan {
  if (kind.kind === 'open') return openPlan;
  if (kind.kind === 'adopted') return adoptedPlan(kind.adopted);
  const { link } = kind.description.sensor;
  if (link.kind !== 'bluetooth') throw new RangeError('The sensor is described as one behind a serial port.');
  return describedPlan(link);
}

async function readingsOf(kind: SensorKind, link: BluetoothLink): Promise<SampleReading[]> {
  if (kind.kind === 'adopted') return [adoptedReading(kind.adopted)];
  if (kind.kind === 'open') return [openReading(await askOpenAbout(link))];
  const described = kind.description.sensor.link;
  return described.kind === 'bluetooth' ? describedReadings(described) : [];
}

/** What a sensor that sends the open packet says of itself. */
async function askOpenAbout(link: BluetoothLink): Promise<OpenSensor> {
  const { buffer, byteOffset, byteLength } = await link.ask(async (server) => {
    const service = await server.getPrimaryService(openService);
    return (await service.getCharacteristic(openAbout)).readValue();
  });
  const answer = readOpenAbout(new Uint8Array(buffer.slice(byteOffset, byteOffset + byteLength)));
  if (answer.kind === 'sensor') return answer.sensor;
  throw new DeviceError('service-missing', `What it says of itself: ${answer.problems.map(problemText).join('; ')}`);
}

type SerialDocument = SensorDocument & { readonly link: { readonly kind: 'serial' } };

/** Opens a serial port that was chosen, and waits until it is known what comes. */
export async function connectSerial(
  port: SerialPort,
  { id, sensor }: KeptDescription,
  clock: SensorClock,
): Promise<HeldSensor> {
  if (sensor.link.kind !== 'serial') throw new RangeError('The sensor is described as one behind Bluetooth.');
  const { link: described, name, placement } = sensor as SerialDocument;
  const { stream, nominalRateHz, start, stop } = described as Extract<SensorDocument['link'], { kind: 'serial' }>;
  const options = { ...sensor.link.port, bufferSize };
  const commands = (list: readonly string[]) => list.map((text) => ({ target: 0, bytes: bytesOfHex(text)! }));
  let own: PieceLink | undefined;
  const link = new HeldLink(
    (listener) =>
      (own = new PieceLink(
        (inner) => new SerialLink(port, { port: options, clock, limitMs, listener: inner }),
        stream,
        listener,
      )),
    { startWith: commands(start), stopWith: commands(stop) },
  );
  try {
    await link.open();
    const decoder = await withinTime(own!.decoder(), firstMs, 'Waiting for the header').catch((error: unknown) => {
      throw new DeviceError('no-header', 'No line named the columns.', { cause: error });
    });
    const samplesPerPacket = stream.kind === 'lines' ? 1 : null;
    const readings = [streamReading(decoder, nominalRateHz, samplesPerPacket)];
    return new LinkedSensor({
      route: 'serial',
      kindName: name,
      link,
      readings,
      about: null,
      battery: null,
      descriptionId: id,
      placement,
      clock,
      recent: () => own?.recent,
    });
  } catch (error) {
    await link.release();
    throw error;
  }
}

/** What of a page is followed for the motion of its own device. */
export interface MotionWindow extends MotionPage, Pick<EventTarget, 'addEventListener' | 'removeEventListener'> {
  readonly navigator: { readonly vendor: string } & MotionNavigator;
}

/** Begins to follow the motion of this device, once one reading has come; to be called while a press of a button is handled. */
export async function connectMotion(page: MotionWindow, clock: SensorClock): Promise<HeldSensor> {
  await allowMotion(page);
  const options = { clock, events: page, sign: expectedSign(page.navigator.vendor), firstReadingMs: firstMs };
  let hasTurning = false;
  const first = new PhoneMotion({ ...options, placement: 'trunk' });
  await first.start((event) => {
    if (event.kind === 'block') hasTurning ||= event.block.channels.length > 3;
  });
  first.stop();
  const kind = SENSOR_KIND_WORDS.motion.text;
  return new HeldMotion({ ...options, kindName: kind, deviceName: SENSOR_KIND_WORDS['this-device'].text, hasTurning });
}
