import { describe, expect, it } from 'vitest';
import { call, refusal } from '../functions/call';

const header = ['Wall', 'Zone', 'Material', 'Area', 'Masked', 'Receives'];

describe('rows below that the rinse of a zone runs over', () => {
  it('count for its ceiling', () => {
    const walls = [
      header,
      ['Field', 'Top', 'Red clay brick', 100, '', ''],
      ['Base', 'Bottom', 'Limestone', 20, '', 'top'],
    ];
    expect(call('GOVERNING', walls, 'Top')).toBe(1);
    expect(call('GOVERNOR', walls, 'Top')).toBe('Limestone');
    expect(call('CLASS', walls, 'Top')).toBe(1);
  });

  it('count on the way further down', () => {
    const walls = [
      header,
      ['Field', 'Top', 'Red clay brick', 100, '', ''],
      ['Band', 'Middle', 'Granite', 20, '', 'Top'],
      ['Base', 'Bottom', 'Marble', 20, '', 'Middle'],
    ];
    expect(call('GOVERNING', walls, 'Top')).toBe(0);
    expect(call('GOVERNING', walls, 'Middle')).toBe(0);
    expect(call('GOVERNING', walls, 'Bottom')).toBe(0);
  });

  it('do not count where they are masked', () => {
    const walls = [
      header,
      ['Field', 'Top', 'Red clay brick', 100, '', ''],
      ['Base', 'Bottom', 'Limestone', 20, 'yes', 'Top'],
    ];
    expect(call('GOVERNING', walls, 'Top')).toBe(3);
  });

  it('must name a zone that exists', () => {
    const walls = [
      header,
      ['Field', 'Top', 'Red clay brick', 100, '', ''],
      ['Base', 'Bottom', 'Limestone', 20, '', 'Tpo'],
    ];
    expect(refusal(() => call('GOVERNING', walls))).toEqual({
      type: 'input',
      message:
        'Row 3 (Base), column Receives: "Tpo" cannot be used. Accepted: a zone: Top, Bottom, or blank. Did you mean Top?',
    });
  });

  it('must not close a circle', () => {
    const walls = [
      header,
      ['A', 'Top', 'Red clay brick', 100, '', 'Bottom'],
      ['B', 'Bottom', 'Limestone', 20, '', 'Top'],
    ];
    expect(refusal(() => call('GOVERNING', walls)).message).toMatch(
      /^Zones receive each other's rinse in a circle: .*Top.*\. Accepted: rinse that runs downward only\.$/,
    );
  });

  it('are followed to the end of a long chain of full zones', () => {
    const zones = Array.from({ length: 12 }, (_, index) => `Z${String(index)}`);
    const walls: unknown[][] = [header];
    zones.forEach((zone, index) => {
      const material = index === zones.length - 1 ? 'Marble' : 'Red clay brick';
      for (let row = 0; row < 12; row++)
        walls.push([`${zone}-${String(row)}`, zone, material, 10, '', zones[index - 1] ?? '']);
    });
    // Marble, at the foot, takes clear water only: nothing stronger may be used anywhere above.
    for (const zone of zones) expect(call('GOVERNING', walls, zone)).toBe(0);
  });
});
