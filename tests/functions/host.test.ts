import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { worksheetFunctions } from '../../functions/worksheet-functions';
import { call } from './call';

/** Stands in for the host's own error class, which is not one of the language's. */
class HostError {
  constructor(
    readonly code: string,
    readonly message?: string,
  ) {}
}

const associated = new Map<string, (...args: unknown[]) => unknown>();
const atHost = (name: string, ...args: unknown[]): unknown => associated.get(name)?.(...args);
const thrown = (work: () => unknown): unknown => {
  try {
    work();
  } catch (error) {
    return error;
  }
  return undefined;
};

beforeAll(async () => {
  vi.stubGlobal('CustomFunctions', {
    Error: HostError,
    ErrorCode: { invalidValue: '#VALUE!', notAvailable: '#N/A' },
    associate: (id: string, run: (...args: unknown[]) => unknown) => associated.set(id, run),
  });
  await import('../../functions/functions');
  await import('../../functions/more');
});
afterAll(() => {
  vi.unstubAllGlobals();
});

const walls = [
  ['Wall', 'Zone', 'Material', 'Area', 'Masked'],
  ['A', 'Yard', 'Red clay brick', 100, ''],
  ['B', 'Gate', 'Copper', 20, 'yes'],
];
// The smallest patch takes longer to apply than the dwell, and a cleaner is insisted on.
const WITHOUT_WINDOW = [
  ['cleaner.class', 1],
  ['dwell.least', 0.5],
  ['dwell.most', 1],
  ['patch.least', 20],
];
const NOTHING = 'Nothing bare is washed here: every row is masked or has no face beside its openings.';

describe('the functions at the host', () => {
  it('are all of the list, under their names', () => {
    expect([...associated.keys()].sort()).toEqual(worksheetFunctions.map(({ name }) => name).sort());
  });

  it('give what the functions give, whatever the host adds behind the arguments', () => {
    const invocation = { address: 'Bid!C3' };
    expect(atHost('WATER', walls, null, null, null, null, invocation)).toBe(call('WATER', walls));
    expect(atHost('GOVERNOR', walls, 'Yard', null, null, invocation)).toBe('Red clay brick');
    expect(atHost('MATERIALS', null, invocation)).toEqual(call('MATERIALS'));
    expect(atHost('SOURCES', invocation)).toEqual(call('SOURCES'));
  });

  it('throw bad input as #VALUE! with its message', () => {
    const error = thrown(() => atHost('WATER', walls.with(1, ['A', 'Yard', 'Red clay brick', '1,200', ''])));
    expect(error).toBeInstanceOf(HostError);
    expect(error).toEqual(
      new HostError(
        '#VALUE!',
        'Row 2 (A), column Area: "1,200" (a number stored as text) cannot be used. Accepted: a number of ft² from 0 to 107639000.',
      ),
    );
  });

  it('throw a question without an answer as #N/A with its message', () => {
    expect(thrown(() => atHost('CLASS', walls, 'Gate'))).toEqual(new HostError('#N/A', NOTHING));
    expect(thrown(() => atHost('WATER', walls, 'Yrad'))).toEqual(
      new HostError(
        '#N/A',
        'No wall is in the zone "Yrad". Accepted: a zone: Yard, Gate. Did you mean Yard?',
      ),
    );
  });

  it('give an error cell as an error of the host', () => {
    const error = atHost('CREWHOURS', walls, 'Yard', WITHOUT_WINDOW);
    expect(error).toBeInstanceOf(HostError);
    expect(error).toMatchObject({
      code: '#VALUE!',
      message: expect.stringMatching(/^Wall A has no contact window: /),
    });
  });

  it('put errors into the cells of an array, and hide no neighbour', () => {
    const spilled = atHost('SCHEDULE', walls, null, WITHOUT_WINDOW) as unknown[][];
    const [head = [], yard = [], gate = []] = spilled;
    const cell = (line: unknown[], heading: string): unknown => line[head.indexOf(heading)];
    expect(cell(yard, 'Crew-hours')).toMatchObject({ code: '#VALUE!' });
    expect(cell(yard, 'Crew-hours')).toBeInstanceOf(HostError);
    expect(cell(yard, 'Masking (ft²)')).toBe(0);
    expect(cell(gate, 'Masking (ft²)')).toBeGreaterThan(20);
    expect(cell(gate, 'Class')).toEqual(new HostError('#N/A', NOTHING));
    expect(cell(gate, 'Class')).toBeInstanceOf(HostError);
    expect(cell(gate, 'Crew-hours')).toBeGreaterThan(0);
  });

  it('do not dress a fault of the program as bad input', () => {
    const broken = new Proxy([], {
      get: () => {
        throw new RangeError('broken');
      },
    });
    const error = thrown(() => atHost('WATER', [walls[0], broken]));
    expect(error).toBeInstanceOf(RangeError);
  });
});
