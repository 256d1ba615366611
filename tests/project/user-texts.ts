import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';

/** A text that a user may read, and where it stands. */
export interface UserText {
  readonly file: string;
  readonly line: number;
  readonly text: string;
}

const CODE = ['src', 'functions', 'taskpane', 'workbench', 'scripts/sideload'];
const PAGES = ['README.md', 'CHANGELOG.md', 'docs'];

function filesIn(path: string, ends: RegExp): string[] {
  if (ends.test(path)) return [path];
  return readdirSync(path, { withFileTypes: true }).flatMap((entry) =>
    entry.isDirectory() || ends.test(entry.name) ? filesIn(join(path, entry.name), ends) : [],
  );
}

/** Texts of the code: strings, templates and what stands between tags; not what is imported, named or typed. */
function textsOfCode(file: string): UserText[] {
  const source = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest, true);
  const texts: UserText[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || ts.isTypeNode(node)) return;
    const isText =
      ts.isStringLiteralLike(node) ||
      ts.isTemplateHead(node) ||
      ts.isTemplateMiddle(node) ||
      ts.isTemplateTail(node) ||
      ts.isJsxText(node);
    if (isText && /[a-z]/i.test(node.text)) {
      const { line } = source.getLineAndCharacterOfPosition(node.getStart());
      texts.push({ file, line: line + 1, text: node.text.replace(/\s+/g, ' ').trim() });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return texts;
}

/**
 * Everything that a user may read, as the sources hold it: texts of the code, pages and documents.
 * @returns the texts
 */
export function userTexts(): UserText[] {
  const lines = [
    ...PAGES.flatMap((path) => filesIn(path, /\.md$/)),
    ...CODE.flatMap((path) => filesIn(path, /\.html$/)),
  ].flatMap((file) =>
    readFileSync(file, 'utf8')
      .split('\n')
      .map((text, index) => ({ file, line: index + 1, text })),
  );
  return [...CODE.flatMap((path) => filesIn(path, /\.tsx?$/)).flatMap(textsOfCode), ...lines];
}
