export { type Amendment, type MadeWhen, madeWhen, type StudyLine, studyLine } from './declared/amendments.ts';
export { type ChoiceValue, choiceOf, declaredValue } from './declared/declared-choice.ts';
export { OUTCOME_COLUMNS, outcomeColumn } from './declared/outcome-columns.ts';
export { type DeclaredStudy, parseStudy } from './declared/parse-study.ts';
export {
  type Exclusion,
  type ExclusionRule,
  type PerPerson,
  type StudyFile,
  studyJsonSchema,
} from './declared/study-document.ts';
export { type AnyProtocol, protocolWith, settingsWith } from './declared/study-protocol.ts';
export { StudyError, type StudyErrorCode, type StudyErrorDetails } from './errors.ts';
