import { answer, readQuestion } from '../../functions/arguments';
import { exampleRows } from '../../src/walls/example-rows';
import type { Checked, Finding } from '../../src/review/finding';

/** Columns by heading; what is left out is blank. */
export type Row = Readonly<Record<string, unknown>>;

/** What a check looks at, for walls and factors as typed. */
export function checked(rows: readonly Row[], factors: readonly (readonly unknown[])[] = []): Checked {
  const headings = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  const range = [headings, ...rows.map((row) => headings.map((heading) => row[heading] ?? ''))];
  const question = readQuestion(range, null, factors, null);
  const { zones } = answer(question);
  const examples = exampleRows(range, question.factors.system);
  return { zones, job: zones, factors: question.factors, examples };
}

/** A red brick wall that no check has anything to say of, with what differs. */
export function wall(label: string, differs: Row = {}): Row {
  return {
    Wall: label,
    Zone: 'South',
    Level: 1,
    Material: 'Red clay brick',
    Area: 100,
    Height: 10,
    Mortar: 'N',
    Residue: 'light',
    Age: 28,
    Masked: 'no',
    ...differs,
  };
}

/** The findings by where they stand. */
export function whereOf(findings: readonly Finding[]): string[] {
  return findings.map(({ where }) => where);
}
