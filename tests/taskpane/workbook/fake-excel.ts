import { areaAddress, cellAddress, parseAddress, type Area } from '../../../src/spreadsheet/address';

type Cell = string | number | boolean;
type Members = Record<string, unknown>;

interface FakeTable {
  name: string;
  readonly sheet: string;
  area: Area;
  readonly showHeaders: boolean;
  readonly showTotals: boolean;
}

/** An error as the host gives it. */
class HostError extends Error {
  constructor(readonly code: string) {
    super(code);
  }
}

/**
 * As much of the host's object model as the adapter uses, with its two rules: nothing can be read before it was loaded
 * and synchronised, and nothing that was asked for happens before that. A breach throws. What else it does as the
 * platform documents it: it refuses a batch while a cell is edited unless that batch waits for it; a batch that fails
 * half-way leaves what came before; sheets may be protected; names of sheets and tables are the same in any case; sheets
 * are renamed and deleted while others work; a request or an answer has a greatest size.
 */
export class FakeExcel {
  readonly sheets = new Map<string, Map<string, Cell>>();
  readonly tables: FakeTable[] = [];
  readonly names: { name: string; sheet?: string; formula: string }[] = [];
  readonly parts: { namespace: string; xml: string }[] = [];
  /** What was done that leaves no trace in the cells. */
  readonly log: string[] = [];
  selected = { sheet: '', address: 'A1' };
  keepsParts = true;
  refuses = false;
  /** Whether the user edits a cell. */
  editing = false;
  /** The operation that fails, counted from 1 over all batches from now on. */
  failsAt: number | undefined;
  /** Sheets that take no change. */
  readonly protectedSheets = new Set<string>();
  /** Whether no sheet can be added, renamed or deleted. */
  structureProtected = false;
  /** Most characters of a request or an answer; on the web 5 MB. */
  payload = 5_000_000;
  mode = 'Automatic';
  /** What the formula in a cell fills, by its place such as `Walls!B2`. */
  readonly spills = new Map<string, string>();
  /** Number formats of cells, by their place such as `Factors!B4`. */
  readonly formats = new Map<string, string>();
  private readonly waitingForEdit: (() => void)[] = [];
  syncs = 0;
  statesOfCalculation = ['Pending', 'Done'];
  changed: ((event: { worksheetId: string; address: string }) => Promise<void>) | undefined;
  deleted: ((event: { worksheetId: string }) => Promise<void>) | undefined;

  readonly CalculationMode = { manual: 'Manual' };
  readonly RangeCopyType = { values: 'Values' };
  readonly CalculationType = { full: 'Full' };
  readonly CalculationState = { done: 'Done' };
  readonly PageOrientation = { landscape: 'Landscape', portrait: 'Portrait' };
  readonly PaperType = { letter: 'Letter', a4: 'A4' };

  /** Puts the fake in the host's place. */
  install(): void {
    const requirements = { isSetSupported: () => true };
    Object.assign(globalThis, { Excel: this, Office: { context: { requirements } } });
  }

  /** As the host's: the batch alone, or behind an object whose context it goes on with. */
  run(first: unknown, second?: (context: unknown) => Promise<unknown>): Promise<unknown> {
    if (this.refuses) return Promise.reject(new Error('NotImplemented'));
    const { delayForCellEdit = false } = first as { delayForCellEdit?: boolean };
    const batch = (second ?? first) as (context: unknown) => Promise<unknown>;
    if (!this.editing) return batch(this.context());
    if (!delayForCellEdit) return Promise.reject(new HostError('InvalidOperationInCellEditMode'));
    return new Promise<void>((resolve) => this.waitingForEdit.push(resolve)).then(() =>
      batch(this.context()),
    );
  }

  /** The user leaves the cell that they edit. */
  endEdit(): void {
    this.editing = false;
    for (const go of this.waitingForEdit.splice(0)) go();
  }

  /** Renames a sheet, as a user does. */
  rename(from: string, to: string): void {
    this.sheets.set(to, this.sheets.get(from) ?? new Map());
    this.sheets.delete(from);
    for (const table of this.tables) if (table.sheet === from) Object.assign(table, { sheet: to });
  }

  /** Deletes a sheet, as a user does. */
  async delete(name: string): Promise<void> {
    this.sheets.delete(name);
    await this.deleted?.({ worksheetId: name });
  }

