import type { StudyResult, StudyTrace } from '../study.ts';

/** A clock that shows more has counted since some year and tells the date: three years in seconds. */
const TELLS_DATE_S = 1e8;

function firstInstantS(result: StudyResult): number | undefined {
  switch (result.test) {
    case 'heel-raise':
      return (
        result.report.repetitions[0]?.startS ??
        result.report.repetitions[0]?.topS ??
        result.report.issues[0]?.fromS ??
        undefined
      );
    case 'isometric':
      return result.report.efforts[0]?.onsetS.value;
    case 'hop-series':
      return result.report.hops.find(({ landS }) => landS !== null)?.landS ?? undefined;
  }
}

/** What the times of a trial are counted from so that they tell no date; 0 where they tell none [s]. */
export function clockOriginS(result: StudyResult | null): number {
  const first = result === null ? undefined : firstInstantS(result);
  return first !== undefined && Math.abs(first) > TELLS_DATE_S ? first : 0;
}

/** Every instant of a result that a table tells, counted from another origin. */
export function resultFrom(result: StudyResult, originS: number): StudyResult {
  if (originS === 0) return result;
  const from = (timeS: number): number => timeS - originS;
  const orNull = (timeS: number | null): number | null => (timeS === null ? null : from(timeS));
  switch (result.test) {
    case 'heel-raise': {
      const { report } = result;
      const repetitions = report.repetitions.map((one) => ({
        ...one,
        startS: orNull(one.startS),
        topS: from(one.topS),
        endS: orNull(one.endS),
        criteria: Object.fromEntries(
          Object.entries(one.criteria).map(([id, finding]) => {
            if (!('evidence' in finding) || finding.evidence === null) return [id, finding];
            const { evidence } = finding;
            return [
              id,
              { ...finding, evidence: { ...evidence, fromS: from(evidence.fromS), toS: from(evidence.toS) } },
            ];
          }),
        ) as typeof one.criteria,
      }));
      const end = { ...report.end, atS: orNull(report.end.atS) };
      return { ...result, report: { ...report, repetitions, end } };
    }
    case 'isometric': {
      const efforts = result.report.efforts.map((one) => ({
        ...one,
        onsetS: { ...one.onsetS, value: from(one.onsetS.value) },
        endS: { ...one.endS, value: from(one.endS.value) },
        peakS: from(one.peakS),
      }));
      return { ...result, report: { ...result.report, efforts } };
    }
    case 'hop-series': {
      const hops = result.report.hops.map((one) => ({
        ...one,
        landS: orNull(one.landS),
        takeOffS: orNull(one.takeOffS),
        landsAgainS: orNull(one.landsAgainS),
      }));
      return { ...result, report: { ...result.report, hops } };
    }
  }
}

/** A trace counted from that origin; from its own first instant where its clock tells a date and nothing else said so. */
export function traceFrom(trace: StudyTrace, originS: number): StudyTrace {
  const groups = trace.groups.map((group) => {
    const first = group.timesS[0] ?? 0;
    const shiftS = originS !== 0 ? originS : Math.abs(first) > TELLS_DATE_S ? first : 0;
    return shiftS === 0 ? group : { ...group, timesS: group.timesS.map((timeS) => timeS - shiftS) };
  });
  return { groups };
}
