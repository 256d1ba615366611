import { formatPattern } from './number-formats';
import { partText, type Archive } from './archive';
import { elements, parseXml } from './xml';

/**
 * Which cell formats of a file show a number as a percent.
 * @param archive the file
 * @param path the part with the styles; undefined where the file has none
 * @returns the pattern of each such format, by its number
 */
export function percentStyles(archive: Archive, path: string | undefined): ReadonlyMap<number, string> {
  const found = new Map<number, string>();
  if (path === undefined || !archive.has(path)) return found;
  const styles = parseXml(partText(archive, path), path);
  const own = new Map(
    elements(styles, 'numFmt').map((format) => [
      Number(format.getAttribute('numFmtId')),
      format.getAttribute('formatCode') ?? '',
    ]),
  );
  const [formats] = elements(styles, 'cellXfs');
  for (const [place, xf] of (formats ? elements(formats, 'xf') : []).entries()) {
    const pattern = formatPattern(Number(xf.getAttribute('numFmtId') ?? 0), own);
    if (pattern?.includes('%')) found.set(place, pattern);
  }
  return found;
}
