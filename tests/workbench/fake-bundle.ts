import type { Bundle } from '../../workbench/engine/bundle';
import { readBundle } from '../../workbench/engine/load-bundle';

// Stands in for the built bundle: sums that can be worked out in the head, and no part of the model.
const SCRIPT = `
(() => {
  const wrong = (message) => { throw new CustomFunctions.Error(CustomFunctions.ErrorCode.invalidValue, message); };
  const rows = (walls, zone) => {
    const [header, ...lines] = walls;
    const at = (name) => header.indexOf(name);
    const kept = lines.filter((line) => line[at('Wall')] !== '' && (zone === null || zone === '' || line[at('Zone')] === zone));
    for (const line of kept) {
      if (typeof line[at('Area')] !== 'number') wrong('Row of ' + line[at('Wall')] + ': Area ' + JSON.stringify(line[at('Area')]) + ' cannot be used.');
    }
    if (kept.length === 0) throw new CustomFunctions.Error(CustomFunctions.ErrorCode.notAvailable, 'No wall in zone ' + zone + '.');
    return kept.map((line) => ({ wall: line[at('Wall')], zone: line[at('Zone')], area: line[at('Area')] }));
  };
  const rate = (factors) => (factors === null ? 2 : factors.find((line) => line[0] === 'rate')[1]);
  const water = (walls, zone, factors) => rows(walls, zone).reduce((sum, row) => sum + row.area, 0) * rate(factors);
  CustomFunctions.associate('WATER', water);
  CustomFunctions.associate('GOVERNOR', (walls, zone) => rows(walls, zone)[0].wall);
  CustomFunctions.associate('SCHEDULE', (walls, zone, factors) => {
    const zones = [...new Set(rows(walls, zone).map((row) => row.zone))];
    return [['Zone', 'Water, gal'], ...zones.map((name) => [name, water(walls, name, factors)])];
  });
  CustomFunctions.associate('MIXED', () => [[1, new CustomFunctions.Error(CustomFunctions.ErrorCode.notAvailable, 'nothing here')], ['007', null]]);
  CustomFunctions.associate('ECHO', (value) => JSON.stringify(value));
  CustomFunctions.associate('BROKEN', () => { throw new TypeError('a slip of the pen'); });
})();
`;

const walls = { name: 'walls', type: 'any', dimensionality: 'matrix' };
const zone = { name: 'zone', type: 'any', dimensionality: 'scalar', optional: true };
const factors = { name: 'factors', type: 'any', dimensionality: 'matrix', optional: true };
const anything = { name: 'value', type: 'any', dimensionality: 'matrix', optional: true };

function listed(id: string, parameters: object[], dimensionality: string): object {
  return { id, name: id, description: '', parameters, result: { type: 'any', dimensionality } };
}

export const FAKE_METADATA = JSON.stringify({
  allowErrorForDataTypeAny: true,
  functions: [
    listed('WATER', [walls, zone, factors], 'scalar'),
    listed('GOVERNOR', [walls, zone, factors], 'scalar'),
    listed('SCHEDULE', [walls, zone, factors], 'matrix'),
    listed('MIXED', [], 'matrix'),
    listed('ECHO', [anything], 'scalar'),
    listed('BROKEN', [], 'scalar'),
  ],
});

/**
 * The stand-in functions.
 * @returns the bundle
 */
export function fakeBundle(): Bundle {
  return readBundle(SCRIPT, FAKE_METADATA);
}

/**
 * Units of the stand-in functions.
 * @param id the function
 * @returns gallons for water, nothing for the rest
 */
export function fakeUnit(id: string): string {
  return id === 'WATER' ? 'gal' : '';
}
