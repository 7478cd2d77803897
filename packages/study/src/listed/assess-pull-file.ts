import { assessPulls, type PullReport, type PullSubject, type PullTestRequest } from '@surae/analysis';
import type { Recording } from '@surae/records';
import { PROTOCOLS, PULL_PROTOCOLS, type PullProtocol } from '@surae/shared';
import { choosePullPlacement } from './choose-pull-placement.ts';
import type { GivenSettings } from './given-settings.ts';
import { type PullCourse, pullCourse } from './pull-course.ts';
import { type Refused, reasonOf, refused } from './refused.ts';
import { fingerprintHash, settingsHash } from './settings-hash.ts';
import { hashOf, recordingOf, type Source } from './source-of.ts';
import { toldBy } from './told.ts';
import type { Told } from './told-columns.ts';
import type { GivenAbout, WorkItem } from './work-list.ts';

/** A recording of isometric efforts that was assessed. */
export interface AssessedPulls {
  readonly status: 'ok';
  readonly test: 'isometric';
  readonly item: WorkItem;
  readonly sha256: string;
  readonly settingsHash: string;
  readonly protocolHash: string;
  readonly protocol: PullProtocol;
  readonly report: PullReport;
  readonly recording: Pick<Recording, 'unusedColumns' | 'deviceNotes'>;
  /** what a picture is drawn from */
  readonly course: PullCourse;
  /** an earlier file of the list with the very same bytes */
  readonly sameAs?: string;
}

/** The protocol of an isometric test as it was done, or why the row contradicts it. */
function protocolOf(item: WorkItem, given: GivenSettings, told: Told): PullProtocol | string {
  const id = item.about.protocol;
  const found = id === undefined ? PULL_PROTOCOLS[0]! : PULL_PROTOCOLS.find((protocol) => protocol.id === id);
  if (found === undefined) {
    const known = PULL_PROTOCOLS.map((protocol) => protocol.id).join(', ');
    return PROTOCOLS.some((protocol) => protocol.id === id)
      ? `the protocol ${id} belongs to the test heel-raise: expected ${known}`
      : `there is no protocol "${id}" of the test isometric: expected ${known}`;
  }
  const { knee } = found.parameters;
  if (told.knee !== null && told.knee !== knee.value) {
    return `column "knee": the protocol ${found.id} is done with ${knee.value}, got ${told.knee}`;
  }
  const reason = told.end_reason;
  if (reason !== null && !found.endConditions.includes(reason)) {
    return `column "end_reason": the protocol ${found.id} ends by ${found.endConditions.join(', ')}, got ${reason}`;
  }
  return given.adjust(found);
}

/** One recording of isometric efforts from its bytes to its report. Whatever goes wrong is a refusal of this file alone. */
export function assessPullFile(item: WorkItem, source: Source, given: GivenSettings): AssessedPulls | Refused {
  const told = toldBy(item.carried);
  const protocol = protocolOf(item, given, told);
  if (typeof protocol === 'string') return refused(item, `${item.file}: ${protocol}`, hashOf(source));
  try {
    const recording = recordingOf(source, item.file);
    const hash = recording.source.sha256;
    const choice = choosePullPlacement(item.about.placement, recording);
    if ('refusal' in choice) return refused(item, `${item.file}: ${choice.refusal}`, hash);
    const { side, warmUpPushes } = item.about;
    const request: PullTestRequest = {
      placement: choice.placement,
      ...(side === undefined ? {} : { side }),
      protocol,
      subject: { ...subjectOf(item.about), ...(told.calibration === null ? {} : { calibrationId: told.calibration }) },
      context: {
        ...(told.end_reason === null ? {} : { endReason: told.end_reason }),
        ...(warmUpPushes === undefined ? {} : { warmUpPushes }),
      },
    };
    const report = assessPulls(recording, request, given.settings);
    return {
      status: 'ok',
      test: 'isometric',
      item,
      sha256: hash,
      settingsHash: settingsHash(given.settings, report.protocol.fingerprint),
      protocolHash: fingerprintHash(report.protocol.fingerprint),
      protocol,
      report,
      recording: { unusedColumns: recording.unusedColumns, deviceNotes: recording.deviceNotes },
      course: pullCourse(recording, report),
    };
  } catch (error) {
    return refused(item, reasonOf(item, error), hashOf(source));
  }
}

function subjectOf(about: GivenAbout): PullSubject {
  const { bodyMassKg, forefootLeverMm, calibrationUPercent, calibrationZeroU, polarity } = about;
  return {
    ...(bodyMassKg === undefined ? {} : { bodyMassKg }),
    ...(forefootLeverMm === undefined ? {} : { forefootLeverM: forefootLeverMm / 1000 }),
    ...(calibrationUPercent === undefined ? {} : { calibrationRelativeU: calibrationUPercent / 100 }),
    ...(calibrationZeroU === undefined ? {} : { calibrationZeroU }),
    ...(polarity === undefined ? {} : { polarity }),
  };
}
