import { WashdownError } from '../src/quantity/problem';
import { loadMore, moreAtHand } from './load-more';
import { moreNames } from './more-names';
import { runs } from './runs';
import { isCellError, type CellError, type CellValue, type Run } from './worksheet-function';

function hostError({ error, message }: CellError): CustomFunctions.Error {
  const { notAvailable, invalidValue } = CustomFunctions.ErrorCode;
  return new CustomFunctions.Error(error === '#N/A' ? notAvailable : invalidValue, message);
}

function hostCell(value: CellValue): unknown {
  return isCellError(value) ? hostError(value) : value;
}

function answer(run: Run, args: readonly unknown[]): unknown {
  try {
    // The host adds an object about the call behind the arguments; no function looks that far.
    const result = run(args);
    return Array.isArray(result) ? result.map((row) => row.map(hostCell)) : hostCell(result);
  } catch (error) {
    if (!(error instanceof WashdownError)) throw error;
    const nothing = error.problems.every(({ type }) => type === 'nothing');
    // The host's error class is its own, not one of the language's.
    // eslint-disable-next-line @typescript-eslint/only-throw-error
    throw hostError({ error: nothing ? '#N/A' : '#VALUE!', message: error.message });
  }
}

for (const [name, run] of Object.entries<Run>(runs)) {
  CustomFunctions.associate(name, (...args: unknown[]) => answer(run, args));
}

for (const name of moreNames) {
  CustomFunctions.associate(name, (...args: unknown[]) => {
    const known = moreAtHand(name);
    if (known) return answer(known, args);
    return loadMore().then(
      () => answer(moreAtHand(name) as Run, args),
      (error: unknown) => {
        // As above.
        // eslint-disable-next-line @typescript-eslint/only-throw-error
        throw hostError({ error: '#N/A', message: (error as Error).message });
      },
    );
  });
}
