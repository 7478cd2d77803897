import { detectBodyRaises } from '../raises/detect-body.ts';
import { detectHeelRaises } from '../raises/detect-heel.ts';
import type { Detection } from '../raises/detection.ts';
import type { HeelSettings } from '../raises/heel/heel-settings.ts';
import { slantRelativeU } from '../raises/heel/string-slant.ts';
import type { Trace } from '../trace.ts';
import { assessTaps } from './assess-taps.ts';
import { afterwards, type Beside } from './beside-detection.ts';
import { blockDifferences } from './block-differences.ts';
import { detectionSettings } from './detection-settings.ts';
import { judge } from './judge.ts';
import type { Report } from './report.ts';
import type { AssessmentRequest, Subject } from './request.ts';
import { requireSeatedPlacement } from './seated-load.ts';
import type { JudgingSettings, Settings } from './settings.ts';

/** Relative error of height that all repetitions of a foot sensor share: the lever, and where it pivots. */
function sharedHeightError(subject: Subject, heel: HeelSettings, judging: JudgingSettings): number {
  const { heelLeverM } = subject;
  const leverU = heelLeverM === undefined ? judging.assumedLeverRelativeU : heel.heelLeverUM / heelLeverM;
  return Math.hypot(leverU, heel.pivotMigrationU);
}

/**
 * Report on one recording of a heel-raise set: the attempted repetitions, their measures and verdicts, the counts with
 * their bounds, the measures of the set, and every difference from the count while samples arrived. A set that somebody
 * counted by hand goes to {@link assessTaps}.
 *
 * @param trace - the recording, SI units, native sample times [SI]
 * @param request - placement, side, protocol, subject, and what is known of the trial [-]
 * @param settings - every number that no protocol states; see {@link defaultSettings} [-]
 * @param beside - where what does not need the detection is worked out; the report is the same wherever it is [-]
 * @returns the report, plain JSON; poor data give issues in it, never an error [-]
 * @throws {@link InputError} `missing-channel` when the trace lacks what the placement needs; `too-short`, `not-finite`, `not-increasing`, `length-mismatch` for a trace that breaks its contract; `out-of-range` for a subject, protocol or setting out of range
 *
 * Source: ours
 */
export function assess(
  trace: Trace,
  request: AssessmentRequest,
  settings: Settings,
  beside: Beside = afterwards,
): Report {
  const { placement, subject } = request;
  if (placement === 'hand') return assessTaps(trace, request, settings);
  requireSeatedPlacement(request);
  const { heel, body, block } = detectionSettings(settings, request.protocol.parameters);
  const { gravityMps2 } = settings.judging;
  const found = beside({
    trace,
    placement,
    heelLeverM: subject.heelLeverM,
    block,
    gravityMps2,
    limits: settings.signal,
  });
  let detection: Detection;
  let commonRelativeU = 0;
  if (placement === 'heel' || placement === 'foot') {
    detection = detectHeelRaises(trace, placement, subject, heel);
    commonRelativeU =
      placement === 'foot'
        ? sharedHeightError(subject, heel, settings.judging)
        : slantRelativeU(detection.raises, subject, heel);
  } else {
    detection = detectBodyRaises(trace, placement, subject, body);
  }
  const { ofSignal, provisional } = found();
  detection = { ...detection, issues: [...ofSignal, ...detection.issues] };
  const differences = blockDifferences(detection.raises, provisional, settings.judging.topMovedS);
  return judge(detection, request, settings.judging, { commonRelativeU, blockDifferences: differences });
}
