import type { Issue } from '../issue.ts';
import type { Detection } from '../raises/detection.ts';
import type { ReferenceHeight } from '../raises/reference-height.ts';
import { footGeometry } from './repetition-work.ts';
import type { BlockDifference, WithheldReason } from './report.ts';
import type { AssessmentRequest } from './request.ts';
import { isSeated } from './seated-load.ts';

/**
 * Why figures of a report are null.
 *
 * @param request - what is known of subject and protocol [-]
 * @param heightsKnown - false for a foot without its lever [-]
 * @returns every reason that applies [-]
 *
 * Source: definition
 */
export function withheldReasons(request: AssessmentRequest, heightsKnown: boolean): WithheldReason[] {
  const { subject, placement, protocol } = request;
  const reasons: WithheldReason[] = [];
  if (!heightsKnown) reasons.push('no-heel-lever');
  if (isSeated(protocol)) {
    const { bodyMassKg, externalMassKg, externalMassShare } = subject;
    if (bodyMassKg === undefined) reasons.push('no-mass-for-load');
    if (externalMassKg === undefined && externalMassShare === undefined) reasons.push('no-load');
    if (footGeometry(request) === undefined) reasons.push('no-knee-rise');
    return reasons;
  }
  if (subject.bodyMassKg === undefined) reasons.push('no-body-mass');
  const declared = protocol.parameters.externalMass.value === 'declared';
  if (declared && subject.externalMassKg === undefined) reasons.push('no-external-mass');
  const ofHeel = placement === 'heel' || placement === 'foot';
  if (ofHeel && footGeometry(request) === undefined) reasons.push('no-ankle-geometry');
  return reasons;
}

/**
 * Issues that judging adds to those of the detection.
 *
 * @param detection - the set [-]
 * @param reference - its reference height; undefined when there is none [m]
 * @param differences - of the block pass [s]
 * @returns the issues with their place; empty when there is none [s]
 *
 * Source: definition
 */
export function ownIssues(
  detection: Detection,
  reference: ReferenceHeight | undefined,
  differences: readonly BlockDifference[],
): Issue[] {
  const { raises } = detection;
  if (raises.length === 0) return [];
  const whole = { fromS: raises[0].startS, toS: raises[raises.length - 1].endS };
  const issues: Issue[] = [];
  if (reference?.raised === true) {
    const by = raises[reference.fromRepetitions[0] - 1];
    const details = { repetition: reference.fromRepetitions[0] };
    issues.push({ code: 'reference-raised', severity: 'note', fromS: by.startS, toS: by.endS, details });
  }
  if (differences.length > 0) {
    issues.push({ code: 'changed-in-final-pass', severity: 'note', ...whole, details: { count: differences.length } });
  }
  return issues;
}
