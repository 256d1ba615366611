import fc from 'fast-check';

// The same draws every time: a run that fails by chance keeps good work out, and a mutant must meet the same walls as
// the code that it is compared with. Other draws: PROPERTY_SEED=<whole number> npx vitest run.
fc.configureGlobal({
  seed: Number(process.env['PROPERTY_SEED'] ?? 20),
  // A mutant is not worth a smaller example.
  endOnFailure: process.env['STRYKER_MUTATOR_WORKER'] !== undefined,
});