  /** Everything that is in the workbook, to compare. */
  state(): unknown {
    return structuredClone({ sheets: this.sheets, tables: this.tables, parts: this.parts });
  }

  private named(name: string): string {
    return [...this.sheets.keys()].find((each) => each.toLowerCase() === name.toLowerCase()) ?? name;
  }

  private mayChange(sheet: string): void {
    if (!this.sheets.has(sheet)) throw new HostError('ItemNotFound');
    if (this.protectedSheets.has(sheet)) throw new HostError('AccessDenied');
  }

  private weigh(payload: unknown, code: string): void {
    if (JSON.stringify(payload).length > this.payload) throw new HostError(code);
  }

  /** Fills a sheet from A1; a text that starts with `=` is a formula, and its value is in `values`. */
  fill(sheet: string, rows: readonly (readonly Cell[])[], corner = 'A1'): void {
    const cells = this.sheets.get(sheet) ?? new Map<string, Cell>();
    this.sheets.set(sheet, cells);
    const { top, left } = areaOf(corner);
    rows.forEach((row, down) => {
      row.forEach((content, across) => {
        if (content === '') cells.delete(cellAddress(top + down, left + across));
        else cells.set(cellAddress(top + down, left + across), content);
      });
    });
  }

  private context(): Members {
    const pending: (() => void)[] = [];
    const reading = (task: () => void) => {
      pending.push(task);
    };
    const later = (task: () => void) => {
      pending.push(() => {
        if (this.failsAt !== undefined && --this.failsAt === 0) {
          this.failsAt = undefined;
          throw new HostError('GeneralException');
        }
        task();
      });
    };
    const loadable = (read: Record<string, () => unknown>, members: Members = {}): Members => {
      const loaded = new Map<string, unknown>();
      const own: Members = {
        ...members,
        load: (asked: string) => {
          reading(() => {
            for (const path of asked.split(',')) {
              const [name = '', inner] = path.split('/');
              const value = inner && loaded.has(name) ? loaded.get(name) : read[name]?.();
              if (name === 'values' || name === 'formulas')
                this.weigh(value, 'ResponsePayloadSizeLimitExceeded');
              loaded.set(name, value);
              if (inner)
                for (const item of value as Members[]) (item['take'] as (name: string) => void)(inner);
            }
          });
        },
        take: (name: string) => {
          loaded.set(name, read[name]?.());
        },
      };
      return new Proxy(own, {
        get: (target, name: string) => {
          if (name in target) return target[name];
          if (loaded.has(name)) return loaded.get(name);
          if (name === 'then') return undefined;
          throw new Error(`${name} was read before it was loaded.`);
        },
        set: (target, name: string, value) => {
          const setter = target[`set ${name}`] as ((value: unknown) => void) | undefined;
          if (!setter) throw new Error(`${name} cannot be set.`);
          later(() => {
            setter(value);
          });
          return true;
        },
      });
    };

    const logged = (part: string, members: Members): Members =>
      new Proxy(members, {
        set: (_, name: string, value) => {
          later(() => {
            this.mayChange(part.slice(0, part.indexOf('!')));
            this.log.push(
              `${part} ${name} ${typeof value === 'object' ? JSON.stringify(value) : String(value)}`,
            );
          });
          return true;
        },
      });

    const range = (sheet: string, area: Area): Members => {
      const each = (of: (cell: Cell) => Cell) =>
        span(area.top, area.bottom).map((row) =>
          span(area.left, area.right).map((column) =>
            of(this.sheets.get(sheet)?.get(cellAddress(row, column)) ?? ''),
          ),
        );
      const place = `${sheet}!${areaAddress(area)}`;
      const formatOf = (part: string) =>
        logged(part, {
          font: logged(part, {}),
          autofitColumns: () => {
            later(() => this.log.push(`${part} fits`));
          },
        });
      return loadable(
        {
          address: () => `${sheet.includes(' ') ? `'${sheet}'` : sheet}!${areaAddress(area)}`,
          values: () => each((cell) => (isFormula(cell) ? '#NAME?' : unquoted(cell))),
          formulas: () => each(unquoted),
          numberFormat: () =>
            span(area.top, area.bottom).map((row) =>
              span(area.left, area.right).map(
                (column) => this.formats.get(`${sheet}!${cellAddress(row, column)}`) ?? 'General',
              ),
            ),
          isNullObject: () => false,
        },
        {
          'set formulas': (rows: Cell[][]) => {
            this.mayChange(sheet);
            this.weigh(rows, 'RequestPayloadSizeLimitExceeded');
            this.fill(sheet, rows, cellAddress(area.top, area.left));
          },
          'set numberFormat': (rows: string[][]) => {
            this.log.push(`${place} shows ${rows.map((row) => row.join(' ')).join(', ')}`);
          },
          worksheet: worksheet(sheet),
          getSpillingToRangeOrNullObject: () => {
            const spill = this.spills.get(place);
            return spill === undefined ? loadable({ isNullObject: () => true }) : range(sheet, areaOf(spill));
          },
          copyFrom: (_: unknown, what: string) => {
            later(() => {
              this.mayChange(sheet);
              this.log.push(`${place} takes its ${what}`);
            });
          },
          format: formatOf(place),
          getRow: (row: number) => ({ format: formatOf(`${place} row ${String(row)}`) }),
          getColumn: (column: number) => ({ format: formatOf(`${place} column ${String(column)}`) }),
          getIntersectionOrNullObject: (other: { area: Area }) =>
            range(sheet, {
              top: Math.max(area.top, other.area.top),
              left: Math.max(area.left, other.area.left),
              bottom: Math.min(area.bottom, other.area.bottom),
              right: Math.min(area.right, other.area.right),
            }),
          select: () => {
            later(() => {
              this.selected = { sheet, address: areaAddress(area) };
            });
          },
          area,
          sheet,
        },
      );
    };

    const worksheet = (given: string): Members => {
      const name = this.named(given);
      const members: Members = {
        getRange: (address: string) => range(name, areaOf(address)),
        getUsedRange: () => range(name, usedArea(this.sheets.get(name)) ?? areaOf('A1')),
        getUsedRangeOrNullObject: () => {
          const used = usedArea(this.sheets.get(name));
          return used ? range(name, used) : loadable({ isNullObject: () => true, address: () => undefined });
        },
        delete: () => {
          later(() => {
            if (this.structureProtected) throw new HostError('AccessDenied');
            this.sheets.delete(name);
            this.tables.splice(0, this.tables.length, ...this.tables.filter(({ sheet }) => sheet !== name));
          });
        },
        activate: () => {
          later(() => this.log.push(`${name} is shown`));
        },
      };
      members['names'] = namesOf(name);
      members['pageLayout'] = logged(`${name}!page`, {
        setPrintTitleRows: (rows: string) => this.log.push(`${name}!page title rows ${rows}`),
      });
      members['tables'] = loadable(
        { items: () => this.tables.filter(({ sheet }) => sheet === name).map(tableProxy) },
        {
          add: (of: { sheet: string; area: Area }) => {
            const table: FakeTable = {
              name: '',
              sheet: of.sheet,
              area: of.area,
              showHeaders: true,
              showTotals: false,
            };
            later(() => {
              this.mayChange(of.sheet);
              table.name = `Table${String(this.tables.length + 1)}`;
              this.tables.push(table);
            });
            return loadable(
              {},
              {
                'set name': (wanted: string) => {
                  const taken = this.tables.some((each) => each.name.toLowerCase() === wanted.toLowerCase());
                  if (taken) throw new HostError('ItemAlreadyExists');
                  table.name = wanted;
                },
              },
            );
          },
        },
      );
      return loadable({ name: () => name, isNullObject: () => !this.sheets.has(name) }, members);
    };

    const namesOf = (sheet: string | undefined): Members =>
      loadable({
        items: () =>
          this.names
            .filter((name) => name.sheet === sheet)
            .map(({ name, formula }) => loadable({ name: () => name, formula: () => formula })),
      });

    const tableProxy = (table: FakeTable): Members =>
      loadable(
        {
          name: () => table.name,
          showHeaders: () => table.showHeaders,
          showTotals: () => table.showTotals,
          isNullObject: () => false,
        },
        {
          getRange: () => range(table.sheet, table.area),
          convertToRange: () => {
            later(() => {
              this.tables.splice(this.tables.indexOf(table), 1);
            });
          },
          getHeaderRowRange: () => range(table.sheet, { ...table.area, bottom: table.area.top }),
          rows: {
            add: (_: undefined, rows: Cell[][]) => {
              later(() => {
                const { bottom, left } = table.area;
                this.fill(table.sheet, rows, cellAddress(bottom + 1, left));
                table.area = { ...table.area, bottom: bottom + rows.length };
              });
            },
          },
          worksheet: worksheet(table.sheet),
        },
      );

    const partProxy = (part: { xml: string }): Members =>
      loadable(
        { id: () => '{1}' },
        {
          getXml: () => {
            const result: { value?: string } = {};
            later(() => {
              result.value = part.xml;
            });
            return result;
          },
          setXml: (xml: string) => {
            later(() => {
              part.xml = xml;
            });
          },
        },
      );

    return {
      sync: () => {
        this.syncs++;
        // What comes before an operation that fails has happened; what comes behind it has not.
        return Promise.resolve().then(() => {
          for (const task of pending.splice(0)) task();
        });
      },
      workbook: {
        worksheets: loadable(
          { items: () => [...this.sheets.keys()].map(worksheet) },
          {
            getItem: (name: string) => worksheet(name),
            getItemOrNullObject: (name: string) => worksheet(name),
            add: (name: string) => {
              later(() => {
                if (this.structureProtected) throw new HostError('AccessDenied');
                if (this.sheets.has(this.named(name))) throw new HostError('ItemAlreadyExists');
                this.sheets.set(name, new Map());
              });
              return worksheet(name);
            },
            onChanged: {
              add: (handler: NonNullable<FakeExcel['changed']>) => {
                this.changed = handler;
                return { context: {}, remove: () => (this.changed = undefined) };
              },
            },
            onDeleted: {
              add: (handler: NonNullable<FakeExcel['deleted']>) => {
                this.deleted = handler;
                return { context: {}, remove: () => (this.deleted = undefined) };
              },
            },
          },
        ),
        tables: loadable(
          { items: () => this.tables.map(tableProxy) },
          {
            getItemOrNullObject: (name: string) => {
              const found = this.tables.find((table) => table.name.toLowerCase() === name.toLowerCase());
              return found ? tableProxy(found) : loadable({ isNullObject: () => true });
            },
          },
        ),
        names: namesOf(undefined),
        customXmlParts: {
          getByNamespace: (namespace: string) =>
            loadable({
              items: () => this.parts.filter((part) => part.namespace === namespace).map(partProxy),
            }),
          add: (xml: string) => {
            later(() => {
              const namespace = /xmlns="([^"]*)"/.exec(xml)?.[1] ?? '';
              if (this.keepsParts) this.parts.push({ namespace, xml: `<?xml version="1.0"?>${xml}` });
            });
          },
        },
        getSelectedRange: () => range(this.selected.sheet, areaOf(this.selected.address)),
        application: loadable(
          {
            calculationState: () => this.statesOfCalculation.shift() ?? 'Done',
            calculationMode: () => this.mode,
          },
          {
            calculate: (type: string) => {
              later(() => this.log.push(`calculates ${type}`));
            },
          },
        ),
      },
    };
  }
}

/** An apostrophe before a text is no part of it. */
function unquoted(cell: Cell): Cell {
  return typeof cell === 'string' && cell.startsWith("'") ? cell.slice(1) : cell;
}

function isFormula(cell: Cell): boolean {
  return typeof cell === 'string' && cell.startsWith('=');
}

function areaOf(address: string): Area {
  const area = parseAddress(address);
  if (!area) throw new Error(`${address} is no address.`);
  return area;
}

function span(from: number, to: number): number[] {
  return Array.from({ length: to - from + 1 }, (_, index) => from + index);
}

function usedArea(cells: ReadonlyMap<string, Cell> | undefined): Area | undefined {
  const areas = [...(cells?.keys() ?? [])].map(areaOf);
  if (areas.length === 0) return undefined;
  return {
    top: Math.min(...areas.map(({ top }) => top)),
    left: Math.min(...areas.map(({ left }) => left)),
    bottom: Math.max(...areas.map(({ bottom }) => bottom)),
    right: Math.max(...areas.map(({ right }) => right)),
  };
}
