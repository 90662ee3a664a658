import { Command, CommanderError, Option } from 'commander';
import type { ExitCode, Io } from './io.ts';
import { EXIT } from './io.ts';
import { cardCommand } from './commands/card.ts';
import { careCommand } from './commands/care.ts';
import { checkCommand } from './commands/check.ts';
import { curveCommand } from './commands/curve.ts';
import { gapsCommand } from './commands/gaps.ts';
import { importCommand } from './commands/import.ts';
import { loadCommand } from './commands/load.ts';
import { musterCommand } from './commands/muster.ts';
import { planCommand } from './commands/plan.ts';
import { repairCommand } from './commands/repair.ts';
import { simulateCommand } from './commands/simulate.ts';
import { stowCommand } from './commands/stow.ts';
import { sureCommand } from './commands/sure.ts';
import { tablesCommand } from './commands/tables.ts';
import { plain, WIDTH } from './text/layout.ts';
import { whyCommand } from './commands/why.ts';
import { wireCommand } from './commands/wire.ts';

/** The version this build calls itself. */
export const VERSION = '0.1.0';

/** Builds the command line; used to run it and to write docs/commands.md. */
export function program(io: Io, done: (code: ExitCode) => void): Command {
  const cli = new Command('waymend')
    .description(
      'Works out which tools, spares and supplies to carry so that a loaded 4x4 gets home unaided.',
    )
    .version(VERSION, '--version', 'print the version')
    .helpOption('-h, --help', 'print this help')
    .helpCommand(false)
    .configureOutput({
      writeOut: io.out,
      // A mistyped option is quoted back; what it holds stays text.
      writeErr: (text) => {
        io.err(text.split('\n').map(plain).join('\n'));
      },
      getOutHelpWidth: () => WIDTH,
      getErrHelpWidth: () => WIDTH,
    })
    .showHelpAfterError('(waymend --help lists the commands)')
    .exitOverride();

  const file = ['FILE', 'garage file (YAML or JSON)'] as const;
  const asks = (command: Command) =>
    command
      .argument(...file)
      .option('--trip <id>', 'which trip, when the garage has several')
      .option('--limit <mass>', 'most the kit may weigh ("38 kg"); "none" lifts the trip\'s own limit')
      .option('--volume <litres>', 'most room the kit may take, litres')
      .option('--budget <money>', 'most to spend on things not yet owned')
      .option('--seconds <n>', 'longest to think before giving the best found so far, with its gap')
      .addOption(new Option('--units <style>', 'metric or inch').choices(['metric', 'inch']))
      .option('--json', 'print the documented JSON instead of text');

  const plans = (command: Command) =>
    asks(command)
      .option(
        '--chance <percent>',
        'lightest kit with at least this chance of driving home unaided (95 or 95%)',
      )
      .option(
        '--must <job...>',
        'jobs that must be possible; without --limit the lightest kit that can do them',
      );

  plans(cli.command('plan'))
    .description('choose the kit for a trip: what comes, what stays home, what is missing, and why')
    .option('--all', 'print every line of every list')
    .option('--problem <name>', 'also write the un-reduced problem as NAME.mps and NAME.json')
    .action(async (path: string, options: Record<string, unknown>) => {
      done(await planCommand(io, path, options));
    });
  plans(cli.command('why'))
    .description('explain one belonging, job or failure in the plan')
    .argument('WHAT', 'id or words of a belonging, job or failure')
    .action(async (path: string, what: string, options: Record<string, unknown>) => {
      done(await whyCommand(io, path, what, options));
    });
  asks(cli.command('curve'))
    .description('mass carried against the chance of driving home unaided')
    .option('--points <n>', 'points to prove, 2 to 60', '30')
    .action(async (path: string, options: Record<string, unknown>) => {
      done(await curveCommand(io, path, options));
    });
  plans(cli.command('gaps'))
    .description('failures without an answer, and their cheapest cures')
    .action(async (path: string, options: Record<string, unknown>) => {
      done(await gapsCommand(io, path, options));
    });
  plans(cli.command('load'))
    .description('axle, gross, roof, tyre and berth loads with the planned kit')
    .option('--without-kit', 'as the vehicle stands before the kit')
    .action(async (path: string, options: Record<string, unknown>) => {
      done(await loadCommand(io, path, options));
    });
  plans(cli.command('stow'))
    .description('which bag and pocket everything of the planned kit goes into, and where the bags ride')
    .option('--labels', 'labels for the bags and pockets instead: what is in each, and its size')
    .option('--stow-seconds <n>', 'longest to think about the stowage, once the kit is chosen')
    .action(async (path: string, options: Record<string, unknown>) => {
      done(await stowCommand(io, path, options));
    });
  plans(cli.command('simulate'))
    .description('draw trips at random and walk the planned kit through them')
    .option('--trips <n>', 'trips to draw, 100 to 10,000,000', '100000')
    .option('--seed <n>', 'another number draws other trips; the same one the same', '1')
    .option(
      '--against <kit>',
      'the same trips with "everything" owned, "nothing", or the best kit of a mass ("40 kg")',
    )
    .action(async (path: string, options: Record<string, unknown>) => {
      done(await simulateCommand(io, path, options));
    });
  cli
    .command('card')
    .description(
      'the card of one job: pieces and where they are, pulls, torques, steps, cautions, and what now',
    )
    .argument(...file)
    .argument('[JOB]', 'id or words of a job; or start from what you notice with --symptom')
    .option('--symptom [id]', 'suspects behind what you notice; without an id the symptoms are listed')
    .option('--answer <answers...>', 'question=answer, as the symptom asks')
    .option('--trip <id>', 'which trip, when the garage has several')
    .addOption(
      new Option('--with <what>', 'what is here: the planned kit, or everything that is owned and ready')
        .choices(['kit', 'everything'])
        .default('kit'),
    )
    .option('--people <ids...>', 'who is here, when not everybody of the trip')
    .option('--at <km>', 'distance to help from here; without it the worst of the trip')
    .option('--dark', 'it is dark')
    .option('--daylight <hours>', 'daylight left')
    .option('--convoy', 'another vehicle is here, or comes by plan')
    .option('--water <days>', 'days the water lasts, for everybody')
    .option('--food <days>', 'days the food lasts')
    .option('--hurt', 'somebody is hurt')
    .option('--danger', 'the place is dangerous: traffic, water, fire')
    .option('--json', 'print the documented JSON instead of text')
    .action(async (path: string, job: string | undefined, options: Record<string, unknown>) => {
      done(await cardCommand(io, path, job, options));
    });
  cli
    .command('wire')
    .description('which wire and which fuse a circuit takes, and what it loses on the way')
    .requiredOption('--amps <n>', 'what it draws for longer than a few minutes, A')
    .requiredOption('--metres <n>', 'from the battery to what is fed, one way; the way back is added')
    .option('--volts <n>', '12 (as when nothing is said) or 24')
    .option('--drop <percent>', 'most that may be lost, 0.5 to 10; without it 3, for what must work')
    .option('--engine', 'some of it runs through the engine space')
    .option('--insulation <degrees>', 'rating printed on the wire: 60, 75, 80, 90, 105, 125 or 200')
    .option('--json', 'print the documented JSON instead of text')
    .action(async (options: Record<string, unknown>) => {
      done(await wireCommand(io, options));
    });
  plans(cli.command('care'))
    .description('whether the planned kit is ready: charge, dates, looks, repairs, loans, by what they risk')
    .requiredOption('--on <day>', 'the day of asking, 2026-03-05')
    .option('--leave <day>', 'the day of leaving; the day of asking when it is not given')
    .option('--kept <celsius>', 'how warm the kit is kept until then; 25 when it is not given')
    .option('--km <n>', 'distance travelled so far; the last that is recorded when it is not given')
    .option('--calendar <name>', 'also write the due days and looks as a calendar (.ics)')
    .option('--all', 'print every line of every list')
    .action(async (path: string, options: Record<string, unknown>) => {
      done(await careCommand(io, path, options));
    });
  cli
    .command('muster')
    .description('count the kit out and in: list, open, count or close')
    .argument(...file)
    .argument('[WHAT]', 'list, open, count or close', 'list')
    .option('--on <day>', 'the day it is opened or closed')
    .option('--muster <id>', 'which muster, when several are open')
    .option('--id <id>', 'name of the new muster')
    .option('--vehicle <id>', 'which vehicle, when the garage has several')
    .option('--trip <id>', "trip it belongs to; the list to restock is then that trip's")
    .option('--job <id>', 'open: with the pieces of the planned kit that this job needs')
    .option('--bag <id...>', 'open: with everything in these bags')
    .option('--out <piece...>', 'count out: wrench-13 or wrench-13=2')
    .option('--back <piece...>', 'count in')
    .option('--lost <piece...>', 'lost')
    .option('--damaged <piece...>', 'damaged')
    .option('--used <piece...>', "used up; of a stock jobs' worth or litres: oil=0.5")
    .option('--all-but [piece...]', 'everything else is back, but for these')
    .option('--sealed <bag...>', 'bags whose seal is whole since they were last counted')
    .option('--write', 'write the garage; without it only shows what would be')
    .option('--json', 'print JSON instead of text')
    .action(async (path: string, what: string, options: Record<string, unknown>) => {
      done(await musterCommand(io, path, what, options));
    });
  cli
    .command('repair')
    .description('repairs and the odometer: list, record, look, mend or reading')
    .argument(...file)
    .argument('[WHAT]', 'list, record, look, mend or reading', 'list')
    .option('--on <day>', 'the day it was done, seen or read')
    .option('--at <km>', 'what the odometer shows; list: the distance to look from')
    .option('--vehicle <id>', 'which vehicle, when the garage has several')
    .option('--id <id>', 'record: name of the repair')
    .option('--job <id>', 'record: the job')
    .option('--way <id>', 'record: the weaker way it was done in')
    .option('--failure <id>', 'record: what had failed')
    .option('--note <text>', 'record: a note')
    .option('--repair <id>', 'look, mend: which repair')
    .addOption(new Option('--found <state>', 'look: what was found').choices(['good', 'worse']))
    .option('--old <km>', 'reading: the instrument was replaced, and the old one showed this last')
    .option('--write', 'write the garage; without it only shows what would be')
    .option('--json', 'print JSON instead of text')
    .action(async (path: string, what: string, options: Record<string, unknown>) => {
      done(await repairCommand(io, path, what, options));
    });
  plans(cli.command('sure'))
    .description(
      'how sure the plan is: the spread of its chance, what comes in any case, what to measure next',
    )
    .option('--draws <n>', 'beliefs about the rates to find the best kit for, 5 to 1,000', '40')
    .option('--sizes <n>', 'assumed sizes to look into, those most hangs on first, 0 to 500', '20')
    .option('--seed <n>', 'another number draws other beliefs; the same one the same', '1')
    .action(async (path: string, options: Record<string, unknown>) => {
      done(await sureCommand(io, path, options));
    });
  cli
    .command('tables')
    .description('the standards and lists behind the plan, with their sources')
    .argument('[TABLE]', 'id of one table; without it all are listed')
    .option('--json', 'print JSON instead of text')
    .action(async (table: string | undefined, options: Record<string, unknown>) => {
      done(await tablesCommand(io, table, options));
    });
  cli
    .command('import')
    .description('read a typed list, CSV or spreadsheet into a garage')
    .argument('GARAGE', 'garage file; made when it is not there yet and --new is given')
    .argument('[LIST]', 'list to read: .txt, .csv or .xlsx')
    .option('--new <name>', 'start a new garage with this name')
    .option('--teach <lesson...>', '"word = meaning": teach a word first (kept in the garage)')
    .option('--confirm-masses', 'take masses that are unusual for their kind as they stand')
    .option('--write', 'write the garage; without it only shows what would be understood')
    .option('--json', 'print JSON instead of text')
    .action(async (garage: string, list: string | undefined, options: Record<string, unknown>) => {
      done(await importCommand(io, garage, list, options));
    });
  cli
    .command('check')
    .description('read a garage file, say what is wrong with it, and where')
    .argument(...file)
    .option('--json', 'print JSON instead of text')
    .action(async (path: string, options: Record<string, unknown>) => {
      done(await checkCommand(io, path, options));
    });
  cli.addHelpText(
    'after',
    '\nExit codes: 0 done, 1 input refused, 2 wrong usage, 3 no plan exists.\nProgress goes to standard error; NO_COLOR is respected.',
  );
  return cli;
}

/** Runs one command line; returns the exit code. */
export async function run(argv: readonly string[], io: Io): Promise<ExitCode> {
  let code: ExitCode = EXIT.done;
  const cli = program(io, (c) => {
    code = c;
  });
  try {
    if (argv.length === 0) {
      cli.outputHelp();
      return EXIT.usage;
    }
    await cli.parseAsync([...argv], { from: 'user' });
    return code;
  } catch (cause) {
    if (cause instanceof CommanderError) return cause.exitCode === 0 ? EXIT.done : EXIT.usage;
    throw cause;
  }
}
