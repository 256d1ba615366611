import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { raised, type VersionFiles } from '../../scripts/release/raise';

const files: VersionFiles = {
  'package.json': '{\n  "name": "a",\n  "version": "1.9.3",\n  "engines": { "node": ">=20" }\n}\n',
  'package-lock.json': `${JSON.stringify(
    {
      name: 'a',
      version: '1.9.3',
      packages: { '': { version: '1.9.3' }, 'node_modules/b': { version: '1.9.3' } },
    },
    null,
    2,
  )}\n`,
  'manifest.xml': '<OfficeApp><Version>1.9.3.0</Version><Set MinVersion="1.9"/></OfficeApp>\n',
  'CHANGELOG.md': '# Changes\n\n## Next rules\n\nA rate.\n\n## Next\n\n- More.\n\n## Rules 7\n\nThe first.\n',
  'src/rules/version.ts': "export const RULES_VERSION = '7';\n",
};

describe('a release', () => {
  it('raises the version in every file, and the rules alone where it is asked for', () => {
    const next = raised(files, '1.10.0', false);
    expect(next['package.json']).toBe(files['package.json'].replace('1.9.3', '1.10.0'));
    expect(JSON.parse(next['package-lock.json'])).toEqual({
      name: 'a',
      version: '1.10.0',
      packages: { '': { version: '1.10.0' }, 'node_modules/b': { version: '1.9.3' } },
    });
    expect(next['manifest.xml']).toBe(
      '<OfficeApp><Version>1.10.0.0</Version><Set MinVersion="1.9"/></OfficeApp>\n',
    );
    expect(next['src/rules/version.ts']).toBe(files['src/rules/version.ts']);
    expect(next['CHANGELOG.md']).toBe(files['CHANGELOG.md'].replace('## Next\n', '## Version 1.10.0\n'));
    const withRules = raised(files, '1.10.0', true);
    expect(withRules['src/rules/version.ts']).toBe("export const RULES_VERSION = '8';\n");
    expect(withRules['CHANGELOG.md']).toMatch(/^## Rules 8\n\nA rate\.\n\n## Version 1\.10\.0\n\n- More\./m);
  });

  it.each(['1.9.3', '1.9.2', '1.8.10', '0.10.0', '2', '2.0', '2.0.0.0', 'v2.0.0', ''])(
    'refuses "%s"',
    (version) => {
      expect(() => raised(files, version, false)).toThrow(
        `"${version}" cannot follow 1.9.3. Accepted: three higher numbers, as 1.2.0.`,
      );
    },
  );

  it('is refused where the changelog says nothing of it', () => {
    const silent = (text: string) => ({ ...files, 'CHANGELOG.md': text });
    for (const text of [
      '# Changes\n',
      '## Next\n',
      '## Next\n\n## Rules 7\n\nThe first.\n',
      '## Next rules\n\nA rate.\n',
    ]) {
      expect(() => raised(silent(text), '2.0.0', false)).toThrow(
        'CHANGELOG.md says nothing under "## Next".',
      );
    }
    expect(() => raised(silent('## Next\n\nMore.\n'), '2.0.0', true)).toThrow('under "## Next rules".');
  });

  it('finds the versions in the files as they are, and keeps the lock as npm writes it', () => {
    const present = Object.fromEntries(Object.keys(files).map((name) => [name, readFileSync(name, 'utf8')]));
    const next = raised(
      { ...(present as VersionFiles), 'CHANGELOG.md': files['CHANGELOG.md'] },
      '99.0.0',
      true,
    );
    for (const name of [
      'package.json',
      'package-lock.json',
      'manifest.xml',
      'src/rules/version.ts',
    ] as const) {
      const before = present[name]?.split('\n') ?? [];
      const after = next[name].split('\n');
      expect(after).toHaveLength(before.length);
      const changed = after.filter((line, index) => line !== before[index]);
      expect(changed).toHaveLength(name === 'package-lock.json' ? 2 : 1);
    }
  });
});
