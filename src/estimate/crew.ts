import { constants } from '../rules/constants';
import type { FactorsInForce } from '../rules/read-factors';

/** Who works, and for how much of an hour. */
export interface Crew {
  /** Persons in a team, which works one lance. */
  readonly size: number;
  readonly teams: number;
  /** Share of an hour at work, above 0 and at most 1. */
  readonly workingShare: number;
}

/**
 * The crew in force.
 * @param factors the factors in force
 * @returns team size, teams and working share
 */
export function crewOf(factors: FactorsInForce): Crew {
  return {
    size: factors.value('team.size'),
    teams: factors.value('teams'),
    workingShare: factors.value('working.share'),
  };
}

/**
 * Labor-hours of net minutes of persons: rates are net, and an hour holds less than 60 min of work.
 * @param net minutes of persons
 * @param crew the crew in force
 * @returns labor-hours
 */
export function hoursOf(net: number, crew: Pick<Crew, 'workingShare'>): number {
  return net / constants.minPerHour.value / crew.workingShare;
}
