import { describe, expect, it } from 'vitest';
import { findMaterial, nearestMaterials } from '../../src/rules/material-names';
import { materials } from '../../src/rules/materials';
import { readFactors } from '../../src/rules/read-factors';
import { call, column, refusal, spill } from '../functions/call';
import { tradeWord } from '../../src/quantity/trade-word';

const codeOf = (name: string): string | undefined => findMaterial(materials, name)?.code;
const walls = (...names: string[]): unknown[][] => [
  ['Wall', 'Material', 'Area'],
  ...names.map((name, index) => [`W${String(index)}`, name, 100]),
];

describe('a name under which a bid lists a material', () => {
  // Common practice of US drawings and bids.
  it.each([
    ['CMU', 'plain-block'],
    ['8" CMU', 'plain-block'],
    ['8” CMU', 'plain-block'],
    ['8 in. CMU', 'plain-block'],
    ['12-inch block', 'plain-block'],
    ['Nominal 8" concrete masonry units', 'plain-block'],
    ['concrete blocks', 'plain-block'],
    ['8" split-face CMU', 'split-face-block'],
    ['Split face', 'split-face-block'],
    ['SPLIT-FACED BLOCK', 'split-face-block'],
    ['Burnished CMU', 'ground-face-block'],
    ['4" burnished block', 'ground-face-block'],
    ['Ground Face CMU', 'ground-face-block'],
    ['honed CMU', 'ground-face-block'],
    ['Buff brick', 'light-clay-brick'],
    ['tan face brick', 'light-clay-brick'],
    ['Ironspot brick', 'manganese-brick'],
    ['grey brick', 'manganese-brick'],
    ['Storefront', 'coated-glass'],
    ['curtainwall', 'coated-glass'],
    ['Windows', 'coated-glass'],
    ['precast panels', 'architectural-precast'],
    ['Cast stone bands', 'cast-stone'],
    ['limestone coping', 'limestone'],
    ['galvanised lintels', 'galvanized-steel'],
    ['aluminium composite panel', 'finished-aluminum'],
    ['portland cement stucco', 'stucco'],
    ['cedar siding', 'timber'],
  ])('%s is %s', (name, code) => {
    expect(codeOf(name)).toBe(code);
  });

  it('means one material', () => {
    const meant = new Map<string, string>();
    for (const { code, name, aliases } of materials) {
      for (const each of new Set([code, name, ...aliases].map(tradeWord))) {
        expect(meant.get(each), each).toBeUndefined();
        meant.set(each, code);
      }
    }
  });

  it.each(['brick', 'stone', 'panel', 'modular', 'EIFS', '8"', 's', ''])(
    'is not %j, which says too little',
    (name) => {
      expect(codeOf(name)).toBeUndefined();
    },
  );
});

describe('the nearest names', () => {
  it.each([
    ['CMU veneer 8x8x16', ['Plain concrete block', 'Split-face block', 'Ground-face block']],
    ['precast spandrel', ['Architectural precast']],
    ['storefront entrance', ['Coated glass']],
    ['brick', ['Red clay brick', 'Dark clay brick', 'Light clay brick', 'Glazed brick', 'Sand-faced brick']],
    ['bluestone sill', ['Limestone', 'Granite', 'Cast stone', 'Marble', 'Architectural precast']],
    ['EIFS', ['Stucco']],
    ['zinc gutter', ['Painted or anodized aluminum', 'Galvanized steel', 'Copper']],
    ['limestne', ['Limestone']],
    ['Redd clay brick', ['Red clay brick']],
  ])('to %j come by the sense of the trade', (seen, among) => {
    const offered = nearestMaterials(seen, materials);
    expect(offered).toHaveLength(3);
    expect(among).toContain(offered[0]);
  });

  it('to a kind of block are three kinds of block', () => {
    const groups = nearestMaterials('CMU veneer', materials).map(
      (name) => findMaterial(materials, name)?.group,
    );
    expect(groups).toEqual(['block', 'block', 'block']);
  });

  it('stand in the refusal of the wall', () => {
    expect(refusal(() => call('GOVERNOR', walls('Main storefront entrance'))).message).toContain(
      'the nearest are Coated glass, ',
    );
  });
});

describe('a name of the user', () => {
  const mapped = [
    ['Factor', 'Value'],
    ['material.FB-1 Norman.as', 'Light clay brick'],
    ['material.Type 2 facing.as', 'split-face-block'],
    ['material.CMU.as', 'burnished block'],
  ];

  it('is mapped once for the workbook, in the range of factors', () => {
    for (const name of ['FB-1 Norman', 'fb1 norman'])
      expect(call('GOVERNOR', walls(name), null, mapped)).toBe('Light clay brick');
    expect(call('GOVERNOR', walls('Type 2 facing'), null, mapped)).toBe('Split-face block');
  });

  it('comes before a further name of the table', () => {
    expect(call('GOVERNOR', walls('CMU'), null, mapped)).toBe('Ground-face block');
    expect(call('GOVERNOR', walls('CMU'))).toBe('Plain concrete block');
  });

  it('stands in MATERIALS', () => {
    const spilled = spill('MATERIALS', [...mapped, ['material.FB-2.as', 'Light clay brick']]);
    const place = column(spilled, 'Material').indexOf('Light clay brick');
    expect(column(spilled, 'Your names')[place]).toBe('FB-1 Norman, FB-2');
    expect(column(spilled, 'Also called')[place]).toContain('buff brick');
    expect(column(spilled, 'Your names').filter((cell) => cell !== '')).toHaveLength(3);
  });

  it('may be of a material of the user', () => {
    const own = [
      ['material.slate panel.as', 'slate'],
      ['material.slate.ceiling', 1],
      ['material.slate.suction', 3],
      ['material.slate.pressure', 500],
    ];
    expect(call('GOVERNOR', walls('Slate panel'), null, own)).toBe('slate');
  });

  it.each<[string, unknown[][], string]>([
    [
      'of nothing known',
      [['material.FB-1.as', 'Buff bricks from stock']],
      'Row 1 (material.FB-1.as), column value: "Buff bricks from stock" cannot be used. Accepted: a name or code of the material table; the nearest are Light clay brick, ',
    ],
    [
      'of a number',
      [['material.FB-1.as', 3]],
      ': 3 cannot be used. Accepted: a name or code of the material table.',
    ],
    ['of a blank', [['material.FB-1.as', '']], ': a blank cell cannot be used.'],
    [
      'that the table has',
      [['material.Limestone.as', 'Granite']],
      'the name "Limestone", which is one of the table, cannot be used. Accepted: a name of your own.',
    ],
    [
      'twice in two spellings',
      [
        ['material.FB-1.as', 'Limestone'],
        ['material.FB1.as', 'Granite'],
      ],
      'Row 2 (material.FB1.as), column value: the name "FB1" a second time cannot be used. Accepted: each name of yours once.',
    ],
  ])('%s is refused', (_, rows, message) => {
    expect(refusal(() => readFactors(rows)).message).toContain(message);
  });
});
