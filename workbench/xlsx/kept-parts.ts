import type { PartName } from '../../taskpane/workbook/port';
import { partNamespace, partText as keptText } from '../../taskpane/workbook/part-xml';
import { partText, type Archive } from './archive';
import { relationships } from './parts';
import { parseXml } from './xml';

/** The names under which texts are kept in a workbook. */
export const PART_NAMES: readonly PartName[] = ['source', 'formulas', 'steps', 'rules'];

/**
 * Where a workbook keeps a text.
 * @param archive the file
 * @param workbook path of its workbook part
 * @param name what the text is kept for
 * @returns the path of its part, undefined where there is none
 */
export function keptPartPath(archive: Archive, workbook: string, name: PartName): string | undefined {
  return relationships(archive, workbook)
    .filter(({ kind, target }) => kind === 'customXml' && archive.has(target))
    .find(({ target }) => rootNamespace(archive, target) === partNamespace(name))?.target;
}

/** Custom XML belongs to others too: what cannot be read is none of ours. */
function rootNamespace(archive: Archive, path: string): string | undefined {
  try {
    return parseXml(partText(archive, path), path).documentElement?.namespaceURI ?? undefined;
  } catch {
    return undefined;
  }
}

/**
 * The texts that a workbook keeps.
 * @param archive the file
 * @param workbook path of its workbook part
 * @returns the texts by name
 */
export function readKeptTexts(archive: Archive, workbook: string): Partial<Record<PartName, string>> {
  const texts: Partial<Record<PartName, string>> = {};
  for (const name of PART_NAMES) {
    const path = keptPartPath(archive, workbook, name);
    const text = path === undefined ? undefined : keptText(partText(archive, path));
    if (text !== undefined) texts[name] = text;
  }
  return texts;
}
