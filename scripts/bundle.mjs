// Bundles a TypeScript entry for Node: one file, started quickly; packages from the registry stay outside.
import { join } from 'node:path';
import { build } from 'esbuild';

export async function bundle(entry, outfile) {
  await build({
    entryPoints: [entry],
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    sourcemap: 'linked',
    logLevel: 'warning',
    // Our own packages are TypeScript and are bundled; everything else is loaded from node_modules.
    plugins: [
      {
        name: 'outside-packages',
        setup(setup) {
          setup.onResolve({ filter: /^[^./]/ }, (args) =>
            args.path.startsWith('@waymend/') || args.kind === 'entry-point'
              ? undefined
              : { path: args.path, external: true },
          );
        },
      },
    ],
  });
}

export const bundleCli = (root) =>
  bundle(join(root, 'apps/cli/src/main.ts'), join(root, 'apps/cli/dist/waymend.mjs'));
