import { withParameters } from '@surae/analysis';
import { type Assessment, type StudyFile, settingsWith } from '@surae/study';
import type { GivenSettings } from './settings-file.ts';
import { UsageError } from './usage-error.ts';
import type { WorkItem } from './work-list.ts';

/** The settings of a study and the parameters of its protocol, with what one assessment has in their place. */
export function studySettings(study: StudyFile, assessment: Pick<Assessment, 'protocol' | 'settings'>): GivenSettings {
  return {
    settings: settingsWith(study, assessment.settings),
    adjust: (protocol) => {
      const adjusted = withParameters(protocol, { ...study.protocol.parameters, ...assessment.protocol });
      if (adjusted.ok) return adjusted.value;
      const { path, expected, actual } = adjusted.problems[0]!;
      throw new UsageError(`protocol.${path}: expected ${expected}, got ${actual}`);
    },
  };
}

/** A row of the manifest as the study does it: by its test and its protocol, or refused where the row says another. */
export function studyItem({ test, protocol }: StudyFile, item: WorkItem): WorkItem {
  const { about, file } = item;
  const refusal =
    item.refusal ??
    (about.test !== undefined && about.test !== test
      ? `${file}: the study does the test ${test}, the manifest says ${about.test}`
      : about.protocol !== undefined && about.protocol !== protocol.id
        ? `${file}: the study does the protocol ${protocol.id}, the manifest says ${about.protocol}`
        : undefined);
  return { ...item, about: { ...about, test, protocol: protocol.id }, refusal };
}
