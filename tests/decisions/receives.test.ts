import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { call, column, number, refusal, spill } from '../functions/call';

const HEADINGS = ['Wall', 'Zone', 'Material', 'Area', 'Residue', 'Masked', 'Receives'];
const CEILING: Readonly<Record<string, number>> = {
  'Red clay brick': 3,
  'Cast stone': 2,
  Limestone: 1,
  Marble: 0,
};

type Row = readonly [wall: string, zone: string, material: string, masked: string, receives: string];

function rangeOf(rows: readonly Row[]): unknown[][] {
  const cells = rows.map(([wall, zone, material, masked, receives]) => [
    wall,
    zone,
    material,
    200,
    'heavy',
    masked,
    receives,
  ]);
  return [HEADINGS, ...cells];
}

// Rinse runs from the tower over the terrace, and on from there into the court.
const cascade: readonly Row[] = [
  ['T1', 'Tower', 'Red clay brick', '', ''],
  ['R1', 'Terrace', 'Cast stone', '', 'Tower'],
  ['R2', 'Terrace', 'Red clay brick', '', ''],
  ['C1', 'Court', 'Limestone', '', 'Terrace'],
];

function changed(
  rows: readonly Row[],
  wall: string,
  change: Partial<Record<'masked' | 'receives' | 'material', string>>,
): Row[] {
  return rows.map((row) => {
    const [label, zone, material, masked, receives] = row;
    if (label !== wall) return row;
    return [label, zone, change.material ?? material, change.masked ?? masked, change.receives ?? receives];
  });
}

function ceilings(rows: readonly Row[]): unknown[] {
  const spilled = spill('SCHEDULE', rangeOf(rows));
  const zones = column(spilled, 'Zone');
  return column(spilled, 'Ceiling').map((ceiling, index) => [zones[index], ceiling]);
}

