import { crewHours, type CrewHours, type SquareMetres } from '../quantity/quantities';
import type { CleanerClass } from '../rules/cleaner-classes';
import type { Recorder } from '../trace/recorder';

/**
 * How many classes the cleaner falls short of what a row needs.
 * @param need class that the row needs
 * @param classToUse class used in its zone
 * @param rec takes down the line
 * @returns 0 where the cleaner is enough
 */
export function shortfall(need: number, classToUse: CleanerClass, rec?: Recorder): number {
  const short = Math.max(0, need - classToUse);
  rec?.line('short#', 'max(0, need# - class@)', short, 'class', 'shortfall');
  return short;
}

/**
 * Crew-hours of scrubbing that make up for a milder cleaner: area by rate, times the classes short.
 * @param area washed area of the row, m2
 * @param short classes short
 * @param rate m2 a crew-hour for one class short
 * @param rec takes down the lines
 * @returns crew-hours
 */
export function scrubHours(area: SquareMetres, short: number, rate: number, rec?: Recorder): CrewHours {
  const hours = (area / rate) * short;
  rec?.line('scrubHours#', 'washedArea# / rate_scrub * short#', hours, 'crewHours', 'scrub');
  return crewHours(hours);
}
