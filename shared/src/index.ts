export type { Column } from './columns/column.ts';
export { CHANGE_COLUMNS, LEG_COLUMNS, LEGS_COLUMNS, RATIO_COLUMNS } from './columns/comparison-columns.ts';
export { EFFORT_COLUMNS } from './columns/effort-columns.ts';
export { IMPULSE_SPAN, RATE_SPANS, REACHED_SHARES } from './columns/force-units.ts';
export { REPETITION_HAND_COLUMNS, SET_HAND_COLUMNS } from './columns/hand-columns.ts';
export { BELOW_SHARES, COUNT_SHARES } from './columns/height-shares.ts';
export { HOP_COLUMNS, HOP_SERIES_COLUMNS } from './columns/hop-columns.ts';
export { MANIFEST_NUMBERS, type NumberColumn } from './columns/manifest-numbers.ts';
export { CALIBRATION_COLUMNS, PULL_COLUMNS } from './columns/pull-columns.ts';
export { REPETITION_COLUMNS } from './columns/repetition-columns.ts';
export { SET_COLUMNS } from './columns/set-columns.ts';
export {
  PERSON_COLUMNS,
  PRACTICE_COLUMNS,
  REACH_COLUMNS,
  RECOUNT_COLUMNS,
  SAMPLE_COLUMNS,
  TOTAL_COLUMNS,
  TRIAL_FRAME_COLUMNS,
  TRIAL_KEY_COLUMNS,
  VISIT_COLUMNS,
} from './columns/study-columns.ts';
export type { CriterionEntry, Observability, ObservingPlacement } from './criteria/criterion-entry.ts';
export { CRITERIA, CRITERION_IDS, type CriterionId } from './criterion.ts';
export type { Entry, EvidenceMark } from './entry.ts';
export { FAULT_KINDS, type FaultKind } from './fault-kind.ts';
export type { HopParameterName, HopParameters, HopProtocol } from './hop-protocol.ts';
export { OBSERVABILITY, type ObservabilityEntry } from './observability.ts';
export type { ChoiceParameter, NumberParameter } from './parameter.ts';
export type {
  EndReason,
  ParameterName,
  Protocol,
  ProtocolParameters,
  ReferenceRule,
  RepetitionMaximum,
  Surface,
} from './protocol.ts';
export { PROTOCOLS } from './protocols/all.ts';
export { HOP_PROTOCOLS, HOP_SERIES, HOP_SERIES_BEAT } from './protocols/hop-series.ts';
export {
  PULL_PROTOCOLS,
  SEATED_FAST_PULL,
  SEATED_PULL,
  STRAIGHT_FAST_PULL,
  STRAIGHT_PULL,
} from './protocols/isometric.ts';
export { COUNT_30_S, TOLERANCE_PROBE } from './protocols/limited.ts';
export { SEATED_BLOCK, SEATED_BLOCK_SLOW, SEATED_FLOOR, SEATED_FLOOR_SLOW } from './protocols/seated.ts';
export { BENT_KNEE, DOUBLE_LEG, FLOOR, INCLINE_10, LOADED, SLOW_TEMPO, STEP } from './protocols/to-fatigue.ts';
export type { PullParameterName, PullParameters, PullProtocol, PullScoreRule } from './pull-protocol.ts';
export {
  CHANGE_ZONE_SENTENCES,
  COMPARE_CAUTION_SENTENCES,
  COMPARE_SENTENCES,
  NO_CHANGE_SENTENCES,
  NO_REFERENCE_SENTENCES,
  OWN_RATIO_SENTENCES,
  RATIO_BLOCK_SENTENCES,
  RATIO_ERROR_SENTENCES,
  RATIO_UNBLOCK_SENTENCES,
  VALUE_BLOCK_SENTENCES,
  VALUE_UNBLOCK_SENTENCES,
} from './sentences/compare-sentences.ts';
export {
  EXERCISE_HOW_WORDS,
  EXERCISE_WORDS,
  PLAN_ADVICE_CHOICES,
  RUN_WHY_CHOICES,
} from './sentences/exercise-sentences.ts';
export {
  GUIDANCE_CHANGED_BY,
  GUIDANCE_FACT_WORDS,
  GUIDANCE_SENTENCES,
  GUIDANCE_SETTLED_BY,
} from './sentences/guidance-sentences.ts';
export {
  HOP_CAUTION_SENTENCES,
  HOP_ENTRY_SENTENCES,
  HOP_WITHHELD_SENTENCES,
  NO_SERIES_SENTENCES,
} from './sentences/hop-sentences.ts';
export { IMPORT_EVIDENCE, IMPORT_FINDINGS, IMPORT_QUESTIONS } from './sentences/import-sentences.ts';
export {
  FINDING_INPUT_NAMES,
  LEG_COMPARISON_SENTENCES,
  REFERENCE_CAUTION_SENTENCES,
} from './sentences/leg-sentences.ts';
export { LETTER_SENTENCES } from './sentences/letter-sentences.ts';
export {
  ACCEPT_NAMES,
  ACCEPT_SENTENCES,
  ANOTHER_SENTENCES,
  CONSISTENCY_SENTENCES,
  NO_EFFORT_SENTENCES,
  NO_RATE_SENTENCES,
  PULL_EFFORT_SENTENCES,
  PULL_END_CLASS_SENTENCES,
  PULL_GATE_SENTENCES,
  PULL_QUALITY_SENTENCES,
  PULL_SCORE_SENTENCES,
  PULL_WITHHELD_SENTENCES,
  START_NAMES,
  WARM_UP_SENTENCES,
} from './sentences/pull-sentences.ts';
export { RULE_NUMBER_WORDS } from './sentences/rule-number-sentences.ts';
export {
  LOAD_DOUBT_SENTENCES,
  LONGEST_RUN_SENTENCES,
  NO_THRESHOLD_SENTENCES,
  RACE_OPEN_SENTENCES,
  RACE_SENTENCES,
  RETURN_SENTENCES,
  RUN_SETTLED_BY,
  RUN_STEP_SENTENCES,
  THRESHOLD_DOUBT_SENTENCES,
} from './sentences/running-sentences.ts';
export { ACTIVITY_WORDS } from './sentences/screens/activity-words.ts';
export {
  ADVICE_FROM_WORDS,
  ADVICE_MISSING_WORDS,
  ADVICE_VALUE_WORDS,
  ADVICE_WORDS,
  DECLINE_CHOICES,
  type DeclineReason,
  PAIN_BAND_WORDS,
} from './sentences/screens/advice-words.ts';
export { ASKED_CHOICES, ASKED_WORDS } from './sentences/screens/asked-words.ts';
export { BILATERAL_WORDS, LEGS_BOTH_WORDS } from './sentences/screens/bilateral-words.ts';
export { CALENDAR_WORDS } from './sentences/screens/calendar-words.ts';
export { CHOICE_BLOCK_SENTENCES, CHOICE_REASONS, CHOICE_WORDS } from './sentences/screens/choice-words.ts';
export {
  AUDIT_WORDS,
  BANNER_WORDS,
  CLINIC_WORDS,
  DOOR_WORDS,
  ERASE_WORDS,
  RECORD_PROBLEMS,
} from './sentences/screens/clinic-words.ts';
export {
  COMPARED_WORDS,
  FEATURE_VALUE_WORDS,
  FEATURE_WORDS,
  GROUP_WORDS,
  LEG_WORDS,
  PAST_WORDS,
  SIDE_WORDS,
  TARGET_WORDS,
  TOGETHER_WORDS,
} from './sentences/screens/compare-words.ts';
export { CONTACT_WORDS } from './sentences/screens/contact-words.ts';
export { COURSE_WORDS, LOG_WORDS, TREND_WORDS } from './sentences/screens/course-words.ts';
export { DESIGN_WORDS } from './sentences/screens/design-words.ts';
export { DEVICE_ERRORS, SOURCE_ERRORS } from './sentences/screens/device-words.ts';
export {
  END_CHOICES,
  ENDING_WORDS,
  REDO_REASONS,
  RUPTURE_WORDS,
  STOP_STEPS,
} from './sentences/screens/ending-words.ts';
export { EPISODE_LINE_WORDS } from './sentences/screens/episode-line-words.ts';
export { EPISODE_WORDS } from './sentences/screens/episode-words.ts';
export { EXPORT_WORDS } from './sentences/screens/export-words.ts';
export { FRAME_WORDS, START_WORDS, STEP_WORDS } from './sentences/screens/frame-words.ts';
export { HAND_OVER_WORDS } from './sentences/screens/hand-over-words.ts';
export {
  HAND_CRITERIA,
  HAND_REASONS,
  HAND_REASONS_FOR,
  HAND_VERDICT_WORDS,
} from './sentences/screens/hand-verdict-words.ts';
export { HAND_SWITCH_WORDS, HAND_WORDS } from './sentences/screens/hand-words.ts';
export { HISTORY_WORDS } from './sentences/screens/history-words.ts';
export { HOPS_WORDS } from './sentences/screens/hops-words.ts';
export { IMPORT_WORDS } from './sentences/screens/import-words.ts';
export { LADDER_WORDS } from './sentences/screens/ladder-words.ts';
export { LEGS_NEXT_WORDS } from './sentences/screens/legs-next-words.ts';
export { LEGS_FLAG_WORDS, LEGS_WORDS } from './sentences/screens/legs-words.ts';
export { FLARE_WORDS, LOAD_WORDS, MATCHED_WORDS, RUN_LOAD_WORDS } from './sentences/screens/load-words.ts';
export { MARK_WORDS } from './sentences/screens/mark-words.ts';
export { MASS_CHOICE_WORDS } from './sentences/screens/mass-choice-words.ts';
export { HOME_WORDS, MORNING_CHOICES, MORNINGS_IN_WORDS } from './sentences/screens/morning-words.ts';
export { NEW_START_WORDS } from './sentences/screens/new-start-words.ts';
export { OWN_ERROR_WORDS } from './sentences/screens/own-error-words.ts';
export {
  AUDIT_PLACE,
  CLINIC_PLACE,
  COURSE_PLACE,
  DESCRIBE_PLACE,
  ERASE_PLACE,
  IMPORT_PLACE,
  LEGS_PLACE,
  MORNINGS_IN_PLACE,
  OWN_ERROR_PLACE,
  REPORT_PLACE,
  RULES_PLACE,
  SENSOR_PLACE,
} from './sentences/screens/place-words.ts';
export {
  PLAN_LINE_WORDS,
  PLAN_RULE_CHANGED_BY,
  PLAN_RULE_READS,
  PLAN_RULE_SENTENCES,
  PLAN_WORDS,
} from './sentences/screens/plan-words.ts';
export { PRACTICE_WORDS } from './sentences/screens/practice-words.ts';
export {
  PULL_ENDING_WORDS,
  PULL_READY_WORDS,
  PULL_REST_WORDS,
  PULL_RESULT_WORDS,
  PULL_WORDS,
  TEST_CHOICE_WORDS,
} from './sentences/screens/pull-words.ts';
export { REACH_WORDS } from './sentences/screens/reach-words.ts';
export { RECOUNT_STUDY_WORDS } from './sentences/screens/recount-study-words.ts';
export { RECOUNT_WORDS } from './sentences/screens/recount-words.ts';
export { REPORT_WORDS } from './sentences/screens/report-words.ts';
export { REST_WORDS, SWAP_WORDS } from './sentences/screens/rest-words.ts';
export { AXIS_WORDS, REPETITION_WORDS, RESULT_WORDS } from './sentences/screens/result-words.ts';
export {
  OWN_NUMBER_WHY,
  RULE_GROUP_WORDS,
  RULES_FILE_WORDS,
  RULES_WORDS,
  TOUCH_WORDS,
} from './sentences/screens/rules-words.ts';
export { RUN_FILE_WORDS } from './sentences/screens/run-file-words.ts';
export {
  LOCK_WORDS,
  SAFETY_BLOCK_SENTENCES,
  SAFETY_NOTE_SENTENCES,
  SAFETY_REASONS,
  SAFETY_WORDS,
} from './sentences/screens/safety-words.ts';
export { SAME_LEG_WORDS } from './sentences/screens/same-leg-words.ts';
export {
  DESCRIBE_WORDS,
  HELD_WORDS,
  LIVE_WORDS,
  SENSOR_KIND_WORDS,
  SENSOR_WORDS,
} from './sentences/screens/sensor-words.ts';
export { SET_UP_WORDS } from './sentences/screens/set-up-words.ts';
export { SORENESS_WORDS } from './sentences/screens/soreness-words.ts';
export { STORE_ERRORS } from './sentences/screens/store-words.ts';
export { STUDY_QUALITY_WORDS } from './sentences/screens/study-quality-words.ts';
export { STUDY_RESULT_WORDS } from './sentences/screens/study-result-words.ts';
export { STUDY_WORDS } from './sentences/screens/study-words.ts';
export { SUMMARY_WORDS } from './sentences/screens/summary-words.ts';
export { CHART_WORDS, KEEP_WORDS, READY_WORDS, TEST_WORDS } from './sentences/screens/test-words.ts';
export { HOME_TODAY_WORDS } from './sentences/screens/today-home-words.ts';
export { TODAY_WORDS } from './sentences/screens/today-words.ts';
export { TOTAL_WORDS } from './sentences/screens/total-words.ts';
export { NO_MAXIMUM_SENTENCES, SEATED_SENTENCES } from './sentences/seated-sentences.ts';
export type { Sentence, Sentences } from './sentences/sentence.ts';
export {
  EMPTY_BY_WORDS,
  GUESS_ANSWERS,
  GUESS_CONTRADICTIONS,
  GUESS_EVIDENCE,
  GUESS_FOUND,
  GUESS_QUESTIONS,
  LIGHT_FIXES,
  LIGHT_SENTENCES,
  MASS_REFUSALS,
  REST_LOAD_REFUSALS,
  SOURCE_LIGHT_SENTENCES,
  ZERO_REFUSALS,
} from './sentences/setup-sentences.ts';
export {
  DOUBT_SENTENCES,
  GATE_SENTENCES,
  INPUT_SENTENCES,
  ISSUE_SENTENCES,
  REFUSAL_SENTENCES,
  WITHHELD_SENTENCES,
} from './sentences/signal-sentences.ts';
export {
  CRITERION_NAMES,
  CRITERION_SENTENCES,
  EFFORT_SENTENCES,
  END_CLASS_SENTENCES,
  END_REASON_SENTENCES,
  END_RULE_SENTENCES,
  FAULT_KIND_SENTENCES,
  NOT_OBSERVED_SENTENCES,
  REFERENCE_SENTENCES,
  SCOPE_SENTENCES,
  VERDICT_SENTENCES,
} from './sentences/verdict-sentences.ts';
export { inWords, setWording, type Wording } from './sentences/wording.ts';
export { CALENDAR_LIMITS, type CalendarLimit } from './tables/calendar-limits.ts';
export {
  CHOICE_PROPOSALS,
  CHOICE_RULES,
  type ChoiceLimit,
  type ChoiceProposal,
  type ChoiceRule,
  type ChoiceRuleCode,
  FEW_RAISES,
} from './tables/choice-rules.ts';
export { COMPARISON_RULES, type ComparisonRule } from './tables/comparison-rules.ts';
export {
  EXERCISES,
  type ExerciseBegin,
  type ExerciseEntry,
  type ExerciseMove,
  type ExerciseSurface,
} from './tables/exercises.ts';
export { FLARE_TIMES, type FlareTime, type LastFlare } from './tables/flare-times.ts';
export { GUIDANCE_FACTS } from './tables/guidance/all-facts.ts';
export { GUIDANCE_RULES } from './tables/guidance/all-rules.ts';
export { ASKED_FACTS, type AskedAnswer, type AskedFact } from './tables/guidance/asked-facts.ts';
export type { Condition } from './tables/guidance/condition.ts';
export type { DoseLine, DoseSpan } from './tables/guidance/dose-line.ts';
export type { FactEntry } from './tables/guidance/fact-entry.ts';
export { FLARE_NUMBERS } from './tables/guidance/flare-numbers.ts';
export {
  HEAVY_SLOW,
  HEAVY_SLOW_EXERCISES,
  HEAVY_SLOW_LINES,
  HEAVY_SLOW_REST,
  type HeavySlowRow,
} from './tables/guidance/heavy-slow.ts';
export { LEVELS, type LevelEntry } from './tables/guidance/levels.ts';
export { FIXED_NUMBERS, type FixedWhy, type NumberBound, RULE_NUMBER_BOUNDS } from './tables/guidance/number-bounds.ts';
export { PROGRAMMES, type ProgrammeEntry } from './tables/guidance/programmes.ts';
export { FULL_RETURN, KEEP_UP, type ReturnCriterion, START_RUNNING } from './tables/guidance/return-criteria.ts';
export type { GuidanceRule, RuleEdit, RuleNumber, RuleProposal, Touch } from './tables/guidance/rule-entry.ts';
export { RUN_LOADS } from './tables/guidance/run-loads.ts';
export {
  ACTIVITY_FIGURES,
  LONGEST_RUN_BANDS,
  type LongestRunBand,
  type PublishedFigure,
} from './tables/guidance/running-evidence.ts';
export { RUNNING_NUMBERS, type RunningNumbers } from './tables/guidance/running-numbers.ts';
export {
  RELATIVE_LOADS,
  type RelativeLoad,
  TENDON_LOADS,
  type TendonLoad,
  type TendonMethod,
} from './tables/guidance/tendon-loads.ts';
export { TOLERANCE_RUNGS, type ToleranceRung } from './tables/guidance/tolerance-rungs.ts';
export { TREND_NUMBERS } from './tables/guidance/trend-numbers.ts';
export { GUIDANCE_VARIABLES, type GuidanceVariable } from './tables/guidance/variables.ts';
export {
  type GradedChoice,
  type GradedNumber,
  IRRITABILITY_GRADES,
  IRRITABILITY_INPUTS,
  type IrritabilityGrade,
} from './tables/irritability-grades.ts';
export {
  KNEE_TO_WALL_CHANGES,
  KNEE_TO_WALL_SCALES,
  KNEE_TO_WALL_TRIALS,
  type KneeToWallChange,
  type KneeToWallRule,
} from './tables/knee-to-wall.ts';
export { LADDER_RUNGS, type LadderRung, type LadderRungEntry } from './tables/ladder-rungs.ts';
export { MATCHED_PUSH } from './tables/matched-push.ts';
export { MORNING_LIMITS, STIFFNESS_LIMITS } from './tables/morning-limits.ts';
export { OPTIONAL_TARGETS, type OptionalTarget } from './tables/optional-targets.ts';
export { PAIN_BANDS, type PainBand } from './tables/pain-bands.ts';
export {
  INSERTION_LOWEST,
  PLAN_BOUNDS,
  PLAN_OPEN_LINES,
  PLAN_RULES,
  type PlanBound,
  type PlanBoundName,
  type PlanRule,
  type PlanRuleCode,
} from './tables/plan-rules.ts';
export {
  type ImportantChange,
  QUESTIONNAIRES,
  type QuestionnaireEntry,
  type TotalWobble,
} from './tables/questionnaires.ts';
export { REFERENCE_TABLES, type ReferenceEntry } from './tables/reference-tables.ts';
export { RELIABILITY_TABLES, type ReliabilityEntry } from './tables/reliability-tables.ts';
export { RUN_FILE_LIMITS, type RunFileLimit } from './tables/run-file-limits.ts';
export { SAFETY_LIST, SAFETY_LIST_VERSION, type SafetyEntry } from './tables/safety-list.ts';
export { SAFETY_FIGURES, SAFETY_NOTES, type SafetyFigure, type SafetyNote } from './tables/safety-notes.ts';
export { SAME_LEG_RULES, type SameLegRule } from './tables/same-leg-rules.ts';
export { SIGNAL_RULES, type SignalRule } from './tables/signal-rules.ts';
export { RETEST_TIMES, type RetestTime, TODAY_RULES, type TodayRule } from './tables/today-rules.ts';
export { WARM_UP, type WarmUpEntry } from './tables/warm-up.ts';
