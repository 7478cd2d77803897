import { sentences } from '../sentence.ts';

/** Words of totals of questionnaires: how they are written down, and how they went over time. */
export const TOTAL_WORDS = sentences('screen.total', {
  'which-one': 'Which questionnaire?',
  'only-the-total': 'Only the total is kept here. The questions belong to whoever holds the rights in them.',
  'total-field': 'Total',
  range: '{least} to {most}, and {best} is best.',
  'version-field': 'Language version, as printed on the sheet',
  'which-side': 'Is it about one leg?',
  'no-side': 'not one leg',

  'which-missing': 'Which questionnaire it is, is needed.',
  'version-missing': 'The language version is needed: totals of two versions are not compared.',
  'total-missing': 'The total is needed.',
  'total-range': 'A total from {least} to {most} is needed here.',

  'known-of': '{name}{side} ({version}): {total}, from {least} to {most}, and {best} is best.',
  'of-side': ', {side}',

  title: 'Questionnaires',
  'one-only': '{name}: one total so far; a change needs two.',
  better: '{name}: better by {points} points, from {from} on {day} to {now}.',
  worse: '{name}: worse by {points} points, from {from} on {day} to {now}.',
  equal: '{name}: the same total as on {day}, {now}.',
  'important-yes':
    'People would call that important, as far as is published: it is more than {low} to {high} points, the uncertainty of the figure of {value}.',
  'important-no': 'By what is published that is less than people call important: {low} to {high} points.',
  'important-cannot-tell':
    'Cannot tell whether people would call that important: it lies within {low} to {high} points, the uncertainty of the published figure of {value}.',
  'important-open': 'Cannot tell whether people would call that important: no figure with its uncertainty is known.',
  'worse-open': 'What is published is about getting better; it does not tell from when on getting worse matters.',
  'wobble-yes': 'That is more than the usual wobble of this total, {value} points.',
  'wobble-no': 'Cannot tell it from the usual wobble of this total, {value} points.',
  apart: 'A total of another language version stands apart, and is not compared.',
  'figure-of': '{value} points ({low} to {high}), {group}: {source}.',
  'figure-open': '{value} points, without its uncertainty, {group}: {source}.',
  'weeks-of': '{figure} After {weeks} weeks.',
  'wobble-of': 'Wobble of {value} points: {source}.',
  'range-of': 'Range: {source}.',
  rest: 'What this rests on',
  'table-of': '{name}, the newest first',
  version: 'Version',
  told: 'Picture. {name}, from {least} to {most}, and {best} is best: {points}.',
});
