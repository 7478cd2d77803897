import type { Trace } from '@surae/analysis';
import { encodeBlock, siUnits } from '@surae/records';
import type { ByteWriter } from '@surae/storage';

/** Samples of one clock. */
type Samples = Trace['groups'][number];

/** Samples of a block [-] */
const size = 500;

/** Streams samples into a store, as a sensor would, their times from where the recording begins; gives the id of the stream. */
export async function recordedStream(writer: ByteWriter, { timesS, channels }: Samples, fromS = 0): Promise<string> {
  for (let from = 0; from < timesS.length; from += size) {
    await writer.append(
      encodeBlock({
        firstIndex: from,
        deviceTimesS: timesS.slice(from, from + size).map((timeS) => timeS + fromS),
        hostTimeMs: ((timesS[from] ?? 0) + fromS) * 1000,
        channels: channels.map((channel) => ({
          ...channel,
          unit: siUnits[channel.quantity],
          samples: channel.samples.slice(from, from + size),
        })),
      }),
    );
  }
  await writer.close();
  return writer.id;
}
