import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { legsFile } from '../../../apps/dashboard/src/legs/legs-file.ts';
import { paperColours } from '../../../apps/dashboard/src/legs/legs-style.ts';
import { type LegsView, legsView } from '../../../apps/dashboard/src/legs/legs-view.ts';
import { redFlags } from '../../../apps/dashboard/src/legs/red-flags.ts';
import { drawn, escaped } from '../../../apps/dashboard/src/sheet/sheet-markup.ts';
import { made } from '../../support/legs-visit.ts';
import { inProject } from '../../support/project.ts';

async function view(): Promise<LegsView> {
  const { visit, person, earlier } = await made(
    { day: '2026-03-02', left: { count: 27 }, right: { count: 19 } },
    { day: '2026-04-27', left: { count: 27 }, right: { count: 24 } },
  );
  return legsView(visit, person, earlier);
}

const contentOf = (one: LegsView): string => String(legsFile(one).content);

/** Texts between tags, as a reader sees them. */
function shown(html: string): string {
  return html.slice(html.indexOf('<body>')).replaceAll(/<[^>]*>/g, '\n');
}

test('everything that the page says stands in the file, the red flags before all else', async () => {
  const given = await view();
  const text = shown(contentOf(given));
  for (const sentence of given.tests.flatMap(({ sentences }) => sentences)) expect(text).toContain(escaped(sentence));
  for (const flag of redFlags(null).lines) expect(text).toContain(flag);
  expect(text.trim().startsWith(redFlags(null).title)).toBe(true);
  expect(text).toContain('Supports a clinician&#39;s judgement. Not a diagnosis.');
  expect(contentOf(given).match(/<svg /g)).toHaveLength(2);
});

test('it needs nothing else and runs nothing: no script, no address, no name', async () => {
  const html = contentOf(await view());
  expect(html).not.toMatch(/<script|<link|<img|<iframe|\bon\w+=|\bsrc=|\bhref=|https?:|url\(|@import|javascript:/i);
  expect(html).toContain(`content="default-src 'none'; style-src 'unsafe-inline'"`);
  expect(html).not.toMatch(/Nameless|1988/);
  expect(legsFile(await view())).toMatchObject({ name: 'surae-my-two-legs-20260427.html', type: 'text/html' });
});

test('whatever the data hold, none of it becomes markup', async () => {
  const given = await view();
  const [first] = given.tests as [LegsView['tests'][number]];
  const evil = `"><script>alert('&')</script>`;
  const points = [0, 1].map((day) => ({ day, at: '2026-03-02', value: 3 }));
  const hostile: LegsView = {
    contact: { name: evil, telephone: evil },
    at: given.at,
    isOneLeg: false,
    day: evil,
    notes: [evil],
    plan: ['Holds <slow>: right leg'],
    tests: [
      {
        title: evil,
        sentences: [evil, evil],
        figures: { ...first.figures, title: evil, unit: evil },
        lines: [{ side: 'left', points, band: { fromDay: 0, low: 1, high: 2 } }],
        changes: [],
        test: 'heel-raise',
        unit: 'count',
        words: { ...first.words, unit: evil },
      },
    ],
  };
  const html = contentOf(hostile);
  expect(html).not.toContain('<script');
  expect(html).toContain('<li>Holds &lt;slow&gt;: right leg</li>');
  expect(html.split('&quot;&gt;&lt;script&gt;alert(&#39;&amp;&#39;)&lt;/script&gt;')).toHaveLength(9);
  expect(html.split('<section').length).toBe(html.split('</section>').length);
  expect(escaped(`&<>"'`)).toBe('&amp;&lt;&gt;&quot;&#39;');
});

test('nothing of a picture becomes markup: its alternative, its attributes, its words', () => {
  const evil = '"><b>';
  const picture = { label: evil, width: 1, height: 1 };
  const html = drawn({ ...picture, marks: [{ tag: 'text', attributes: { class: evil }, text: evil }] });
  expect(html).not.toContain('<b>');
  expect(html.split('&quot;&gt;&lt;b&gt;')).toHaveLength(4);
});

test('every element that is opened is closed, in its order', async () => {
  const html = contentOf(await view()).replace(/<!doctype html>|<meta [^>]*>/g, '');
  const opened: string[] = [];
  for (const [, end, name] of html.matchAll(/<(\/?)([a-z]\w*)[^>]*>/g)) {
    if (end === '') opened.push(name);
    else expect(opened.pop()).toBe(name);
  }
  expect(opened).toEqual([]);
});

test('its colours are those of the light paper of the page', () => {
  const tokens = readFileSync(inProject('apps/dashboard/src/styles/tokens.css'), 'utf8');
  for (const [name, colour] of Object.entries(paperColours)) {
    expect(tokens).toContain(`--${name}: light-dark(${colour}, `);
  }
});

test('a visit in which nothing was measured says so', async () => {
  const { visit, person, earlier } = await made({ day: '2026-03-02' });
  expect(shown(contentOf(legsView(visit, person, earlier)))).toContain('Nothing was measured in this visit.');
});

test('whom the clinic named stands in the file, and cannot become markup', async () => {
  const text = contentOf({ ...(await view()), contact: { name: 'Mill <b>&</b> Co', telephone: '000 11 22' } });
  expect(text).toContain('ring Mill &lt;b&gt;&amp;&lt;/b&gt; Co, 000 11 22, today');
});
