// Runs `npm start` as a newcomer would: reads the address it prints, asks it for the page, and ends it as Ctrl-C does.
import { spawn } from 'node:child_process';
import { createWriteStream, mkdirSync } from 'node:fs';

const WANTED = {
  'content-security-policy': "default-src 'self'",
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-embedder-policy': 'require-corp',
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
};
/** The first run installs everything. */
const PATIENCE_MS = 480_000;

mkdirSync('reports', { recursive: true });
const kept = createWriteStream('reports/start.txt');
// A group of its own, so that the signal reaches all of it, as it does from a terminal.
const child = spawn('npm', ['start'], { detached: true, stdio: ['ignore', 'pipe', 'pipe'] });
const ended = new Promise((resolve) => child.once('exit', (code, signal) => resolve({ code, signal })));
let printed = '';
let errors = '';
child.stderr.on('data', (data) => {
  errors += data;
});
const ready = new Promise((resolve) => {
  child.stdout.on('data', (data) => {
    printed += data;
    kept.write(data);
    // Printed last, once the demo is planned.
    if (printed.includes('Ctrl-C ends it.')) resolve('ready');
  });
});

const problems = [];
const timer = setTimeout(() => process.kill(-child.pid, 'SIGKILL'), PATIENCE_MS);
const first = await Promise.race([ready, ended]);
if (first !== 'ready')
  problems.push(`npm start ended early (${first.code ?? first.signal})\n${errors.slice(-3000)}`);
else {
  const address = /http:\/\/127\.0\.0\.1:\d+\//.exec(printed)?.[0];
  if (!address) problems.push('no address was printed');
  else {
    for (const path of ['', 'sw.js', 'manifest.webmanifest']) {
      const answer = await fetch(address + path);
      if (answer.status !== 200) problems.push(`${address}${path} answers ${answer.status}`);
      for (const [header, value] of Object.entries(WANTED))
        if (!answer.headers.get(header)?.includes(value)) problems.push(`${address}${path} lacks ${header}`);
    }
    const page = await (await fetch(address)).text();
    if (!page.includes('<div id="sheet">')) problems.push('the address does not show the planner');
  }
  if (!printed.includes('Comes along')) problems.push('the demo plan was not printed');
  process.kill(-child.pid, 'SIGINT');
  const { code, signal } = await ended;
  // npm passes the signal on to itself once the planner has ended.
  if (code !== 0 && signal !== 'SIGINT') problems.push(`Ctrl-C ended it with ${code ?? signal}`);
  if (/error/i.test(errors)) problems.push(`it complained: ${errors.slice(-3000)}`);
  if (address && (await answers(address))) problems.push('something still answers after the end');
}
clearTimeout(timer);
kept.end();
for (const problem of problems) console.error(`npm start: ${problem}`);
if (problems.length === 0)
  console.log('npm start: planned the demo, served the planner under its policy, ended cleanly');
process.exitCode = problems.length === 0 ? 0 : 1;

async function answers(address) {
  try {
    await fetch(address);
    return true;
  } catch {
    return false;
  }
}
