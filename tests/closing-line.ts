import type { Reporter, TestModule } from 'vitest/node';

/** Closes a run with the plain line `N passed, N failed`, which any reader of a log understands. */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
    const tests = modules.flatMap((module) => [...module.children.allTests()]);
    const count = (state: string): number => tests.filter((test) => test.result().state === state).length;
    // What breaks outside a test (an import, a hook, a late throw) fails the run, so it must not read as `0 failed`.
    const groups = modules.flatMap((module) => [module, ...module.children.allSuites()]);
    const broken = groups.filter((group) => group.errors().length > 0).length + unhandled.length;
    console.log(`${String(count('passed'))} passed, ${String(count('failed') + broken)} failed`);
  }
}
