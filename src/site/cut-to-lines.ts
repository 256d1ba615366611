/**
 * Cuts a sentence between words, so that each piece fits a line of a page: a spreadsheet does not make the rows of a
 * spilled result higher. A word that is longer than a line stays whole.
 * @param text the sentence
 * @param width characters that a line takes
 * @returns its pieces in order; none of an empty text
 */
export function cutToLines(text: string, width: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(/\s+/).filter((each) => each !== '')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= width) {
      lines[lines.length - 1] = `${last} ${word}`;
    } else lines.push(word);
  }
  return lines;
}
