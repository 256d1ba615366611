import type { SourceId } from './sources';

/** A public norm of a whole clean: area that a person does in an hour, all told. */
export interface WholeClean {
  readonly work: string;
  readonly value: number;
  readonly unit: 'ft2/labor-h' | 'm2/labor-h';
  readonly source: SourceId;
}

/** Public norms of like work, lowest first. None is new masonry: they bracket a whole estimate and found none of it. */
export const wholeCleans = [
  {
    work: 'floor of tile or stone with muriatic acid, item 99805: 0.4302 labor-h/m2',
    value: 1 / 0.4302,
    unit: 'm2/labor-h',
    source: 'sinapi',
  },
  {
    work: 'existing masonry by steam: 1 ft2/min per nozzle, two people',
    value: 60 / 2,
    unit: 'ft2/labor-h',
    source: 'mo-913',
  },
  {
    work: 'jet on a rigid surface, item 55.01.140: 0.33 labor-h/m2',
    value: 1 / 0.33,
    unit: 'm2/labor-h',
    source: 'cdhu-202',
  },
  {
    work: 'facade by water jet, item 16.11.020: 0.10 and 0.10 labor-h/m2',
    value: 1 / 0.2,
    unit: 'm2/labor-h',
    source: 'fde-2022',
  },
  {
    work: 'complementary jet, item 55.01.030: 0.20 labor-h/m2',
    value: 1 / 0.2,
    unit: 'm2/labor-h',
    source: 'cdhu-202',
  },
  {
    work: 'facade blasted with sand, window shields set, 61-02-009-01: 15.8 labor-h on 100 m2',
    value: 100 / 15.8,
    unit: 'm2/labor-h',
    source: 'gesnr-2022',
  },
] as const satisfies readonly WholeClean[];
