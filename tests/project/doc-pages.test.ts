import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../functions/worksheet-functions';
import { ordinaryFunctions } from '../../src/review/audit/ordinary-functions';
import { constants } from '../../src/rules/constants';
import { factors } from '../../src/rules/factors';
import { materials } from '../../src/rules/materials';
import { methods } from '../../src/rules/methods';
import { sources } from '../../src/rules/sources';

const read = (file: string) => readFileSync(file, 'utf8');
const numbers = read('docs/how-the-numbers-are-made.md');
const functions = read('docs/functions.md');

/** The cells of the only table row that starts with a code. */
function row(page: string, code: string): string[] {
  const found = page.split('\n').filter((line) => line.startsWith(`| \`${code}\` `));
  expect([code, found.length]).toEqual([code, 1]);
  return (found[0] ?? '')
    .split('|')
    .slice(2, -1)
    .map((cell) => cell.trim());
}

describe('how the numbers are made', () => {
  it('has each factor, constant, material and source once', () => {
    const codes = [
      ...factors.map(({ id }) => id),
      ...Object.keys(constants),
      ...materials.map(({ code }) => code),
      ...Object.keys(sources),
    ];
    // The heading rows of the tables and those of the chapters are no codes, so nothing else is counted.
    expect(numbers.match(/^\| `/gm)).toHaveLength(codes.length);
    for (const code of codes) row(numbers, code);
  });

  it('has each rule once, with its source', () => {
    const lines = numbers.split('\n');
    for (const { rule, kind, source } of Object.values(methods)) {
      const line = `- ${rule} (${kind}, \`${source}\`)`;
      expect([line, lines.filter((each) => each.replace(/\\$/, '') === line).length]).toEqual([line, 1]);
    }
  });

  it('shows both systems', () => {
    // 1 psi is 6.894757 kPa (NIST SP 811): 400 psi are 2757.903, 5000 psi 34473.79 kPa.
    expect(row(numbers, 'nozzle.pressure').slice(1, 4)).toEqual([
      '400 psi; 2757.9 kPa',
      'above 0 and at most 5000 psi; above 0 and at most 34473.8 kPa',
      'assumption',
    ]);
    // 40 degF are 40/9 degC.
    expect(row(numbers, 'limit.air')[1]).toBe('40 °F; 4.44444 °C');
    expect(row(numbers, 'dwell.least').slice(1, 3)).toEqual(['3 min', 'from 0 to 120 minutes']);
    // 6 g on 30 in2 are 6 * 0.001 / 0.01935480 kg/m2.
    expect(row(numbers, 'ground-face-block').slice(1, 4)).toEqual([
      'class 1 (neutral detergent)',
      '6 g/30in²; 0.310001 kg/m²',
      '400 psi; 2757.9 kPa',
    ]);
  });

  it('writes beside a rule how a trace has it', () => {
    for (const expression of [
      'bareArea = Area - Openings',
      'water = preWetWater + belowWater + mistWater + rinseWater + mixWater + recleanWater',
      'maskingArea = masked + lapArea + fixtureArea',
    ])
      expect(numbers).toContain(`\`${expression}\``);
  });
});

describe('the worksheet functions', () => {
  it('has a section for each, with its example and every argument', () => {
    const sections = functions.split(/^## /m).slice(2);
    expect(sections.map((text) => text.split('\n')[0])).toEqual(worksheetFunctions.map(({ name }) => name));
    const shared = functions.split(/^## /m)[1] ?? '';
    sections.forEach((text, place) => {
      const { example, parameters, rule } = worksheetFunctions[place] ?? { parameters: [] };
      expect(text).toContain(example);
      expect(text.toLowerCase()).toContain(String(rule).toLowerCase());
      for (const { name } of parameters) {
        const inside = `${text}\n${shared}`.split('\n').filter((line) => line.startsWith(`| \`${name}\``));
        expect([name, inside.length]).toEqual([name, 1]);
      }
    });
  });

  it('says what is given in which unit', () => {
    const gives = (name: string) =>
      new RegExp(`## ${name}\n[^]*?\\*\\*Gives\\.\\*\\* (.*)`).exec(functions)?.[1];
    expect(gives('WATER')).toBe('One number: gal, or L in SI units.');
    expect(gives('CREWHOURS')).toBe('One number: crew-h.');
    expect(gives('NOZZLE')).toBe('A spill: Flow (gal/min), Fan width (in), Reaction force (lbf).');
    expect(gives('OPTIONS')).toMatch(
      /^A spill: Zone, .*, Mark\. With a price of labor also: Price, Price of the job, Price per area \(per ft²\)\.$/,
    );
  });
});

it('what Review works out is what the page says', () => {
  const said = /comparisons, ([^.]*?) around the Washdown functions/s.exec(
    read('docs/what-this-does-not-do.md'),
  );
  expect(said?.[1]?.match(/[A-Z]{2,}/g)).toEqual(Object.keys(ordinaryFunctions));
});

describe('links within the project', () => {
  const files = ['README.md', 'DEVELOPERS.md', ...readdirSync('docs').map((name) => `docs/${name}`)].filter(
    (file) => file.endsWith('.md'),
  );
  // As the headings of these pages become anchors: lower case, spaces to hyphens.
  const anchors = (file: string) =>
    [...read(file).matchAll(/^#+ (.*)$/gm)].map(([, title]) =>
      (title ?? '').toLowerCase().replace(/ /g, '-'),
    );

  it.each(files)('of %s lead somewhere', (file) => {
    const links = [...read(file).matchAll(/\]\(([^)\s]+)\)/g)].map(([, to]) => to ?? '');
    for (const link of links.filter((to) => !to.startsWith('http'))) {
      const [path = '', anchor] = link.split('#');
      const target = path === '' ? file : join(dirname(file), path);
      expect([link, existsSync(target)]).toEqual([link, true]);
      if (anchor !== undefined) expect(anchors(target)).toContain(anchor);
    }
  });
});
