import { withParameters } from '@surae/analysis';
import type { StudyFile } from '../declared/study-document.ts';
import { settingsWith } from '../declared/study-protocol.ts';
import { StudyError } from '../errors.ts';
import type { GivenSettings } from '../listed/given-settings.ts';
import { ListFault } from '../listed/list-fault.ts';
import { cellsOf } from '../listed/listed-facts.ts';
import { manifestItems, type PlaceOf } from '../listed/manifest-items.ts';
import { NOTHING_GIVEN, type WorkItem } from '../listed/work-list.ts';
import type { Assessment } from '../multiverse/analyses.ts';
import { isOfStudy } from '../quality/trial-figures.ts';

/**
 * The settings of a study and the parameters of its protocol, with what one assessment has in their place.
 *
 * @throws {@link StudyError} `bad-file` for a setting or a parameter that cannot be
 */
export function studySettings(study: StudyFile, assessment: Pick<Assessment, 'protocol' | 'settings'>): GivenSettings {
  return {
    settings: settingsWith(study, assessment.settings),
    adjust: (protocol) => {
      const adjusted = withParameters(protocol, { ...study.protocol.parameters, ...assessment.protocol });
      if (adjusted.ok) return adjusted.value;
      const { path, expected, actual } = adjusted.problems[0]!;
      throw new StudyError('bad-file', { path: `protocol.${path}`, expected, actual });
    },
  };
}

/** A row of the manifest as the study does it: by its test and its protocol, or refused where the row says another. */
function studyItem({ test, protocol }: StudyFile, item: WorkItem): WorkItem {
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

/**
 * The rows of a manifest that belong to a study.
 *
 * @param path - name of the manifest, for refusals
 * @throws {@link ListFault} where it cannot be read, names a file twice, or has none of the study
 */
export function studyItems(study: StudyFile, path: string, bytes: Uint8Array, placeOf: PlaceOf): WorkItem[] {
  const items = manifestItems(path, bytes, NOTHING_GIVEN, placeOf)
    .filter((item) => isOfStudy(study, { cells: cellsOf({ item }) }))
    .map((item) => studyItem(study, item));
  const seen = new Set<string>();
  const twice = items.find(({ file }) => seen.size === seen.add(file).size);
  if (twice !== undefined) throw new ListFault(`${path}: expected every file once, got "${twice.file}" twice`);
  if (items.length === 0) throw new ListFault(`${path}: no row has what the study says of its trials`);
  return items;
}
