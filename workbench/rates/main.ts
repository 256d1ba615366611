import { runRatesCommand } from './run';

process.exitCode = await runRatesCommand(process.argv.slice(2), {
  print: (text) => process.stdout.write(text),
  warn: (text) => process.stderr.write(text),
});
