import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import ts from "typescript-api";

/** One thing a library exports, as its built types declare it. */
export interface Exported {
  name: string;
  /** Of the declaration, relative to the folder of the built library, without its ending. */
  file: string;
  /** The docstring without its stars; empty where there is none. */
  doc: string;
  /** The declaration in TypeScript, its own docstring left out. */
  declaration: string;
}

/**
 * What an entry point exports, by name. Follows `export ... from` through the declaration files; no type is worked out, since
 * the compiler has written them all down.
 */
export function exportedBy(folder: string, entry: string): Exported[] {
  const found = new Map<string, Exported>();
  collect(folder, join(folder, entry), undefined, found, new Set());
  return [...found.values()].sort((a, b) => (a.name < b.name ? -1 : 1));
}

/** `wanted`: names in that file, and what they are called outside; undefined for all. */
function collect(
  folder: string,
  path: string,
  wanted: ReadonlyMap<string, string> | undefined,
  found: Map<string, Exported>,
  seen: Set<string>,
): void {
  if (wanted === undefined && seen.has(path)) return;
  if (wanted === undefined) seen.add(path);
  const file = parsed(path);
  const place = path.slice(folder.length + 1).replace(/\.d\.ts$/, "");
  for (const statement of file.statements) {
    if (ts.isExportDeclaration(statement) && statement.moduleSpecifier !== undefined) {
      const from = statement.moduleSpecifier.getText().slice(1, -1);
      if (!from.startsWith(".")) continue;
      const next = join(dirname(path), from.replace(/\.[jt]s$/, ".d.ts"));
      const clause = statement.exportClause;
      if (clause === undefined) collect(folder, next, wanted, found, seen);
      else if (ts.isNamedExports(clause)) {
        const names = clause.elements
          .map((element): [string, string] => [
            (element.propertyName ?? element.name).text,
            element.name.text,
          ])
          .filter(([, name]) => wanted === undefined || wanted.has(name))
          .map(([inside, name]): [string, string] => [inside, wanted?.get(name) ?? name]);
        if (names.length > 0) collect(folder, next, new Map(names), found, seen);
      }
      continue;
    }
    for (const name of namesOf(statement)) {
      const outside = wanted === undefined ? name : wanted.get(name);
      if (outside === undefined) continue;
      const before = found.get(outside);
      // Overloads stand below each other.
      if (before !== undefined && before.file !== place) continue;
      const declaration = `${before === undefined ? "" : `${before.declaration}\n`}${declarationOf(statement)}`;
      found.set(outside, { name: outside, file: place, doc: before?.doc || docOf(statement), declaration });
    }
  }
}

const files = new Map<string, ts.SourceFile>();

/** An index is come to by many ways: each file is parsed once. */
function parsed(path: string): ts.SourceFile {
  const file =
    files.get(path) ?? ts.createSourceFile(path, readFileSync(path, "utf8"), ts.ScriptTarget.Latest, true);
  files.set(path, file);
  return file;
}

function namesOf(statement: ts.Statement): string[] {
  const exported =
    ts.canHaveModifiers(statement) &&
    ts.getModifiers(statement)?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);
  if (exported !== true) return [];
  if (ts.isVariableStatement(statement)) {
    return statement.declarationList.declarations.map(({ name }) => name.getText());
  }
  const { name } = statement as ts.DeclarationStatement;
  return name === undefined ? [] : [name.getText()];
}

function declarationOf(statement: ts.Statement): string {
  return statement.getText().replace(/^export (declare )?/, "");
}

function docOf(statement: ts.Statement): string {
  const last = ts.getJSDocCommentsAndTags(statement).at(-1);
  if (last === undefined) return "";
  return last
    .getText()
    .replace(/^\/\*\*|\*\/$/g, "")
    .split("\n")
    .map((line) => line.replace(/^\s*\* ?/, "").trimEnd())
    .join("\n")
    .trim();
}
