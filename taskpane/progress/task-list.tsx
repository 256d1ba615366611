import { findingInWords } from '../../src/actuals/finding-words';
import type { ProgressLine } from '../../src/actuals/progress';
import { WASH, type Task } from '../../src/actuals/task';
import { addedQuantities } from '../../src/estimate/quantities';
import type { System } from '../../src/quantity/systems';
import { amount, rounded } from '../../src/site/amount';
import { paceInWords } from '../../src/site/pace-words';
import { percentText, ShareBar } from './share-bar';

/**
 * The tasks of a zone, each with a bar of what is done against the estimate.
 * @param props the tasks
 * @param props.lines a line for each
 * @param props.system the display system
 * @returns the list
 */
export function TaskList({ lines, system }: { lines: readonly ProgressLine[]; system: System }) {
  return (
    <ul class="task-list">
      {lines.map((line) => {
        const { task, standing, area, done, findings } = line;
        const { budget, earned } = standing.hours;
        const byArea = area > 0 ? (done ?? 0) / area : undefined;
        const share = byArea ?? (budget > 0 ? earned / budget : 0);
        return (
          <li key={task?.name}>
            <p>
              <strong>{nameOf(task)}</strong> {percentText(share)}
              {area > 0 && `: ${amount(done ?? 0, 'area', system)} of ${amount(area, 'area', system)}`},{' '}
              {rounded(budget - earned)} of {amount(budget, 'laborHours', system)} left
            </p>
            <ShareBar share={share} />
            {standing.hours.index !== undefined && <p>{paceInWords(standing.hours)}.</p>}
            {findings.map((finding) => (
              <p key={finding.type} class="finding">
                {findingInWords(finding, system)}
              </p>
            ))}
          </li>
        );
      })}
    </ul>
  );
}

function nameOf(task: Task | undefined): string {
  if (task === WASH) return 'Wash, pre-wet to rinse';
  const [part] = task?.parts ?? [];
  return part ? addedQuantities[part].heading.replace(/ hours$/, '') : '';
}
