import { expect, it } from 'vitest';
import { failureText } from '../../../taskpane/shared/failure-text';
import { WriteFailed } from '../../../taskpane/workbook/port';

it('says that nothing was written only where that is so', () => {
  expect(failureText(new WriteFailed('AccessDenied.', []))).toBe(
    'Nothing was written. AccessDenied. Is the workbook or the sheet protected?',
  );
  expect(failureText(new WriteFailed('AccessDenied.', ['sheet Walls', 'cells Bid!A1:B2']))).toBe(
    'Written in part: AccessDenied. This could not be taken back: sheet Walls; cells Bid!A1:B2. Look there first.',
  );
  expect(failureText(new WriteFailed('AccessDenied.', []), 'The cells are not accepted.')).toBe(
    'The cells are not accepted. Nothing was written. AccessDenied. Is the workbook or the sheet protected?',
  );
});
