import ts from 'typescript';

/** What a module holds at run time: nothing, data written out, names handed on, or something that can go wrong. */
export type ModuleKind = 'types' | 'data' | 'list-of-names' | 'code';

/** Whether an expression is written out: literals, arrays and objects of them, names and members, no call. */
function isWrittenOut(node: ts.Expression): boolean {
  if (ts.isAsExpression(node) || ts.isSatisfiesExpression(node) || ts.isParenthesizedExpression(node)) {
    return isWrittenOut(node.expression);
  }
  if (ts.isArrayLiteralExpression(node)) return node.elements.every(isWrittenOut);
  if (ts.isSpreadElement(node)) return isWrittenOut(node.expression);
  if (ts.isObjectLiteralExpression(node)) {
    return node.properties.every((property) => {
      if (ts.isPropertyAssignment(property)) return isWrittenOut(property.initializer);
      return (
        ts.isShorthandPropertyAssignment(property) ||
        (ts.isSpreadAssignment(property) && isWrittenOut(property.expression))
      );
    });
  }
  if (ts.isPrefixUnaryExpression(node)) return isWrittenOut(node.operand);
  if (ts.isPropertyAccessExpression(node)) return isWrittenOut(node.expression);
  return (
    ts.isIdentifier(node) ||
    ts.isStringLiteral(node) ||
    ts.isNoSubstitutionTemplateLiteral(node) ||
    ts.isNumericLiteral(node) ||
    [ts.SyntaxKind.TrueKeyword, ts.SyntaxKind.FalseKeyword, ts.SyntaxKind.NullKeyword].includes(node.kind)
  );
}

/** Kind of a module, from its syntax. */
export function moduleKind(path: string, text: string): ModuleKind {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.ES2023, true);
  let kind: ModuleKind = 'types';
  for (const statement of source.statements) {
    if (
      ts.isImportDeclaration(statement) ||
      ts.isInterfaceDeclaration(statement) ||
      ts.isTypeAliasDeclaration(statement)
    ) {
      continue;
    }
    if (ts.isExportDeclaration(statement)) {
      if (!statement.isTypeOnly && kind === 'types') kind = 'list-of-names';
      continue;
    }
    const isData =
      ts.isVariableStatement(statement) &&
      statement.declarationList.declarations.every(
        ({ initializer }) => initializer !== undefined && isWrittenOut(initializer),
      );
    if (!isData) return 'code';
    kind = 'data';
  }
  return kind;
}
