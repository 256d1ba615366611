import type { JSX } from 'preact';
import type { StepId } from '../../src/site/step';
import { EntryForm } from '../actuals/entry-form';
import type { Recorded } from '../actuals/recorded';
import type { Reading } from '../shared/use-reading';
import type { WorkbookPort } from '../workbook/port';
import { offerFor, offerKey, type OfferKey, type Offers, type TimedPatch } from './offers';

/** What the offers of a zone work on. */
export interface OffersOf {
  readonly port: WorkbookPort;
  readonly say: (sentence: string) => void;
  readonly recorded: Reading<Recorded>;
  /** Name of the zone. */
  readonly zone: string;
  readonly offers: Offers;
  readonly setOffers: (change: (now: Offers) => Offers) => void;
}

/**
 * The entries that are offered in a zone.
 * @param of what they work on
 * @returns what offers one, drops one, and shows the form of one
 */
export function offersOf({ port, say, recorded, zone, offers, setOffers }: OffersOf): {
  readonly offer: (key: OfferKey, of: StepId | TimedPatch | 'other') => void;
  readonly drop: (key: OfferKey) => void;
  readonly form: (key: OfferKey) => JSX.Element | undefined;
} {
  const drop = (key: OfferKey) => {
    const gone = offerKey(zone, key);
    setOffers((now) => Object.fromEntries(Object.entries(now).filter(([name]) => name !== gone)));
  };
  return {
    drop,
    offer: (key, of) => {
      const entry = offerFor(recorded, zone, of);
      if (entry) setOffers((now) => ({ ...now, [offerKey(zone, key)]: entry }));
    },
    form: (key) => {
      const name = offerKey(zone, key);
      const entry = offers[name];
      if (entry === undefined || recorded.is !== 'ready') return undefined;
      const budgets = recorded.value.budgets.find((each) => each.zone.name === zone);
      const done = () => {
        drop(key);
      };
      return (
        budgets && (
          <EntryForm key={name} {...{ port, say, budgets, done }} offer={entry} recorded={recorded.value} />
        )
      );
    },
  };
}
