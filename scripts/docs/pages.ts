import { freshFunctionsPage } from './functions-page';
import { freshNumbersPage } from './numbers-page';
import { freshReadme } from './readme';

/** The pages that are made from the lists in the code, by file. */
export const pages: Readonly<Record<string, () => Promise<string>>> = {
  'README.md': freshReadme,
  'docs/functions.md': freshFunctionsPage,
  'docs/how-the-numbers-are-made.md': freshNumbersPage,
};
