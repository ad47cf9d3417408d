import { Command, CommanderError, Option } from 'commander';
import { clean, cleanButOurs } from './clean';
import { EXIT, Stop, type ExitCode, type Io } from './io';
import type { MakeOptions } from './make-options';
import type { Given } from './trial-given';

/** Runs one command line and gives back its exit code. Each command is loaded when it is asked for, so that all start quickly. */
export async function run(args: readonly string[], terminal: Io): Promise<ExitCode> {
  const io = cleaned(terminal);
  let code: ExitCode = EXIT.done;
  const done = (result: ExitCode): void => {
    code = result;
  };
  try {
    await program(io, done).parseAsync(args, { from: 'user' });
    return code;
  } catch (problem) {
    if (problem instanceof CommanderError) return problem.exitCode === 0 ? EXIT.done : EXIT.wrong;
    if (problem instanceof Stop) {
      io.err(`${clean(problem.message)}\n`);
      return problem.code;
    }
    io.err(
      `This is a fault in bendbuck, not in your job. Please report it with the job file.\n${problem instanceof Error ? (problem.stack ?? problem.message) : String(problem)}\n`,
    );
    return EXIT.fault;
  }
}

/** The tables that can be listed, and what each command says of itself. */
const LISTS = [
  ['metals', 'list the metals a job may name'],
  ['boards', 'list the boards'],
  ['screws', 'list the screws'],
  ['gauges', 'list the gauge tables'],
] as const;

/** Nothing that stands in a job, a path or a command line reaches the terminal as more than text. */
function cleaned(io: Io): Io {
  const { out, err, colour, errColour, progress } = io;
  return {
    ...io,
    out: (text) => out(colour ? cleanButOurs(text) : clean(text)),
    err: (text) => err(errColour || progress ? cleanButOurs(text) : clean(text)),
  };
}

function program(io: Io, done: (code: ExitCode) => void): Command {
  const bendbuck = new Command('bendbuck')
    .description('Works out and draws the wooden form that bends one sheet-metal part by hand, springback included.')
    .exitOverride()
    .configureOutput({ writeOut: io.out, writeErr: (text) => io.err(clean(text)) })
    .showHelpAfterError('(bendbuck --help lists the commands)')
    .addHelpText(
      'after',
      '\nExit codes: 0 done, 1 our fault, 2 the job is wrong or impossible (nothing written), 3 the files could not be written.',
    );

  bendbuck
    .command('new [starter] [file]')
    .description('copy a starter job to begin from; without arguments, list the starters')
    .action(async (starter: string | undefined, file: string | undefined) =>
      done(await (await import('./new')).newJob(io, starter, file)),
    );
  bendbuck
    .command('check <job>')
    .description('say what is wrong or doubtful about a job (- reads standard input)')
    .action(async (job: string) => done(await (await import('./plan')).check(io, job)));
  bendbuck
    .command('plan <job>')
    .description('work the form out: radii, wrap, pull, clamps, where everything goes')
    .option('--json', 'print the numbers as JSON: mm, degrees, N, MPa, N·mm')
    .addOption(new Option('--units <unit>', 'print in mm or in, rather than in the job’s unit').choices(['mm', 'in']))
    .action(async (job: string, options: { json?: true; units?: 'mm' | 'in' }) =>
      done(await (await import('./plan')).plan(io, job, options)),
    );
  bendbuck
    .command('make <job>')
    .description('write every drawing and list, or nothing')
    .option('--out <dir>', 'folder in which the job’s own folder is made', 'out')
    .addOption(
      new Option('--units <unit>', 'write the shop sheet in mm, in, or both, rather than in the job’s unit').choices([
        'mm',
        'in',
        'both',
      ]),
    )
    .addOption(
      new Option(
        '--dxf <kind>',
        'write outlines as closed polylines, or as separate lines and arcs, rather than as the job says',
      ).choices(['polylines', 'lines']),
    )
    .addOption(
      new Option('--file-units <unit>', 'write the DXF files in mm or in, rather than as the job says').choices([
        'mm',
        'in',
      ]),
    )
    .option('--list', 'name every file that was written')
    .action(async (job: string, { out, ...options }: MakeOptions & { out: string }) =>
      done(await (await import('./make')).make(io, job, out, options)),
    );
  const strips: Given[] = [];
  const measure = (name: Given['name'], flag: string, what: string): Option =>
    new Option(flag, what).argParser((text: string) => strips.push({ name, text }));
  bendbuck
    .command('trial <job>')
    .description(
      'fit trial strips of your own sheet, or what came out of the form, and say what they change; without any, how to bend some',
    )
    .addOption(measure('radius', '--radius <length>', 'radius of the disc; begins a strip, so give one for each'))
    .addOption(measure('bent', '--bent <degrees>', 'turn from flat while held on the disc'))
    .addOption(measure('left', '--left <degrees>', 'turn from flat after it was let go'))
    .addOption(measure('width', '--width <length>', 'width of the strip'))
    .addOption(measure('part-at', '--part-at <length>', 'a finished part: where measured, from end A; begins a part'))
    .addOption(measure('part-radius', '--part-radius <length>', 'inside radius that came out there'))
    .addOption(measure('part-angle', '--part-angle <degrees>', 'angle that came out there, from flat'))
    .addOption(measure('part-wrap', '--part-wrap <degrees>', 'wrap it was pulled to, where the sheet left the form'))
    .addOption(measure('part-form', '--part-form <length>', 'radius of the form it came off there'))
    .action(async (job: string) => done(await (await import('./trial')).trial(io, job, strips)));
  bendbuck
    .command('page [job]')
    .description('see the form and change it in the browser; serves one page to this machine only')
    .option('--port <number>', 'port to serve on; 0 takes a free one', '0')
    .option('--no-open', 'only print the address')
    .action(async (job: string | undefined, options: { port: string; open: boolean }) =>
      done(await (await import('./page')).page(io, job, options)),
    );
  for (const [name, what] of LISTS)
    bendbuck
      .command(name)
      .description(what)
      .addOption(new Option('--units <unit>', 'sizes in mm or in').choices(['mm', 'in']).default('mm'))
      .action(async (options: { units: 'mm' | 'in' }) => done((await import('./lists')).list(io, name, options)));
  bendbuck
    .command('schema')
    .description('print the JSON Schema of a job file, for editors')
    .action(async () => {
      const [{ jobJsonSchema }, { loadTables }] = await Promise.all([
        import('../job/json-schema'),
        import('../tables/bundled'),
      ]);
      io.out(`${JSON.stringify(jobJsonSchema(loadTables()), null, 2)}\n`);
    });
  return bendbuck;
}
