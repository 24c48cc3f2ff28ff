import {
  createSourceFile,
  getTrailingCommentRanges,
  isExpressionStatement,
  isIdentifier,
  isVariableStatement,
  ScriptTarget,
  type Statement,
} from "typescript";

/** The value a statement shows: its expression, or the constant it defines. */
function subjectOf(statement: Statement): string | undefined {
  if (isExpressionStatement(statement)) return statement.expression.getText();
  const name = isVariableStatement(statement) ? statement.declarationList.declarations[0]?.name : undefined;
  return name && isIdentifier(name) ? name.text : undefined;
}

/** The code with `check(value, shown, line)` in place of, or after, every statement that ends in `// => VALUE`. */
export function statementsOf(code: string): string {
  const file = createSourceFile("example.ts", code, ScriptTarget.ES2022, true);
  return file.statements
    .map((statement) => {
      const text = statement.getText();
      const comment = (getTrailingCommentRanges(code, statement.end) ?? [])
        .map(({ pos, end }) => code.slice(pos, end))
        .find((one) => one.startsWith("// =>"));
      const subject = comment && subjectOf(statement);
      if (!subject) return text;
      const call = `check(${subject}, ${JSON.stringify(comment.slice(5).trim())}, ${JSON.stringify(text)});`;
      return isExpressionStatement(statement) ? call : `${text}\n${call}`;
    })
    .join("\n");
}
