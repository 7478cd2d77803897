import { defaultSettings } from '@surae/analysis';
import { noOwnErrors } from '@surae/casebook';
import { letterParagraphs, recordStudy, withInterval } from '@surae/exchange';
import { REPORT_WORDS, SCOPE_SENTENCES } from '@surae/shared';
import { MemoryStore } from '@surae/storage';
import { beforeAll, describe, expect, test } from 'vitest';
import { VisitBook } from '../../../apps/dashboard/src/journey/visit-book.ts';
import { reportFile } from '../../../apps/dashboard/src/report/report-file.ts';
import { type Reported, reportSheet } from '../../../apps/dashboard/src/report/report-sheet.ts';
import { comparisonsOf } from '../../../apps/dashboard/src/result/comparisons.ts';
import { leadsOf } from '../../../apps/dashboard/src/result/leads-of.ts';
import { type SheetPart, sheetTexts } from '../../../apps/dashboard/src/sheet/sheet.ts';
import { JUDGING_WORDS } from '../../support/judging-words.ts';
import { documentsOf, type ToldVisit, tellVisits } from '../../support/told-visit.ts';

const who = { name: 'Runa <b>', bodyMassKg: 71.5, heelLeverM: null, sex: 'women', birthYear: 1988 } as const;

/** A report of the last of these visits, and what the letter about it says. */
async function reported(...visits: readonly ToldVisit[]): Promise<{ readonly of: Reported; readonly letter: string }> {
  const store = new MemoryStore();
  const ids = await tellVisits(store, who, visits);
  const id = ids.at(-1)!;
  const book = new VisitBook(store, { isoNow: () => '2026-12-01T09:00:00.000+01:00' }, 'test');
  const { visit, person, earlier } = (await book.visitAndPast(id))!;
  const documents = (await documentsOf(store)).map(({ document }) => document);
  const request = { settings: defaultSettings(), software: 'surae 0', read: null };
  const study = await recordStudy(documents, { ...request, extent: { of: 'visits', visitIds: [id] } });
  const letter = letterParagraphs(study.people[0], study.visits[0], study.trials).flat().join('\n');
  const of = {
    visit,
    person: person!,
    earlier,
    own: noOwnErrors,
    plan: ['Slow raises: 3 times 15'],
    software: 'surae 0',
  };
  return { of, letter };
}

function tables(parts: readonly SheetPart[]): readonly Extract<SheetPart, { kind: 'table' }>[] {
  return parts.flatMap((part) => (part.kind === 'table' ? [part] : part.kind === 'section' ? tables(part.parts) : []));
}

const rowsOf = (of: Reported): readonly (readonly string[])[] => tables(reportSheet(of)).flatMap(({ rows }) => rows);

describe('a report', () => {
  let both: Awaited<ReturnType<typeof reported>>;

  beforeAll(async () => {
    both = await reported(
      { day: '2026-03-02', left: { count: 27 }, right: { count: 19 } },
      {
        day: '2026-04-27',
        left: { count: 27 },
        right: { count: 12, reason: 'pain', pain: 6 },
        pushes: { left: { netN: 912 }, right: { netN: 845 } },
      },
    );
  });

  test('has the figures of the letter, to the last digit', () => {
    const [count] = rowsOf(both.of);
    for (const cell of count.slice(1)) {
      const [value, low, high] = cell.match(/\d+/g)!.map(Number);
      expect(both.letter).toContain(withInterval(value, low, high, 0));
    }
    for (const netN of [912, 845]) {
      expect(both.letter).toContain(String(netN));
      expect(
        rowsOf(both.of)
          .flat()
          .some((cell) => cell.startsWith(`${netN}`)),
      ).toBe(true);
    }
  });

  test('names who, when, how each leg was tested and ended, the plan and the scope', () => {
    const texts = sheetTexts(reportSheet(both.of));
    expect(texts[1]).toBe('Runa <b>. Tested on 27 Apr 2026. Born 1988. Body mass 71.5 kg.');
    const row = (name: string) => rowsOf(both.of).filter(([first]) => first === name);
    expect(row(REPORT_WORDS.pain.text)[0][2]).toBe('6');
    for (const [, left, right] of row(REPORT_WORDS.fingerprint.text)) {
      expect(left).toMatch(/^[0-9a-f]{12}$/);
      expect(right).toBe(left);
    }
    expect(texts).toEqual(expect.arrayContaining(['Slow raises: 3 times 15', SCOPE_SENTENCES.scope.text]));
    expect(texts.at(-1)).toBe('Made by surae 0.');
  });

  test('tells the comparators, and where there is no ratio every reason and no percentage of the legs', () => {
    const texts = sheetTexts(reportSheet(both.of));
    expect(texts.filter((text) => text === REPORT_WORDS.beside.text)).toHaveLength(2);
    const { visit, person, earlier, own } = both.of;
    const { side, pasts, groups } = comparisonsOf(visit, person, earlier, own);
    const leads = [...leadsOf(pasts), ...leadsOf(groups)].map(({ text }) => text);
    expect(leads).toHaveLength(4);
    expect(side.ratio).toBeNull();
    expect(texts).toEqual(expect.arrayContaining([side.lead, side.note, ...leads]));
    for (const { why, unblock } of side.blocks) expect(texts).toContain(`${why} ${unblock}`);
  });

  test('judges nobody, and says nothing that is not known', () => {
    for (const text of sheetTexts(reportSheet(both.of))) {
      for (const word of JUDGING_WORDS) expect(text).not.toMatch(word);
      expect(text).not.toMatch(/NaN|undefined|null/);
    }
  });

  test('is one file that runs nothing, and whose name names nobody', () => {
    const { name, content } = reportFile(both.of);
    expect(name).toBe('surae-report-20260427.html');
    expect(String(content)).not.toMatch(/<script|https?:|\bhref=|\bsrc=|Runa <b>/);
    expect(String(content)).toContain('Runa &lt;b&gt;');
  });
});

test('a leg that was not tested says so, and nothing stands where nothing was measured', async () => {
  const { of } = await reported({ day: '2026-03-02', left: { count: 20 } });
  const rows = rowsOf({ ...of, plan: [] });
  expect(rows.find(([name]) => name === REPORT_WORDS.ended.text)?.[2]).toBe(REPORT_WORDS['not-tested'].text);
  expect(sheetTexts(reportSheet({ ...of, plan: [] }))).toContain(REPORT_WORDS['plan-none'].text);
  const nothing = await reported({ day: '2026-03-02' });
  expect(rowsOf(nothing.of).flat().join(' ')).not.toMatch(/\d+ \(/);
});
