import { cautionTopics, type CautionTopic } from '../../src/rules/cautions';
import { siteSources } from '../../src/rules/site-sources';
import { cautionSheet, type AppliedCaution } from '../../src/site/caution-sheet';
import { timeText } from '../shared/time-text';
import type { PanelProps } from '../shared/panel-props';
import { PrintActions } from '../shared/print-actions';
import { putOnNewSheet } from '../shared/sheet-out';
import { useJob } from '../shared/use-job';
import { cautionRows } from './caution-rows';

const SHEET = 'Washdown cautions';
// Topic, stop, caution, why, where, source, kind, address: the caution is what a crew reads.
const WIDTHS = [24, 6, 60, 26, 26, 36, 16, 40];

/**
 * The cautions that apply to this workbook, with their reasons; label, safety data sheet, local codes and licensed
 * practice first.
 * @param props what the panel works on
 * @returns the panel
 */
export function CautionsPanel({ port, source, say }: PanelProps) {
  const state = useJob(port, source);
  if (state.is === 'reading') return <p>Reading the walls…</p>;
  if (state.is === 'failed') {
    return (
      <>
        <h2>Cautions</h2>
        <p class="notice">The cautions cannot be shown, because the walls cannot be read. {state.message}</p>
      </>
    );
  }
  const cautions = cautionSheet(state.job.zones, state.job.factors);
  const stops = cautions.filter(({ stop }) => stop);
  const topics = (Object.keys(cautionTopics) as CautionTopic[]).filter((topic) =>
    cautions.some((caution) => caution.topic === topic),
  );
  return (
    <article class="cautions printed">
      <h2>Cautions</h2>
      <PrintActions
        what="The cautions are"
        copy={() => putOnNewSheet(port, SHEET, cautionRows(cautions, timeText(new Date())), WIDTHS)}
        say={say}
      />
      {topics.map((topic) => (
        <section key={topic}>
          <h3>{cautionTopics[topic]}</h3>
          <ul class={topic === 'first' ? 'first-lines' : 'caution-lines'}>
            {cautions
              .filter((caution) => caution.topic === topic)
              .map((caution) => (
                <CautionLine key={caution.id} caution={caution} />
              ))}
          </ul>
          {topic === 'first' && stops.length > 0 && (
            <p class="stop-notice">
              <strong>Stop.</strong> As the workbook stands: {stops.map(({ text }) => text).join(' ')}
            </p>
          )}
        </section>
      ))}
    </article>
  );
}

function CautionLine({ caution: { text, stop, places, source, kind } }: { caution: AppliedCaution }) {
  const { document, edition } = siteSources[source];
  const here = places.filter(({ why, where }) => why !== '' || where !== '');
  return (
    <li class={stop ? 'stop' : undefined}>
      <p class="caution-text">
        {stop && <strong>Stop: </strong>}
        {text}
      </p>
      {here.length > 0 && (
        <ul class="here">
          {here.map(({ why, where }) => (
            <li key={where + why}>
              {where}: {why}
            </li>
          ))}
        </ul>
      )}
      <p class="source">
        {document}
        {edition === '' || edition.startsWith('not ') ? '' : `, ${edition}`}
        {document.toLowerCase().includes(kind) ? '' : ` (${kind})`}
      </p>
    </li>
  );
}
