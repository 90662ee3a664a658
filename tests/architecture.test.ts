import { execFile } from 'node:child_process';
import {
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const CRUISER = join(ROOT, 'node_modules', 'dependency-cruiser', 'bin', 'dependency-cruise.mjs');
const CONFIG = join(ROOT, '.dependency-cruiser.cjs');
const PACKAGES = ['core', 'catalogue', 'garage', 'planner', 'solver'];

interface Violation {
  readonly rule: string;
  readonly from: string;
  readonly to: string;
}

/** The breaches of the shipped rules in a tree, read off what `npm run check` would show. */
function breaches(tree: string): Promise<readonly Violation[]> {
  const folders = ['packages', 'apps', 'tests', 'scripts'];
  const argv = [CRUISER, ...folders, '--config', CONFIG, '--output-type', 'err'];
  return new Promise((resolve, reject) => {
    execFile(process.execPath, argv, { cwd: tree, maxBuffer: 1e8 }, (failed, out, err) => {
      const found = [...out.matchAll(/^ {2}error ([\w-]+): (\S+)(?: → *\n? *(\S+))?/gm)].map(
        ([, rule = '', from = '', to = from]) => ({ rule, from, to }),
      );
      const clean = out.includes('no dependency violations found');
      if (clean === found.length > 0 || clean !== (failed === null)) reject(new Error(`${out}${err}`));
      else resolve(found);
    });
  });
}

/** A small tree of the same shape, so that forbidden imports can be made in it. */
class Tree {
  readonly folder = mkdtempSync(join(tmpdir(), 'waymend-arrows-'));

  constructor() {
    this.put('tsconfig.json', readFileSync(join(ROOT, 'tsconfig.json'), 'utf8'));
    this.put('package.json', '{ "type": "module", "workspaces": ["packages/*", "apps/*"] }');
    mkdirSync(join(this.folder, 'node_modules', '@waymend'), { recursive: true });
    for (const name of PACKAGES) {
      const manifest = readFileSync(join(ROOT, 'packages', name, 'package.json'), 'utf8');
      this.put(`packages/${name}/package.json`, manifest);
      this.put(`packages/${name}/src/own.ts`, `export const own = '${name}';\n`);
      const link = join(this.folder, 'node_modules', '@waymend', name);
      symlinkSync(join(this.folder, 'packages', name), link, 'junction');
    }
    this.put('node_modules/zod/package.json', '{ "name": "zod", "version": "1.0.0", "main": "index.js" }');
    this.put('node_modules/zod/index.js', 'export const z = 1;\n');
    this.put('tests/own.test.ts', PACKAGES.map((name) => `import '@waymend/${name}/own';\n`).join(''));
    this.put('scripts/own.ts', 'export const own = 1;\n');
    this.put(
      'apps/cli/src/main.ts',
      "import '@waymend/planner/own';\nimport '@waymend/solver/own';\nimport 'node:fs';\n",
    );
    const lower = PACKAGES.slice(0, 3).map((name) => `import '@waymend/${name}/own';\n`);
    this.put('packages/planner/src/more.ts', lower.join(''));
    this.put('packages/planner/test/more.test.ts', "import '../src/more.ts';\n");
  }

  put(path: string, text: string): void {
    mkdirSync(dirname(join(this.folder, path)), { recursive: true });
    writeFileSync(join(this.folder, path), text);
  }

  remove(): void {
    rmSync(this.folder, { recursive: true, force: true });
  }
}

/** Every file that breaks a rule: what stands in it, and the breach it has to be caught for. */
const WRONG: readonly (readonly [path: string, text: string, rule: string, to: string])[] = [
  ...(
    [
      ['core', 'catalogue'],
      ['core', 'garage'],
      ['catalogue', 'core'],
      ['garage', 'planner'],
      ['garage', 'solver'],
      ['planner', 'solver'],
      ['solver', 'planner'],
      ['solver', 'catalogue'],
    ] as const
  ).flatMap(([from, to]) => {
    const caught = [`arrows-${from}`, `packages/${to}/src/own.ts`] as const;
    const type = `import type { own } from '../../${to}/src/own.ts';\nexport type Own = typeof own;\n`;
    return [
      [
        `packages/${from}/src/name-of-${to}.ts`,
        `export { own } from '@waymend/${to}/own';\n`,
        ...caught,
      ] as const,
      [`packages/${from}/src/path-to-${to}.ts`, type, ...caught] as const,
    ];
  }),
  ['packages/core/src/machine.ts', "import 'node:fs';\n", 'core-is-pure', 'fs'],
  ['packages/catalogue/src/package.ts', "import 'zod';\n", 'core-is-pure', 'node_modules/zod/index.js'],
  ['packages/planner/src/machine.ts', "import 'node:os';\n", 'packages-run-in-a-browser', 'os'],
  ['apps/web/src/main.ts', "import '../../cli/src/main.ts';\n", 'apps-stand-alone', 'apps/cli/src/main.ts'],
  ['packages/core/src/one.ts', "import './two.ts';\n", 'no-circular', 'packages/core/src/two.ts'],
  ['packages/core/src/two.ts', "import './one.ts';\n", 'no-circular', 'packages/core/src/one.ts'],
  [
    'packages/garage/src/help.ts',
    "import '../test/help.ts';\n",
    'no-tests-in-source',
    'packages/garage/test/help.ts',
  ],
];
/** What those are caught for besides. */
const ALSO = [
  'packages/core/src/machine.ts packages-run-in-a-browser fs',
  'packages/core/src/lost.ts unreached packages/core/src/lost.ts',
  'packages/garage/src/help.ts arrows-garage packages/garage/test/help.ts',
];

describe('the arrows between packages', () => {
  let tree: Tree;
  beforeAll(() => {
    tree = new Tree();
  });
  afterAll(() => {
    tree.remove();
  });

  it('a tree that keeps them has no breach', async () => {
    expect(await breaches(tree.folder)).toEqual([]);
  });

  it('a forbidden import is caught: by name, by path, of a type; a circle; a file that nothing leads to', async () => {
    for (const [path, text] of WRONG) tree.put(path, text);
    tree.put('packages/garage/test/help.ts', 'export const help = 1;\n');
    tree.put('packages/core/src/lost.ts', 'export const lost = 1;\n');
    tree.put('tests/wrong.test.ts', WRONG.map(([path]) => `import '../${path}';\n`).join(''));
    const found = (await breaches(tree.folder)).map(({ rule, from, to }) => `${from} ${rule} ${to}`);
    for (const [path, , rule, to] of WRONG) {
      // A circle is reported once, from either of its files.
      if (rule !== 'no-circular') expect(found).toContain(`${path} ${rule} ${to}`);
    }
    expect(found.filter((breach) => breach.includes(' no-circular '))).not.toEqual([]);
    const expected = new Set([...WRONG.map(([path, , rule, to]) => `${path} ${rule} ${to}`), ...ALSO]);
    expect(found.filter((breach) => !expected.has(breach))).toEqual([]);
    expect(found).toEqual(expect.arrayContaining(ALSO));
  });

  it('the real tree keeps every one of them', async () => {
    expect(await breaches(ROOT)).toEqual([]);
  });
});

describe('core and catalogue', () => {
  /** What depends on the machine, the hour or luck. */
  const IMPURE = new Set(
    [
      'process Buffer console setTimeout setInterval setImmediate queueMicrotask performance Date Intl fetch navigator',
      'crypto window document self globalThis localStorage indexedDB Worker require',
    ].flatMap((words) => words.split(' ')),
  );

  it.each(['core', 'catalogue'])('%s asks neither clock, luck nor machine', (name) => {
    const found: string[] = [];
    for (const path of sources(join(ROOT, 'packages', name, 'src'))) {
      found.push(...impureNames(readFileSync(path, 'utf8')).map((word) => `${path}: ${word}`));
    }
    expect(found).toEqual([]);
  });

  it('what is looked for is found, and a field of the same name is not', () => {
    expect(impureNames('export const now = Date.now() + Math.random();')).toEqual(['Date', 'Math.random']);
    expect(impureNames('console.log(new Date(), process.env)')).toEqual(['console', 'Date', 'process']);
    expect(impureNames('export const a = { document: 1 }.document; interface B { process: string }')).toEqual(
      [],
    );
    expect(impureNames('const { document, edition } = cite; export const d = document;')).toEqual([]);
  });

  /** Names of the machine that a text uses without having declared them. */
  function impureNames(text: string): readonly string[] {
    const file = ts.createSourceFile('a.ts', text, ts.ScriptTarget.Latest, true);
    const own = new Set<string>();
    const used: string[] = [];
    const visit = (node: ts.Node): void => {
      if (
        (ts.isBindingElement(node) || ts.isVariableDeclaration(node) || ts.isParameter(node)) &&
        ts.isIdentifier(node.name)
      )
        own.add(node.name.text);
      if (ts.isPropertyAccessExpression(node) && node.getText() === 'Math.random') used.push('Math.random');
      if (ts.isIdentifier(node) && IMPURE.has(node.text) && isUse(node)) used.push(node.text);
      ts.forEachChild(node, visit);
    };
    visit(file);
    return used.filter((name) => !own.has(name));
  }

  function isUse(node: ts.Identifier): boolean {
    const { parent } = node;
    if (ts.isPropertyAccessExpression(parent)) return parent.expression === node;
    const named =
      ts.isPropertyAssignment(parent) || ts.isPropertySignature(parent) || ts.isPropertyDeclaration(parent);
    if (named) return parent.name !== node;
    return !ts.isBindingElement(parent) && !ts.isMethodDeclaration(parent) && !ts.isMethodSignature(parent);
  }

  function* sources(folder: string): Generator<string> {
    for (const entry of readdirSync(folder, { withFileTypes: true })) {
      const path = join(folder, entry.name);
      if (entry.isDirectory()) yield* sources(path);
      else if (entry.name.endsWith('.ts')) yield path;
    }
  }
});
