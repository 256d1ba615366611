import { AppManifestUtils, type TeamsManifest } from '@microsoft/app-manifest';
import { DOMParser, type Element } from '@xmldom/xmldom';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

// Proven by the platform's own validator and its schemas, which it brings along: nothing is fetched.

type Json = Record<string, unknown>;
interface Unified extends Json {
  readonly extensions: [{ requirements: { capabilities: object[] }; runtimes: [Json]; alternates: object[] }];
}

const xml = new DOMParser().parseFromString(readFileSync('dist/manifest.xml', 'utf8'), 'text/xml');
const all = (name: string): Element[] => [...xml.getElementsByTagName(name)];
const text = (name: string): string => all(name)[0]?.textContent ?? '';
const read = (): Unified => JSON.parse(readFileSync('dist/manifest.json', 'utf8')) as Unified;
const wrongIn = (manifest: Unified): Promise<string[]> =>
  AppManifestUtils.validateAgainstSchema(manifest as unknown as TeamsManifest);

/** Every address in a manifest that is loaded or shown. */
function addressesIn(part: unknown): string[] {
  if (typeof part === 'string') return part.startsWith('https://localhost:3000') ? [part] : [];
  return part !== null && typeof part === 'object' ? Object.values(part).flatMap(addressesIn) : [];
}

describe('the unified manifest', () => {
  it('is valid by the schema that it names', async () => {
    const [manifest, wrong] = await AppManifestUtils.readAndValidateTeamsManifest('dist/manifest.json');
    expect(wrong).toEqual([]);
    expect(manifest.manifestVersion).toBe('1.30');
  });

  it.each([
    ['a required part that is missing', { icons: undefined }, /required property 'icons'/],
    ['a part that nobody knows', { taskpane: true }, /additional properties/],
    [
      'a description that is too long',
      { description: { short: 'x'.repeat(81), full: 'x' } },
      /80 characters/,
    ],
  ])('the validator refuses %s', async (_, change, sentence) => {
    expect((await wrongIn({ ...read(), ...change })).join()).toMatch(sentence);
  });

  it('would take functions and lists of words from functions.json, which it holds to the schema', async () => {
    const listed = JSON.parse(readFileSync('dist/functions.json', 'utf8')) as Json;
    const manifest = read();
    const runtime = manifest.extensions[0].runtimes[0];
    const inside = { ...(runtime['customFunctions'] as Json) };
    runtime['customFunctions'] = { ...inside, functions: listed['functions'], enums: listed['enums'] };
    expect(await wrongIn(manifest)).toEqual([]);
    runtime['customFunctions'] = { ...inside, functions: [{ id: 'A', name: 'A' }] };
    expect((await wrongIn(manifest)).join()).toContain('fewer than 3 characters');
  });

  it('says the same as the other one: version, addresses, requirement sets, permission, namespace', () => {
    const manifest = read();
    const [major, , ...raised] = text('Version').split('.');
    expect(manifest['version']).toBe([major, ...raised].join('.'));
    const given = new Set(
      all('*')
        .map((each) => each.getAttribute('DefaultValue') ?? '')
        .filter((each) => each.startsWith('https:')),
    );
    const used = new Set(addressesIn(manifest));
    // Icons of the catalogue come with the package, and the page about privacy has no place in the other one.
    const alone = (name: string) => !/icon-64\.png$/.test(name);
    expect([...used].filter((each) => !given.has(each))).toEqual(['https://localhost:3000/privacy.html']);
    expect([...given].filter(alone).filter((each) => !used.has(each))).toEqual([]);
    const sets = all('Set').map((set) => ({
      name: set.getAttribute('Name'),
      minVersion: set.getAttribute('MinVersion'),
    }));
    expect(manifest.extensions[0].requirements.capabilities).toEqual(sets);
    expect(text('Permissions')).toBe('ReadWriteDocument');
    expect(JSON.stringify(manifest['authorization'])).toContain('"Document.ReadWrite.User"');
    expect(JSON.stringify(manifest)).toContain('"namespace":{"id":"WASH","name":"WASH"}');
  });

  it('has an id of its own that never changes, and makes the other one step back', () => {
    const manifest = read();
    expect(manifest['id']).toBe('c4d1f0a7-6e52-4b93-8a1f-57b0e3d96c28');
    expect(manifest.extensions[0].alternates).toEqual([
      { hide: { customOfficeAddin: { officeAddinId: text('Id') } } },
    ]);
  });

  it('has icons of the sizes that the schema states: 32 in outline, 192 in color', () => {
    const { outline = '', color = '' } = read()['icons'] as Record<string, string>;
    const width = (file: string) => readFileSync(`dist/${file}`).readUInt32BE(16);
    expect([width(outline), width(color)]).toEqual([32, 192]);
  });
});
