import type { Reporter, TestModule } from 'vitest/node';

/** Closes a run with the plain line `N passed, N failed`, which any reader of a log understands. */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    const tests = modules.flatMap((module) => [...module.children.allTests()]);
    const count = (state: string): number => tests.filter((test) => test.result().state === state).length;
    const broken = modules.filter(
      (module) => module.state() === 'failed' && module.errors().length > 0,
    ).length;
    console.log(`${String(count('passed'))} passed, ${String(count('failed') + broken)} failed`);
  }
}
