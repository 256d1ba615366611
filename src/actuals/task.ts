import { addedQuantities, hourParts, washHours, type QuantityId } from '../estimate/quantities';

/** What is recorded: a part of the labor-hours, or the wash as a whole, from pre-wet to rinse. */
export interface Task {
  readonly name: string;
  /** The parts of the labor-hours that it is made of. */
  readonly parts: readonly QuantityId[];
}

function ofPart(part: QuantityId): Task {
  return { name: part.replace(/Hours$/, ''), parts: [part] };
}

/** The wash as a whole. */
export const WASH: Task = { name: 'wash', parts: washHours };

/** What is cleaned once more after the inspection: what the estimate allows for it is a share of the whole wash. */
export const RECLEAN: Task = ofPart('recleanHours');

/** The parts of the labor-hours as tasks, in the order of the estimate. */
export const partTasks: readonly Task[] = hourParts.map((part) =>
  part === 'recleanHours' ? RECLEAN : ofPart(part),
);

/** Every task, the wash as a whole before its parts. */
export const tasks: readonly Task[] = partTasks.flatMap((task) =>
  task.parts[0] === washHours[0] ? [WASH, task] : [task],
);

/**
 * Whether a task is a part of the wash.
 * @param task the task
 * @returns true from pre-wet to rinse, and for the wash as a whole
 */
export function isOfWash(task: Task): boolean {
  return task.parts.every((part) => WASH.parts.includes(part));
}

/**
 * Whether a task may be recorded for the job as a whole, without a zone.
 * @param task the task
 * @returns true where the estimate works it out for the job, and for the daily set-up
 */
export function isOfJob(task: Task): boolean {
  return task.parts.every((part) => addedQuantities[part].of === 'job' || part === 'setupHours');
}

/**
 * The task of a name; case, spacing and hyphens do not count.
 * @param name what was typed
 * @returns the task, or undefined
 */
export function taskOf(name: string): Task | undefined {
  const wanted = name.toLowerCase().replace(/[\s-]+/g, '');
  return tasks.find((task) => task.name === wanted);
}
