import type { FactorsInForce } from '../rules/read-factors';
import type { RowRecord } from '../trace/recorder';
import { edgeLength, openingsEdge } from '../walls/edge-length';
import type { WallRow } from '../walls/wall-row';

/** The allowances of masking. */
export interface MaskingAllowances {
  /** m */
  readonly lap: number;
  /** m2 each */
  readonly fixtureFilm: number;
  /** share of the perimeters */
  readonly tapeWaste: number;
  /** share of the masking area */
  readonly filmWaste: number;
}

/** What is masked at a row. */
export interface Masking {
  /** Openings or the masked row with the laps; m2 */
  readonly lapped: number;
  /** Fixtures to cover one by one. */
  readonly fixtures: number;
  /** All masking, with laps and fixtures; m2 */
  readonly area: number;
  /** Film to buy; m2 */
  readonly film: number;
  /** Tape to buy; m */
  readonly tape: number;
}

/**
 * The allowances in force.
 * @param factors the factors in force
 * @returns lap, film of a fixture, wastes
 */
export function maskingAllowances(factors: FactorsInForce): MaskingAllowances {
  return {
    lap: factors.value('mask.lap'),
    fixtureFilm: factors.value('fixture.film'),
    tapeWaste: factors.value('tape.waste'),
    filmWaste: factors.value('film.waste'),
  };
}

/**
 * Masking of a row. A washed row: its openings, the laps along their perimeters, its fixtures. A masked row: the whole of
 * it and the laps along its edge. What is washed afterwards has its openings and fixtures covered then, and the area of
 * its openings counts once; of what stays unwashed they lie beneath. Openings without a perimeter have that of their
 * square, the least possible.
 * @param row the wall row
 * @param allow the allowances in force
 * @param rec takes down the lines; `Area#` and `Openings#` have been taken down
 * @returns areas, fixtures and tape
 */
export function masking(row: WallRow, allow: MaskingAllowances, rec?: RowRecord): Masking {
  const surface = row.masked ? row.area : row.openings;
  // Whatever its area, so that rows put together have the sums of the rows.
  const later = row.mask === 'yes' && row.material.masonry;
  const edge = row.masked ? edgeOf(row, rec) : 0;
  const opened = row.masked && !later ? 0 : edgeOfOpenings(row, rec);
  const perimeter = edge + opened;
  const fixtures = row.masked && !later ? 0 : row.fixtures;
  const lapArea = perimeter * allow.lap;
  const lapped = surface + lapArea;
  const fixtureArea = fixtures * allow.fixtureFilm;
  const area = lapped + fixtureArea;
  const film = area * (1 + allow.filmWaste);
  const tape = perimeter * (1 + allow.tapeWaste);
  if (rec) {
    rec.line('masked', surface, { surface: row.masked ? 'Area#' : 'Openings#' });
    const edges = later ? 'edge# + openingsEdge#' : row.masked ? 'edge#' : 'openingsEdge#';
    rec.line('perimeter', perimeter, { edges });
    rec.input(
      'fixtures#',
      fixtures,
      'count',
      row.masked && !later ? 'Fixtures lie beneath the masked row' : 'Fixtures of the row',
      'fixtures',
    );
    rec.line('lapArea', lapArea);
    rec.line('fixtureArea', fixtureArea);
    rec.line('masking', area);
    rec.line('film', film);
    rec.line('tape', tape);
  }
  return {
    lapped,
    fixtures,
    area,
    film,
    tape,
  };
}

function edgeOfOpenings({ openings, openingPerimeter }: WallRow, rec?: RowRecord): number {
  const edge = openingsEdge(openings, openingPerimeter);
  if (openingPerimeter > 0 || openings === 0)
    rec?.input(
      'openingsEdge#',
      openingPerimeter,
      'length',
      'Opening perimeter of the row',
      'openingPerimeter',
    );
  else rec?.line('openingsEdge', edge);
  return edge;
}

function edgeOf({ area, height, edge: edges }: WallRow, rec?: RowRecord): number {
  // Rows put together have the sum of their edges.
  const edge = edges ?? edgeLength(area, height);
  if (height > 0) {
    rec?.input('Height#', height, 'length', 'Height of the row', 'height');
    rec?.line('edgeFromHeight', edge);
  } else {
    rec?.line('edgeFromArea', edge);
  }
  return edge;
}
