import { useCallback, useEffect, useState } from 'preact/hooks';
import { failureText } from './shared/failure-text';
import { keep, keepOnSheet, NOTES_SHEET, readKept } from './shared/kept-text';
import type { PanelProps } from './shared/panel-props';
import type { ReviewProps } from './review/review-panel';
import { SetUpPanel } from './set-up/set-up-panel';
import { Tabs } from './tabs';
import { readWallSource, type WallSource } from './shared/wall-source';
import type { WhereFromProps } from './where-from/where-from-section';
import { whenShown } from './shared/when-shown';
import type { WorkbookPort } from './workbook/port';

// What is used on site, and what a reviewer uses, is not waited for when the pane opens.
const StepsPanel = whenShown<PanelProps>(() =>
  import(/* webpackChunkName: "site" */ './steps/steps-panel').then((module) => module.StepsPanel),
);
const CautionsPanel = whenShown<PanelProps>(() =>
  import(/* webpackChunkName: "site" */ './cautions/cautions-panel').then((module) => module.CautionsPanel),
);
const ReviewPanel = whenShown<ReviewProps>(() =>
  import(/* webpackChunkName: "review" */ './review/review-panel').then((module) => module.ReviewPanel),
);
const DecisionsSection = whenShown<PanelProps>(() =>
  import(/* webpackChunkName: "decisions" */ './decisions/decisions-section').then(
    (module) => module.DecisionsSection,
  ),
);
const RatesSection = whenShown<PanelProps>(() =>
  import(/* webpackChunkName: "rates" */ './rates/rates-section').then((module) => module.RatesSection),
);

const WhereFromSection = whenShown<WhereFromProps>(() =>
  import(/* webpackChunkName: "where-from" */ './where-from/where-from-section').then(
    (module) => module.WhereFromSection,
  ),
);

/**
 * The pane.
 * @param props what it works on
 * @param props.port the workbook
 * @returns the four panels under their tabs
 */
export function App({ port }: { port: WorkbookPort }) {
  const [source, setSource] = useState<WallSource>();
  const [ready, setReady] = useState(false);
  const [said, setSaid] = useState({ sentence: '', times: 0 });
  const say = useCallback((sentence: string) => {
    setSaid(({ times }) => ({ sentence, times: times + 1 }));
  }, []);
  const [unkept, setUnkept] = useState(false);
  const [waits, setWaits] = useState(false);
  useEffect(() => port.onWaiting(setWaits), [port]);
  useEffect(() => {
    readKept(port, 'source')
      .then((text) => {
        if (text !== undefined) setSource(readWallSource(text));
      })
      .catch(() => {
        say('The saved location of the wall table cannot be read. Choose it again under Set up.');
      })
      .finally(() => {
        setReady(true);
      });
  }, [port, say]);
  const choose = (chosen: WallSource) => {
    setSource(chosen);
    keep(port, 'source', JSON.stringify(chosen))
      .then((kept) => {
        setUnkept(!kept);
      })
      .catch(() => {
        setUnkept(true);
      });
  };
  const withSource = (panel: (props: PanelProps) => preact.ComponentChildren) => () =>
    source ? panel({ port, source, say }) : <NoSource />;
  return (
    <>
      <h1 class="unseen">Washdown</h1>
      {ready && (
        <Tabs
          label="Washdown"
          tabs={[
            {
              id: 'set-up',
              label: 'Set up',
              panel: () => <SetUpPanel port={port} source={source} say={say} choose={choose} />,
            },
            { id: 'steps', label: 'Steps', panel: withSource((props) => <StepsPanel {...props} />) },
            { id: 'cautions', label: 'Cautions', panel: withSource((props) => <CautionsPanel {...props} />) },
            {
              id: 'review',
              label: 'Review',
              panel: () => (
                <>
                  <ReviewPanel port={port} source={source} say={say} />
                  <WhereFromSection port={port} source={source} say={say} />
                  {source && <DecisionsSection port={port} source={source} say={say} />}
                  {source && <RatesSection port={port} source={source} say={say} />}
                </>
              ),
            },
          ]}
        />
      )}
      {waits && (
        <p class="notice" role="alert">
          The workbook does not answer yet. Is a cell being edited? Press Enter or Esc in it; then the pane
          continues.
        </p>
      )}
      {unkept && source && (
        <section class="notice" aria-label="Not saved">
          <p>This workbook does not save where its wall table is. A sheet “{NOTES_SHEET}” can hold it.</p>
          <button
            type="button"
            onClick={() => {
              keepOnSheet(port, 'source', JSON.stringify(source))
                .then(() => {
                  setUnkept(false);
                  say(`Saved on the sheet ${NOTES_SHEET}.`);
                })
                .catch((error: unknown) => {
                  say(failureText(error));
                });
            }}
          >
            Add the sheet
          </button>
        </section>
      )}
      <div class="messages">
        <p class="said" role="status" aria-live="polite">
          {/* A new node is spoken again, though its words may be the same. */}
          {said.sentence !== '' && <span key={said.times}>{said.sentence}</span>}
        </p>
        {said.sentence !== '' && (
          <button
            type="button"
            aria-label="Hide the message"
            onClick={() => {
              say('');
            }}
          >
            ×
          </button>
        )}
      </div>
    </>
  );
}

function NoSource() {
  return <p>No wall table is chosen yet. Choose or make one under Set up.</p>;
}
