import type { Guidance } from '@surae/guidance';
import { COURSE_PEOPLE, type CourseName } from '@surae/simulation';
import { type CourseDay, courseOf } from './course.ts';

const two = (one: number | null): string => (one === null ? '·' : String(one));

function said(guided: Guidance): string {
  const of = (about: string): string[] =>
    guided.together
      .filter((one) => one.about === about)
      .map(({ rule, standing }) => `${rule.code}${standing === 'waits' ? '?' : ''}`);
  const prompts = [
    ...new Set(
      guided.proposals
        .filter(({ about, rule }) => about === 'prompt' && !['go-on', 'heel-lift-middle'].includes(rule.code))
        .map(({ rule }) => rule.code),
    ),
  ];
  const all = [...of('start-level'), ...of('step'), ...of('change'), ...of('running'), ...of('run-start')];
  return `${guided.locked ? 'LOCKED ' : ''}${all.join(' ')}${prompts.length === 0 ? '' : ` [${prompts.join(' ')}]`}`;
}

function lineOf(one: CourseDay): string {
  const { day, plan, taken, isDone, isLogged, pain, mornings, run, isVisit, load, guided } = one;
  const week = Math.floor(day / 7) + 1;
  const done = isDone === null ? '' : !isDone ? 'not done' : `${isLogged ? 'done' : 'done, no log'} ${load.toFixed(1)}`;
  const ran =
    run === null
      ? ''
      : ` run:${run.next.step}${run.ranM === null ? '' : ` ${run.ranM} m`}${run.reach === null ? '' : ` race:${run.reach.held}`}`;
  return [
    `${String(day).padStart(2)} w${week}${isVisit ? ' visit' : ''}`.padEnd(12),
    `L${plan.level ?? '-'}`,
    `morning ${two(mornings.left)}/${two(mornings.right)}`.padEnd(12),
    said(guided).padEnd(44),
    `| ${taken.map(({ rule, did }) => `${rule}: ${did}`).join(', ')}`.padEnd(34),
    `| ${done}${isDone === true ? ` pain ${two(pain.left)}/${two(pain.right)}` : ''}${ran}`,
  ].join(' ');
}

/** A course as plain lines: the day, what was proposed, what was written into the plan, and how it went. */
export function printed(name: CourseName, seed: number, everyDay = false): string {
  const course = courseOf(COURSE_PEOPLE[name], seed);
  const lines = course
    .filter(
      (one, i) =>
        everyDay ||
        one.isVisit ||
        one.taken.length > 0 ||
        (i > 0 && said(one.guided) !== said(course[i - 1].guided)) ||
        one.run?.ranM != null,
    )
    .map(lineOf);
  return [`== ${COURSE_PEOPLE[name].name} (seed ${seed})`, ...lines, ''].join('\n');
}

export const names = Object.keys(COURSE_PEOPLE) as readonly CourseName[];
