import { sentences } from '../sentence.ts';

/** Words of an episode where it stands beside others: in a list of people, as the name of its page. */
export const EPISODE_LINE_WORDS = sentences('screen.episode-line', {
  title: 'What is it about?',
  link: 'Write down the episode',
  'link-kept': 'Episode',
  'link-of': 'Write down the episode of {name}',
  'link-kept-of': 'Episode of {name}',
  'line-left': 'left leg, {where}',
  'line-right': 'right leg, {where}',
  'line-both': 'both legs, {where}',
  'line-each': 'left leg, {left}; right leg, {right}',
  'line-since': '{what}, since {date}',
  'line-told': '{what}, told on {date}',
  'line-over': '{what}, until {date}',
});
