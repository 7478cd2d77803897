export { agreementTable } from './blind/agreement-table.ts';
export { agreementOfPairs, type BlindFigure, blindAgreement, type PairOfCounts } from './blind/blind-agreement.ts';
export { type BlindSettings, blindDefaults } from './blind/blind-defaults.ts';
export {
  BLIND_VERDICTS,
  type BlindEntry,
  type BlindStep,
  type BlindVerdict,
  type ItemStep,
} from './blind/blind-step.ts';
export { blindTrials } from './blind/blind-trials.ts';
export {
  type BlindItem,
  type BlindKey,
  type BlindTrial,
  blindedOrder,
  blindingOf,
  keyHash,
} from './blind/blinded-order.ts';
export { type PairedTrial, type PairOfLists, pairedLists, requireOpened } from './blind/paired-lists.ts';
export { keyText, parseBlindKey } from './blind/parse-key.ts';
export { type AutomaticCount, type OpenedRater, type ToldRepetition } from './blind/told-counts.ts';
export { bookWith, emptyBook, itemsLeft, nextSteps, readVerdicts, type VerdictBook } from './blind/verdict-book.ts';
export {
  type ArmComparison,
  type ArmSummary,
  type ArmsNotCompared,
  type ComparedArms,
  compareArms,
  LEAST_PEOPLE,
  type NotCompared,
} from './compare/compare-arms.ts';
export { comparisonTable, peopleTable } from './compare/comparison-table.ts';
export { type Conclusion, conclusionOf } from './compare/conclusion.ts';
export { type MeanDifference, type Moments, pairedDifference, welchDifference } from './compare/mean-difference.ts';
export type { OwnError } from './compare/own-error.ts';
export { type Arm, armColumn, type PersonValue } from './compare/person-values.ts';
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
export {
  DESIGN_CASES,
  type DesignAnswer,
  type DesignCase,
  type DesignNeed,
  type DesignSingle,
  designAnswer,
} from './design/design-answer.ts';
export { designCommand, designOutputs } from './design/design-files.ts';
export type {
  DesignFault,
  DesignFaultCode,
  DesignId,
  DesignInput,
  DesignNote,
  DesignQuestion,
  InputKey,
} from './design/design-question.ts';
export {
  DESIGN_QUESTIONS,
  type DesignReading,
  type DesignRequest,
  type DesignTold,
  questionFor,
  readDesign,
} from './design/design-request.ts';
export { answerWords, attainedWords, CASE_WORDS, needWords } from './design/design-words.ts';
export { StudyError, type StudyErrorCode, type StudyErrorDetails } from './errors.ts';
export { type ChainEntry, entryLine } from './hash-chain.ts';
export {
  type AnyAssessed,
  type Assessed,
  assessListed,
  type BesideProtocols,
  type Outcome,
  type VariedReport,
} from './listed/assess-listed.ts';
export { type AssessedPulls, assessPullFile } from './listed/assess-pull-file.ts';
export { choosePlacement } from './listed/choose-placement.ts';
export type { GivenSettings } from './listed/given-settings.ts';
export { type AssessedHops, assessHopFile } from './listed/hop-file.ts';
export { type IssueRow, issueRows, twinIssue } from './listed/issue-rows.ts';
export { ListFault } from './listed/list-fault.ts';
export { cellsOf, listedFacts } from './listed/listed-facts.ts';
export { listedSource } from './listed/listed-source.ts';
export { entryItem, MANIFEST_WORDS, manifestItems, type PlaceOf, refuseTaken } from './listed/manifest-items.ts';
export type { PullCourse } from './listed/pull-course.ts';
export type { ReadPart, RowRecipe } from './listed/read-part.ts';
export { recipeItem } from './listed/recipe-item.ts';
export { type Refused, reasonOf, refused } from './listed/refused.ts';
export { FRAME_KEYS, reservedNames } from './listed/reserved-names.ts';
export {
  type GivenRecipe,
  givenRecipe,
  type ReadRecipe,
  RecipeShelf,
  readerOptions,
  rowRecipe,
  withKnownRecipes,
  withRecipes,
} from './listed/row-recipe.ts';
export { fingerprintHash, settingsHash } from './listed/settings-hash.ts';
export { hashedAs, hashOf, type Source } from './listed/source-of.ts';
export { NOTHING_TOLD, readTold, toldBy, type WrongCell } from './listed/told.ts';
export { type GivenAbout, NOTHING_GIVEN, type WorkItem } from './listed/work-list.ts';
export {
  type Analysis,
  type Assessment,
  analysesOf,
  assessmentsOf,
  choicesOf,
  MOST_ANALYSES,
  valueWords,
} from './multiverse/analyses.ts';
export { type AnalysisResult, type Multiverse, multiverse, type SingleChange } from './multiverse/multiverse.ts';
export { choicesTable, multiverseTable, outcomesTable } from './multiverse/multiverse-tables.ts';
export { type OutcomeShift, outcomeShifts } from './multiverse/outcome-shifts.ts';
export { agreementPicture } from './picture/agreement-picture.ts';
export { armWords, conclusionWords, contrastWords, estimateWords } from './picture/conclusion-words.ts';
export { designPicture } from './picture/design-picture.ts';
export { changedWords, estimatesPicture } from './picture/estimates-picture.ts';
export { notComparedWords, peoplePicture } from './picture/people-picture.ts';
export { movedWords, shiftWords } from './picture/shifts-picture.ts';
export { decimalsFor } from './picture/svg-page.ts';
export {
  DECISIONS,
  type Decision,
  type DecisionEntry,
  decide,
  decisionsStart,
  readDecisions,
  standingDecisions,
} from './quality/decisions.ts';
export { meetsRule, reasonsByRule } from './quality/exclusion-rules.ts';
export { isCompared, neededCells, type QualityFlag, type QualityRow, qualityRows } from './quality/quality-rows.ts';
export { qualityTable } from './quality/quality-table.ts';
export type { TrialFacts, TrialIssue } from './quality/trial-facts.ts';
export { isOfStudy, outcomeOf } from './quality/trial-figures.ts';
export {
  commandOf,
  madeLine,
  RECORD,
  type ReadInput,
  type ResultCommand,
  type StudyOrigin,
  type StudyOutput,
} from './results/study-files.ts';
export { studyItems, studySettings } from './results/study-items.ts';
export { type StudyMaking, type StudyResults, studyResults } from './results/study-results.ts';
export {
  type ReadRecording,
  type StudyTrial,
  type StudyTrials,
  studyTrial,
  studyTrials,
  type TrialOutcomes,
  trialOutcomes,
} from './results/study-trials.ts';
export type { StudyCell, StudyColumn, StudyTable } from './study-table.ts';
export type { NamedText } from './table-files.ts';
