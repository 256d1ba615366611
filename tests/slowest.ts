import type { Reporter, TestModule } from 'vitest/node';

const LISTED = 10;

/** Lists the tests that took longest, so that a run that grows slow says where. */
export default class Slowest implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    const lines = modules
      .flatMap((module) => [...module.children.allTests()].map((test) => ({ module, test })))
      .map(({ module, test }) => ({
        name: `${module.relativeModuleId}: ${test.fullName}`,
        seconds: (test.diagnostic()?.duration ?? 0) / 1000,
      }))
      .sort((a, b) => b.seconds - a.seconds)
      .slice(0, LISTED)
      .map(({ name, seconds }) => `${seconds.toFixed(1).padStart(6)} s  ${name}`);
    console.log(['The slowest tests:', ...lines].join('\n'));
  }
}
