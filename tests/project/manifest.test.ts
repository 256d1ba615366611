import { DOMParser, type Element } from '@xmldom/xmldom';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const manifest = new DOMParser().parseFromString(readFileSync('manifest.xml', 'utf8'), 'text/xml');
const all = (name: string): Element[] => [...manifest.getElementsByTagName(name)];
const text = (name: string): string => all(name)[0]?.textContent ?? '';
const values = (name: string): string[] => all(name).map((row) => row.getAttribute('DefaultValue') ?? '');

/** Width and height stand in the first chunk of a PNG. */
function pixels(file: string): [number, number] {
  const bytes = readFileSync(file);
  return [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
}

describe('manifest', () => {
  it('keeps its id, namespace and version form', () => {
    expect(text('Id')).toBe('8f6a1c52-3b7d-4e0a-9c41-d2e85f07ab36');
    expect(text('Version')).toMatch(/^\d+\.\d+\.\d+\.\d+$/);
    const namespace = all('bt:String').find((row) => row.getAttribute('id') === 'Functions.Namespace');
    expect(namespace?.getAttribute('DefaultValue')).toBe('WASH');
  });

  it('keeps to the documented lengths: short strings 125, long strings 250, resource ids 32', () => {
    const strings = (parent: string) => [...(all(parent)[0]?.getElementsByTagName('bt:String') ?? [])];
    for (const row of strings('bt:ShortStrings'))
      expect(row.getAttribute('DefaultValue')?.length).toBeLessThanOrEqual(125);
    for (const row of strings('bt:LongStrings'))
      expect(row.getAttribute('DefaultValue')?.length).toBeLessThanOrEqual(250);
    expect(strings('bt:ShortStrings').length).toBeGreaterThan(0);
    const ids = ['bt:Image', 'bt:Url', 'bt:String'].flatMap((name) =>
      all(name).map((row) => row.getAttribute('id')),
    );
    for (const id of ids.filter((id) => id !== null)) expect(id.length).toBeLessThanOrEqual(32);
    expect(values('Description')[0]?.length).toBeLessThanOrEqual(250);
  });

  it('refers to resources that exist, each id once', () => {
    const ids = ['bt:Image', 'bt:Url', 'bt:String'].flatMap((name) =>
      all(name).map((row) => row.getAttribute('id')),
    );
    const defined = ids.filter((id) => id !== null);
    expect(new Set(defined).size).toBe(defined.length);
    const used = [...manifest.getElementsByTagName('*')]
      .map((row) => row.getAttribute('resid'))
      .filter((id) => id !== null);
    expect(used.length).toBeGreaterThan(10);
    expect(used.filter((id) => !defined.includes(id))).toEqual([]);
  });

  it('asks for the shared runtime and the function runtime that it needs', () => {
    const sets = all('Set').map((row) => [row.getAttribute('Name'), row.getAttribute('MinVersion')]);
    expect(sets).toEqual([
      ['SharedRuntime', '1.1'],
      ['CustomFunctionsRuntime', '1.3'],
      ['ExcelApi', '1.9'],
    ]);
    expect(all('Runtime')[0]?.getAttribute('lifetime')).toBe('long');
  });

  it('has https addresses alone, and icons of the stated sizes', () => {
    for (const name of [
      'IconUrl',
      'HighResolutionIconUrl',
      'SupportUrl',
      'SourceLocation',
      'bt:Url',
      'bt:Image',
    ])
      for (const address of values(name).filter(Boolean)) expect(address).toMatch(/^https:\/\//);
    for (const size of [16, 32, 64, 80])
      expect(pixels(`assets/icon-${String(size)}.png`)).toEqual([size, size]);
  });
});
