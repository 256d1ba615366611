import type { PlainContents } from './pane';

/** Labels that would do harm, were they taken for anything but text. */
export const HOSTILE = {
  image: '<img src=x onerror="globalThis.harmed=true">',
  formula: '=HYPERLINK("https://example.com","click")',
  zone: '</select><script>globalThis.harmed=true</script>',
};

const HEADINGS = [
  'Wall',
  'Zone',
  'Level',
  'Material',
  'Area',
  'Height',
  'Mortar',
  'Residue',
  'Age',
  'Masked',
];

const walls = [
  HEADINGS,
  ['S-1 upper', 'South', 1, 'Red clay brick', 1200, 14, 'N', 'moderate', 35, 'no'],
  ['S-2 lower', 'South', 2, 'Red clay brick', 980, 12, 'S', 'heavy', 35, 'no'],
  ['S-3 base', 'South', 3, 'Limestone', 310, 3, 'N', 'light', 40, 'no'],
  ['N-1 upper', 'North', 1, 'Dark clay brick', 1100, 14, 'N', 'moderate', 30, 'no'],
  ['N-2 glazing', 'North', 2, 'Coated glass', 260, 12, '', '', '', 'yes'],
];

/** A workbook with walls, factors and an estimate, whose third line was typed over. */
export const BID: PlainContents = {
  sheets: {
    Walls: walls,
    Factors: [
      ['Factor', 'Value'],
      ['units', 'US'],
      ['team.size', 3],
    ],
    Estimate: [
      ['Zone', 'Water', 'Crew-hours', 'Class'],
      ...['South', 'North', 'South'].map((zone, index) => {
        const row = String(index + 2);
        const call = (name: string) => `=WASH.${name}(Walls[#All],$A${row},Factors[#All])`;
        return [zone, index === 1 ? 400 : call('WATER'), call('CREWHOURS'), call('CLASS')];
      }),
      ['West', '=WASH.WATER(Walls[#All],$A5,Factors[#All])'],
      ['Odd', '=WASH.WATER(OFFSET(Walls!A1,0,0,5,10))'],
    ],
  },
  tables: [
    { name: 'Walls', sheet: 'Walls', address: 'A1:J6' },
    { name: 'Factors', sheet: 'Factors', address: 'A1:B3' },
  ],
  shows: { 'Estimate!C2': 1.25 },
};

/** The same walls under headings and labels of somebody else's, in a plain range. */
export const FOREIGN: PlainContents = {
  sheets: {
    'Take off': [
      ['Façade take-off'],
      [],
      ['Mark', 'Elevation side', 'Floor', 'Masonry', 'Gross area (sf)', 'Ht.', HOSTILE.image],
      [HOSTILE.image, HOSTILE.zone, 1, 'Red clay brick', 1200, 14, 'x'],
      [`'${HOSTILE.formula}`, 'East', 2, 'Limestone', 310, 3, ''],
    ],
    Empty: [],
  },
};
