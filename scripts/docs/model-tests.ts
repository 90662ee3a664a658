import { readFileSync, readdirSync } from 'node:fs';
import { join, relative } from 'node:path';
import ts from 'typescript';

interface Named {
  readonly file: string;
  /** Titles of the groups around the test and its own, as the test runner prints them. */
  readonly name: string;
}

/** docs/model-tests.md: which tests check each rule of docs/model.md, read from the sources of the tests. */
export function modelTestsMarkdown(root: string): string {
  const model = readFileSync(join(root, 'docs', 'model.md'), 'utf8');
  const rules = [...model.matchAll(/^## (M\d+) (.*?) \*\((.*)\)\*$/gm)];
  const tests = ['packages', 'apps', 'tests'].flatMap((top) => [...testFiles(join(root, top))]);
  const named = tests.sort().flatMap((path) => namesIn(path, relative(root, path).replaceAll('\\', '/')));
  const lines = [
    '# Tests of the model',
    '',
    'Written by the build from the tests themselves. A test that checks a rule of [the model](model.md) quotes its number;',
    '`...` stands for what a test takes from a list.',
    '',
  ];
  for (const [, rule = '', title = '', state = ''] of rules) {
    const quoting = named.filter(({ name }) => name.includes(`[${rule}]`));
    lines.push(`## ${rule} ${title} (${state.split(/[:;]/)[0] ?? state})`, '');
    if (quoting.length === 0) lines.push('No test quotes it.', '');
    for (const file of new Set(quoting.map((test) => test.file))) {
      lines.push(`**${file}**`, '');
      for (const test of quoting) if (test.file === file) lines.push(`- ${test.name}`);
      lines.push('');
    }
  }
  return `${lines.join('\n').trimEnd()}\n`;
}

function* testFiles(folder: string): Generator<string> {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    if (entry.name === 'node_modules' || entry.name === 'dist') continue;
    const path = join(folder, entry.name);
    if (entry.isDirectory()) yield* testFiles(path);
    else if (entry.name.endsWith('.test.ts')) yield path;
  }
}

/** Every test of a file, with the titles of its groups. */
function namesIn(path: string, file: string): readonly Named[] {
  const text = readFileSync(path, 'utf8');
  if (!/\[M\d+\]/.test(text)) return [];
  const names: Named[] = [];
  const visit = (node: ts.Node, groups: readonly string[]): void => {
    const called = ts.isCallExpression(node) ? titledCall(node) : null;
    if (called?.kind === 'test') names.push({ file, name: [...groups, called.title].join(' > ') });
    const inside = called?.kind === 'group' ? [...groups, called.title] : groups;
    ts.forEachChild(node, (child) => {
      visit(child, inside);
    });
  };
  visit(ts.createSourceFile(path, text, ts.ScriptTarget.Latest, false), []);
  return names;
}

/** `it('...')`, `test.each(list)('...')`, `describe('...')`: what is called and its title. */
function titledCall(
  call: ts.CallExpression,
): { readonly kind: 'test' | 'group'; readonly title: string } | null {
  const [first] = call.arguments;
  const title = first === undefined ? null : titleOf(first);
  if (title === null) return null;
  let callee: ts.Expression = call.expression;
  while (ts.isPropertyAccessExpression(callee) || ts.isCallExpression(callee)) callee = callee.expression;
  if (!ts.isIdentifier(callee)) return null;
  if (callee.text === 'describe') return { kind: 'group', title };
  return callee.text === 'it' || callee.text === 'test' ? { kind: 'test', title } : null;
}

function titleOf(node: ts.Expression): string | null {
  if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) return oneLine(node.text);
  if (!ts.isTemplateExpression(node)) return null;
  return oneLine(`${node.head.text}${node.templateSpans.map((span) => `...${span.literal.text}`).join('')}`);
}

function oneLine(text: string): string {
  return text
    .replace(/%[sdifjo]|\$\w+/g, '...')
    .replace(/\s+/g, ' ')
    .trim();
}
