import type { Io } from '../../apps/cli/src/io.ts';
import { EXIT } from '../../apps/cli/src/io.ts';
import { program } from '../../apps/cli/src/run.ts';

const EXIT_WORDS: Readonly<Record<keyof typeof EXIT, string>> = {
  done: 'Done. The answer is on standard output.',
  refused:
    'The input was refused: a file that cannot be read, a garage with something wrong in it, an option that makes no sense. Standard error says what, in which file and line, and what to do. Nothing was written.',
  usage: 'Wrong usage: an unknown command or option, or an argument too few or too many.',
  noPlan:
    'No kit satisfies the limits. Standard error says which limits clash and by how much each would have to give.',
};

/** docs/commands.md: the help of every command as it is printed, and what the exit codes mean. */
export function commandsMarkdown(): string {
  const cli = program(silent, () => undefined);
  const lines = [
    '# Commands',
    '',
    'Written by the build from the command line itself; edit apps/cli/src/run.ts, not this page.',
    '',
    'Text goes to standard output and fits 100 columns. With `--json` standard output carries exactly one JSON value and',
    'nothing else; [answers.md](answers.md) describes it field by field, [answers.schema.json](answers.schema.json) for',
    'machines. Progress and refusals go to standard error. Weight (bold) is used only on a terminal, and not when NO_COLOR is set.',
    '',
    ...block(helpOf(cli)),
    '## Exit codes',
    '',
    '| code | means |',
    '|--:|---|',
    ...Object.entries(EXIT_WORDS).map(
      ([name, means]) => `| ${Object.entries(EXIT).find(([key]) => key === name)?.[1] ?? ''} | ${means} |`,
    ),
    '',
    ...cli.commands.flatMap((command) => [`## waymend ${command.name()}`, '', ...block(helpOf(command))]),
  ];
  return `${lines.join('\n').trimEnd()}\n`;
}

type Cli = ReturnType<typeof program>;

/** The help as it is printed, with what is added before and after it. */
function helpOf(command: Cli): string {
  const printed: string[] = [];
  command.configureOutput({ writeOut: (text) => printed.push(text) });
  command.outputHelp();
  return printed.join('');
}

function block(text: string): readonly string[] {
  return ['```text', ...text.trimEnd().split('\n'), '```', ''];
}

/** Help needs no machine. */
const silent: Io = {
  out: () => undefined,
  err: () => undefined,
  interactive: false,
  colour: false,
  read: () => Promise.resolve({ kind: 'missing' }),
  write: () => Promise.resolve({ kind: 'unwritable', why: 'no machine' }),
  clock: () => 0,
  stopAsked: () => false,
};
