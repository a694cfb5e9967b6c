import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript-api";
import { root } from "../examples/places.ts";

/** A code as it stands in the sources, and the file it stands in, relative to the checkout. */
export interface Emitted {
  code: string;
  file: string;
  /** The expression around it, for the reader of a failing test. */
  text: string;
}

const SOURCES = [
  "packages/core/src",
  "packages/parallel/src",
  "packages/charts/src",
  "apps/command/src",
  "apps/notebook/src",
];

/**
 * Every word a source file gives as `code`: in an object, as a variable of that name, or as
 * the argument of a function whose parameter is called so.
 * Found in the syntax alone: no type is worked out, so it takes no longer than reading the files.
 */
export function emittedCodes(): Emitted[] {
  const files = SOURCES.flatMap(sourceFiles);
  const takers = new Takers(files);
  return files.flatMap((file) => codesIn(file, takers));
}

function sourceFiles(folder: string): ts.SourceFile[] {
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(".ts"))
    .map((entry) => join(entry.parentPath, entry.name))
    .map((path) => ({ path, text: readFileSync(path, "utf8") }))
    .filter(({ text }) => /\bcode\b|report\(|roblem\(|refuse\(|fault\(/.test(text))
    .map(({ path, text }) => ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true));
}

/** Functions that take a `code`, and as which argument; -1 for one of the same name that takes none. */
class Takers {
  private readonly methods = new Map<string, number>();
  private readonly types = new Map<string, number>();
  private readonly exported = new Map<string, number>();
  private readonly scopes = new Map<ts.Node, Map<string, number>>();

  constructor(files: readonly ts.SourceFile[]) {
    for (const file of files) {
      // A function handed over by the name of its type comes after that type.
      each(file, (node) => ts.isFunctionLike(node) && this.note(node));
      each(file, (node) => (ts.isParameter(node) || ts.isPropertySignature(node)) && this.noteTyped(node));
    }
  }

  /** Which argument of a call is a code; -1 when none is. */
  argument({ expression }: ts.CallExpression): number {
    if (ts.isPropertyAccessExpression(expression)) return this.methods.get(expression.name.text) ?? -1;
    const name = expression.getText();
    for (let at: ts.Node | undefined = expression; at !== undefined; at = at.parent) {
      const found = this.scopes.get(at)?.get(name);
      if (found !== undefined) return found;
    }
    return this.exported.get(name) ?? -1;
  }

  private noteTyped(node: ts.ParameterDeclaration | ts.PropertySignature): void {
    const at = node.type === undefined ? undefined : this.types.get(node.type.getText());
    if (at !== undefined) this.keep(node, at);
  }

  private note(node: ts.SignatureDeclaration): void {
    const at = node.parameters.findIndex((parameter) => parameter.name.getText() === "code");
    if (ts.isTypeAliasDeclaration(node.parent)) {
      if (at >= 0) this.types.set(node.parent.name.text, at);
      return;
    }
    const held = ts.isVariableDeclaration(node.parent) || ts.isParameter(node.parent) ? node.parent : node;
    const name = held.name?.getText();
    if (name === undefined) return;
    if (ts.isMethodDeclaration(node)) {
      if (at >= 0) this.methods.set(name, at);
      return;
    }
    if (at >= 0 && ts.isSourceFile(node.parent)) this.exported.set(name, at);
    this.keep(held, at);
  }

  private keep(held: ts.NamedDeclaration, at: number): void {
    const scope = scopeOf(held);
    const names = this.scopes.get(scope) ?? new Map<string, number>();
    this.scopes.set(scope, names.set(held.name?.getText() ?? "", at));
  }
}

/** The block, function or file in which a name is known. */
function scopeOf(node: ts.Node): ts.Node {
  let at = node.parent;
  while (!(ts.isFunctionLike(at) || ts.isBlock(at) || ts.isSourceFile(at))) at = at.parent;
  return at;
}

function codesIn(file: ts.SourceFile, takers: Takers): Emitted[] {
  const found: Emitted[] = [];
  const take = (value: ts.Node): void => {
    for (const code of leaves(value)) {
      found.push({ code, file: file.fileName.slice(root.length), text: value.parent.getText() });
    }
  };
  each(file, (node) => {
    if (ts.isPropertyAssignment(node) && node.name.getText() === "code") take(node.initializer);
    if ((ts.isVariableDeclaration(node) || ts.isParameter(node)) && node.name.getText() === "code") {
      if (node.initializer !== undefined) take(node.initializer);
    }
    if (!ts.isCallExpression(node)) return;
    const value = node.arguments[takers.argument(node)];
    if (value !== undefined) take(value);
  });
  return found;
}

/** The words an expression can come to: both sides of a choice. */
function leaves(value: ts.Node): string[] {
  if (ts.isStringLiteralLike(value)) return value.text === "" ? [] : [value.text];
  if (ts.isParenthesizedExpression(value)) return leaves(value.expression);
  if (ts.isConditionalExpression(value)) return [...leaves(value.whenTrue), ...leaves(value.whenFalse)];
  return [];
}

function each(node: ts.Node, visit: (node: ts.Node) => void): void {
  visit(node);
  node.forEachChild((child) => each(child, visit));
}
