import { describe, expect, it } from 'vitest';
import { call } from '../functions/call';

const walls = (...rows: [material: string, masked?: string][]): unknown[][] => [
  ['Wall', 'Material', 'Area', 'Masked'],
  ...rows.map(([material, masked = ''], index) => [`W${String(index)}`, material, 100, masked]),
];

// Ceilings as the table of starting values has them.
describe('governing ceiling of a zone', () => {
  it.each<[number, string, [string, string?][]]>([
    [3, 'Red clay brick', [['Red clay brick']]],
    [2, 'Granite', [['Red clay brick'], ['Granite'], ['Dark clay brick']]],
    [1, 'Ground-face block', [['Red clay brick'], ['Ground-face block'], ['Granite']]],
    [0, 'Coated glass', [['Coated glass'], ['Ground-face block']]],
    [3, 'Red clay brick', [['Coated glass', 'yes'], ['Red clay brick']]],
    [2, 'Light clay brick', [['Limestone', 'yes'], ['Light clay brick'], ['Red clay brick', 'no']]],
    [1, 'Limestone', [['Limestone', 'never'], ['Red clay brick']]],
  ])('is %i, set by %s', (ceiling, governor, rows) => {
    expect(call('GOVERNING', walls(...rows))).toBe(ceiling);
    expect(call('GOVERNOR', walls(...rows))).toBe(governor);
  });

  it('names all materials that set it, each once, in the order of the rows', () => {
    const rows = walls(['Limestone'], ['Stucco'], ['Red clay brick'], ['Limestone'], ['Marble', 'yes']);
    expect(call('GOVERNOR', rows)).toBe('Limestone, Stucco');
  });

  it('follows a ceiling of the user, up or down', () => {
    expect(call('GOVERNING', walls(['Limestone']), null, [['material.limestone.ceiling', 2]])).toBe(2);
    expect(call('GOVERNING', walls(['Red clay brick']), null, [['material.red-clay-brick.ceiling', 0]])).toBe(
      0,
    );
  });

  it('of the job is the least of its zones', () => {
    const rows = [
      ['Wall', 'Zone', 'Material', 'Area'],
      ['A', 'North', 'Red clay brick', 100],
      ['B', 'South', 'Limestone', 100],
      ['C', 'Roof', 'Stucco', 100],
    ];
    expect(call('GOVERNING', rows)).toBe(1);
    expect(call('GOVERNOR', rows)).toBe('Limestone, Stucco');
    expect(call('GOVERNING', rows, 'North')).toBe(3);
  });
});
