import { useState } from 'preact/hooks';
import {
  findingKinds,
  severities,
  type AuditFinding,
  type FindingKind,
  type FindingPlace,
} from '../../src/review/audit/audit-finding';
import { kindTitles } from '../../src/review/audit/review-sheet';
import { GoThere } from '../shared/go-there';
import { SHOWN_AT_ONCE, ShowMore } from '../shared/show-more';
import type { WorkbookPort } from '../workbook/port';

/**
 * The findings by kind, each with a way to its cell.
 * @param props the findings
 * @param props.findings what was found
 * @param props.port the workbook
 * @param props.say speaks a sentence
 * @returns a section for each kind that was found
 */
export function FindingsList({
  findings,
  port,
  say,
}: {
  findings: readonly AuditFinding[];
  port: WorkbookPort;
  say: (sentence: string) => void;
}) {
  return (
    <>
      {findingKinds.map((kind) => {
        const ofKind = findings.filter((finding) => finding.kind === kind);
        return ofKind.length === 0 ? null : (
          <KindSection key={kind} kind={kind} findings={ofKind} port={port} say={say} />
        );
      })}
    </>
  );
}

function KindSection({
  kind,
  findings,
  port,
  say,
}: {
  kind: FindingKind;
  findings: readonly AuditFinding[];
  port: WorkbookPort;
  say: (sentence: string) => void;
}) {
  const [shown, show] = useState(SHOWN_AT_ONCE);
  return (
    <section class="findings" aria-labelledby={`findings-${kind.replace(' ', '-')}`}>
      <h3 id={`findings-${kind.replace(' ', '-')}`}>
        {kindTitles[kind]} ({findings.length}) <small>{severities[kind]} severity</small>
      </h3>
      <ul>
        {findings
          .slice(0, shown)
          .map(({ sheet, address, what, todo, formula, others = [], reaches = [] }, index) => (
            <li key={index}>
              <GoThere port={port} place={{ sheet, address }} say={say}>
                {sheet}!{address}
              </GoThere>
              <p>{what}</p>
              {formula !== undefined && <code>{formula}</code>}
              <p class="todo">{todo}</p>
              {others.length > 0 && (
                <Places
                  title={others.length === 1 ? 'One more cell' : `${String(others.length)} more cells`}
                  places={others}
                  port={port}
                  say={say}
                />
              )}
              {reaches.length > 0 && (
                <Places
                  title={`${reaches.length === 1 ? 'One cell shows' : `${String(reaches.length)} cells show`} an error because of it`}
                  places={reaches}
                  port={port}
                  say={say}
                />
              )}
            </li>
          ))}
      </ul>
      <ShowMore count={findings.length} shown={shown} show={show} />
    </section>
  );
}

/** Cells that a finding names besides its own, each with a way to it. */
function Places({
  title,
  places,
  port,
  say,
}: {
  title: string;
  places: readonly FindingPlace[];
  port: WorkbookPort;
  say: (sentence: string) => void;
}) {
  const [shown, show] = useState(SHOWN_AT_ONCE);
  return (
    <details>
      <summary>{title}</summary>
      <ul>
        {places.slice(0, shown).map((place) => (
          <li key={`${place.sheet}!${place.address}`}>
            <GoThere port={port} place={place} say={say}>
              {place.sheet}!{place.address}
            </GoThere>
          </li>
        ))}
      </ul>
      <ShowMore count={places.length} shown={shown} show={show} />
    </details>
  );
}
