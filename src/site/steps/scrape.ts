import { residueOf } from '../../govern/residue';
import { residues } from '../../rules/residues';
import { raisesDust } from '../../hazards/dust';
import { washedRows } from '../../hazards/washed';
import { wallsNamed } from '../named';
import { resultFact, rowsFact } from '../step-facts';
import type { StepBuilder } from '../step';

/** Larger residue comes off before the wall is washed, with as little dust as can be. */
export const scrape: StepBuilder = ({ zone, factors }) => {
  const washed = washedRows(zone).filter(({ material }) => material.masonry);
  if (washed.length === 0) return undefined;
  const assumed = washed.filter(({ residue }) => residue === undefined);
  return {
    id: 'scrape',
    title: 'Scrape and brush',
    todo: [
      'Take mortar off with wood or other tools that are not metal, then brush down.',
      ...(raisesDust(zone)
        ? ['Brush wet or use a HEPA vacuum wherever that is feasible: no dry brushing that adds silica dust.']
        : []),
    ],
    facts: [
      resultFact('Time', zone.totals.scrapeHours, 'laborHours', 'scrape', factors),
      ...[...residues].reverse().flatMap((residue) => {
        const rows = washed.filter((row) => residueOf(row) === residue);
        return rows.length > 0 ? [rowsFact(`Residue, ${residue}`, wallsNamed(rows))] : [];
      }),
      ...(assumed.length > 0
        ? [
            {
              label: 'Not seen yet, assumed from brushing',
              value: wallsNamed(assumed),
              source: 'estimate' as const,
              kind: 'assumption' as const,
            },
          ]
        : []),
    ],
    source: 'tn20',
    kind: 'published',
  };
};
