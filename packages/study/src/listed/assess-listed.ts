import { type AssessmentRequest, assess, type Beside, type Report, type Subject } from '@surae/analysis';
import type { Recording } from '@surae/records';
import { PROTOCOLS, type Protocol, PULL_PROTOCOLS } from '@surae/shared';
import { type AssessedPulls, assessPullFile } from './assess-pull-file.ts';
import { choosePlacement } from './choose-placement.ts';
import type { GivenSettings } from './given-settings.ts';
import { type AssessedHops, assessHopFile } from './hop-file.ts';
import { type Refused, reasonOf, refused } from './refused.ts';
import { fingerprintHash, settingsHash } from './settings-hash.ts';
import { hashOf, recordingOf, type Source } from './source-of.ts';
import { testOf } from './test-of.ts';
import { toldBy } from './told.ts';
import { toldProtocol } from './told-protocol.ts';
import { trialContext } from './trial-context.ts';
import type { GivenAbout, WorkItem } from './work-list.ts';

/** A recording of heel raises that was assessed. */
export interface Assessed {
  readonly status: 'ok';
  readonly test: 'heel-raise';
  readonly item: WorkItem;
  readonly sha256: string;
  readonly settingsHash: string;
  readonly protocolHash: string;
  readonly protocol: Protocol;
  readonly report: Report;
  readonly recording: Pick<Recording, 'unusedColumns' | 'deviceNotes'>;
  /** when its first sample is, by the clock of the recording [s] */
  readonly beginS: number;
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

/** A recording that was assessed, whatever the test. */
export type AnyAssessed = Assessed | AssessedPulls | AssessedHops;

/** What a listed recording came to. */
export type Outcome = AnyAssessed | Refused;

/** Protocols beside the one of a row that a set of raises is judged by as well. */
export type BesideProtocols = (protocol: Protocol) => readonly Omit<VariedReport, 'report'>[];

const none: BesideProtocols = () => [];

/**
 * One listed recording from its bytes to its report. Whatever goes wrong becomes a refusal of this recording alone.
 *
 * @param beside - protocols that a set of raises is judged by as well
 * @param aside - where what an assessment does not need the detection for is worked out; by default where the rest is
 */
export function assessListed(
  item: WorkItem,
  source: Source,
  given: GivenSettings,
  beside: BesideProtocols = none,
  aside?: Beside,
): Outcome {
  switch (testOf(item.about)) {
    case 'isometric':
      return assessPullFile(item, source, given);
    case 'hop-series':
      return assessHopFile(item, source, given);
    case 'heel-raise':
      return assessRaises(item, source, given, beside, aside);
  }
}

/** One recording of heel raises from its bytes to its report. */
function assessRaises(
  item: WorkItem,
  source: Source,
  given: GivenSettings,
  beside: BesideProtocols,
  aside: Beside | undefined,
): Assessed | Refused {
  const no = (reason: string): Refused => refused(item, `${item.file}: ${reason}`, hashOf(source));
  const found = findProtocol(item.about.protocol);
  if (typeof found === 'string') return no(found);
  const told = toldBy(item.carried);
  const protocol = toldProtocol(given.adjust(found), told);
  if ('contradiction' in protocol) return no(protocol.contradiction);
  try {
    const recording = recordingOf(source, item.file);
    const choice = choosePlacement(item.about.placement, recording);
    if ('refusal' in choice) return no(choice.refusal);
    const { placement } = choice;
    const { side } = item.about;
    const request: AssessmentRequest = {
      placement,
      ...(side === undefined ? {} : { side }),
      protocol,
      subject: subjectOf(item.about),
      context: trialContext(told),
    };
    const report = assess(recording, request, given.settings, aside);
    return {
      status: 'ok',
      test: 'heel-raise',
      item,
      sha256: recording.source.sha256,
      settingsHash: settingsHash(given.settings, report.protocol.fingerprint),
      protocolHash: fingerprintHash(report.protocol.fingerprint),
      protocol,
      report,
      recording: { unusedColumns: recording.unusedColumns, deviceNotes: recording.deviceNotes },
      beginS: beginOf(recording),
      varied: beside(protocol).map(({ value, protocol: other }) => ({
        value,
        protocol: other,
        report: assess(recording, { ...request, protocol: other }, given.settings, aside),
      })),
    };
  } catch (error) {
    return refused(item, reasonOf(item, error), hashOf(source));
  }
}

/** When the first sample of a recording is, by its own clock [s]. */
export function beginOf({ groups }: Pick<Recording, 'groups'>): number {
  return Math.min(...groups.map(({ timesS }) => timesS[0] ?? Infinity));
}

function findProtocol(id: string | undefined): Protocol | string {
  if (id === undefined) return PROTOCOLS[0]!;
  const known = PROTOCOLS.find((protocol) => protocol.id === id);
  if (known === undefined && PULL_PROTOCOLS.some((protocol) => protocol.id === id)) {
    return `the protocol ${id} belongs to the test isometric: say --test isometric, or leave the test out`;
  }
  return known ?? `there is no protocol "${id}": expected ${PROTOCOLS.map((protocol) => protocol.id).join(', ')}`;
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
