import { RecordError } from '../errors.ts';
import type { Proposal } from '../guess/proposal.ts';
import { recipeOf } from './parse-recipe.ts';
import type { Recipe } from './recipe.ts';
import { recipeFingerprint } from './recipe-fingerprint.ts';

/**
 * The recipe that a proposal comes to, when nothing is asked any more.
 *
 * @param name - what people call it
 * @throws {@link RecordError} `not-answered` with what is open; the refusals of a recipe; `no-quantity`
 */
export function makeRecipe(proposal: Proposal, name: string, file?: string): Recipe {
  const { form, time, columns, odd, parts, kinds, names, groupRow, groupTimes, unitRow, questions } = proposal;
  const at = file === undefined ? {} : { file };
  // a rate may be told when a file is read: a recipe is one without it
  const open = questions.filter(({ topic }) => topic !== 'rate').map(({ id }) => id);
  if (open.length > 0) {
    throw new RecordError('not-answered', { ...at, expected: `answers to ${open.join(', ')}`, actual: 'none' });
  }
  const used = columns.flatMap((column) => {
    const quantity = column.use.value;
    if (quantity === null || quantity === 'unused') return [];
    return [
      {
        column: column.index,
        quantity,
        axis: column.axis.value,
        unit: column.unit.value!,
        side: column.side.value,
        placement: column.placement.value,
      },
    ];
  });
  if (used.length === 0) {
    const expected = 'a column of force, heel height, acceleration, angular velocity, torque or angle';
    throw new RecordError('no-quantity', { ...at, expected, actual: `${proposal.labels.join(', ')}` });
  }
  const { alike } = groupTimes;
  const isRead = new Set([
    time.column.value,
    ...alike,
    parts.by === 'column' ? parts.columnIndex : -1,
    ...used.map(({ column }) => column),
  ]);
  const isCounted = time.unit.value === 'sample';
  const thousands = form.thousands.value;
  const dates = form.dates.value;
  const decimalMark = form.decimal.value!;
  const described = {
    encoding: form.encoding.value!,
    delimiter: form.delimiter.value!,
    decimalMark,
    thousandsMark: thousands === null || thousands === 'none' || thousands === decimalMark ? null : thousands,
    ...(time.clock !== 'date-time' || dates === null || dates === 'none' ? {} : { dates }),
    header: names === null ? null : [...names],
    ...(groupRow === null ? {} : { groupRow: [...groupRow] }),
    unitRow: unitRow === null ? null : [...unitRow],
    fields: kinds.map((kind, i) =>
      isRead.has(i) && !(isCounted && i === time.column.value && alike.length === 0) ? kind : 'passed-over',
    ),
  } satisfies Partial<Recipe>;
  return recipeOf(
    {
      kind: 'surae-recipe',
      version: 1,
      name,
      fits: recipeFingerprint(described),
      ...described,
      missing: [...new Set(['nan', ...odd.missing.texts.map((text) => text.toLowerCase())])],
      footer: odd.footer.slice(0, 1).map(({ text }) => firstWord(text)),
      openEnd: odd.openEnd === null ? 'refused' : odd.openEnd.isRead ? 'read' : 'left-out',
      time: {
        column: isCounted || time.column.value! < 0 ? null : time.column.value,
        unit: time.unit.value!,
        rateHz: isCounted && !time.rateHz.asks ? time.rateHz.value : null,
        ...(alike.length === 0 ? {} : { alike: [...alike] }),
      },
      columns: used,
      people: parts.by === 'column' ? parts.columnIndex : null,
    } satisfies Recipe,
    file,
  );
}

/** What a footer begins with: its first word, or its first sign where it has none. */
function firstWord(text: string): string {
  return /^\s*(?:[\p{L}]+|\S)/u.exec(text)?.[0].trim() ?? text.slice(0, 1);
}
