import { KNOWN_UNITS, type Quantity } from '@surae/analysis';
import { answerTo, cannotTell, type SensorAnswerEntry } from '@surae/casebook';

/** By what the samples of a quantity are multiplied before anybody reads them, as it was answered; 1 where it is left out. */
export type ReadAs = Readonly<Partial<Record<Quantity, number>>>;

/** The units in which a sensor says that it sends its quantities: UCUM codes. */
export type SentUnits = Readonly<Partial<Record<Quantity, string>>>;

/** SI units in one of a unit; undefined where it is not known. */
function toSi(quantity: Quantity, ucum: string): number | undefined {
  return KNOWN_UNITS[quantity].find((one) => one.ucum === ucum)?.toSi;
}

function factorOf(answers: readonly SensorAnswerEntry[], quantity: Quantity, sent: string | undefined): number {
  const unit = answerTo(answers, 'unit', quantity)?.answer;
  const turns = answerTo(answers, 'sign', quantity)?.answer === 'down' ? -1 : 1;
  if (unit === undefined || unit === cannotTell || sent === undefined) return turns;
  const [is, was] = [toSi(quantity, unit), toSi(quantity, sent)];
  return is === undefined || was === undefined ? turns : (turns * is) / was;
}

/**
 * How the samples of a sensor are read by what was answered about it: another unit, another sign.
 *
 * @param answers - those that count for the sensor
 * @param sentUnits - the units of its description, by which the samples became SI
 * @param isCalibrated - a calibration by known masses knows unit and sign of a force: no answer changes it
 */
export function readAsOf(answers: readonly SensorAnswerEntry[], sentUnits: SentUnits, isCalibrated: boolean): ReadAs {
  const quantities = Object.keys(sentUnits) as Quantity[];
  return Object.fromEntries(
    quantities
      .filter((quantity) => !(isCalibrated && quantity === 'force'))
      .map((quantity) => [quantity, factorOf(answers, quantity, sentUnits[quantity])] as const)
      .filter(([, factor]) => factor !== 1),
  );
}

interface Samples {
  readonly quantity: Quantity;
  readonly samples: Float64Array;
}

/** Channels as they are read; those that nothing was answered about are the same, and so is the list where nothing was. */
export function channelsReadAs<Channel extends Samples>(
  channels: readonly Channel[],
  readAs: ReadAs | undefined,
): readonly Channel[] {
  if (readAs === undefined || channels.every(({ quantity }) => readAs[quantity] === undefined)) return channels;
  return channels.map((channel) => {
    const factor = readAs[channel.quantity];
    return factor === undefined ? channel : { ...channel, samples: channel.samples.map((value) => factor * value) };
  });
}

/** Groups of channels as they are read; times stay as they are. */
export function groupsReadAs<Group extends { readonly channels: readonly Samples[] }>(
  groups: readonly Group[],
  readAs: ReadAs | undefined,
): readonly Group[] {
  if (readAs === undefined) return groups;
  return groups.map((group) => ({ ...group, channels: channelsReadAs(group.channels, readAs) }));
}
