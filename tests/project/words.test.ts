import { expect, it } from 'vitest';
import { userTexts } from './user-texts';
import { understood, wordRules } from './words';

const texts = userTexts().filter(({ text }) => !understood.has(text));

it('reads every text of the program and of its documents', () => {
  const files = new Set(texts.map(({ file }) => file));
  for (const file of ['README.md', 'docs/workbench.md', 'taskpane/taskpane.html', 'src/rules/cautions.ts'])
    expect(files).toContain(file);
  expect(texts.map(({ text }) => text)).toContain('Set up');
});

it.each(wordRules)('says $say', ({ not }) => {
  const found = texts
    .filter(({ text }) => not.test(text))
    .map(
      ({ file, line, text }) =>
        `${file}:${String(line)}: ${not.exec(text)?.[0] ?? ''}: ${text.slice(0, 120)}`,
    );
  expect(found).toEqual([]);
});