describe('a zone whose rinse runs over another', () => {
  it('is governed by what lies below, and by what lies below that', () => {
    expect(ceilings(cascade)).toEqual([
      ['Tower', 1],
      ['Terrace', 1],
      ['Court', 1],
    ]);
    expect(call('GOVERNOR', rangeOf(cascade), 'Tower')).toBe('Limestone');
    expect(call('CLASS', rangeOf(cascade), 'Tower')).toBe(1);
  });

  it('governs nothing above it where no rinse is said to run', () => {
    const dry = changed(changed(cascade, 'R1', { receives: '' }), 'C1', { receives: '' });
    expect(ceilings(dry)).toEqual([
      ['Tower', 3],
      ['Terrace', 2],
      ['Court', 1],
    ]);
  });

  it('only the row that says so is wetted, but the rinse runs on from its zone', () => {
    // R1 is brick now: it allows class 3 itself, R2 beside it is marble and not wetted, C1 further down is.
    const rows = changed(changed(cascade, 'R1', { material: 'Red clay brick' }), 'R2', {
      material: 'Marble',
    });
    expect(ceilings(rows)).toEqual([
      ['Tower', 1],
      ['Terrace', 0],
      ['Court', 1],
    ]);
  });

  it('does not count a masked row below, and runs on over it', () => {
    expect(ceilings(changed(cascade, 'C1', { masked: 'yes' }))[0]).toEqual(['Tower', 2]);
    expect(ceilings(changed(cascade, 'R1', { masked: 'yes' }))[0]).toEqual(['Tower', 1]);
    const both = changed(changed(cascade, 'R1', { masked: 'yes' }), 'C1', { masked: 'yes' });
    expect(ceilings(both)[0]).toEqual(['Tower', 3]);
    // A row that cannot be masked is not masked.
    expect(ceilings(changed(cascade, 'C1', { masked: 'never' }))[0]).toEqual(['Tower', 1]);
  });

  it('has more left to the brush: the lower limestone costs the tower hours', () => {
    // Heavy residue: class 1 leaves 0.4 of it to the brush, at 18 ft2 per labor-hour, in a 50-minute hour.
    const scrubbed = ((200 * 0.4) / 18) * (60 / 50);
    expect(number('LABORHOURS', rangeOf(cascade), 'Tower', null, 'scrub')).toBeCloseTo(scrubbed, 9);
  });

  it('names what governs once, and nothing below where the zone itself is weaker', () => {
    expect(call('GOVERNOR', rangeOf(changed(cascade, 'T1', { material: 'Marble' })), 'Tower')).toBe('Marble');
    expect(call('GOVERNOR', rangeOf(changed(cascade, 'T1', { material: 'Limestone' })), 'Tower')).toBe(
      'Limestone',
    );
  });

  it('finds the zone whatever its spelling', () => {
    expect(ceilings(changed(cascade, 'R1', { receives: ' TOWER ' }))[0]).toEqual(['Tower', 1]);
  });

  it('where every row of it is masked washes nothing, whatever lies below', () => {
    const rows = changed(cascade, 'T1', { masked: 'yes' });
    expect(refusal(() => call('GOVERNING', rangeOf(rows), 'Tower')).type).toBe('nothing');
  });

  it.each(['CLASS', 'GOVERNING', 'GOVERNOR', 'WATER', 'MASKING', 'CREWHOURS', 'CLEANER', 'RUNOFF'])(
    '%s of a zone asked for alone is that of the zone in the job',
    (name) => {
      const walls = rangeOf(cascade);
      const heading: Readonly<Record<string, string>> = {
        CLASS: 'Class',
        GOVERNING: 'Ceiling',
        GOVERNOR: 'Set by',
        WATER: 'Water',
        MASKING: 'Masking',
        CREWHOURS: 'Crew-hours',
        CLEANER: 'Concentrate',
        RUNOFF: 'Runoff',
      };
      const inJob = column(spill('SCHEDULE', walls), heading[name] ?? '');
      ['Tower', 'Terrace', 'Court'].forEach((zone, index) => {
        expect(call(name, walls, zone)).toEqual(inJob[index]);
        expect(column(spill('SCHEDULE', walls, zone), heading[name] ?? '')).toEqual([inJob[index]]);
      });
    },
  );

  it('any zones: the least ceiling of its own unmasked rows and of all that its rinse reaches', () => {
    // Zones A to E from the top down; a row may receive from any zone above its own that has rows.
    const made = fc.array(
      fc.tuple(
        fc.nat(4),
        fc.constantFrom(...Object.keys(CEILING)),
        fc.constantFrom('', '', 'yes', 'never'),
        fc.nat(4),
        fc.boolean(),
      ),
      { minLength: 2, maxLength: 12 },
    );
    let fed = 0;
    fc.assert(
      fc.property(made, (drafts) => {
        const names = 'ABCDE';
        const present = new Set(drafts.map(([zone]) => zone));
        const rows = drafts.map(([zone, material, masked, from, wet], index): Row => {
          const receives = wet && from < zone && present.has(from) ? (names[from] ?? '') : '';
          return [`W${String(index)}`, names[zone] ?? '', material, masked, receives];
        });
        // Which zones the rinse of each reaches, by squaring: a zone reaches what the zones that it reaches reach.
        const reaches = new Set(
          rows.filter(([, , , , from]) => from).map(([, zone, , , from]) => from + zone),
        );
        names.split('').forEach(() => {
          for (const ab of [...reaches]) {
            for (const bc of [...reaches]) if (ab[1] === bc[0]) reaches.add(`${ab[0] ?? ''}${bc[1] ?? ''}`);
          }
        });
        for (const zone of new Set(rows.map(([, name]) => name))) {
          const own = rows.filter(([, name, , masked]) => name === zone && masked !== 'yes');
          const wetted = rows.filter(
            ([, , , masked, from]) => masked !== 'yes' && from && (from === zone || reaches.has(zone + from)),
          );
          if (own.length === 0) continue;
          if (wetted.length > 0) fed += 1;
          const least = Math.min(...[...own, ...wetted].map(([, , material]) => CEILING[material] ?? NaN));
          expect(call('GOVERNING', rangeOf(rows), zone)).toBe(least);
        }
      }),
      { seed: 23, numRuns: 200 },
    );
    expect(fed).toBeGreaterThan(100);
  });
});

describe('rinse that cannot run so', () => {
  it('in a circle is refused with the zones of the circle', () => {
    const circle = changed(cascade, 'T1', { receives: 'Court' });
    for (const zone of [null, 'Tower', 'Court']) {
      const { type, message } = refusal(() => call('WATER', rangeOf(circle), zone));
      expect(type).toBe('input');
      const named = /circle: (.*?)\. /.exec(message)?.[1]?.split(' -> ') ?? [];
      expect(named).toHaveLength(4);
      expect(named[0]).toBe(named[3]);
      // The order of the rinse, wherever it is entered.
      const next: Readonly<Record<string, string>> = { Tower: 'Terrace', Terrace: 'Court', Court: 'Tower' };
      named.slice(1).forEach((name, index) => {
        expect(name).toBe(next[named[index] ?? '']);
      });
    }
  });

  it('back into its own zone is a circle too', () => {
    const { message } = refusal(() => call('WATER', rangeOf(changed(cascade, 'T1', { receives: 'Tower' }))));
    expect(message).toContain('circle: Tower -> Tower');
  });

  it('from a zone that is not there is refused with row, column and the nearest zone', () => {
    const { type, message } = refusal(() =>
      call('WATER', rangeOf(changed(cascade, 'C1', { receives: 'Terace' }))),
    );
    expect(type).toBe('input');
    expect(message).toMatch(/^Row 5 \(C1\), column Receives: "Terace" cannot be used\./);
    expect(message).toMatch(/Did you mean Terrace/);
  });
});
