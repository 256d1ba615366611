/** What the test runner reports of a run, as far as it is read here. */
export interface RunReport {
  readonly testResults: readonly {
    readonly name: string;
    readonly status: string;
    readonly assertionResults: readonly { readonly fullName: string; readonly status: string }[];
  }[];
}

/**
 * The tests that failed in a run. A file that broke outside of its tests is listed by its own name.
 * @param report what the runner reports
 * @param folder folder of the project, which names of files are told from
 * @returns names of tests, file first
 */
export function failuresOf(report: RunReport, folder: string): string[] {
  return report.testResults.flatMap(({ name, status, assertionResults }) => {
    const file = name.startsWith(folder) ? name.slice(folder.length).replace(/^[\\/]/, '') : name;
    const failed = assertionResults.filter((test) => test.status === 'failed');
    if (failed.length === 0) return status === 'failed' ? [`${file}: outside of its tests`] : [];
    return failed.map(({ fullName }) => `${file}: ${fullName}`);
  });
}

/**
 * How often each test failed in several runs.
 * @param runs the tests that failed, a list a run
 * @returns a line for each test that ever failed, the most often first; at the end how many runs passed
 */
export function failureCounts(runs: readonly (readonly string[])[]): string[] {
  const counts = new Map<string, number>();
  for (const name of runs.flat()) counts.set(name, (counts.get(name) ?? 0) + 1);
  const of = String(runs.length);
  return [
    ...[...counts]
      .sort(([, a], [, b]) => b - a)
      .map(([name, count]) => `failed ${String(count)} of ${of}  ${name}`),
    `${String(runs.filter((failed) => failed.length === 0).length)} of ${of} runs passed`,
  ];
}
