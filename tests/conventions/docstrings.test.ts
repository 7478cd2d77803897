import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { projectText, sourceFiles } from '../support/project.ts';

/** What is missing in the docstrings of the exported functions of one file. */
function problemsOf(path: string, text: string): string[] {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.ES2023, true);
  return exportedFunctions(source).flatMap(({ name, node, declared }) => {
    const lines = comment(declared, text);
    if (lines === undefined) return [`${path}: ${name} has no docstring`];
    const problem = (what: string): string => `${path}: ${name}: ${what}`;
    const found: string[] = [];
    if (lines[0] === '' || lines[0].startsWith('@')) found.push(problem('first line does not say what is returned'));
    const tags = blocks(lines);
    node.parameters.forEach((parameter, i) => {
      const written = tags.filter(({ tag }) => tag === 'param')[i];
      // a destructured parameter has no name of its own: its place counts
      const called = ts.isIdentifier(parameter.name) ? parameter.name.text : written?.name;
      if (written?.name !== called || called === undefined) found.push(problem(`@param for place ${i + 1} is missing`));
      else if (!/\[[^\]]+\]/.test(written.text)) found.push(problem(`@param ${called} has no [unit]`));
    });
    if (tags.filter(({ tag }) => tag === 'param').length > node.parameters.length)
      found.push(problem('a @param too many'));
    const returns = tags.find(({ tag }) => tag === 'returns');
    const isVoid = node.type?.kind === ts.SyntaxKind.VoidKeyword || node.type?.getText(source).startsWith('asserts ');
    if (returns === undefined) {
      if (isVoid !== true) found.push(problem('@returns is missing'));
    } else if (!/\[[^\]]+\]/.test(returns.text)) found.push(problem('@returns has no [unit]'));
    if (!lines.some((line) => /^Source: \S/.test(line))) found.push(problem('no Source: line'));
    return found;
  });
}

interface Exported {
  readonly name: string;
  readonly node: ts.FunctionDeclaration | ts.ArrowFunction | ts.FunctionExpression;
  /** the statement that carries the docstring */
  readonly declared: ts.Node;
}

function exportedFunctions(source: ts.SourceFile): Exported[] {
  return source.statements.flatMap((statement): Exported[] => {
    const modifiers = ts.canHaveModifiers(statement) ? (ts.getModifiers(statement) ?? []) : [];
    if (!modifiers.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword)) return [];
    if (ts.isFunctionDeclaration(statement)) {
      return [{ name: statement.name?.text ?? '?', node: statement, declared: statement }];
    }
    if (!ts.isVariableStatement(statement)) return [];
    return statement.declarationList.declarations.flatMap(({ name, initializer }) =>
      initializer !== undefined && (ts.isArrowFunction(initializer) || ts.isFunctionExpression(initializer))
        ? [{ name: name.getText(source), node: initializer, declared: statement }]
        : [],
    );
  });
}

/** Lines of the docstring without their stars. */
function comment(node: ts.Node, text: string): string[] | undefined {
  const ranges = ts.getLeadingCommentRanges(text, node.pos) ?? [];
  const last = ranges.at(-1);
  if (last === undefined || !text.startsWith('/**', last.pos)) return undefined;
  const inner = text.slice(last.pos + 3, last.end - 2);
  const lines = inner.split('\n').map((line) => line.replace(/^\s*\*? ?/, '').trimEnd());
  while (lines.length > 1 && lines[0] === '') lines.shift();
  return lines;
}

function blocks(lines: readonly string[]): { tag: string; name: string; text: string }[] {
  const found: { tag: string; name: string; text: string }[] = [];
  for (const line of lines) {
    const start = /^@(\w+)\s*(.*)$/.exec(line);
    if (start !== null) found.push({ tag: start[1], name: /^[\w$]+/.exec(start[2])?.[0] ?? '', text: start[2] });
    else if (line !== '' && !line.startsWith('Source:') && found.length > 0) found[found.length - 1].text += ` ${line}`;
  }
  return found;
}

describe('every exported function says what it returns, each unit, and its source', () => {
  test.each(['packages/analysis', 'packages/simulation'])('%s', (folder) => {
    const files = sourceFiles(folder);
    expect(files.length).toBeGreaterThan(10);
    expect(files.flatMap((path) => problemsOf(path, projectText(path)))).toEqual([]);
  });

  test('the check names function and parameter', () => {
    const text = `/** Height. */
export function height(angleRad: number): number { return angleRad; }
export const bare = (x: number): number => x;
/**
 * Nothing.
 *
 * @param a - a number [-]
 * @param c - another one
 *
 * Source: ours
 */
export function wrong(a: number, b: number): void { void [a, b]; }
/**
 * Twice a number.
 *
 * @param a - a number
 *   over two lines [m]
 * @returns twice it [m]
 *
 * Source: definition
 */
export function right(a: number): number { return 2 * a; }
`;
    expect(problemsOf('x.ts', text)).toEqual([
      'x.ts: height: @param for place 1 is missing',
      'x.ts: height: @returns is missing',
      'x.ts: height: no Source: line',
      'x.ts: bare has no docstring',
      'x.ts: wrong: @param for place 2 is missing',
    ]);
  });
});
