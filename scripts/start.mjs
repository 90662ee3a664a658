// `npm start`: serves the planner on loopback, prints the demo plan, and stays until Ctrl-C.
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { serve } from './serve.mjs';

const PORT = 4717;
const TRIES = 20;

/** Answers with the exit code once it is over. */
export async function start(root, args) {
  const { server, address } = await onFreePort(join(root, 'apps', 'web', 'dist'));
  const ended = new Promise((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.once(signal, () => resolve(0));
  });
  // `?demo` opens the demo when nothing is recorded yet, and does nothing otherwise.
  const open = `${address}#/garage/begin?demo`;
  console.log(`The planner: ${open}\n`);
  const failed = demoPlan(root, args).then(
    (code) =>
      new Promise((resolve) => {
        if (code !== 0) resolve(code);
        else console.log(`\nThe planner is open at ${open}\nCtrl-C ends it.`);
      }),
  );
  const code = await Promise.race([ended, failed]);
  server.close();
  server.closeAllConnections();
  return code;
}

/** The fixed port, so that the browser finds the record again (it keeps one for each address); else the next free one. */
async function onFreePort(folder) {
  for (let port = PORT; port < PORT + TRIES; port += 1) {
    try {
      return await serve(folder, port);
    } catch (cause) {
      if (cause.code !== 'EADDRINUSE' && cause.code !== 'EACCES') throw cause;
    }
  }
  return serve(folder, 0);
}

function demoPlan(root, args) {
  const command = [
    join('apps', 'cli', 'bin', 'waymend.mjs'),
    'plan',
    join('examples', 'demo.garage.yaml'),
    ...args,
  ];
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, command, { cwd: root, stdio: 'inherit' });
    child.once('error', reject);
    child.once('exit', (code) => resolve(code ?? 0));
  });
}
