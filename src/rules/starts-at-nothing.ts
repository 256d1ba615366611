import type { FactorId } from './factors';

/** Something that such a bid holds and that starts at nothing, since only the user can know it. */
export interface StartsAtNothing {
  readonly words: string;
  /** Any of these states it, be it as 0. */
  readonly ids: readonly FactorId[];
  /** The quantity that it prices; left out where the job has it whatever its walls. */
  readonly of?: 'film' | 'tape' | 'water' | 'bicarbonate' | 'sodaAsh' | 'runoff';
  /** The class whose cleaner it prices. */
  readonly class?: 1 | 2 | 3;
}

/** In the order of a bid. */
export const startsAtNothing: readonly StartsAtNothing[] = [
  { words: 'labor', ids: ['price.labor', 'price.crew'] },
  { words: 'cleaner of class 1 (neutral detergent)', ids: ['price.cleaner.1'], class: 1 },
  { words: 'cleaner of class 2 (buffered mild acid)', ids: ['price.cleaner.2'], class: 2 },
  { words: 'cleaner of class 3 (buffered acid at full label strength)', ids: ['price.cleaner.3'], class: 3 },
  { words: 'masking film', ids: ['price.film'], of: 'film' },
  { words: 'tape', ids: ['price.tape'], of: 'tape' },
  { words: 'water', ids: ['price.water'], of: 'water' },
  { words: 'equipment rental', ids: ['price.equipment'] },
  { words: 'lift or scaffold rental', ids: ['price.access'] },
  { words: 'sodium bicarbonate', ids: ['price.bicarbonate'], of: 'bicarbonate' },
  { words: 'soda ash', ids: ['price.sodaAsh'], of: 'sodaAsh' },
  { words: 'disposal of runoff', ids: ['price.disposal'], of: 'runoff' },
  { words: 'mobilization', ids: ['price.mobilization', 'mobilize.hours'] },
  { words: 'site set-up of each zone', ids: ['setup.zone'] },
  { words: 'protection of landscaping, paving and neighbors', ids: ['price.protection', 'protect.hours'] },
  { words: 'fixed sums of your own', ids: ['price.fixed'] },
  { words: 'supervision', ids: ['price.supervision'] },
  { words: 'contingency', ids: ['price.contingency'] },
  { words: 'overhead', ids: ['price.overhead'] },
  { words: 'profit', ids: ['price.profit'] },
  { words: 'minimum charge', ids: ['price.minimum'] },
  { words: 'weather days', ids: ['weather.days'] },
];
