import { constants } from '../rules/constants';
import type { FactorsInForce } from '../rules/read-factors';
import type { Recorder, RowRecord } from '../trace/recorder';
import type { WallRow } from '../walls/wall-row';
import { sorptivity } from './sorptivity';

/** How faces are wetted before the cleaner. L/m2 and minutes. */
export interface PreWetRules {
  readonly leastDwell: number;
  /** What the face may take up of the mix in the minimum dwell. */
  readonly spare: number;
  readonly fieldShare: number;
  readonly density: number;
  readonly capacity: number;
  readonly passContact: number;
  readonly leastPasses: number;
  readonly mostPasses: number;
  readonly runoffPerPass: number;
}

/** The pre-wet of a face. */
export interface PreWet {
  /** Wetting after which the face takes up no more than may be spared, min. */
  readonly needed: number;
  readonly passes: number;
  /** Passes that it would take, where they are more than are made. */
  readonly wanted: number;
  /** Taken up, L/m2. */
  readonly absorbed: number;
  /** Water used, L/m2. */
  readonly water: number;
}

/** What holds where nothing is wetted. */
export const NO_PREWET: PreWet = { needed: 0, passes: 0, wanted: 0, absorbed: 0, water: 0 };

/**
 * The pre-wet in force. One film: of the mix that is applied, all but the film that must stay may be taken up.
 * @param factors the factors in force
 * @param rec takes down the line
 * @returns the rules
 */
export function preWetRules(factors: FactorsInForce, rec?: Recorder): PreWetRules {
  const spare = 1 / factors.value('cleaner.coverage') - factors.value('weather.film');
  rec?.line('spare', spare);
  return {
    leastDwell: factors.value('dwell.least'),
    spare,
    fieldShare: factors.value('prewet.fieldShare'),
    density: factors.value('water.density'),
    capacity: factors.value('prewet.capacity'),
    passContact: factors.value('prewet.passContact'),
    leastPasses: factors.value('prewet.leastPasses'),
    mostPasses: factors.value('prewet.mostPasses'),
    runoffPerPass: factors.value('prewet.runoffPerPass'),
  };
}

/**
 * The pre-wet of a row. The uptake left for the dwell d is S (sqrt(t0 + d) - sqrt(t0)) <= L, so
 * t0 = ((d - (L/S)^2) / (2 L/S))^2 where d > (L/S)^2, else 0; a full unit takes up nothing, which bounds t0.
 * Uptake i = S sqrt(t): Hall and Hoff; ASTM C1585. The film balance is an assumption.
 * @param row the wall row
 * @param rules the pre-wet in force
 * @param rec takes down the lines; `spare` has been taken down
 * @returns minutes, passes and water
 */
export function preWet(row: WallRow, rules: PreWetRules, rec?: RowRecord): PreWet {
  const inLab = sorptivity(row, rules.density, rec);
  const field = inLab * rules.fieldShare;
  const { leastDwell, spare, capacity } = rules;
  // Without suction the ratio is infinite, and the time 0.
  const ratio = spare / field;
  const full = (capacity / field) ** 2;
  const needed =
    field === 0
      ? 0
      : spare <= 0
        ? full
        : Math.min(full, (Math.max(0, leastDwell - ratio ** 2) / (2 * ratio)) ** 2);
  const wanted = Math.max(rules.leastPasses, Math.ceil(needed / rules.passContact - constants.guard.value));
  const passes = Math.min(wanted, rules.mostPasses);
  const absorbed = Math.min(capacity, field * Math.sqrt(passes * rules.passContact));
  const water = absorbed + passes * rules.runoffPerPass;
  if (rec) {
    rec.line('fieldSuction', field);
    rec.line(
      'prewetTime',
      needed,
      field === 0 ? '0' : spare <= 0 ? '(prewet_capacity / fieldS#)^2' : undefined,
    );
    rec.line('passes', passes);
    rec.line('absorbed', absorbed);
    rec.line('prewetWater', water);
  }
  return { needed, passes, wanted, absorbed, water };
}
