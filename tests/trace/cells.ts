import { addedQuantities, quantityIds } from '../../src/estimate/quantities';
import { isCellError, type CellValue } from '../../functions/worksheet-function';
import { call, lines, text, type Line } from '../properties/call';
import type { Job } from './jobs';

/** A cell of the workbook: a number, or the message of its error. */
export type Shown = number | string;

function shown(cell: CellValue | undefined): Shown {
  if (cell === undefined) return 'no such cell';
  return isCellError(cell) ? cell.message : (cell as number);
}

/** What a call gives, or the message that it is refused with. */
export function attempt(work: () => CellValue | CellValue[][]): Shown {
  try {
    return shown(work() as CellValue);
  } catch (error) {
    return (error as Error).message;
  }
}

const headingOf = new Map<string, string>(
  quantityIds.map((id) => [addedQuantities[id].heading.toLowerCase(), addedQuantities[id].heading]),
);

/** Where the number of each name stands in SCHEDULE, beside the quantities under their own headings. */
const scheduleHeadings: Readonly<Record<string, string>> = {
  cleaner: 'Concentrate',
  class: 'Class',
  governing: 'Ceiling',
};

/** The functions of one number, and their parts, by the name that TRACE takes. */
export const scalarFunctions: Readonly<Record<string, readonly [name: string, part?: string]>> = {
  water: ['WATER'],
  'pre-wet water': ['WATER', 'prewet'],
  'water below': ['WATER', 'below'],
  'mist water': ['WATER', 'mist'],
  'mix water': ['WATER', 'mix'],
  'rinse water': ['WATER', 'rinse'],
  're-clean water': ['WATER', 'reclean'],
  masking: ['MASKING'],
  tape: ['TAPE'],
  cleaner: ['CLEANER'],
  concentrate: ['CLEANER'],
  runoff: ['RUNOFF'],
  neutralizer: ['NEUTRALIZER'],
  'sodium bicarbonate': ['NEUTRALIZER', 'bicarbonate'],
  'soda ash': ['NEUTRALIZER', 'soda ash'],
  'crew-hours': ['CREWHOURS'],
  'labor-hours': ['LABORHOURS'],
  'scrape hours': ['LABORHOURS', 'scrape'],
  'mask hours': ['LABORHOURS', 'mask'],
  'pre-wet hours': ['LABORHOURS', 'prewet'],
  'apply hours': ['LABORHOURS', 'apply'],
  'scrub hours': ['LABORHOURS', 'scrub'],
  'rinse hours': ['LABORHOURS', 'rinse'],
  'standby hours': ['LABORHOURS', 'tend'],
  'patch change hours': ['LABORHOURS', 'change'],
  'wetting below hours': ['LABORHOURS', 'below'],
  'unmask hours': ['LABORHOURS', 'unmask'],
  'glass hours': ['LABORHOURS', 'glass'],
  'move hours': ['LABORHOURS', 'move'],
  'scaffold hours': ['LABORHOURS', 'scaffold'],
  'brush hours': ['LABORHOURS', 'brush'],
  're-clean hours': ['LABORHOURS', 'reclean'],
  'zone set-up hours': ['LABORHOURS', 'zonesetup'],
  'sample hours': ['LABORHOURS', 'sample'],
  'mobilize hours': ['LABORHOURS', 'mobilize'],
  'protect hours': ['LABORHOURS', 'protect'],
  'set-up hours': ['LABORHOURS', 'setup'],
  'bid price': ['BIDPRICE'],
  'labor price': ['BIDPRICE', 'labor'],
  'cleaner price': ['BIDPRICE', 'cleaner'],
  'masking price': ['BIDPRICE', 'masking'],
  'water price': ['BIDPRICE', 'water'],
  'equipment price': ['BIDPRICE', 'equipment'],
  'access price': ['BIDPRICE', 'access'],
  'neutralizer price': ['BIDPRICE', 'neutralizer'],
  'disposal price': ['BIDPRICE', 'disposal'],
  'mobilization price': ['BIDPRICE', 'mobilization'],
  'protection price': ['BIDPRICE', 'protection'],
  'fixed sums': ['BIDPRICE', 'fixed'],
  supervision: ['BIDPRICE', 'supervision'],
  contingency: ['BIDPRICE', 'contingency'],
  overhead: ['BIDPRICE', 'overhead'],
  profit: ['BIDPRICE', 'profit'],
  'added to reach the minimum': ['BIDPRICE', 'minimum'],
  governing: ['GOVERNING'],
  class: ['CLASS'],
};

/** The cells of a workbook that TRACE explains. */
export class Cells {
  readonly zones: readonly string[];
  private readonly schedule: readonly Line[];
  private readonly wallRows: ReadonlyMap<string, Line>;
  private readonly factorValue: ReadonlyMap<string, CellValue>;

  constructor(private readonly job: Job) {
    this.schedule = lines('SCHEDULE', job.walls, null, job.factors);
    this.zones = this.schedule.map((line) => text(line['Zone']));
    this.wallRows = new Map(
      lines('WALLROWS', job.walls, null, job.factors).map((line) => [text(line['Wall']), line]),
    );
    this.factorValue = new Map(
      lines('FACTORS', job.factors).map((line) => [text(line['Factor']), line['Value'] ?? '']),
    );
  }

  get walls(): readonly string[] {
    return [...this.wallRows.keys()];
  }

  /** The cells that show a number of a zone; an empty zone is the job. */
  of(quantity: string, zone: string): Shown[] {
    const { walls, factors } = this.job;
    const cells: Shown[] = [];
    const heading = scheduleHeadings[quantity] ?? headingOf.get(quantity);
    if (heading !== undefined && zone !== '') {
      cells.push(shown(this.schedule.find((line) => line['Zone'] === zone)?.[heading]));
    }
    const scalar = scalarFunctions[quantity];
    if (scalar !== undefined) {
      const [name, part] = scalar;
      const rest = part === undefined ? [] : [part];
      cells.push(attempt(() => call(name, walls, zone, factors, ...rest)));
    }
    if (quantity === 'fan width') {
      const given = ['number', 'pressure', 'angle', 'distance'].map((id) =>
        this.factorValue.get(`nozzle.${id}`),
      );
      cells.push(this.plain('NOZZLE', given, 1));
    }
    if (quantity === 'time to dry') cells.push(this.timeToDry());
    return cells;
  }

  /** The cell that shows a number of a wall row, where the row has it. */
  ofWall(quantity: string, wall: string): Shown | undefined {
    const heading = quantity === 'cleaner' ? 'Concentrate' : headingOf.get(quantity);
    return heading === undefined ? undefined : shown(this.wallRows.get(wall)?.[heading]);
  }

  private timeToDry(): Shown {
    const of = (id: string): CellValue | undefined => this.factorValue.get(`weather.${id}`);
    const humidity = Number(of('humidity')) / 100;
    return this.plain('DRYING', [of('air'), of('surface'), humidity, of('wind'), of('film')], 1);
  }

  /** Calls a function of plain numbers with the units of the job behind them, and takes one of its lines. */
  private plain(name: string, args: readonly unknown[], line: number): Shown {
    const units = this.factorValue.get('units');
    return attempt(() => {
      const spilled = call(name, ...args, units);
      return (spilled as CellValue[][])[line]?.[1] ?? '';
    });
  }
}
