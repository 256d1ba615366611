import { answer, readQuestion } from '../../functions/arguments';
import { quantityIds } from '../../src/estimate/quantities';
import { methods, type MethodId } from '../../src/rules/methods';
import {
  explainedByFactors,
  explainedByJob,
  explainedByRow,
  explainedByZone,
} from '../../src/trace/explained';
import { Recorder, type TraceLine } from '../../src/trace/recorder';
import { examplePrices, exampleWalls } from './example-job';

const NAME = /\b([A-Za-z_]\w*?)_([rz])\d+(?:_c\d)?\b/g;
const DOES_SOMETHING = /[-+*/^(]/;

/** The lines of the example job, once as it stands and once with a class of the user's own choice. */
function exampleLines(): TraceLine[] {
  return [examplePrices, [...examplePrices, ['cleaner.class', 1]]].flatMap((factors) => {
    const question = readQuestion(exampleWalls, '', factors, null);
    const rec = new Recorder(question.factors);
    answer(question, { rec });
    const names = [
      ...quantityIds,
      ...[explainedByJob, explainedByZone, explainedByRow, explainedByFactors].flatMap(Object.values),
    ];
    const places = [
      '',
      ...question.zones.map((_, index) => `_z${String(index + 1)}`),
      ...exampleWalls.slice(1).map((_, index) => `_r${String(index + 2)}`),
    ];
    return names.flatMap((name) => places.flatMap((place) => rec.linesFor(String(name) + place)));
  });
}

/**
 * A line without the numbers of its row and zone.
 * @param line a line of a trace
 * @returns for example `prewetHours = share * prewetHours_zone`; nothing where a name would mean two things
 */
function bare({ symbol, expression }: TraceLine): string | undefined {
  const whole = `${symbol} = ${expression}`;
  const ofRow = [
    ...new Set([...whole.matchAll(NAME)].filter(([, , place]) => place === 'r').map(([name]) => name)),
  ];
  const rows = ofRow.map((name) => name.replace(NAME, '$1'));
  const text = whole.replace(NAME, (_, name: string, place: string) =>
    place === 'z' && rows.includes(name) ? `${name}_zone` : name,
  );
  const [left = '', ...right] = text.split(' = ');
  const repeats = new RegExp(`\\b${left}\\b`).test(right.join(' = ')) || new Set(rows).size < rows.length;
  return repeats || !DOES_SOMETHING.test(expression) ? undefined : text;
}

/**
 * How each rule is written in a trace of the example job.
 * @returns for example `tape = perimeter * (1 + tapeWaste)`, for the rules that have more to say than their name
 */
export function expressions(): ReadonlyMap<MethodId, string> {
  const lines = exampleLines();
  return new Map(
    (Object.keys(methods) as MethodId[]).flatMap((id) => {
      const texts = lines.filter(({ rule }) => rule === methods[id].rule).flatMap((line) => bare(line) ?? []);
      // The longest says most.
      const [longest] = texts.sort((a, b) => b.length - a.length);
      return longest === undefined ? [] : [[id, longest] as const];
    }),
  );
}
