import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const ROOT = fileURLToPath(new URL('..', import.meta.url));

function* files(folder: string, ending: RegExp): Generator<string> {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    if (['node_modules', 'dist', 'reports', '.git'].includes(entry.name)) continue;
    const path = join(folder, entry.name);
    if (entry.isDirectory()) yield* files(path, ending);
    else if (ending.test(entry.name)) yield path;
  }
}

describe('what is written refers to what is there', () => {
  it('every link of a page leads to a file, every anchor to a heading', () => {
    const broken: string[] = [];
    let links = 0;
    for (const page of files(ROOT, /\.md$/)) {
      const text = readFileSync(page, 'utf8').replace(/```[\s\S]*?```/g, '');
      for (const [, target = ''] of text.matchAll(/\]\(([^)\s]+)\)/g)) {
        if (/^[a-z]+:/.test(target)) continue;
        links += 1;
        const [path = '', anchor] = target.split('#');
        const file = path === '' ? page : join(dirname(page), path);
        if (!existsSync(file) || (anchor !== undefined && !anchorsOf(file).has(anchor)))
          broken.push(`${relative(ROOT, page)}: ${target}`);
      }
    }
    expect(links).toBeGreaterThan(30);
    expect(broken).toEqual([]);
  });

  it('every document and test that a page or the code names exists', () => {
    const missing = new Set<string>();
    let named = 0;
    for (const file of files(ROOT, /\.(md|ts|mjs|cjs)$/)) {
      const text = readFileSync(file, 'utf8');
      for (const [path] of text.matchAll(
        /\bdocs\/[\w/-]+\.(?:md|txt|json|schema\.json)\b|\btests\/[\w-]+\.test\.ts\b/g,
      )) {
        named += 1;
        if (!existsSync(join(ROOT, path)) && !file.endsWith('architecture.test.ts'))
          missing.add(`${relative(ROOT, file)}: ${path}`);
      }
    }
    expect(named).toBeGreaterThan(20);
    expect([...missing]).toEqual([]);
  });
});

/** Headings as the usual renderers turn them into anchors. */
function anchorsOf(page: string): ReadonlySet<string> {
  const headings = readFileSync(page, 'utf8').matchAll(/^#{1,6} (.*)$/gm);
  return new Set(
    [...headings].map(([, text = '']) =>
      text
        .toLowerCase()
        .replace(/[^\p{L}\p{N} _-]/gu, '')
        .replaceAll(' ', '-'),
    ),
  );
}
