import { createHash } from 'node:crypto';
import { type AssessmentRequest, assess, canonicalJson, InputError, type Report, type Subject } from '@surae/analysis';
import { RecordError, type Recording, readRecording } from '@surae/records';
import { PROTOCOLS, type Protocol } from '@surae/shared';
import { choosePlacement } from './choose-placement.ts';
import type { Io } from './io.ts';
import { readFault } from './read-fault.ts';
import type { GivenSettings } from './settings-file.ts';
import { toldBy } from './told.ts';
import { toldProtocol } from './told-protocol.ts';
import { trialContext } from './trial-context.ts';
import { variedProtocols } from './varied-protocols.ts';
import type { Vary } from './vary.ts';
import type { GivenAbout, WorkItem } from './work-list.ts';

/** A recording that was assessed. */
export interface Assessed {
  readonly status: 'ok';
  readonly item: WorkItem;
  readonly sha256: string;
  readonly settingsHash: string;
  readonly protocolHash: string;
  readonly protocol: Protocol;
  readonly report: Report;
  readonly recording: Pick<Recording, 'unusedColumns'>;
  /** the same recording judged by other values of one parameter; empty where that was not asked for */
  readonly varied: readonly VariedReport[];
  /** an earlier file of the list with the very same bytes */
  readonly sameAs?: string;
}

/** A recording judged by another value of one parameter of its protocol. */
export interface VariedReport {
  readonly value: string;
  readonly protocol: Protocol;
  readonly report: Report;
}

/** A recording, or a row of a manifest, that could not be assessed, and why. */
export interface Refused {
  readonly status: 'refused';
  readonly item: WorkItem;
  /** null when the bytes could not be read */
  readonly sha256: string | null;
  readonly reason: string;
}

export type Outcome = Assessed | Refused;

function sha256(text: string | Uint8Array): string {
  return createHash('sha256').update(text).digest('hex');
}

/** One recording from its bytes to its report. Whatever goes wrong becomes a refusal of this file alone. */
export async function assessFile(
  item: WorkItem,
  given: GivenSettings,
  io: Pick<Io, 'readFile'>,
  vary?: Vary,
): Promise<Outcome> {
  const refused = (reason: string, hash: string | null): Refused => ({ status: 'refused', item, sha256: hash, reason });
  if (item.refusal !== undefined) return refused(item.refusal, null);
  const found = findProtocol(item.about.protocol);
  if (typeof found === 'string') return refused(`${item.file}: ${found}`, null);
  const told = toldBy(item.carried);
  const protocol = toldProtocol(given.adjust(found), told);
  if ('contradiction' in protocol) return refused(`${item.file}: ${protocol.contradiction}`, null);
  let bytes: Uint8Array;
  try {
    bytes = await io.readFile(item.path);
  } catch (error) {
    return refused(`${item.file}: ${readFault(error)}`, null);
  }
  try {
    const recording = readRecording(bytes, { file: item.file });
    const choice = choosePlacement(item.about.placement, recording);
    if ('refusal' in choice) return refused(`${item.file}: ${choice.refusal}`, recording.source.sha256);
    const { placement } = choice;
    const { side } = item.about;
    const request: AssessmentRequest = {
      placement,
      ...(side === undefined ? {} : { side }),
      protocol,
      subject: subjectOf(item.about),
      context: trialContext(told),
    };
    const report = assess(recording, request, given.settings);
    return {
      status: 'ok',
      item,
      sha256: recording.source.sha256,
      settingsHash: settingsHash(given, report),
      protocolHash: sha256(report.protocol.fingerprint),
      protocol,
      report,
      recording: { unusedColumns: recording.unusedColumns },
      varied: variedProtocols(protocol, vary).map(({ value, protocol: other }) => ({
        value,
        protocol: other,
        report: assess(recording, { ...request, protocol: other }, given.settings),
      })),
    };
  } catch (error) {
    return refused(reasonOf(item, error), sha256(bytes));
  }
}

/** Equal only for results that were taken by the same rules: all settings, and the fingerprint of the protocol. */
function settingsHash({ settings }: GivenSettings, report: Report): string {
  // the settings are plain JSON; the round trip says so to the compiler
  const plain = JSON.parse(JSON.stringify(settings)) as Parameters<typeof canonicalJson>[0];
  return sha256(canonicalJson({ settings: plain, protocol: report.protocol.fingerprint }));
}

function findProtocol(id: string | undefined): Protocol | string {
  if (id === undefined) return PROTOCOLS[0]!;
  return (
    PROTOCOLS.find((protocol) => protocol.id === id) ??
    `there is no protocol "${id}": expected ${PROTOCOLS.map((protocol) => protocol.id).join(', ')}`
  );
}

function reasonOf(item: WorkItem, error: unknown): string {
  if (error instanceof RecordError) return error.message;
  if (error instanceof InputError) return `${item.file}: ${error.message}`;
  return `${item.file}: internal fault, please report it: ${error instanceof Error ? error.message : String(error)}`;
}

function subjectOf(about: GivenAbout): Subject {
  const metres = (millimetres: number | undefined): number | undefined =>
    millimetres === undefined ? undefined : millimetres / 1000;
  const given = {
    heelLeverM: metres(about.heelLeverMm),
    ankleLeverM: metres(about.ankleLeverMm),
    ankleAngleRad: about.ankleAngleDeg === undefined ? undefined : (about.ankleAngleDeg * Math.PI) / 180,
    bodyMassKg: about.bodyMassKg,
    externalMassKg: about.externalMassKg,
    externalMassShare: about.loadPercent === undefined ? undefined : about.loadPercent / 100,
    stringRestLengthM: metres(about.stringRestMm),
  };
  return Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined));
}
