import type { JSX } from 'preact';
import type { EntryDraft } from '../actuals/entry-draft';
import { EntryForm } from '../actuals/entry-form';
import type { Recorded } from '../actuals/recorded';
import type { Reading } from '../shared/use-reading';
import type { WorkbookPort } from '../workbook/port';
import { offerFor, offerKey, type Drafts, type Offered, type OfferKey, type Offers } from './offers';

/** What the offers of a zone work on. */
export interface OffersOf {
  readonly port: WorkbookPort;
  readonly say: (sentence: string) => void;
  readonly recorded: Reading<Recorded>;
  /** Name of the zone. */
  readonly zone: string;
  readonly offers: Offers;
  readonly setOffers: (change: (now: Offers) => Offers) => void;
  readonly drafts: Drafts;
}

/**
 * The entries that are offered in a zone.
 * @param of what they work on
 * @returns what offers one, drops one, and shows the form of one
 */
export function offersOf({ port, say, recorded, zone, offers, setOffers, drafts }: OffersOf): {
  readonly offer: (key: OfferKey, of: Offered) => void;
  readonly drop: (key: OfferKey) => void;
  /** With what is to be done once the entry is written. */
  readonly form: (key: OfferKey, written?: () => void) => JSX.Element | undefined;
} {
  const drop = (key: OfferKey) => {
    const gone = offerKey(zone, key);
    drafts.delete(gone);
    setOffers((now) => Object.fromEntries(Object.entries(now).filter(([name]) => name !== gone)));
  };
  return {
    drop,
    offer: (key, of) => {
      const entry = offerFor(recorded, zone, of);
      if (entry) setOffers((now) => ({ ...now, [offerKey(zone, key)]: entry }));
    },
    form: (key, written) => {
      const name = offerKey(zone, key);
      const entry = offers[name];
      if (entry === undefined || recorded.is !== 'ready') return undefined;
      const budgets = recorded.value.budgets.find((each) => each.zone.name === zone);
      const done = (isWritten: boolean) => {
        drop(key);
        if (isWritten) written?.();
      };
      const keep = (draft: EntryDraft) => {
        drafts.set(name, draft);
      };
      return (
        budgets && (
          <EntryForm
            key={name}
            {...{ port, say, budgets, keep, done }}
            offer={entry}
            typed={drafts.get(name)}
            recorded={recorded.value}
          />
        )
      );
    },
  };
}
